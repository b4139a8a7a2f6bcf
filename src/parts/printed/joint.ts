// The joint in a split band: half the depth of each piece laps over the other, one round and one slotted locator, two
// screws, a number sunk in each piece. The band is solid round it, so that no light comes to it.

import type { PrinterDesign } from "../../design/workshop-design.ts";
import { type Contour, circle, type Point, point, type Region } from "../../geometry/contour.ts";
import { extentCentre } from "../../geometry/extent.ts";
import { degrees, type Mm, mm } from "../../geometry/quantity.ts";
import { slotContour } from "../../geometry/shapes.ts";
import { mirroredRegion, placedRegion, placement } from "../../geometry/transform.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { setText } from "../../lettering/set-text.ts";
import {
  CLEARANCE_HOLES,
  type HeadSize,
  ISO_4762,
  type MetricThread,
} from "../../standards/metric-fasteners.ts";
import { LAP, type SplitBand } from "./bed-split.ts";
import { insertFor } from "./bosses.ts";
import { tidy, wholeSteps } from "./opaque-wall.ts";
import { allowedHole, clearancesOf, pegDiameter } from "./print-allowance.ts";
import type { PrintedContext } from "./printed-context.ts";
import type { JointFact } from "./printed-facts.ts";

export interface Joint {
  readonly band: SplitBand;
  readonly fact: JointFact;
  /** z of the plane in which the halves meet. */
  readonly middle: Mm;
  readonly features: readonly JointFeature[];
}

/** `low` is the piece on the side of lower x or y: its half is the rear one. */
export interface JointFeature {
  readonly piece: "low" | "high";
  readonly does: "cut" | "add";
  readonly regions: readonly Region[];
  readonly from: Mm;
  readonly to: Mm;
}

export interface JointOptions {
  readonly rear: number;
  readonly front: number;
  readonly layer: number;
  readonly screw: JointScrew;
  readonly printer: PrinterDesign | null;
  readonly context: PrintedContext;
}

/**
 * Where things stand along the joint, as shares of its length: screws near its ends, locators well apart and not at equal
 * distances from them, so that a piece does not go on turned. Own choice; no source.
 */
const SCREW_PLACES = [0.12, 0.88] as const;
const ROUND_PLACE = 0.3;
const NUMBER_PLACE = 0.5;
const SLOTTED_PLACE = 0.7;

/** Common practice: a peg as thick as three lines of wall each side of its axis, and not much longer than thick. */
const PEG = 4;
const PEG_LENGTH = 3;
const PEG_END_ROOM = 0.4;
const SLOT_PLAY = 1;

/** High enough for a 0.4 mm nozzle to leave the counters open, sunk by three layers of 0.2 mm: own choice, no source. */
const NUMBER_HEIGHT = mm(6);
const NUMBER_DEPTH = 0.6;

/** Material under a screw's head: common practice, twice a wall of two lines. */
const UNDER_HEAD = 2;

/** A screw that a joint can be made with: its head has a size. */
export interface JointScrew {
  readonly thread: MetricThread;
  readonly head: HeadSize;
}

/** null for a thread whose head the standard's table here does not hold. */
export const jointScrew = (thread: MetricThread): JointScrew | null => {
  const head = ISO_4762[thread];
  return head === undefined ? null : { thread, head };
};

/** Least depth of a part that a joint finds room in. */
export const leastJointDepth = ({ head }: JointScrew): number => 2 * (head.height + UNDER_HEAD);

export const jointAt = (band: SplitBand, number: number, options: JointOptions): Joint => {
  const { rear, front, layer, printer } = options;
  const middle = tidy(rear + Math.floor((front - rear) / 2 / layer) * layer);
  const { snug } = clearancesOf(printer);
  const peg = pegDiameter(PEG, printer);
  const hole = allowedHole(PEG + 2 * snug, "snug fit on a 4 mm peg", printer).modelled;
  const round = placeAlong(band, ROUND_PLACE);
  const slotted = placeAlong(band, SLOTTED_PLACE);
  const screws = SCREW_PLACES.map((share) => placeAlong(band, share));
  const fact: JointFact = {
    across: band.across,
    at: band.at,
    lap: mm(LAP),
    between: [number, number + 1],
    gap: mm(2 * snug),
    locators: [
      { kind: "round", at: round, peg, hole },
      { kind: "slotted", at: slotted, peg, hole },
    ],
    screws,
  };
  const slot = slotContour(slotted, {
    length: mm(hole + SLOT_PLAY),
    width: hole,
    turn: degrees(band.across === "x" ? 90 : 0),
  });
  const features = [
    ...pegFeatures([round, slotted], [circle(round, hole / 2), slot], { peg, middle, layer }),
    ...screws.flatMap((at) => screwFeatures(at, middle, options)),
    ...numberFeatures(band, number, options),
  ];
  return { band, fact, middle, features };
};

