// Packs of a project, planned and made but not yet written: the same for the command line and for the page. Every panel in its
// order, then those that could not be read, the console's own last. What has a fault against it is not made; the faults say why.

import type { Finding, Span } from "../diagnostics/finding.ts";
import { distinctPaths, safeName } from "../pack/file-name.ts";
import type { PackOptions, PanelPack } from "../pack/panel-pack.ts";
import { type ConsoleFit, type Project, packOfConsoleProject, packOfProject } from "../project.ts";
import { faultsAgainst } from "./faults-against.ts";
import type { LoadedTexts } from "./loaded-texts.ts";
import { lostPanels } from "./lost-panels.ts";

/** What was read, what was made of it, and every finding of both. */
export interface DesignForPacks {
  readonly loaded: LoadedTexts;
  readonly project: Project;
  readonly findings: readonly Finding[];
}

export interface PackPlan {
  readonly kind: "panel" | "console";
  readonly name: string;
  readonly span: Span;
  /** Folder from where packs are written, with a slash behind; empty where the only pack lies there itself. */
  readonly folder: string;
  readonly make: (options: PackOptions) => PackDraft;
}

export interface PackDraft extends Pick<PackPlan, "name" | "span" | "folder"> {
  readonly pack: PanelPack;
  /** Everything that speaks against writing it. */
  readonly faults: readonly Finding[];
}

/** `fit`: of the console; null where the design is none. */
export const packPlans = (design: DesignForPacks, fit: ConsoleFit | null): readonly PackPlan[] => {
  const { project } = design;
  const folders = packFolders(design);
  const against = faultsAgainst(design);
  const lost = lostPanels(project, design.findings);
  const panels = project.panels.map((panel): PackPlan => {
    const fitting = (fit?.findings ?? []).filter(({ subjects }) => areOf(subjects, panel.name));
    const faults = [...against(panel), ...panel.findings, ...fitting].filter(isFault);
    const of = {
      name: panel.name,
      span: panel.design.written.span,
      folder: folders.of(panel.name),
    };
    const make = (options: PackOptions): PackDraft =>
      drafted(of, faults, () => packOfProject(project, panel, options));
    return { kind: "panel", ...of, make };
  });
  const unmade = lost.map(({ faults, name, span }): PackPlan => {
    const of = { name, span, folder: folders.of(name) };
    const make = (): PackDraft => ({ ...of, pack: NO_PACK, faults });
    return { kind: "panel", ...of, make };
  });
  const { console } = project;
  if (console === null || fit === null) return [...panels, ...unmade];
  // Any fault of the console, of a panel in it or of its fit speaks against the pack of the console itself: its model, its
  // report and the room in its frame are those of all its panels.
  const faults = [...design.findings, ...fit.findings].filter(isFault);
  const { name } = console.layout;
  const of = { name, span: console.design.written.span, folder: folders.console };
  const make = (options: PackOptions): PackDraft =>
    drafted(of, faults, () => packOfConsoleProject(project, { console, fit }, options));
  return [...panels, ...unmade, { kind: "console", ...of, make }];
};

/** Print files and the fit of a console need the solid kernel; other packs are the same without it. */
export const wantsKernel = ({ panels, console }: Project, only: PackOptions["only"]): boolean =>
  console !== null ||
  (only !== "fascia" && panels.some(({ printedParts }) => printedParts.length > 0));

const isFault = ({ severity }: Finding): boolean => severity === "fault";

const NO_PACK: PanelPack = { files: [], inspection: [], findings: [] };

const drafted = (
  of: Pick<PackDraft, "name" | "span" | "folder">,
  known: readonly Finding[],
  make: () => PanelPack,
): PackDraft => {
  const pack = known.length > 0 ? NO_PACK : make();
  return { ...of, pack, faults: [...known, ...pack.findings.filter(isFault)] };
};

/** A finding about fit names a panel, or a thing on it: `winch`, `winch/brake/lever`. */
const areOf = (subjects: readonly string[], panel: string): boolean =>
  subjects.some((subject) => subject === panel || subject.startsWith(`${panel}/`));

/**
 * A panel that is called by its own file has the output folder to itself; a console's panels have one each, and what is the
 * console's own comes last.
 */
const packFolders = ({ loaded, project }: DesignForPacks): PackFolders => {
  const { console, panels } = project;
  const isAlone = panels.length === 1 && panels[0]?.design.file === loaded.entry;
  if (isAlone) return { of: () => "", console: "" };
  // In the order of the text, so that a panel that can't be read keeps its folder, and its neighbours theirs.
  const used = console?.design.panels.map(({ as }) => as) ?? [];
  const names = [...new Set([...used, ...panels.map(({ name }) => name)])];
  const folders = distinctPaths([...names.map(safeName), "console"]).map((name) => `${name}/`);
  return {
    of: (name) => folders[names.indexOf(name)] ?? "",
    console: folders.at(-1) ?? "",
  };
};

interface PackFolders {
  /** Of the panel that is called so. */
  readonly of: (panel: string) => string;
  readonly console: string;
}
