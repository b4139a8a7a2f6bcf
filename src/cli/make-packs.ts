// Packs of a project's panels, made and written: sound panels are, panels with a fault keep their old pack, marked stale.
// A fault that belongs to no panel speaks against all of them.

import { join } from "node:path";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import type { PartChange } from "../pack/changes.ts";
import { distinctPaths, safeName } from "../pack/file-name.ts";
import type { PackOptions, PanelPack } from "../pack/panel-pack.ts";
import type { ConsoleFit, ConsoleProject } from "../project.ts";
import { CANNOT_WRITE } from "./codes.ts";
import { attempt } from "./disk-trouble.ts";
import { faultsAgainst } from "./faults-against.ts";
import { fittedConsole } from "./fitted-console.ts";
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
  const { panels, console } = opened.project;
  const isPrinted = panels.some(({ printedParts }) => printedParts.length > 0);
  const isDeep = isPrinted && options.only !== "fascia";
  const kernel = isDeep || console !== null ? await shell.kernel() : null;
  const fit = console === null ? null : await fittedConsole(opened.project, console, shell);
  const folders = packFolders(opened);
  const against = faultsAgainst(opened);
  const deep = { ...options, kernel };
  const count = panels.length + (console === null ? 0 : 1);
  const say = (name: string, index: number): void => {
    if (count > 1) shell.stderr(`making: ${name}, ${index + 1} of ${count}\n`);
  };
  const drafts = panels.map((panel, index): Draft => {
    say(panel.name, index);
    const fitting = (fit?.findings ?? []).filter(({ subjects }) => areOf(subjects, panel.name));
    const known = [...against(panel), ...panel.findings, ...fitting].filter(isFault);
    const pack = known.length > 0 ? NO_PACK : packOfProject(opened.project, panel, deep);
    const span = panel.design.written.span;
    return drafted({ name: panel.name, span, folder: folders[index] ?? "" }, known, pack);
  });
  if (console !== null && fit !== null) {
    say("the console itself", panels.length);
    drafts.push(await consoleDraft({ opened, console, fit }, folders.at(-1) ?? "", deep));
  }
  const isWithheld =
    options.strict &&
    (hasFault([...opened.findings, ...(fit?.findings ?? [])]) ||
      drafts.some(({ faults }) => faults.length > 0));
  const made = drafts.map((draft) => settled(draft, { isWithheld, out: options.out }, shell));
  return {
    out: options.out,
    opened,
    panels: made.map(({ panel }) => panel),
    findings: [
      ...opened.findings,
      ...(fit?.findings ?? []),
      ...drafts.flatMap(({ pack }) => pack.findings),
      ...made.flatMap(({ findings }) => findings),
    ],
  };
};

const isFault = ({ severity }: Finding): boolean => severity === "fault";

const NO_PACK: PanelPack = { files: [], inspection: [], findings: [] };

interface Draft {
  readonly name: string;
  readonly span: Span;
  readonly pack: PanelPack;
  readonly folder: string;
  /** Everything that speaks against writing it. */
  readonly faults: readonly Finding[];
}

const drafted = (
  of: Pick<Draft, "name" | "span" | "folder">,
  known: readonly Finding[],
  pack: PanelPack,
): Draft => ({ ...of, pack, faults: [...known, ...pack.findings.filter(isFault)] });

/** A finding about fit names a panel, or a thing on it: `winch`, `winch/brake/lever`. */
const areOf = (subjects: readonly string[], panel: string): boolean =>
  subjects.some((subject) => subject === panel || subject.startsWith(`${panel}/`));

/**
 * Any fault of the console, of a panel in it or of its fit speaks against the pack of the console itself: its model, its
 * report and the room in its frame are those of all its panels.
 */
const consoleDraft = async (
  of: { readonly opened: OpenProject; readonly console: ConsoleProject; readonly fit: ConsoleFit },
  folder: string,
  options: PackOptions,
): Promise<Draft> => {
  const { packOfConsoleProject } = await import("../project.ts");
  const { opened, console, fit } = of;
  const known = [...opened.findings, ...fit.findings].filter(isFault);
  const pack =
    known.length > 0 ? NO_PACK : packOfConsoleProject(opened.project, { console, fit }, options);
  const { name } = console.layout;
  return drafted({ name, span: console.design.written.span, folder }, known, pack);
};

/**
 * A panel that is called by its own file has the output folder to itself; a console's panels have one each, and what is the
 * console's own comes last.
 */
const packFolders = ({ loaded, project }: OpenProject): readonly string[] => {
  const isAlone = project.panels.length === 1 && project.panels[0]?.design.file === loaded.entry;
  if (isAlone) return [""];
  const own = project.console === null ? [] : ["console"];
  const names = project.panels.map(({ name }) => safeName(name));
  return distinctPaths([...names, ...own]).map((name) => `${name}/`);
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
  const { name, span, pack, folder, faults } = draft;
  const target = join(out, folder);
  const made = { name, folder, pack, isWritten: false, isStale: false, changes: null };
  if (faults.length > 0 || isWithheld) {
    const marked = attempt(() => markStale(target, staleReasons(faults), shell.disk));
    const isStale = marked.kind === "done" && marked.result;
    return { panel: { ...made, isStale }, findings: [] };
  }
  const result = writePack(target, pack.files, shell.disk);
  if (result.kind === "written")
    return { panel: { ...made, isWritten: true, changes: result.changes }, findings: [] };
  const trouble = finding(CANNOT_WRITE, { panel: name, message: result.why, span });
  return { panel: made, findings: [trouble] };
};

const staleReasons = (faults: readonly Finding[]): readonly string[] =>
  faults.length === 0
    ? ["Another panel of its console has a fault, and nothing was to be written."]
    : faults.map(({ code, message }) => `${code}: ${message}`);
