// A recipe cut by an upright plane: the areas of material in it. The plane stands on a line in plan; in the section x is the
// place along that line and y the height. Layers are exact, their arcs too; curved flanks of turned pieces and lofts are chords.

import { difference, intersection, unionRegions } from "../boolean.ts";
import { type Contour, loop, type Point, point, type Region, vertex } from "../contour.ts";
import { extent } from "../extent.ts";
import { invariant } from "../invariant.ts";
import {
  contourStretches,
  lineStretches,
  type StraightLine,
  type Stretch,
} from "../line-stretches.ts";
import { polygon, rectangle } from "../shapes.ts";
import { parallel } from "../tolerance.ts";
import { contourBetween } from "./loft-between.ts";
import { type Strip, sectionStrips } from "./section-strips.ts";
import type {
  ComposedSolid,
  LayeredSolid,
  LoftedSolid,
  LoftSection,
  PlacedSolid,
  RevolvedSolid,
  Solid,
} from "./solid.ts";
import { turnedBack, turnMatrix } from "./turn.ts";

/** The plane of all points with this x; places along it are y. */
export const planeAcrossX = (x: number): StraightLine => ({
  at: point(x, 0),
  along: { x: 0, y: 1 },
});

/** The plane of all points with this y; places along it are x. */
export const planeAcrossY = (y: number): StraightLine => ({
  at: point(0, y),
  along: { x: 1, y: 0 },
});

/** Areas apart from each other, straight-sided. A placed piece may lie turned, but not so that the plane cuts it aslant. */
export const solidSection = (solid: Solid, plane: StraightLine): readonly Region[] =>
  unionRegions(pieces(solid, plane));

/** They may touch and overlap. */
const pieces = (solid: Solid, plane: StraightLine): readonly Region[] => {
  switch (solid.kind) {
    case "layered":
      return layeredPieces(solid, plane);
    case "lofted":
      return loftedPieces(solid, plane);
    case "revolved":
      return revolvedPieces(solid, plane);
    case "composed":
      return composedPieces(solid, plane);
    case "placed":
      return placedPieces(solid, plane);
  }
};

const layeredPieces = ({ layers }: LayeredSolid, plane: StraightLine): readonly Region[] =>
  layers.flatMap(({ from, to, regions }) => {
    const plain = regions.map(({ outline, holes }) => ({
      outline: outline.contour,
      holes: holes.map(({ contour }) => contour),
    }));
    return lineStretches(plain, plane).map(({ low, high }) =>
      solidArea(rectangle(extent(low, from, high, to))),
    );
  });

const solidArea = (outline: Contour): Region => ({ outline, holes: [] });

const stripArea = ({ from, to, foot, head }: Strip): Region =>
  solidArea(
    polygon([
      point(foot.low, from),
      ...(foot.high > foot.low ? [point(foot.high, from)] : []),
      point(head.high, to),
      ...(head.high > head.low ? [point(head.low, to)] : []),
    ]),
  );

const loftedPieces = ({ sections }: LoftedSolid, plane: StraightLine): readonly Region[] =>
  sections.slice(1).flatMap((upper, index) => {
    const lower = sections[index]!;
    const { height: from } = lower;
    const { height: to } = upper;
    const at = (height: number): readonly Stretch[] =>
      lineStretches([regionBetween(lower, upper, (height - from) / (to - from))], plane);
    return sectionStrips({ from, to, at }).map(stripArea);
  });

const regionBetween = (lower: LoftSection, upper: LoftSection, fraction: number): Region => ({
  outline: contourBetween(lower.outline, upper.outline, fraction),
  holes: lower.holes.map((hole, index) => contourBetween(hole, upper.holes[index], fraction)),
});

