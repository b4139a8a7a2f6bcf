// What is to be said of a frame: its sheet, its plan, and its parts as they would be cut. Takes facts of the other files here.

import type { MaterialRecord } from "../../catalogue/record.ts";
import type { FrameDesign } from "../../design/frame-design.ts";
import { RAIL_HOLE } from "../../design/frame-fields.ts";
import type { MachineDesign, StockDesign } from "../../design/workshop-design.ts";
import { spanOf } from "../../design/written.ts";
import { type Finding, finding, type Measure } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { thicknessOf } from "../../layout/stack.ts";
import { fitsBed } from "./bed.ts";
import {
  BED,
  DOORWAY,
  KNEES_FILLED,
  LEFT_OPEN,
  RAIL_HOLES_MEET,
  RIBS_MEET,
  SHEET_UNMEASURED,
  TOO_NARROW,
  TOOL,
  WEB,
} from "./codes.ts";
import { doorwayRoom } from "./doorway.ts";
import type { FramePart } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { railHoleLimit } from "./rail-hole-limit.ts";
import type { Relief } from "./relief.ts";
import { ribPlaces } from "./rib-boards.ts";

const millimetres = (value: number): string => `${decimal(value, 2)} mm`;

const measure = (value: number): Measure => ({ value: Math.round(value * 1e6) / 1e6, unit: "mm" });

export const stockFindings = (
  stock: StockDesign,
  design: FrameDesign,
  material: MaterialRecord | null,
): readonly Finding[] => {
  if (stock.measured !== null) return [];
  const { low, high } = thicknessOf(stock, material);
  return [
    finding(SHEET_UNMEASURED, {
      message: `Slots of the frame follow ${millimetres(stock.nominal)}, the name of ${stock.id}; it may be ${millimetres(low)} to ${millimetres(high)}. Measure the sheet and write measured: and dated: under stock, ${stock.id}.`,
      span: spanOf(design.written, "sheet"),
      subjects: [stock.id],
    }),
  ];
};

/** `least`: between the cheeks, as its bays need it. */
export const widthFindings = (design: FrameDesign, least: number): readonly Finding[] => {
  const { width, written } = design;
  if (width === null || width >= least - samePlace) return [];
  // Up to the next tenth, where the cheeks stand.
  const works = Math.ceil(least * 10 - samePlace) / 10;
  return [
    finding(TOO_NARROW, {
      message: `The frame is to be ${millimetres(width)} wide between its cheeks, and its bays with rails and ribs take ${millimetres(least)}, ${millimetres(least - width)} more. width: ${millimetres(works)} does.`,
      span: spanOf(written, "width"),
      measured: measure(width),
      limit: measure(least),
      source: { kind: "geometry", name: "the bays, their rails and ribs" },
    }),
  ];
};

export const planFindings = (
  plan: FramePlan,
  relief: Relief,
  machine: MachineDesign | null,
): readonly Finding[] => [
  ...kneeFindings(plan),
  ...kneeDepthFindings(plan),
  ...ribFindings(plan),
  ...doorwayFindings(plan),
  ...holeOrToolFindings(plan, relief, machine),
  ...plan.leftOpen.map((gap) =>
    finding(LEFT_OPEN, {
      message: `A gap of ${millimetres(gap)} between bays or before an end board stays open: a strip with tabs does not fit into it.`,
      span: plan.design.written.span,
    }),
  ),
];

const kneeFindings = ({ design, kneeRoom }: FramePlan): readonly Finding[] => {
  const [, height] = design.knees;
  if (kneeRoom === null || kneeRoom.high >= height - samePlace) return [];
  const { high } = kneeRoom;
  return [
    finding(KNEES_FILLED, {
      message: `The knee space is to be ${millimetres(height)} high, and below the bays over it stay ${millimetres(high)}, ${millimetres(height - high)} less. Raise the bay by that, or give it less depth.`,
      span: spanOf(design.written, "knees"),
      measured: measure(high),
      limit: measure(height),
      source: { kind: "geometry", name: "knees and panels lie apart" },
    }),
  ];
};

