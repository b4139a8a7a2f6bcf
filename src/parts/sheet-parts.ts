// The sheet parts of a panel: each sheet layer at its cut size, in set-ups on one datum, ready to be written as files.

import type { LayerDesign } from "../design/panel-design.ts";
import type { MachineDesign, StockDesign } from "../design/workshop-design.ts";
import { type CodeEntry, type Finding, finding } from "../diagnostics/finding.ts";
import type { Contour } from "../geometry/contour.ts";
import { type Extent, extentCentre, grownExtent } from "../geometry/extent.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { contourArea, contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { cutWidthOf } from "../layout/markings/style.ts";
import type { LayerLayout, PanelLayout, PlacedMarking } from "../layout/panel-layout.ts";
import type { Lettering } from "../lettering/lettering.ts";
import { holeCutSize, outlineCutSize } from "./cut-size.ts";
import { handOperations } from "./hand-operations.ts";
import { kerfReading, kerfSetting } from "./kerf.ts";
import { routeOf, type SetUpPlan } from "./route.ts";
import type { Operation, SetUp, SheetPart } from "./sheet-part.ts";
import { witness } from "./witness.ts";

const NO_CUT_SIZE: CodeEntry = {
  code: "parts/no-cut-size",
  severity: "fault",
  title: "an opening that paint or fit would close",
  why: "The cut size of an opening is its finished size with paint and allowance on every side. Where that offset closes a corner or the whole opening, there is no size to cut.",
  example: "markings:\n  - window: { at: centre, width: 0.1 mm, height: 0.1 mm, layers: [face] }",
};

export const PARTS_CODES: readonly CodeEntry[] = [NO_CUT_SIZE];

export interface SheetParts {
  readonly parts: readonly SheetPart[];
  readonly findings: readonly Finding[];
}

/** Waste round a part that is kept for the witness and the clamps. */
const SHEET_MARGIN = 10;

/** Stands in where no machine is named: a cutting service that compensates itself and takes nominal files. */
export const CUTTING_SERVICE: MachineDesign = {
  kind: "co2-laser",
  id: "cutting-service",
  bed: [mm(1200), mm(800)],
  spot: mm(0.15),
  kerf: "left-to-cutter",
  measured: [],
  written: { span: { file: "", start: 0, end: 0 }, keys: {} },
};

export const sheetPartsOf = (layout: PanelLayout, lettering: Lettering): SheetParts => {
  const findings: Finding[] = [];
  const parts = layout.layers.flatMap((layer) =>
    layer.kind === "sheet" && layer.stock !== null
      ? [sheetPart({ layout, layer, stock: layer.stock, lettering, findings })]
      : [],
  );
  return { parts, findings };
};

interface PartScene {
  readonly layout: PanelLayout;
  readonly layer: LayerLayout;
  readonly stock: StockDesign;
  readonly lettering: Lettering;
  readonly findings: Finding[];
}

const sheetPart = (scene: PartScene): SheetPart => {
  const { layout, layer, stock } = scene;
  const markings = layout.markings.filter((marking) => marking.layer === layer.id);
  const machine = layer.machine ?? CUTTING_SERVICE;
  const cuts = cutOperations(scene, machine);
  const plans = routeOf(layer.finish, markings.length > 0, workedFrom(layer));
  return {
    kind: "sheet-part",
    id: `${layout.name}-${layer.id}`,
    panel: layout.name,
    layer: layer.id,
    title: `${layout.design.title}, ${layer.id}`,
    revision: layout.design.revision,
    stock,
    thickness: layer.thickness.nominal,
    setUps: plans.map((plan) => setUp(plan, { scene, machine, markings, cuts })),
    handOperations: handOperations(layer, cuts, machine),
  };
};

const setUp = (
  plan: SetUpPlan,
  made: {
    readonly scene: PartScene;
    readonly machine: MachineDesign;
    readonly markings: readonly PlacedMarking[];
    readonly cuts: readonly Operation[];
  },
): SetUp => {
  const { layout, layer, stock, lettering } = made.scene;
  const { faceUp } = plan;
  const { outline, name: panel, design } = layout;
  const width = cutWidthOf(made.machine);
  const asked = { faceUp, panel, revision: design.revision, width, outline, lettering };
  const mark = plan.cuts ? layerWitness(layer.design, asked) : null;
  return {
    id: plan.id,
    machine: made.machine,
    faceUp,
    instructions: [datum(layout), ...plan.instructions],
    operations: [
      ...(mark === null ? [] : [mark]),
      ...(plan.engraves ? made.markings.flatMap(engraveOperations) : []),
      ...(plan.cuts ? made.cuts : []),
    ],
    sheet: sheetExtent(contourExtent(outline)),
    kerf: kerfSetting(made.machine, stock),
  };
};

