// The pack that is wanted, made from a design's texts by the functions that `make` calls, with the words of each step. Takes the
// library and a way to open the solid kernel; gives the files, the zip, and what stands against them.

import { distinctFindings } from "../../src/diagnostics/distinct-findings.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { isNothing } from "../../src/making/nothing-to-write.ts";
import {
  type PackDraft,
  type PackPlan,
  packPlans,
  wantsKernel,
} from "../../src/making/pack-drafts.ts";
import { inJointZip, inOwnZip, jointZipName, ownZipName } from "../../src/making/zip-places.ts";
import { packZip } from "../../src/pack/pack-zip.ts";
import { fittedThingsOf } from "../../src/parts/printed/fitted-things.ts";
import {
  type ConsoleFit,
  compile,
  fitSteps,
  type Library,
  type PanelMemory,
  type PanelProject,
  type Project,
} from "../../src/project.ts";
import type { DesignSources } from "../core-messages.ts";
import { firstFiles } from "../first-files.ts";
import { cutSizes } from "./cut-sizes.ts";
import type { CutSizes, HeldPack, MadePack, PackWant } from "./pack-messages.ts";

export interface Bench {
  readonly library: Library;
  readonly kernel: () => Promise<Kernel>;
  readonly tell: (words: string) => void;
  /** Panels of the last time. */
  readonly memory: PanelMemory;
}

export interface Wanted {
  readonly made: MadePack;
  readonly memory: PanelMemory;
}

export const wantedPack = async (
  want: PackWant,
  sources: DesignSources,
  bench: Bench,
): Promise<Wanted> => {
  bench.tell("reading the design");
  const { entry, project } = projectWith(want, sources, bench);
  const isShaped = wantsKernel(project, want.only);
  if (isShaped) bench.tell("opening the solid kernel");
  const kernel = isShaped ? await bench.kernel() : null;
  const fit = kernel === null ? null : fitted(project, kernel, bench.tell);
  const { panels, findings, memory } = project;
  const all = distinctFindings([...findings, ...panels.flatMap((panel) => panel.findings)]);
  const loaded = { entry, files: sources.texts, findings: [] };
  const plans = packPlans({ loaded, project, findings: all }, fit).filter((plan) =>
    isWanted(plan, want),
  );
  const drafts = plans.map((plan, index) => {
    const what = plan.kind === "console" ? "the console itself" : plan.name;
    bench.tell(`making ${what}${plans.length > 1 ? `, ${index + 1} of ${plans.length}` : ""}`);
    return plan.make({ only: want.only, card: want.card, kernel });
  });
  bench.tell("packing the zip");
  const questions = questionsOf(want, project, fit);
  return {
    made: { ...madePack(want, { project, drafts, texts: sources.texts }), questions },
    memory,
  };
};

/** The first design among the opened texts that holds what is wanted; a console before panels by themselves. */
const projectWith = (
  want: PackWant,
  { texts, binaries }: DesignSources,
  { library, memory }: Bench,
): { readonly entry: string; readonly project: Project } => {
  for (const entry of firstFiles(texts)) {
    const project = compile({ entry, files: texts, binaries }, library, memory);
    const isThere =
      want.kind === "panel"
        ? project.panels.some(({ name }) => name === want.panel)
        : project.console !== null || project.panels.length > 0;
    if (isThere) return { entry, project };
  }
  throw new Error("there is nothing in this design that a pack could be made of");
};

const fitted = (
  project: Project,
  kernel: Kernel,
  tell: (words: string) => void,
): ConsoleFit | null => {
  if (project.console === null) return null;
  const steps = fitSteps(project, project.console, kernel);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    tell(`fitting: ${step.value}`);
  }
};

const isWanted = (plan: PackPlan, want: PackWant): boolean => {
  switch (want.kind) {
    case "panel":
      return plan.kind === "panel" && plan.name === want.panel;
    case "console":
      return plan.kind === "console";
    case "all":
      return true;
  }
};

