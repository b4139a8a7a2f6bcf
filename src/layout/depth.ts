// Depth of one component at both ends of every thickness range: thread, protrusion, total. Facts, no verdict.

import type { Hold, Part } from "../catalogue/part.ts";
import type { Catalogue } from "../catalogue/record.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { PartBodies } from "./bodies.ts";
import { type Clamped, setBack, thicknessBetween } from "./clamping.ts";
import type { DepthFacts, Range } from "./panel-layout.ts";
import { known, lessRange, sumOf } from "./range.ts";
import type { BareLayer } from "./stack.ts";

export const depthFacts = (
  part: Part,
  options: {
    readonly bodies: PartBodies;
    readonly clamped: Clamped;
    readonly layers: readonly BareLayer[];
    readonly catalogue: Catalogue;
  },
): DepthFacts => {
  const { clamped, layers, catalogue, bodies } = options;
  const gripped = thicknessBetween(layers, clamped.first, clamped.last);
  const toSeat = distanceToSeat(part, clamped, layers);
  const rearmost = Math.max(0, ...bodies.bodies.map((body) => -body.low));
  return {
    gripped,
    threadLeft: threadLeft(part.hold, gripped, catalogue),
    nutThickness: nutThickness(part.hold, catalogue),
    protrusion: bodies.tip === null ? null : lessRange(bodies.tip, toSeat),
    total: sumOf([toSeat, known(rearmost)]),
  };
};

/** From the panel's front to the plane that the part bears on. */
const distanceToSeat = (part: Part, clamped: Clamped, layers: readonly BareLayer[]): Range => {
  if (part.hold.seat === "front") return thicknessBetween(layers, 0, clamped.first - 1);
  const sheets = thicknessBetween(layers, 0, clamped.last);
  return sumOf([sheets, known(setBack(part, clamped, layers))]);
};

/** Thread beyond what it clamps and its washers: what is left for the nut. */
const threadLeft = (hold: Hold, gripped: Range, catalogue: Catalogue): Range | null => {
  if (hold.kind !== "bush") return null;
  const washers = hold.washers.map((id): number => {
    const washer = catalogue.hardware.get(id);
    return washer?.kind === "washer" ? washer.thickness : 0;
  });
  return lessRange(hold.length - washers.reduce((sum, thickness) => sum + thickness, 0), gripped);
};

const nutThickness = (hold: Hold, catalogue: Catalogue): Mm | null => {
  if (hold.kind !== "bush") return null;
  const nut = catalogue.hardware.get(hold.nut);
  return nut?.kind === "nut" ? mm(nut.thickness) : null;
};
