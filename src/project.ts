// The one door: texts in, a project out; a panel in, its pack out. Nothing here reads a file, a clock or a page:
// whoever calls hands in the texts and the library, and gets data back.

import type { Library } from "./catalogue/library.ts";
import type { Catalogue } from "./catalogue/record.ts";
import { withOwnRecords } from "./catalogue/with-own-records.ts";
import { judgeBays } from "./checks/fit/bay-rules.ts";
import { searchedWithin } from "./checks/fit/near-limits.ts";
import { judgeFit } from "./checks/fit/rules.ts";
import { serviceFigures } from "./checks/fit/service-limits.ts";
import { atTrueDistance } from "./checks/fit/true-distance.ts";
import { judgedFrame } from "./checks/frame/judged-frame.ts";
import { judge } from "./checks/judge.ts";
import type { BlankingUse, ConsoleDesign } from "./design/console-design.ts";
import { withHeldBack } from "./design/held-back.ts";
import type { PanelDesign } from "./design/panel-design.ts";
import { projectFiles, type ReadFiles } from "./design/project-files.ts";
import type { WorkshopDesign } from "./design/workshop-design.ts";
import type { Finding } from "./diagnostics/finding.ts";
import { findingsInTextOrder, named } from "./diagnostics/finding-lists.ts";
import { editorOf } from "./diagnostics/text-editor.ts";
import { processColours } from "./export/process-colours.ts";
import { consoleFactSteps } from "./fit/console-facts.ts";
import type { FitFacts } from "./fit/fit-facts.ts";
import type { Kernel } from "./geometry/solid/kernel.ts";
import { obstacleMeshes } from "./inspection/obstacle-meshes.ts";
import { photoFindings } from "./inspection/photo-file.ts";
import type { ConsoleLayout } from "./layout/console/console-layout.ts";
import { layoutConsole } from "./layout/console/layout-console.ts";
import { type LaidOut, layoutPanel } from "./layout/layout-panel.ts";
import type { PanelLayout } from "./layout/panel-layout.ts";
import type { Lettering } from "./lettering/lettering.ts";
import { packOfConsole } from "./pack/pack-of-console.ts";
import { packOfPanel } from "./pack/pack-of-panel.ts";
import type { PackOptions, PanelPack } from "./pack/panel-pack.ts";
import { refusedColours } from "./pack/refused-colours.ts";
import { woodenRail } from "./pack/wooden-rail.ts";
import type { ConsoleFrame } from "./parts/frame/frame-part.ts";
import { blankingDesign, printedBlanking } from "./parts/printed/blanking-panel.ts";
import { blankingRequests } from "./parts/printed/blanking-requests.ts";
import { fittedThingsOf } from "./parts/printed/fitted-things.ts";
import type { PrintedPart } from "./parts/printed/printed-part.ts";
import { printedPartsOf } from "./parts/printed/printed-parts.ts";
import type { SheetPart } from "./parts/sheet-part.ts";
import { sheetPartsOf } from "./parts/sheet-parts.ts";

export { type Library, openLibrary } from "./catalogue/library.ts";
export type { Finding } from "./diagnostics/finding.ts";
export type { InspectionRow } from "./inspection/row.ts";
export type { PackFile } from "./pack/pack-file.ts";
export type { PackOptions, PanelPack } from "./pack/panel-pack.ts";

/** A design's texts by path from its root (forward slashes), and which of them to begin with. */
export interface Sources {
  readonly entry: string;
  readonly files: ReadonlyMap<string, string>;
  /** Files of other kinds that the texts name, such as shapes of obstacles; absent: none. */
  readonly binaries?: ReadonlyMap<string, Uint8Array | null>;
}

/** What the texts say, laid out and judged. `stopped`: no panel could be read at all, the findings say why. */
export interface Project {
  readonly kind: "project" | "stopped";
  readonly name: string;
  readonly panels: readonly PanelProject[];
  /** null where the entry is a panel. */
  readonly console: ConsoleProject | null;
  /** Findings that belong to no panel: of the console, the workshop, or of files that could not be read. */
  readonly findings: readonly Finding[];
  readonly files: ReadonlyMap<string, string>;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
  readonly memory: PanelMemory;
}