/** Those that the pack itself says HOLD for. */
const questionsOf = (want: PackWant, project: Project, fit: ConsoleFit | null): number =>
  findingsFor(want, project, fit).filter(({ severity }) => severity === "query").length;

const findingsFor = (
  want: PackWant,
  { findings, panels }: Project,
  fit: ConsoleFit | null,
): readonly Finding[] => {
  const ofConsole = [...findings, ...(fit?.findings ?? [])];
  switch (want.kind) {
    case "panel":
      return panels.filter(({ name }) => name === want.panel).flatMap((panel) => panel.findings);
    case "console":
      return ofConsole;
    case "all":
      // One of the workshop stands in several packs, and is decided once.
      return distinctFindings([...ofConsole, ...panels.flatMap((panel) => panel.findings)]);
  }
};

interface Drafts {
  readonly project: Project;
  readonly drafts: readonly PackDraft[];
  readonly texts: DesignSources["texts"];
}

const madePack = (
  want: PackWant,
  { project, drafts, texts }: Drafts,
): Omit<MadePack, "questions"> => {
  const isWhole = drafts.length > 0 && drafts.every(({ faults }) => faults.length === 0);
  const held = drafts
    .filter(({ faults }) => faults.length > 0)
    .map(
      ({ name, faults }): HeldPack => ({
        name,
        faults: distinctFindings(faults).map((finding) => ({
          finding,
          ...lineAndColumn(texts.get(finding.span.file) ?? "", finding.span.start),
        })),
      }),
    );
  if (want.kind === "all") {
    const zipped = drafts
      .filter((draft) => !isNothing(draft))
      .map((draft) => inJointZip(draft, project));
    const zip = isWhole ? { name: jointZipName(project), bytes: packZip(zipped) } : null;
    return { files: [], cuts: new Map(), missing: [], held, zip };
  }
  const [draft] = drafts;
  if (draft === undefined || !isWhole)
    return { files: [], cuts: new Map(), missing: [], held, zip: null };
  if (isNothing(draft))
    return { files: [], cuts: new Map(), missing: [NOTHING_CUT], held, zip: null };
  const zip = {
    name: ownZipName(draft, project),
    bytes: packZip([inOwnZip(draft, project)]),
  };
  const { files } = draft.pack;
  return { files, cuts: cutsOf(want, project), missing: missingIn(draft), held, zip };
};

const NOTHING_CUT =
  "Nothing of the console itself is cut: it has no frame. Each panel has a pack of its own.";

const cutsOf = (want: PackWant, project: Project): ReadonlyMap<string, CutSizes> => {
  if (want.kind !== "panel") {
    const boards = project.console?.frame?.parts ?? [];
    return new Map(boards.flatMap(({ sheetPart }) => cutSizes(sheetPart, null)));
  }
  const panel = project.panels.find(({ name }) => name === want.panel);
  return panel === undefined ? new Map() : panelCuts(panel, project);
};

const panelCuts = (panel: PanelProject, project: Project): ReadonlyMap<string, CutSizes> => {
  const { layout, workshop, sheetParts } = panel;
  if (layout === null) return new Map();
  const { catalogue, lettering } = project;
  const layers = new Map(layout.layers.map((layer) => [layer.id, layer]));
  const inside = fittedThingsOf(layout, { workshop, catalogue, lettering }).sheets;
  return new Map([
    ...sheetParts.flatMap((part) => cutSizes(part, layers.get(part.layer) ?? null)),
    ...inside.flatMap((part) => cutSizes(part, null)),
  ]);
};

/** A printed part without a STEP: its arcs are not all true ones. */
const missingIn = ({ pack: { files } }: PackDraft): readonly string[] => {
  const withStep = new Set(
    files.filter(({ kind }) => kind === "print-step").map(({ part }) => part),
  );
  const printed = new Set(files.filter(({ kind }) => kind === "print-3mf").map(({ part }) => part));
  return [...printed]
    .filter((part) => !withStep.has(part))
    .map(
      (part) => `${part} has no STEP: it has bevels or reliefs, whose arcs STEP can't carry true.`,
    );
};
