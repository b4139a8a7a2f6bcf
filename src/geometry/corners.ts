// Corners of an outline: rounded (fillet), relieved for a round tool (dogbone), and how tight the tightest is.
// A corner is where two straight edges meet; counter-clockwise loops have their inside corners on the left.

import { type Contour, type Loop, loop, type Point, type Vertex, vertex } from "./contour.ts";
import { headingAt } from "./edge.ts";
import { type Edge, edgesOf } from "./edges.ts";
import { invariant } from "./invariant.ts";
import { contourArea } from "./measure.ts";
import { pointDistance } from "./point.ts";
import { type Mm, mm } from "./quantity.ts";
import { arithmeticNoise, smoothCorner } from "./tolerance.ts";

/**
 * Every corner that turns toward the inside gets an arc of `radius`, tangent to both sides; `all` rounds the corners
 * that stand into the outline too. A radius that does not fit is the caller's to refuse first (`largestFillet`).
 */
export const filletedLoop = (
  shape: Loop,
  radius: number,
  corners: "inside" | "all" = "inside",
): Loop => {
  invariant(radius >= 0, "a fillet radius is not negative");
  if (radius === 0) return shape;
  return reworked(shape, corners, (corner) => ({
    reach: radius * corner.tangentOfHalfTurn,
    bulge: corner.turn * halved(corner.tangentOfHalfTurn),
  }));
};

/** The largest radius that `filletedLoop` can give all the corners of this loop; Infinity where it has none. */
export const largestFillet = (shape: Loop, corners: "inside" | "all" = "inside"): number => {
  const found = cornersOf(shape, corners);
  let largest = Number.POSITIVE_INFINITY;
  for (const [index, corner] of found.entries()) {
    const next = found[(index + 1) % found.length]!;
    const share = (corner?.tangentOfHalfTurn ?? 0) + (next?.tangentOfHalfTurn ?? 0);
    const side = edgesOf(shape)[index]!;
    if (share > 0) largest = Math.min(largest, pointDistance(side.from, side.to) / share);
  }
  return largest;
};

/**
 * Every inside corner gets a relief of `toolRadius` whose circle passes through the corner, centred on the corner's
 * bisector: the square part then goes in. The relief stands (1 / sin(half corner) - 1) r beyond what the tool
 * would leave: (√2 - 1) r at a right angle.
 */
export const dogbonedLoop = (shape: Loop, toolRadius: number): Loop => {
  invariant(toolRadius >= 0, "a tool radius is not negative");
  if (toolRadius === 0) return shape;
  return reworked(shape, "inside", (corner) => ({
    reach: (2 * toolRadius * corner.tangentOfHalfTurn) / secant(corner.tangentOfHalfTurn),
    bulge: corner.turn * corner.tangentOfHalfTurn,
  }));
};

/**
 * The same for what stays: the corners of a piece where a part is to come to rest (the root of a tab, a notch) get the
 * relief that a round tool needs.
 */
export const dogbonedOutline = (shape: Loop, toolRadius: number): Loop => {
  invariant(toolRadius >= 0, "a tool radius is not negative");
  if (toolRadius === 0) return shape;
  return reworked(shape, "outside", (corner) => ({
    reach: (2 * toolRadius * corner.tangentOfHalfTurn) / secant(corner.tangentOfHalfTurn),
    bulge: corner.turn * corner.tangentOfHalfTurn,
  }));
};

/**
 * Least radius among the inside corners of a contour seen as an opening: 0 where two edges meet sharply, the
 * radius itself for a circle, null where nothing turns toward the inside.
 */
export const tightestInsideRadius = (contour: Contour): Mm | null => {
  if (contour.kind === "circle") return contour.radius;
  const edges = edgesOf(contour);
  const inward = contourArea(contour) < 0 ? -1 : 1;
  let tightest = Number.POSITIVE_INFINITY;
  for (const [index, edge] of edges.entries()) {
    if (edge.kind === "arc" && edge.turnsLeft === inward > 0)
      tightest = Math.min(tightest, edge.radius);
    if (turnAfter(edge, edges[(index + 1) % edges.length]!) * inward > smoothCorner) return mm(0);
  }
  return tightest === Number.POSITIVE_INFINITY ? null : mm(tightest);
};