/** A console with its panels at their places. Its own findings are among the project's. */
export interface ConsoleProject {
  readonly design: ConsoleDesign;
  readonly workshop: WorkshopDesign | null;
  readonly layout: ConsoleLayout;
  /** null where the design asks for none, or where a fault stands in its way. */
  readonly frame: ConsoleFrame | null;
}

/** What is known of a console's fit, and what is to be said about it. */
export interface ConsoleFit {
  readonly facts: FitFacts;
  readonly findings: readonly Finding[];
}

export interface PanelProject {
  /** What the console calls it, else its own name. */
  readonly name: string;
  readonly design: PanelDesign;
  readonly workshop: WorkshopDesign | null;
  /** null where mount, size or stack leave nothing to lay out; then there is a fault. */
  readonly layout: PanelLayout | null;
  readonly sheetParts: readonly SheetPart[];
  readonly printedParts: readonly PrintedPart[];
  readonly findings: readonly Finding[];
}

/** Panels of an earlier project by everything that they were compiled from but the library, which must be the same. */
export type PanelMemory = ReadonlyMap<string, PanelProject>;

/** A panel that is laid out and not judged yet: enough to draw it. */
export type LaidPanel = Pick<PanelProject, "name" | "design" | "layout">;

/**
 * Reads, lays out and judges a panel, or every panel of a console. Any text at all gives a result; nothing is thrown for
 * a user's mistake. What `before` remembers is not worked out again: the result is the same without it.
 */
export const compile = (
  sources: Sources,
  library: Library,
  before: PanelMemory = new Map(),
): Project => lastOf(compileSteps(sources, library, before));

/** The same in two steps: the first gives the panels as they are laid out, blanking panels left out, the second the project. */
export function* compileSteps(
  sources: Sources,
  library: Library,
  before: PanelMemory = new Map(),
): Generator<readonly LaidPanel[], Project, void> {
  const read = projectFiles(sources.entry, sources.files);
  const own = withOwnRecords(library.catalogue, read.catalogues, sources.files);
  const { catalogue } = own;
  const context = { sources, read, catalogue, lettering: library.lettering };
  const begun = read.panels.map((panel) => begunPanel(panel, context, before));
  yield begun.map(({ panel }) => panel);
  const compiled = begun.map(({ key, finished }) => [key, finished()] as const);
  const used = compiled.map(([, panel]) => panel);
  const standing = read.console === null ? null : compileConsole(read.console, used, context);
  const seated = standing?.console.layout ?? null;
  const panels = [
    ...used.map((panel) => {
      const all = [...panel.findings, ...photoFindings(panel.design, sources.binaries)];
      return { ...panel, findings: atTrueDistance(all, panel.name, seated) };
    }),
    ...(standing?.blankings ?? []),
  ];
  return {
    kind: panels.length === 0 ? "stopped" : "project",
    name: read.console?.name ?? panels[0]?.name ?? "",
    panels,
    console: standing?.console ?? null,
    findings: findingsInTextOrder([
      ...read.findings,
      ...own.findings,
      ...(standing?.findings ?? []),
      ...refusedIn(read),
    ]),
    files: sources.files,
    catalogue,
    lettering: library.lettering,
    memory: new Map(compiled),
  };
}

const lastOf = <Result>(steps: Generator<unknown, Result, void>): Result => {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
};

/** The job pack of one panel. A fault among its findings means that it must not be written. */
export const packOfProject = (
  project: Project,
  panel: PanelProject,
  options: PackOptions,
): PanelPack => {
  const { layout, workshop } = panel;
  if (layout === null) return { files: [], inspection: [], findings: [] };
  return packOfPanel(
    {
      design: panel.design,
      layout,
      sheetParts: panel.sheetParts,
      printedParts: panel.printedParts,
      rail: woodenRail(project.console, panel.name),
      fitted: fittedThingsOf(layout, {
        workshop,
        catalogue: project.catalogue,
        lettering: project.lettering,
      }),
      findings: panel.findings,
      catalogue: project.catalogue,
      lettering: project.lettering,
      colours: processColours(workshop?.processColours ?? {}).colours,
      paper: workshop?.paper ?? "A4",
      texts: project.files,
    },
    options,
  );
};