const kneeDepthFindings = ({ design, kneeRoom }: FramePlan): readonly Finding[] => {
  const [deep, height] = design.knees;
  if (kneeRoom === null || kneeRoom.deep >= deep - samePlace) return [];
  const most = Math.max(0, kneeRoom.deep);
  const written = Math.floor(most * TENTHS) / TENTHS;
  const remedy =
    written > 0
      ? `knees: [${decimal(written, 1)}, ${decimal(height, 2)}] goes in; longer bays leave more.`
      : "Longer bays leave more.";
  return [
    finding(KNEES_FILLED, {
      message: `The knee space is to be ${millimetres(deep)} deep, and before the boards behind it the desk leaves ${millimetres(most)}, ${millimetres(deep - most)} less. ${remedy}`,
      span: spanOf(design.written, "knees"),
      measured: measure(most),
      limit: measure(deep),
      source: { kind: "geometry", name: "knees and the boards behind them" },
    }),
  ];
};

const TENTHS = 10;

/** Holes that leave the ribs' tabs no room make slots that no tool enters: one cause, told once. */
const holeOrToolFindings = (
  plan: FramePlan,
  relief: Relief,
  machine: MachineDesign | null,
): readonly Finding[] => {
  const holes = railHoleFindings(plan);
  return holes.length > 0 ? holes : toolFindings(plan, relief, machine);
};

const railHoleFindings = (plan: FramePlan): readonly Finding[] => {
  const { hole } = plan.design.rails;
  return worst(
    plan.bays.flatMap((bay) => {
      const most = railHoleLimit(bay, plan);
      if (hole < most) return [];
      const does = RAIL_HOLE < most ? RAIL_HOLE : most / 2;
      return [
        finding(RAIL_HOLES_MEET, {
          message: `The rails of ${bay.id}: holes of ${decimal(hole, 3)} mm run into one another, the bar's edge or the ribs' slots; less than ${decimal(most, 3)} mm leaves wood between them. hole: ${decimal(does, 1)} mm does.`,
          span: spanOf(plan.design.written, "rails"),
          subjects: [bay.id],
          measured: measure(hole),
          limit: measure(most),
          source: { kind: "geometry", name: "holes on the mount's pitch in a bar" },
        }),
      ];
    }),
  );
};

/** Ribs whose slots meet in the cheeks. At four thicknesses even a run that is parted unevenly leaves one between them. */
const ribFindings = ({ design, bays, thickness }: FramePlan): readonly Finding[] => {
  const slot = thickness + design.clearance;
  return worst(
    bays.flatMap((bay) => {
      const [first, second] = ribPlaces(bay.length, { thickness, spacing: design.ribs.spacing });
      if (first === undefined || second === undefined || second - first > slot) return [];
      const apart = second - first;
      return [
        finding(RIBS_MEET, {
          message: `The ribs of ${bay.id} begin ${millimetres(apart)} apart, and their slots are ${millimetres(slot)} wide: ${millimetres(slot - apart)} more are wanted before any wood stands between them. spacing: ${decimal(Math.ceil(4 * thickness), 0)} mm does.`,
          span: spanOf(design.written, "ribs"),
          subjects: [bay.id],
          measured: measure(apart),
          limit: measure(slot),
          source: { kind: "geometry", name: "two boards lie apart" },
        }),
      ];
    }),
  );
};

const doorwayFindings = (plan: FramePlan): readonly Finding[] => {
  const { design, bays } = plan;
  const short = doorwayRoom(plan, design.doorway);
  if (short === null || design.doorway === null) return [];
  const [width, height] = design.doorway;
  return [
    finding(DOORWAY, {
      message: `The section with ${bays.map(({ id }) => id).join(", ")} is ${millimetres(short.short)} x ${millimetres(short.long)} where it is least; the doorway is ${millimetres(width)} x ${millimetres(height)}, ${millimetres(short.measured - short.limit)} too small.`,
      span: spanOf(design.written, "doorway"),
      subjects: bays.map(({ id }) => id),
      measured: measure(short.measured),
      limit: measure(short.limit),
      source: { kind: "geometry", name: "the doorway" },
    }),
  ];
};

