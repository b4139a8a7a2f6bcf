// Which faults outside a panel's own findings speak against it. A console's panel that is missing or can't be read says
// nothing about its neighbours; a fault of the workshop, of own parts or of the console itself says something about all.

import { readDesign } from "../design/read-design.ts";
import { resolveInclude } from "../design/resolve-include.ts";
import type { Finding, Span } from "../diagnostics/finding.ts";
import type { PanelProject } from "../project.ts";
import type { OpenProject } from "./open-project.ts";

export const faultsAgainst = ({
  loaded,
  project,
}: Pick<OpenProject, "loaded" | "project">): ((panel: PanelProject) => readonly Finding[]) => {
  const faults = [...loaded.findings, ...project.findings].filter(
    ({ severity }) => severity === "fault",
  );
  const uses = faults.length === 0 ? [] : panelUses(loaded.entry, loaded.files);
  const isOfOnePanel = ({ span }: Finding): boolean =>
    uses.some((use) => use.path === span.file || holds(use.span, span));
  return (panel) =>
    faults.filter((fault) => fault.span.file === panel.design.file || !isOfOnePanel(fault));
};

interface PanelUseAt {
  readonly path: string | null;
  readonly span: Span;
}

/** Where a console names its panels; nothing where the design begins with a panel. */
const panelUses = (entry: string, files: ReadonlyMap<string, string>): readonly PanelUseAt[] => {
  const { design } = readDesign(entry, files.get(entry) ?? "");
  if (design?.kind !== "console") return [];
  return design.panels.map(({ file, written }) => {
    const resolved = resolveInclude(entry, file);
    return { path: resolved.kind === "resolved" ? resolved.path : null, span: written.span };
  });
};

const holds = (outer: Span, inner: Span): boolean =>
  outer.file === inner.file && outer.start <= inner.start && inner.end <= outer.end;