/** Of an opening: its own corners, those that stand into it, or both. */
type CornerChoice = "inside" | "outside" | "all";

interface Corner {
  /** Sine of the turn's sign: 1 turns left. */
  readonly turn: 1 | -1;
  readonly tangentOfHalfTurn: number;
}

/** How far along both sides the new arc starts, and its bulge. */
interface Rework {
  readonly reach: number;
  readonly bulge: number;
}

/** Sine of the turn from one edge into the next, or 2 where it turns by more than a quarter; signed. */
const turnAfter = (before: Edge, after: Edge): number => {
  const arriving = headingAt(before, "to");
  const leaving = headingAt(after, "from");
  const cross = arriving.x * leaving.y - arriving.y * leaving.x;
  const dot = arriving.x * leaving.x + arriving.y * leaving.y;
  if (dot > 0) return cross;
  return cross < 0 ? -2 : 2;
};

/** For each vertex the corner that is to be worked, or null. Index i is the corner at the start of edge i. */
const cornersOf = (shape: Loop, corners: CornerChoice): readonly (Corner | null)[] => {
  const edges = edgesOf(shape);
  const inward = contourArea(shape) < 0 ? -1 : 1;
  return edges.map((after, index) => {
    const before = edges[(index + edges.length - 1) % edges.length]!;
    if (before.kind === "arc" || after.kind === "arc") return null;
    const turn = turnAfter(before, after);
    if (Math.abs(turn) <= smoothCorner) return null;
    if (corners === "inside" && turn * inward < 0) return null;
    if (corners === "outside" && turn * inward > 0) return null;
    return { turn: turn > 0 ? 1 : -1, tangentOfHalfTurn: tangentOfHalfTurn(before, after) };
  });
};

const tangentOfHalfTurn = (before: Edge, after: Edge): number => {
  const arriving = headingAt(before, "to");
  const leaving = headingAt(after, "from");
  const cross = Math.abs(arriving.x * leaving.y - arriving.y * leaving.x);
  const dot = arriving.x * leaving.x + arriving.y * leaving.y;
  return dot > 0 ? cross / (1 + dot) : (1 - dot) / cross;
};

/** tan(a / 2) from tan(a), for a below a right angle. */
const halved = (tangent: number): number => tangent / (1 + secant(tangent));

const secant = (tangent: number): number => Math.sqrt(1 + tangent * tangent);

const reworked = (shape: Loop, which: CornerChoice, work: (corner: Corner) => Rework): Loop => {
  const edges = edgesOf(shape);
  const works = cornersOf(shape, which).map((corner) => (corner === null ? null : work(corner)));
  const corners: Vertex[] = [];
  for (const [index, after] of edges.entries()) {
    const here = shape.vertices[index]!;
    const rework = works[index]!;
    const taken = (rework?.reach ?? 0) + (works[(index + 1) % edges.length]?.reach ?? 0);
    const length = pointDistance(after.from, after.to);
    invariant(
      after.kind === "arc" || taken <= length + arithmeticNoise,
      "worked corners fit their sides",
    );
    if (rework === null) {
      corners.push(here);
      continue;
    }
    const before = edges[(index + edges.length - 1) % edges.length]!;
    corners.push(stepped(here, headingAt(before, "to"), -rework.reach, rework.bulge));
    if (length - taken > arithmeticNoise)
      corners.push(stepped(here, headingAt(after, "from"), rework.reach, 0));
  }
  return loop(corners);
};

const stepped = (
  from: Point,
  along: { readonly x: number; readonly y: number },
  distance: number,
  bulge: number,
): Vertex => vertex(from.x + along.x * distance, from.y + along.y * distance, bulge);
