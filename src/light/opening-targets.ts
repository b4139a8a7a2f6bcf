// Places in an opening that a straight way out would have to pass: close to its rim, where the gap round a lever or a nut
// is, and over its area; along the sides of a part; along a joint.

import { containsPoint } from "../geometry/containment.ts";
import { type Contour, type Point, point } from "../geometry/contour.ts";
import { pointAlong } from "../geometry/edge.ts";
import { edgesOf } from "../geometry/edges.ts";
import { type Extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent, contourLength } from "../geometry/measure.ts";
import type { JointFact, PrintedBox } from "../parts/printed/printed-facts.ts";
import type { Place } from "./blocker.ts";

/** Gaps finer than twice this are closed by what any cutter or printer is out by: 0.1 mm (common practice). */
const BESIDE_RIM = 0.05;

/** Round a rim, and across an opening. */
const RIM_STEPS = 32;
const AREA_STEPS = 10;

/** At one height, inside the contour and outside what fills it. */
export const holeTargets = (
  contour: Contour,
  z: number,
  filled: readonly Contour[],
): readonly Place[] =>
  openPlaces([...rimPoints(contour), ...areaPoints(contour)], contour, { z, filled });

/** The rim alone. */
export const rimTargets = (
  contour: Contour,
  z: number,
  filled: readonly Contour[],
): readonly Place[] => openPlaces(rimPoints(contour), contour, { z, filled });

const openPlaces = (
  points: readonly Point[],
  contour: Contour,
  { z, filled }: { readonly z: number; readonly filled: readonly Contour[] },
): readonly Place[] =>
  points
    .filter((at) => containsPoint(contour, at))
    .filter((at) => !filled.some((body) => containsPoint(body, at)))
    .map(({ x, y }) => ({ x, y, z }));

/** Just inside the rim, on either side of it: the one that lies inside is kept. */
const rimPoints = (contour: Contour): readonly Point[] => {
  const whole = contourLength(contour);
  return edgesOf(contour).flatMap((edge) => {
    const dx = edge.to.x - edge.from.x;
    const dy = edge.to.y - edge.from.y;
    const length = edge.kind === "arc" ? edge.radius * edge.sweep : Math.sqrt(dx * dx + dy * dy);
    const steps = Math.max(1, Math.round((RIM_STEPS * length) / whole));
    return Array.from({ length: steps }, (_, index) => {
      const share = (index + 1 / 2) / steps;
      const at = pointAlong(edge, share);
      const next = pointAlong(edge, share + 1 / (4 * steps));
      const along = { x: next.x - at.x, y: next.y - at.y };
      const size = Math.sqrt(along.x * along.x + along.y * along.y);
      const out = { x: (along.y / size) * BESIDE_RIM, y: (-along.x / size) * BESIDE_RIM };
      return [point(at.x + out.x, at.y + out.y), point(at.x - out.x, at.y - out.y)];
    }).flat();
  });
};

const areaPoints = (contour: Contour): readonly Point[] => {
  const box = contourExtent(contour);
  const rows = Array.from({ length: AREA_STEPS }, (_, index) => (index + 1 / 2) / AREA_STEPS);
  return rows.flatMap((up) =>
    rows.map((across) =>
      point(box.minX + across * extentWidth(box), box.minY + up * extentHeight(box)),
    ),
  );
};

/** Along the four sides of a part, every so far, low, in the middle and high between two heights. */
const SIDE_STEP = 2;
const SIDE_HEIGHTS: readonly number[] = [0.1, 0.5, 0.9];

export const edgeTargets = (
  box: Extent,
  { low, high }: { readonly low: number; readonly high: number },
): readonly Place[] => {
  const across = steps(box.minX, box.maxX);
  const up = steps(box.minY, box.maxY);
  const round = [
    ...across.flatMap((x) => [point(x, box.minY), point(x, box.maxY)]),
    ...up.flatMap((y) => [point(box.minX, y), point(box.maxX, y)]),
  ];
  return SIDE_HEIGHTS.flatMap((share) =>
    round.map(({ x, y }) => ({ x, y, z: low + share * (high - low) })),
  );
};

/** Closer: past one cell of a lamp box. */
export const wallTargets = (
  box: Extent,
  { low, high }: { readonly low: number; readonly high: number },
): readonly Place[] => {
  const across = steps(box.minX, box.maxX, WALL_STEP);
  const up = steps(box.minY, box.maxY, WALL_STEP);
  const round = [
    ...across.flatMap((x) => [point(x, box.minY), point(x, box.maxY)]),
    ...up.flatMap((y) => [point(box.minX, y), point(box.maxX, y)]),
  ];
  return steps(low + BESIDE_RIM, high - BESIDE_RIM, WALL_STEP).flatMap((z) =>
    round.map(({ x, y }) => ({ x, y, z })),
  );
};

const WALL_STEP = 0.8;

const steps = (low: number, high: number, step = SIDE_STEP): readonly number[] => {
  const count = Math.max(1, Math.ceil((high - low) / step));
  return Array.from({ length: count + 1 }, (_, index) => low + ((high - low) * index) / count);
};

/** Along the slit in front and behind, and up its two ends. The halves meet half a lap to either side of the joint. */
export const jointTargets = (joint: JointFact, box: PrintedBox): readonly Place[] => {
  const { plan, rear, front } = box;
  const isAcross = joint.across === "x";
  const along = isAcross ? steps(plan.minY, plan.maxY) : steps(plan.minX, plan.maxX);
  const ends = isAcross ? [plan.minY, plan.maxY] : [plan.minX, plan.maxX];
  const halves = [
    { at: joint.at + joint.lap / 2, face: rear, share: 0.25 },
    { at: joint.at - joint.lap / 2, face: front, share: 0.75 },
  ];
  return halves.flatMap(({ at, face, share }) => [
    ...along.map((other) => placeOn(isAcross, at, { other, z: face })),
    ...ends.map((other) => placeOn(isAcross, at, { other, z: rear + share * (front - rear) })),
  ]);
};

const placeOn = (
  isAcross: boolean,
  at: number,
  { other, z }: { readonly other: number; readonly z: number },
): Place => (isAcross ? { x: at, y: other, z } : { x: other, y: at, z });