interface WitnessAsked {
  readonly faceUp: SetUp["faceUp"];
  readonly panel: string;
  readonly revision: string;
  readonly width: Mm;
  readonly outline: Contour;
  readonly lettering: Lettering;
}

const layerWitness = madeOnceWith((layer: LayerDesign, asked: WitnessAsked): Operation | null => {
  const { faceUp, panel, revision, width, outline, lettering } = asked;
  const labels = [`${panel}-${layer.id} REV ${revision}`, `REV ${revision}`];
  return witness({ faceUp, labels, width }, contourExtent(outline), lettering);
});

/** Centred on the outline, so that a sheet turned over lies on itself. */
const sheetExtent = (outline: Extent): Extent => grownExtent(outline, SHEET_MARGIN);

const workedFrom = (layer: LayerLayout): "front" | "rear" =>
  layer.design.kind === "sheet" ? layer.design.workedFrom : "front";

/** Every set-up registers on the same two holes. */
const datum = (layout: PanelLayout): string => {
  const dowels = layout.fixings.filter(({ kind }) => kind !== "screw");
  const pins = dowels.length >= 2 ? dowels : layout.mountHoles.slice(0, 2);
  const places = pins.map(({ id, at }) => `${id} at ${decimal(at.x, 3)}, ${decimal(at.y, 3)}`);
  return places.length === 0
    ? "Datum: lower left corner of the outline."
    : `Datum: ${places.join(" and ")} mm from the lower left corner of the nominal outline.`;
};

const engraveOperations = (marking: PlacedMarking): readonly Operation[] => {
  const fills: readonly Operation[] =
    marking.fills.length === 0
      ? []
      : [{ kind: "fill", process: "engrave", feature: marking.id, regions: marking.fills }];
  const width = marking.strokes[0]?.width;
  if (width === undefined) return fills;
  const paths = marking.strokes.map(({ path }) => path);
  return [...fills, { kind: "stroke", process: "score", feature: marking.id, paths, width }];
};

const cutOperations = (scene: PartScene, machine: MachineDesign): readonly Operation[] => {
  const { layout, layer, stock, findings } = scene;
  const reading = kerfReading(machine, stock);
  const inner = layer.cutOuts.flatMap((cutOut): readonly CutOperation[] => {
    const size = holeCutSize(cutOut, layer, reading);
    if (size.kind === "refused") {
      findings.push(noCutSize(cutOut.id, size.why, { span: cutOut.span, subject: cutOut.owner }));
      return [];
    }
    const process =
      machine.kind === "drill-bench" && size.contour.kind === "circle" ? "drill" : "cut-inner";
    return [
      { kind: "cut", process, feature: cutOut.id, centre: cutOut.centre, contour: size.contour },
    ];
  });
  const outer = outlineCutSize(layer.outline, layer);
  if (outer.kind === "refused") {
    findings.push(
      noCutSize("outline", outer.why, { span: layout.design.written.span, subject: layer.id }),
    );
    return smallFirst(inner);
  }
  return [...smallFirst(inner), outerCut(outer.contour)];
};

type CutOperation = Operation & { readonly kind: "cut" };

const outerCut = (contour: Contour): CutOperation => ({
  kind: "cut",
  process: "cut-outer",
  feature: "outline",
  centre: extentCentre(contourExtent(contour)),
  contour,
});

/** Small holes first: the sheet is stiffest before its large openings are cut. */
const smallFirst = (cuts: readonly CutOperation[]): readonly CutOperation[] =>
  cuts
    .map((cut) => ({ cut, area: Math.abs(contourArea(cut.contour)) }))
    .sort((a, b) => a.area - b.area || (a.cut.feature < b.cut.feature ? -1 : 1))
    .map(({ cut }) => cut);

const noCutSize = (
  what: string,
  why: string,
  options: { readonly span: Finding["span"]; readonly subject: string },
): Finding =>
  finding(NO_CUT_SIZE, {
    message: `${what} has no cut size: ${why}.`,
    span: options.span,
    subjects: [options.subject],
  });
