// Which faults outside a panel's own findings speak against it. A console's panel that is missing or can't be read says
// nothing about its neighbours, and what is the console's own (its title and revision; frame, envelope, obstacles, operator)
// changes no panel; a fault of the workshop, of own parts or of the console's bays says something about all. Of panels with
// one name each would overwrite the others' packs: what says so speaks against all of them.

import { readDesign } from "../design/read-design.ts";
import { resolveInclude } from "../design/resolve-include.ts";
import type { Finding, Span } from "../diagnostics/finding.ts";
import { isWithin } from "../diagnostics/within.ts";
import type { PanelProject, Project } from "../project.ts";
import type { LoadedTexts } from "./loaded-texts.ts";

export const faultsAgainst = ({
  loaded,
  project,
}: {
  readonly loaded: LoadedTexts;
  readonly project: Project;
}): ((panel: PanelProject) => readonly Finding[]) => {
  const faults = [...loaded.findings, ...project.findings].filter(
    ({ severity }) => severity === "fault",
  );
  const { uses, around } =
    faults.length === 0 ? NO_CONSOLE : consoleParts(loaded.entry, loaded.files);
  const isOfOnePanel = ({ span }: Finding): boolean =>
    uses.some((use) => use.path === span.file || isWithin(span, use.span));
  const isAround = ({ span }: Finding): boolean => around.some((part) => isWithin(span, part));
  const isShared = (name: string): boolean =>
    project.panels.filter((panel) => panel.name === name).length > 1;
  return (panel) =>
    faults.filter(
      (fault) =>
        fault.span.file === panel.design.file ||
        (isShared(panel.name) &&
          uses.some(({ name, span }) => name === panel.name && isWithin(fault.span, span))) ||
        !(isOfOnePanel(fault) || isAround(fault)),
    );
};

interface PanelUseAt {
  /** What the console calls the panel. */
  readonly name: string;
  readonly path: string | null;
  readonly span: Span;
}

interface ConsoleParts {
  /** Where the console names its panels. */
  readonly uses: readonly PanelUseAt[];
  /** What stands round them. */
  readonly around: readonly Span[];
}

/** Of a design that begins with a panel. */
const NO_CONSOLE: ConsoleParts = { uses: [], around: [] };

const AROUND_KEYS = ["title", "revision", "dated", "frame", "envelope", "obstacles", "operator"];

const consoleParts = (entry: string, files: ReadonlyMap<string, string>): ConsoleParts => {
  const { design } = readDesign(entry, files.get(entry) ?? "");
  if (design?.kind !== "console") return NO_CONSOLE;
  const uses = design.panels.map(({ as: name, file, written }) => {
    const resolved = resolveInclude(entry, file);
    return { name, path: resolved.kind === "resolved" ? resolved.path : null, span: written.span };
  });
  return { uses, around: AROUND_KEYS.flatMap((key) => design.written.keys[key] ?? []) };
};