interface StandingConsole {
  readonly console: ConsoleProject;
  readonly blankings: readonly PanelProject[];
  readonly findings: readonly Finding[];
}

const compileConsole = (
  design: ConsoleDesign,
  panels: readonly PanelProject[],
  context: PanelContext,
): StandingConsole => {
  const { catalogue } = context;
  const workshop = context.read.shared;
  const blank = blankingPanels({ design, panels, workshop }, context);
  const { blankings } = blank;
  const uses = [
    ...design.panels.map((use) => ({ kind: "use" as const, use, name: use.as })),
    ...blankings.map(({ use, panel }) => ({
      kind: "blanking" as const,
      use: { ...use, stand: null, loop: null },
      name: panel.name,
    })),
  ].toSorted((a, b) => a.use.written.span.start - b.use.written.span.start);
  const layouts = new Map(
    [...panels, ...blankings.map(({ panel }) => panel)].map(({ name, layout }) => [name, layout]),
  );
  const shapes = obstacleMeshes(design, context.sources.binaries ?? new Map());
  const laid = layoutConsole(design, {
    catalogue,
    panels: uses.map((use) => ({ ...use, layout: layouts.get(use.name) ?? null })),
    meshes: shapes.meshes,
  });
  const { layout } = laid;
  const { lettering } = context;
  const { files: texts } = context.sources;
  const framed =
    design.frame === null
      ? { frame: null, findings: [] }
      : judgedFrame(layout, { design: design.frame, workshop, catalogue, lettering }, texts);
  const edit = editorOf(texts);
  const judged = judgeBays({ layout, edit, texts });
  return {
    console: { design, workshop, layout, frame: framed.frame },
    blankings: blankings.map(({ panel }) => panel),
    findings: named(design.name, [
      ...blank.findings,
      ...shapes.findings,
      ...laid.findings,
      ...framed.findings,
      ...judged,
    ]),
  };
};

interface Blanking {
  readonly use: BlankingUse;
  readonly panel: PanelProject;
}

/** Panels with nothing on them, each compiled as any other. A printed one leaves its sheet out. */
const blankingPanels = (
  console: {
    readonly design: ConsoleDesign;
    readonly panels: readonly PanelProject[];
    readonly workshop: WorkshopDesign | null;
  },
  context: PanelContext,
): { readonly blankings: readonly Blanking[]; readonly findings: readonly Finding[] } => {
  const { design, workshop, panels } = console;
  const asked = blankingRequests(design, { panels, mounts: context.catalogue.mounts });
  const blankings = asked.requests.map((request) => {
    const blank = blankingDesign(request);
    const read = { name: blank.name, design: blank, workshop, findings: [] };
    const panel = judgedPanel(read, laidOut(read, context), context);
    const { print } = request.use;
    if (print === null || panel.layout === null) return { use: request.use, panel };
    const { catalogue, lettering } = context;
    const stock = workshop?.stock[print] ?? catalogue.stock.get(print) ?? null;
    const printed = printedBlanking(panel.layout, { workshop, catalogue, lettering, stock });
    const findings = [...panel.findings, ...named(blank.name, printed.findings)];
    return {
      use: request.use,
      panel: { ...panel, sheetParts: [], printedParts: printed.parts, findings },
    };
  });
  return { blankings, findings: asked.findings };
};

/** Whether every panel of the console fits its rails, its neighbours, its frame and its operator. */
export const fitOfProject = (
  project: Project,
  console: ConsoleProject,
  kernel: Kernel,
): ConsoleFit => lastOf(fitSteps(project, console, kernel));

