// Packs of a project's panels, made and written: sound panels are, panels with a fault keep their old pack, marked stale.
// A fault that belongs to no panel speaks against all of them.

import { join } from "node:path";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { PartChange } from "../pack/changes.ts";
import { distinctPaths, safeName } from "../pack/file-name.ts";
import type { PackOptions, PanelPack } from "../pack/panel-pack.ts";
import type { PanelProject } from "../project.ts";
import { CANNOT_WRITE } from "./codes.ts";
import { attempt } from "./disk-trouble.ts";
import { faultsAgainst } from "./faults-against.ts";
import { markStale } from "./mark-stale.ts";
import type { OpenProject } from "./open-project.ts";
import type { Shell } from "./shell.ts";
import { hasFault } from "./show-findings.ts";
import { writePack } from "./write-pack.ts";

export interface MakeOptions extends PackOptions {
  readonly out: string;
  /** Nothing is written where any panel has a fault. */
  readonly strict: boolean;
}

export interface MadePanel {
  readonly name: string;
  /** Folder from `out`, with a slash behind; empty where the pack lies in `out` itself. */
  readonly folder: string;
  readonly pack: PanelPack;
  readonly isWritten: boolean;
  /** An old pack stays and carries the note that it is stale. */
  readonly isStale: boolean;
  /** Since the last pack in this folder; null where there was none. */
  readonly changes: readonly PartChange[] | null;
}

export interface Made {
  readonly out: string;
  readonly opened: OpenProject;
  readonly panels: readonly MadePanel[];
  readonly findings: readonly Finding[];
}

export const makePacks = async (
  opened: OpenProject,
  options: MakeOptions,
  shell: Shell,
): Promise<Made> => {
  const { packOfProject } = await import("../project.ts");
  const { panels } = opened.project;
  const isPrinted = panels.some(({ printedParts }) => printedParts.length > 0);
  const kernel = isPrinted && options.only !== "fascia" ? await shell.kernel() : null;
  const folders = panelFolders(opened);
  const against = faultsAgainst(opened);
  const drafts = panels.map((panel, index): Draft => {
    const known = [...against(panel), ...panel.findings].filter(isFault);
    const pack =
      known.length > 0 ? NO_PACK : packOfProject(opened.project, panel, { ...options, kernel });
    const faults = [...known, ...pack.findings.filter(isFault)];
    return { panel, pack, folder: folders[index] ?? "", faults };
  });
  const isWithheld =
    options.strict && (hasFault(opened.findings) || drafts.some(({ faults }) => faults.length > 0));
  const made = drafts.map((draft) => settled(draft, { isWithheld, out: options.out }, shell));
  return {
    out: options.out,
    opened,
    panels: made.map(({ panel }) => panel),
    findings: [
      ...opened.findings,
      ...drafts.flatMap(({ pack }) => pack.findings),
      ...made.flatMap(({ findings }) => findings),
    ],
  };
};

const isFault = ({ severity }: Finding): boolean => severity === "fault";

const NO_PACK: PanelPack = { files: [], inspection: [], findings: [] };

interface Draft {
  readonly panel: PanelProject;
  readonly pack: PanelPack;
  readonly folder: string;
  /** Everything that speaks against writing it. */
  readonly faults: readonly Finding[];
}

/** A panel that is called by its own file has the output folder to itself; a console's panels have one each. */
const panelFolders = ({ loaded, project }: OpenProject): readonly string[] => {
  const isAlone = project.panels.length === 1 && project.panels[0]?.design.file === loaded.entry;
  return isAlone
    ? [""]
    : distinctPaths(project.panels.map(({ name }) => safeName(name))).map((name) => `${name}/`);
};

interface Settled {
  readonly panel: MadePanel;
  readonly findings: readonly Finding[];
}

const settled = (
  draft: Draft,
  { isWithheld, out }: { readonly isWithheld: boolean; readonly out: string },
  shell: Shell,
): Settled => {
  const { panel, pack, folder, faults } = draft;
  const target = join(out, folder);
  const made = { name: panel.name, folder, pack, isWritten: false, isStale: false, changes: null };
  if (faults.length > 0 || isWithheld) {
    const marked = attempt(() => markStale(target, staleReasons(faults), shell.disk));
    const isStale = marked.kind === "done" && marked.result;
    return { panel: { ...made, isStale }, findings: [] };
  }
  const result = writePack(target, pack.files, shell.disk);
  if (result.kind === "written")
    return { panel: { ...made, isWritten: true, changes: result.changes }, findings: [] };
  const span = panel.design.written.span;
  const trouble = finding(CANNOT_WRITE, { panel: panel.name, message: result.why, span });
  return { panel: made, findings: [trouble] };
};

const staleReasons = (faults: readonly Finding[]): readonly string[] =>
  faults.length === 0
    ? ["Another panel of its console has a fault, and nothing was to be written."]
    : faults.map(({ code, message }) => `${code}: ${message}`);