const toolFindings = (
  { design }: FramePlan,
  { tooThick }: Relief,
  machine: MachineDesign | null,
): readonly Finding[] => {
  if (tooThick === null || machine === null) return [];
  return [
    finding(TOOL, {
      message: `The finest tool of ${machine.id} is ${millimetres(tooThick.least)}; reliefs in the frame's slots find room for ${millimetres(tooThick.most)} at most. A tool of ${decimal(thinnerThan(tooThick.most), 1)} mm works.`,
      span: spanOf(design.written, "joints"),
      related: [{ what: machine.id, span: machine.written.span }],
      subjects: [machine.id],
      measured: measure(tooThick.least),
      limit: measure(tooThick.most),
      source: { kind: "machine", name: machine.id },
    }),
  ];
};

/** The next whole tenth that finds room: a tool as thick as the most does not. */
const thinnerThan = (most: number): number => (Math.ceil(most * 10) - 1) / 10;

export const partFindings = (
  parts: readonly FramePart[],
  of: {
    readonly design: FrameDesign;
    readonly machine: MachineDesign | null;
    readonly leftOut: readonly string[];
  },
): readonly Finding[] => [
  ...worst(parts.flatMap((part) => bedFinding(part, of))),
  ...worst(parts.flatMap((part) => webFinding(part, of.design))),
  ...of.leftOut.map((what) =>
    finding(LEFT_OPEN, {
      message: `There is no room for: ${what}. It is left out.`,
      span: of.design.written.span,
    }),
  ),
];

/** The one that is furthest off; the others have the same cause and are counted. */
const worst = (findings: readonly Finding[]): readonly Finding[] =>
  findings
    .toSorted((a, b) => short(b) - short(a))
    .slice(0, 1)
    .map((found) => ({ ...found, suppressed: findings.length - 1 }));

const short = ({ measured, limit }: Finding): number =>
  Math.abs((measured?.value ?? 0) - (limit?.value ?? 0));

const bedFinding = (
  part: FramePart,
  { design, machine }: { readonly design: FrameDesign; readonly machine: MachineDesign | null },
): readonly Finding[] => {
  const sheet = part.sheetPart.setUps[0]?.sheet;
  if (sheet === undefined || machine === null) return [];
  const short = fitsBed([extentWidth(sheet), extentHeight(sheet)], machine);
  if (short === null) return [];
  return [
    finding(BED, {
      message: `${part.id} with its waste is ${millimetres(short.long)} x ${millimetres(short.short)}; the bed of ${machine.id} is ${millimetres(machine.bed[0])} x ${millimetres(machine.bed[1])}, ${millimetres(short.measured - short.limit)} too small.`,
      span: design.written.span,
      related: [{ what: `the bed of ${machine.id}`, span: machine.written.span }],
      subjects: [part.id],
      measured: measure(short.measured),
      limit: measure(short.limit),
      source: { kind: "machine", name: machine.id },
    }),
  ];
};

/** The thinnest web of a part between a slot and another cut, where it is thinner than its sheet. */
const webFinding = (part: FramePart, design: FrameDesign): readonly Finding[] => {
  const slots = part.holes.filter(({ feature }) => feature.startsWith("slot."));
  if (part.role !== "cheek") return [];
  const webs = slots.flatMap((slot, index) => [
    ...slots.slice(index + 1).map((other) => ({
      between: `${slot.feature} and ${other.feature}`,
      gap: contourDistance(slot.contour, other.contour).gap,
    })),
    {
      between: `${slot.feature} and its edge`,
      gap: contourDistance(slot.contour, part.region.outline).gap,
    },
  ]);
  const thinnest = webs.toSorted((a, b) => a.gap - b.gap)[0];
  if (thinnest === undefined || thinnest.gap >= part.thickness - samePlace) return [];
  return [
    finding(WEB, {
      message: `${part.id}: ${millimetres(thinnest.gap)} stand between ${thinnest.between}; the sheet's thickness, ${millimetres(part.thickness)}, is common practice, ${millimetres(part.thickness - thinnest.gap)} more.`,
      span: design.written.span,
      subjects: [part.id],
      measured: measure(thinnest.gap),
      limit: measure(part.thickness),
      source: { kind: "practice", name: "a web as wide as the sheet is thick" },
    }),
  ];
};
