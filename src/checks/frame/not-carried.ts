// What keeps a frame from being planned at all: bays that it can't carry. Takes the faults as facts; gives each as one finding, and
// where the bay has only to stand higher, the place at which it does.

import { spanOf } from "../../design/written.ts";
import {
  type Finding,
  type FindingParts,
  finding,
  type Measure,
} from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { mm } from "../../geometry/quantity.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";
import type { BayFault, CarryingFault } from "../../parts/frame/bay-faults.ts";
import { carriedBays } from "../../parts/frame/carried-bays.ts";
import { BAY_NOT_CARRIED, BAYS_CROSS } from "../../parts/frame/codes.ts";
import type { FrameSheet } from "../../parts/frame/planned-frame.ts";
import { keyRemedy } from "../key-remedy.ts";
import { neededLength } from "../needed-length.ts";
import { lengthWords, measureMm, millimetres } from "../words.ts";
import { type BayMove, bayMoveRemedy, movedBay } from "./moved-bay.ts";
import { partingMove } from "./parting-move.ts";
import { raisedBays, raising } from "./raising.ts";

export interface NotCarriedScene {
  readonly layout: ConsoleLayout;
  readonly sheet: FrameSheet;
  readonly texts: ReadonlyMap<string, string>;
}

export const notCarried = (
  faults: readonly CarryingFault[],
  scene: NotCarriedScene,
): readonly Finding[] => faults.map((fault) => findingOf(fault, scene));

const findingOf = (fault: CarryingFault, scene: NotCarriedScene): Finding => {
  const { design } = scene.sheet;
  switch (fault.kind) {
    case "no-bay":
      return finding(BAY_NOT_CARRIED, {
        message: "The console has no bay; the frame is made round its bays.",
        span: design.written.span,
      });
    case "bay":
      return finding(BAY_NOT_CARRIED, {
        ...wordsOf(fault.bay, fault.fault, scene),
        source: { kind: "geometry", name: "cheeks, ribs and floor board" },
        span: fault.bay.design.written.span,
        subjects: [fault.bay.id],
      });
    case "crossing": {
      const { bay, other } = fault;
      return finding(BAYS_CROSS, {
        ...crossingWords(fault, scene),
        source: { kind: "geometry", name: "the ribs of the other bay" },
        span: spanOf(other.design.written, "at"),
        related: [{ what: bay.id, span: spanOf(bay.design.written, "at") }],
        subjects: [bay.id, other.id],
      });
    }
  }
};

/** What is measured is how far the two overlap along the row; the move has to stand free of all others too, and may be farther. */
const crossingWords = (
  { bay, other }: CarryingFault & { readonly kind: "crossing" },
  scene: NotCarriedScene,
): Worded => {
  const { layout, sheet, texts } = scene;
  const want = `${bay.id} and ${other.id}: their ribs, ${decimal(sheet.design.ribs.web, 2)} mm below the room of the panels, want the same place`;
  const moveWithin = (bays: readonly BayLayout[]): BayMove | null =>
    partingMove({
      bay: other,
      farthest: bays.reduce((sum, { length }) => sum + length, 0),
      works: (tried) =>
        triedWith(movedBay({ ...layout, bays }, other.id, tried), { bay: other }, scene).works,
    });
  const pair = layout.bays.filter(({ id }) => id === bay.id || id === other.id);
  const overlap = moveWithin(pair);
  const move = moveWithin(layout.bays);
  const remedy = move === null ? null : bayMoveRemedy(other, move, texts);
  const advice =
    remedy === null
      ? "Move one of them along, or give it less depth."
      : `${remedy.title} parts them.`;
  if (overlap === null)
    return { message: `${want}. ${advice}`, remedies: remedy === null ? [] : [remedy] };
  const shared = Math.abs(overlap.by);
  return {
    message: `${want}: ${millimetres(shared, 0)} of it, and 0 mm can be shared. ${advice}`,
    measured: measureMm(shared),
    limit: measureMm(0),
    remedies: remedy === null ? [] : [remedy],
  };
};

type Worded = Pick<FindingParts, "message" | "measured" | "limit" | "remedies">;

