// The hatch of a section: an opening in one of its boards, and the cover that is screwed over it. Takes the boards and the
// sides on which it may be; gives the boards with it, or what it was left out of.

import type { FrameSide } from "../../design/frame-design.ts";
import { circle, type Point, point } from "../../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentHeight,
  extentWidth,
  grownExtent,
} from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { rectangle, roundedRectangle } from "../../geometry/shapes.ts";
import { movedFrame } from "../../geometry/space/frame.ts";
import { scaled } from "../../geometry/space/vector.ts";
import type { FrameHole } from "./frame-part.ts";
import type { FramePlan } from "./frame-plan.ts";
import { HATCH, SCREW, VENT } from "./frame-practice.ts";
import { type Piece, withHoles } from "./piece.ts";

export interface HatchOptions {
  readonly suffix: string;
  /** Of the sections of its unit: back and front are boards of its ends. */
  readonly isFirst: boolean;
  readonly isLast: boolean;
  /** The first on which it finds room is taken. */
  readonly sides: readonly FrameSide[];
}

export interface OpenedHatch {
  readonly pieces: readonly Piece[];
  /** null where there is none. */
  readonly side: FrameSide | null;
  /** In words: where it found no room; null where it did, or is not asked for. */
  readonly missing: string | null;
}

export const hatched = (
  plan: FramePlan,
  pieces: readonly Piece[],
  options: HatchOptions,
): OpenedHatch => {
  const { suffix, isFirst, isLast } = options;
  const sides = options.sides.filter(
    (side) => !(side === "back" && !isFirst) && !(side === "front" && !isLast),
  );
  for (const side of sides) {
    const carrier = pieces.find(({ id }) => id === `${boardOn(side)}${suffix}`);
    const opening = carrier === undefined ? null : hatchOpening(plan, carrier, side);
    if (carrier !== undefined && opening !== null)
      return { pieces: opened(pieces, carrier, { opening, suffix }), side, missing: null };
  }
  const [first] = sides;
  const missing = first === undefined ? null : `hatch in ${boardOn(first)}${suffix}`;
  return { pieces, side: null, missing };
};

const boardOn = (side: FrameSide): string =>
  side === "left" || side === "right" ? `cheek-${side}` : side;

const opened = (
  pieces: readonly Piece[],
  carrier: Piece,
  { opening, suffix }: { readonly opening: Extent; readonly suffix: string },
): readonly Piece[] => {
  const cover = hatchCover(carrier, opening, suffix);
  const holes: readonly FrameHole[] = [
    { feature: "hatch-opening", contour: roundedRectangle(opening, HATCH.corner) },
    ...screwPlaces(opening).map((at, index) => ({
      feature: `hatch-pilot.${index + 1}`,
      contour: circle(at, SCREW.pilot / 2),
    })),
  ];
  return [...pieces.map((piece) => (piece === carrier ? withHoles(piece, holes) : piece)), cover];
};

const hatchOpening = (plan: FramePlan, carrier: Piece, hatch: FrameSide): Extent | null => {
  const { along, up } = plan.below;
  const box = contourExtent(carrier.outline);
  const sign = hatch === "left" ? -1 : 1;
  const clear =
    hatch === "left" || hatch === "right"
      ? extent(
          Math.min(sign * along.from, sign * along.to) + HATCH.away,
          up.from + HATCH.away,
          Math.max(sign * along.from, sign * along.to) - HATCH.away,
          up.to - HATCH.away,
        )
      : extent(
          box.minX + HATCH.away,
          box.minY + VENT.low + VENT.count * VENT.pitch + HATCH.lap,
          box.maxX - HATCH.away,
          box.maxY - VENT.high - VENT.count * VENT.pitch - HATCH.lap,
        );
  const width = Math.min(HATCH.widest, extentWidth(clear));
  const height = Math.min(HATCH.highest, extentHeight(clear));
  if (width < HATCH.least || height < HATCH.least) return null;
  const x = (clear.minX + clear.maxX) / 2;
  const y = (clear.minY + clear.maxY) / 2;
  return extent(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
};

const screwPlaces = (opening: Extent): readonly Point[] => {
  const { minX, minY, maxX, maxY } = grownExtent(opening, HATCH.lap / 2);
  return [point(minX, minY), point(maxX, minY), point(maxX, maxY), point(minX, maxY)];
};

/** On the carrier's good face. */
const hatchCover = (carrier: Piece, opening: Extent, suffix: string): Piece => ({
  id: `hatch${suffix}`,
  role: "hatch",
  title: "Hatch",
  section: carrier.section,
  frame: carrier.frame,
  outline: rectangle(grownExtent(opening, HATCH.lap)),
  holes: screwPlaces(opening).map((at, index) => ({
    feature: `hatch-screw.${index + 1}`,
    contour: circle(at, SCREW.clearance / 2),
  })),
  handOperations: [],
});

/** The cover stands out by its own thickness. */
export const proud = (piece: Piece, thickness: number): Piece =>
  piece.role === "hatch"
    ? { ...piece, frame: movedFrame(piece.frame, scaled(piece.frame.z, thickness)) }
    : piece;
