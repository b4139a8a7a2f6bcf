// How far a point lies from a recipe: no mesh and no kernel. Negative inside. What is given is never more than the true
// distance, and 0 on the surface itself, arcs exact. Of layers, and of upright pieces put together or cut, it is the true
// distance; short it may be beside a cone, in a cut, and within leaning pieces that touch.

import { containsPoint } from "../containment.ts";
import { type Contour, type Loop, type Point, point, type Region } from "../contour.ts";
import { pointToContour } from "../distance.ts";
import { gapFromPoint } from "../edge-distance.ts";
import { edgesOf } from "../edges.ts";
import { invariant } from "../invariant.ts";
import { type Mm, mm } from "../quantity.ts";
import { minus, type Vector, vector, vectorLength } from "../space/vector.ts";
import { contourBetween } from "./loft-between.ts";
import type { LoftedSolid, LoftSection, RevolvedSolid, Solid } from "./solid.ts";
import { turnedBack, turnMatrix } from "./turn.ts";
import { type Band, layeredBands, uprightBands } from "./upright-bands.ts";

/** A point in the recipe's own coordinates. */
export const solidDistance = (solid: Solid, at: Vector): Mm => {
  switch (solid.kind) {
    case "layered":
      return bandedDistance(layeredBands(solid), at);
    case "revolved":
      return revolvedDistance(solid, at);
    case "lofted":
      return loftedDistance(solid, at);
    case "composed": {
      const bands = uprightBands(solid);
      if (bands !== null) return bandedDistance(bands, at);
      const added = least(solid.add.map((piece) => solidDistance(piece, at)));
      // What is cut out is air: from within it, the way to the material is at least the way to the cut's own wall.
      return solid.cut.reduce((far, cut) => mm(Math.max(far, -solidDistance(cut, at))), added);
    }
    case "placed": {
      const back = turnedBack(turnMatrix(solid.turn), minus(at, solid.to));
      return solidDistance(solid.solid, back);
    }
  }
};

const least = (all: readonly number[]): Mm => {
  invariant(all.length > 0, "a solid that something is measured from has material");
  return mm(all.reduce((near, one) => Math.min(near, one)));
};

/**
 * The surface is the side walls of every band, and at each height what only one of the two sides of it has: where that is not
 * right above or below the point, the nearest of it is an edge, and edges are of the walls.
 */
const bandedDistance = (bands: readonly Band[], at: Vector): Mm => {
  const spot = point(at.x, at.y);
  const beside = bands.map(({ from, to, regions }) => ({
    from,
    to,
    ...besideOf(regions, spot),
    upright: Math.max(from - at.z, at.z - to, 0),
  }));
  const walls = beside.map(({ gap, upright }) => hypotenuse(gap, upright));
  const within = beside.filter(({ isWithin }) => isWithin);
  const faces = within
    .flatMap(({ from, to }) => [
      ...(within.some((below) => below.to === from) ? [] : [from]),
      ...(within.some((above) => above.from === to) ? [] : [to]),
    ])
    .map((height) => Math.abs(at.z - height));
  const far = least([...walls, ...faces]);
  return within.some(({ upright }) => upright === 0) ? mm(-far) : far;
};

/** Seen from above: how far from the nearest wall, and whether there is material. */
const besideOf = (
  regions: readonly Region[],
  spot: Point,
): { readonly gap: Mm; readonly isWithin: boolean } => {
  const gaps = regions.flatMap(({ outline, holes }) =>
    [outline, ...holes].map((contour) => pointToContour(spot, contour).gap),
  );
  const isWithin = regions.some(
    ({ outline, holes }) =>
      containsPoint(outline, spot) && !holes.some((hole) => containsPoint(hole, spot)),
  );
  return { gap: least(gaps), isWithin };
};

/** Past an edge both count. */
const past = (across: number, upright: number): Mm =>
  hypotenuse(Math.max(across, 0), Math.max(upright, 0));

const hypotenuse = (a: number, b: number): Mm => mm(Math.sqrt(a * a + b * b));

const insideNegative = (contour: Contour, at: Point): number => {
  const { gap } = pointToContour(at, contour);
  return containsPoint(contour, at) ? -gap : gap;
};

const revolvedDistance = ({ at, profile }: RevolvedSolid, spot: Vector): Mm => {
  const aside = hypotenuse(spot.x - at.x, spot.y - at.y);
  const where = point(aside, spot.z);
  const gap = profileGap(profile, where);
  return mm(containsPoint(profile, where) ? -gap : gap);
};

/** The stretch of the profile that lies on the axis is no surface. */
const profileGap = (profile: Loop, where: Point): Mm =>
  least(
    edgesOf(profile)
      .filter(({ kind, from, to }) => kind === "arc" || from.x !== 0 || to.x !== 0)
      .map((edge) => gapFromPoint(where, edge).gap),
  );

/**
 * Its flanks lean: the distance across is shortened by the steepest lean of any corner. Within, no section between the first
 * and the last is a wall.
 */
const loftedDistance = ({ sections }: LoftedSolid, at: Vector): Mm => {
  const stretches = sections.slice(1).map((above, index) => stretchOf(sections[index]!, above, at));
  const isWithin = stretches.some(({ across, upright }) => across <= 0 && upright <= 0);
  if (!isWithin) return least(stretches.map(({ across, upright }) => past(across, upright)));
  const flanks = stretches.map(({ across, upright }) => past(Math.abs(across), upright));
  const ends = [at.z - sections[0]!.height, sections.at(-1)!.height - at.z];
  return mm(-least([...flanks, ...ends]));
};

/** A loft between two sections: how far from its flank, negative within, and how far above or below it. */
const stretchOf = (
  below: LoftSection,
  above: LoftSection,
  at: Vector,
): { readonly across: number; readonly upright: number } => {
  const height = above.height - below.height;
  const fraction = height === 0 ? 0 : Math.min(1, Math.max(0, (at.z - below.height) / height));
  const lean = height === 0 ? 0 : mostShift(below.outline, above.outline) / height;
  const spot = point(at.x, at.y);
  const outline = insideNegative(contourBetween(below.outline, above.outline, fraction), spot);
  const across = below.holes.reduce(
    (far, hole, number) =>
      Math.max(far, -insideNegative(contourBetween(hole, above.holes[number], fraction), spot)),
    outline,
  );
  const upright = Math.max(below.height - at.z, at.z - above.height);
  return { across: across / Math.sqrt(1 + lean * lean), upright };
};

/** How far a corner moves from one section to the next. */
const mostShift = (below: Contour, above: Contour): number => {
  if (below.kind === "circle" && above.kind === "circle") {
    const { x, y } = minus(atZero(below.centre), atZero(above.centre));
    return Math.sqrt(x * x + y * y) + Math.abs(above.radius - below.radius);
  }
  invariant(below.kind === "loop" && above.kind === "loop", "sections have contours of one kind");
  return below.vertices.reduce((most, corner, index) => {
    const facing = above.vertices[index]!;
    return Math.max(most, vectorLength(minus(atZero(corner), atZero(facing))));
  }, 0);
};

const atZero = ({ x, y }: Point): Vector => vector(x, y, 0);