const placeAlong = ({ across, at, box }: SplitBand, share: number): Point =>
  across === "x"
    ? point(at, box.minY + share * (box.maxY - box.minY))
    : point(box.minX + share * (box.maxX - box.minX), at);

const plain = (outline: Contour): Region => ({ outline, holes: [] });

const pegFeatures = (
  places: readonly Point[],
  holes: readonly Contour[],
  of: { readonly peg: number; readonly middle: Mm; readonly layer: number },
): readonly JointFeature[] => {
  const whole = (length: number): Mm => tidy(of.middle + wholeSteps(length, of.layer) * of.layer);
  return [
    {
      piece: "low",
      does: "add",
      regions: places.map((at) => plain(circle(at, of.peg / 2))),
      from: of.middle,
      to: whole(PEG_LENGTH),
    },
    {
      piece: "high",
      does: "cut",
      regions: holes.map(plain),
      from: of.middle,
      to: whole(PEG_LENGTH + PEG_END_ROOM),
    },
  ];
};

/** The head sinks into the front half; the thread is an insert in the rear one, whose hole runs through. */
const screwFeatures = (at: Point, middle: Mm, options: JointOptions): readonly JointFeature[] => {
  const { rear, front, printer, context } = options;
  const { thread, head } = options.screw;
  const insert = insertFor(thread, context, middle - rear);
  const pilot = insert?.pilot ?? CLEARANCE_HOLES[thread].medium;
  const sunk = tidy(front - wholeSteps(head.height, options.layer) * options.layer);
  const round = (diameter: number, source: string): readonly Region[] => [
    plain(circle(at, allowedHole(diameter, source, printer).modelled / 2)),
  ];
  const { loose } = clearancesOf(printer);
  return [
    { piece: "low", does: "cut", regions: round(pilot, "insert"), from: mm(rear), to: middle },
    {
      piece: "high",
      does: "cut",
      regions: round(CLEARANCE_HOLES[thread].medium, "ISO 273, medium"),
      from: middle,
      to: sunk,
    },
    {
      piece: "high",
      does: "cut",
      regions: round(head.diameter + 2 * loose, "ISO 4762"),
      from: sunk,
      to: mm(front),
    },
  ];
};

/** Sunk in the tongue: of the low piece it is read from behind, of the high one from the front. */
const numberFeatures = (
  band: SplitBand,
  number: number,
  { rear, front, layer, context }: JointOptions,
): readonly JointFeature[] => {
  const deep = wholeSteps(NUMBER_DEPTH, layer) * layer;
  const at = placeAlong(band, NUMBER_PLACE);
  const own = numeral(number, at, context.lettering);
  if (own.length === 0) return [];
  return [
    {
      piece: "low",
      does: "cut",
      regions: own.map((region) => mirroredRegion(region, at.x)),
      from: mm(rear),
      to: tidy(rear + deep),
    },
    {
      piece: "high",
      does: "cut",
      regions: numeral(number + 1, at, context.lettering),
      from: tidy(front - deep),
      to: mm(front),
    },
  ];
};

const numeral = (number: number, at: Point, lettering: Lettering): readonly Region[] => {
  const face = [...lettering.faces.values()].find(({ kind }) => kind === "outline");
  if (face === undefined) return [];
  const set = setText(face, String(number), { capHeight: NUMBER_HEIGHT, align: "middle" });
  const middle = extentCentre(set.box);
  return set.fills.map((region) =>
    placedRegion(region, placement(at.x - middle.x, at.y - middle.y)),
  );
};