const revolvedPieces = (solid: RevolvedSolid, plane: StraightLine): readonly Region[] => {
  const heights = [...new Set(solid.profile.vertices.map(({ y }) => y))].sort((a, b) => a - b);
  return heights.slice(1).flatMap((to, index) => {
    const from = heights[index]!;
    const at = (height: number, side: "above" | "below"): readonly Stretch[] =>
      ringStretches(solid.at, radiiAt(solid.profile, height, side), plane);
    return sectionStrips({ from, to, at }).map(stripArea);
  });
};

/** A level line is taken as moved a hair to its left: run to the right that is up, run to the left it is down. */
const radiiAt = (profile: Contour, height: number, side: "above" | "below"): readonly Stretch[] => {
  const at = point(0, height);
  if (side === "above") return contourStretches(profile, { at, along: { x: 1, y: 0 } });
  return contourStretches(profile, { at, along: { x: -1, y: 0 } }).map(({ low, high }) => ({
    low: -high,
    high: -low,
  }));
};

const ringStretches = (
  axis: Point,
  rings: readonly Stretch[],
  { at, along }: StraightLine,
): readonly Stretch[] => {
  const away = along.x * (axis.y - at.y) - along.y * (axis.x - at.x);
  const middle = along.x * (axis.x - at.x) + along.y * (axis.y - at.y);
  const half = (radius: number): number => Math.sqrt(Math.max(0, radius * radius - away * away));
  const halves = rings
    .filter(({ high }) => high > Math.abs(away))
    .map(({ low, high }) => ({ low: half(low), high: half(high) }));
  const stretches = halves.flatMap(({ low, high }) =>
    low === 0
      ? [{ low: middle - high, high: middle + high }]
      : [
          { low: middle - high, high: middle - low },
          { low: middle + low, high: middle + high },
        ],
  );
  return stretches.toSorted((a, b) => a.low - b.low);
};

const composedPieces = ({ add, cut }: ComposedSolid, plane: StraightLine): readonly Region[] => {
  const added = add.flatMap((piece) => pieces(piece, plane));
  const taken = cut.flatMap((piece) => pieces(piece, plane));
  if (taken.length === 0) return added;
  const whole = unionRegions(added);
  return taken.reduce(
    (left, { outline, holes }) => [
      ...difference(left, [outline]),
      ...intersection(left, holes.map(solidArea)),
    ],
    whole,
  );
};

/** The plane is turned back with the piece, and what it cuts is turned on in the plane. */
const placedPieces = ({ solid, turn, to }: PlacedSolid, plane: StraightLine): readonly Region[] => {
  const matrix = turnMatrix(turn);
  const foot = turnedBack(matrix, { x: plane.at.x - to.x, y: plane.at.y - to.y, z: -to.z });
  const along = turnedBack(matrix, { x: plane.along.x, y: plane.along.y, z: 0 });
  const up = turnedBack(matrix, { x: 0, y: 0, z: 1 });
  // The plane's normal, along x up; upright planes have a level one.
  const normal = {
    x: along.y * up.z - along.z * up.y,
    y: along.z * up.x - along.x * up.z,
    z: along.x * up.y - along.y * up.x,
  };
  invariant(Math.abs(normal.z) < parallel, "a section is upright in the frame of what it cuts");
  const own = { at: point(foot.x, foot.y), along: { x: -normal.y, y: normal.x } };
  const across = own.along.x * along.x + own.along.y * along.y;
  const rise = own.along.x * up.x + own.along.y * up.y;
  const map = ({ x, y }: Point): Point => {
    const height = y - foot.z;
    return point(x * across + height * along.z, x * rise + height * up.z);
  };
  return pieces(solid, own).map(({ outline, holes }) => ({
    outline: mapped(outline, map),
    holes: holes.map((hole) => mapped(hole, map)),
  }));
};

const mapped = (contour: Contour, map: (from: Point) => Point): Contour => {
  invariant(contour.kind === "loop", "sections are straight-sided");
  return loop(
    contour.vertices.map((corner) => {
      const { x, y } = map(corner);
      return vertex(x, y);
    }),
  );
};