/** The same in steps: each gives the words for what is done next, the last the fit. */
export function* fitSteps(
  project: Project,
  console: ConsoleProject,
  kernel: Kernel,
): Generator<string, ConsoleFit, void> {
  const { layout, frame, workshop } = console;
  const { catalogue, files: texts } = project;
  const printedParts = new Map(project.panels.map((panel) => [panel.name, panel.printedParts]));
  const questions = { service: serviceFigures(console), within: searchedWithin(console) };
  const facts = yield* consoleFactSteps({ layout, frame, printedParts }, questions, kernel);
  const edit = editorOf(project.files);
  const findings = judgeFit({ layout, frame, workshop, catalogue, fit: facts, edit, texts });
  return { facts, findings: findingsInTextOrder(findings) };
}

/** The pack of the console itself: what its panels hang on, and whether they fit. */
export const packOfConsoleProject = (
  project: Project,
  { console, fit }: { readonly console: ConsoleProject; readonly fit: ConsoleFit },
  options: PackOptions,
): PanelPack => {
  const { layout, frame, workshop } = console;
  return packOfConsole(
    {
      layout,
      frame,
      workshop,
      fit: fit.facts,
      findings: [...project.findings, ...fit.findings],
      catalogue: project.catalogue,
      lettering: project.lettering,
      colours: processColours(workshop?.processColours ?? {}).colours,
      paper: workshop?.paper ?? "A4",
      texts: project.files,
    },
    options,
  );
};

interface PanelContext {
  readonly sources: Sources;
  readonly read: ReadFiles;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
}

type ReadPanel = ReadFiles["panels"][number];

interface BegunPanel {
  /** Under which it is remembered. */
  readonly key: string;
  readonly panel: LaidPanel;
  readonly finished: () => PanelProject;
}

const begunPanel = (panel: ReadPanel, context: PanelContext, before: PanelMemory): BegunPanel => {
  const paths = [panel.design.file, panel.workshop?.file ?? "", ...context.read.catalogues];
  const texts = paths.map((path) => [path, context.sources.files.get(path) ?? ""]);
  const key = JSON.stringify([panel.name, panel.findings, texts]);
  const known = before.get(key);
  if (known !== undefined) return { key, panel: known, finished: () => known };
  const laid = laidOut(panel, context);
  const { design, name } = panel;
  const finished = () => judgedPanel(panel, laid, context);
  return { key, panel: { name, design, layout: laid.layout }, finished };
};

const laidOut = (
  { design, workshop }: ReadPanel,
  { catalogue, lettering }: PanelContext,
): LaidOut => layoutPanel(design, { workshop, catalogue, lettering });

const judgedPanel = (panel: ReadPanel, laid: LaidOut, context: PanelContext): PanelProject => {
  const { design, workshop, name } = panel;
  const { catalogue, lettering } = context;
  const { layout } = laid;
  const base = { name, design, workshop, layout };
  const read = withHeldBack(panel.findings, design, laid.heldBack);
  if (layout === null)
    return {
      ...base,
      sheetParts: [],
      printedParts: [],
      findings: named(name, findingsInTextOrder([...read, ...laid.findings])),
    };
  const made = sheetPartsOf(layout, lettering);
  const sheetParts = made.parts;
  const printed = printedPartsOf(layout, { workshop, catalogue, lettering });
  const edit = editorOf(context.sources.files);
  const { files: texts } = context.sources;
  const printedParts = printed.parts;
  const judged = judge({ layout, sheetParts, printedParts, workshop, catalogue, edit, texts });
  const findings = [...read, ...laid.findings, ...made.findings, ...printed.findings, ...judged];
  return {
    ...base,
    sheetParts,
    printedParts,
    findings: named(name, findingsInTextOrder(findings)),
  };
};

/** Of each workshop once, however many panels it makes. */
const refusedIn = ({ panels }: ReadFiles): readonly Finding[] =>
  [...new Set(panels.flatMap(({ workshop }) => workshop ?? []))].flatMap(refusedColours);