const wordsOf = (bay: BayLayout, fault: BayFault, scene: NotCarriedScene): Worded => {
  const { id, mount } = bay;
  switch (fault.kind) {
    case "off-plane":
      return {
        message: `${id} runs ${decimal(fault.angle, 2)}° out of the plane of the first bay, and cheeks are flat: 0° can be carried.`,
        measured: inDegrees(fault.angle),
        limit: inDegrees(0),
      };
    case "looks-down":
      return { message: `The panels of ${id} look down, or along its own cheeks.` };
    case "no-width":
      return {
        message: `Nothing says how wide ${id} is between its rails: its mount ${mount.id} leaves that open, and no panel stands on it. Measure what its panels go in between and write it as clear-width, or put a panel on it.`,
      };
    case "clear-too-narrow":
      return {
        message: `The rails of ${id} are to be ${millimetres(fault.clear, fault.least)} apart, and the ribs' edges between them take ${millimetres(fault.least, fault.clear)}. clear-width: ${decimal(fault.least, 2)} mm does.`,
        measured: measureMm(fault.clear),
        limit: measureMm(fault.least),
      };
    case "screws-meet":
      return {
        message: `The screws of the narrowest panel on ${id} stand ${millimetres(fault.from, fault.least)} from its middle, and rails under them with room between take ${millimetres(fault.least, fault.from)}. One ${millimetres(2 * (fault.least - fault.from))} wider leaves it.`,
        measured: measureMm(fault.from),
        limit: measureMm(fault.least),
      };
    case "too-low":
      return tooLow(bay, fault, scene);
    case "too-short":
      return tooShort(bay, fault, scene);
  }
};

const tooLow = (
  bay: BayLayout,
  { reaches, least, depth }: BayFault & { readonly kind: "too-low" },
  scene: NotCarriedScene,
): Worded => {
  const { layout, texts } = scene;
  const raise = raising([bay], least - reaches, texts);
  const higher = triedWith(raisedBays(layout, [bay.id], raise.by), { bay, kind: "too-low" }, scene);
  const shallower =
    depth > 0
      ? triedWith(withBay(layout, { ...bay, depth: mm(depth) }), { bay, kind: "too-low" }, scene)
      : null;
  const works = [
    ...(higher.works ? [raise.words] : []),
    ...(shallower?.works === true ? [`depth: ${depth} mm`] : []),
  ];
  const advice =
    works.length > 0
      ? `${works.join(" does, and so does ")}${works.length > 1 ? "" : " does"}.`
      : inTheWay("Higher", higher);
  return {
    message: `The ribs of ${bay.id} reach down to ${millimetres(reaches, least)} and may reach to ${millimetres(least, reaches)}, just over the floor board: ${millimetres(least - reaches, 0)} too low. ${advice}`,
    measured: measureMm(reaches),
    limit: measureMm(least),
    remedies: higher.works ? [raise.remedy] : [],
  };
};

const tooShort = (
  bay: BayLayout,
  { least }: BayFault & { readonly kind: "too-short" },
  scene: NotCarriedScene,
): Worded => {
  const { id, length, design } = bay;
  const { layout, texts } = scene;
  const span = spanOf(design.written, "length");
  const words = lengthWords({ texts }, span);
  const needed = neededLength(bay, least, { texts, span });
  const longer = withBay(layout, { ...bay, length: needed.length });
  const tried = triedWith(longer, { bay, kind: "too-short" }, scene);
  const advice = tried.works ? `length: ${needed.text} does.` : inTheWay("Longer", tried);
  return {
    message: `${id} is ${words(length, least)} long, and two ribs with their webs take ${words(least, length)}, ${words(least - length, 0)} more. ${advice}`,
    measured: measureMm(length),
    limit: measureMm(least),
    remedies: tried.works
      ? [
          keyRemedy(
            { texts },
            { file: span.file, path: ["bays", id], key: "length", value: needed.text },
          ),
        ]
      : [],
  };
};

const inTheWay = (how: string, { meets }: Tried): string =>
  meets.length === 0
    ? "Move it, or what stands about it."
    : `${how} by that it would meet ${meets.join(" and ")}, which has to give way.`;

const withBay = (layout: ConsoleLayout, changed: BayLayout): ConsoleLayout => ({
  ...layout,
  bays: layout.bays.map((bay) => (bay.id === changed.id ? changed : bay)),
});

interface Tried {
  /** The fault is gone, and nothing is in the bay's way. */
  readonly works: boolean;
  /** Bays of its row. */
  readonly meets: readonly string[];
}

/** `kind`: the fault that is to go; any of the bay's where it is not said. Other bays may have faults of their own; what crosses is known once those are gone. */
const triedWith = (
  layout: ConsoleLayout,
  { bay: { id }, kind }: { readonly bay: BayLayout; readonly kind?: BayFault["kind"] },
  { sheet: { design, thickness } }: NotCarriedScene,
): Tried => {
  const carried = carriedBays(layout, design, thickness);
  if (carried.kind === "carried") return { works: true, meets: [] };
  const meets = carried.faults.flatMap((fault) => {
    if (fault.kind !== "crossing") return [];
    const { bay, other } = fault;
    return bay.id === id ? [other.id] : other.id === id ? [bay.id] : [];
  });
  const isStill = carried.faults.some(
    (fault) =>
      fault.kind === "bay" &&
      fault.bay.id === id &&
      (kind === undefined || fault.fault.kind === kind),
  );
  return { works: meets.length === 0 && !isStill, meets };
};

const inDegrees = (value: number): Measure => ({ value: Number(decimal(value, 6)), unit: "deg" });
