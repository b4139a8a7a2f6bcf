// How a drawn line runs beside an expected one: the distance from points along it to the nearest expected edge. This is
// what an offset is by definition, so it judges any shape without making an offset of its own.

import { type Point, point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { placeAllowance } from "./allowance.ts";
import { distanceTo } from "./boundary.ts";
import { pointAlong, tangentAt } from "./edge.ts";
import type { Edge } from "./read-file.ts";

export interface RunBeside {
  /** The usual distance: the median of all points. */
  readonly offset: number;
  /** Largest departure from it. */
  readonly spread: number;
}

interface Probing {
  readonly parts: readonly number[];
  readonly shift: Point;
}

/**
 * `shift` is taken off the drawn line first: form is judged apart from place. The answer for one line of each outline is kept:
 * two formats that give a line the same numbers ask the same question.
 */
export const runBeside = (
  line: readonly Edge[],
  expected: readonly Edge[],
  probing: Probing,
): RunBeside => {
  const known = kept.get(expected)?.get(line.length);
  if (known !== undefined && isSameQuestion(known, line, probing)) return known.run;
  const run = probedRun(line, expected, probing);
  const own = kept.get(expected) ?? new Map<number, KeptRun>();
  own.set(line.length, { line, probing, run });
  kept.set(expected, own);
  return run;
};

interface KeptRun {
  readonly line: readonly Edge[];
  readonly probing: Probing;
  readonly run: RunBeside;
}

/** By the outline, then by the count of the line's edges: a letter's hole is another line of the same outline. */
const kept = new WeakMap<readonly Edge[], Map<number, KeptRun>>();

const isSameQuestion = (known: KeptRun, line: readonly Edge[], probing: Probing): boolean =>
  known.probing.parts === probing.parts &&
  isSamePlace(known.probing.shift, probing.shift) &&
  known.line.every((edge, index) => isSameEdge(edge, line[index]!));

const isSameEdge = (a: Edge, b: Edge): boolean => {
  if (!isSamePlace(a.from, b.from) || !isSamePlace(a.to, b.to)) return false;
  if (a.kind === "line" || b.kind === "line") return a.kind === b.kind;
  return isSamePlace(a.centre, b.centre) && a.radius === b.radius && a.sweep === b.sweep;
};

const isSamePlace = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

const probedRun = (
  line: readonly Edge[],
  expected: readonly Edge[],
  probing: Probing,
): RunBeside => {
  const distanceAt = distanceTo(expected);
  const { shift, parts } = probing;
  const places: Point[] = [];
  const distances = new Float64Array(line.length * parts.length);
  for (const edge of line) {
    for (const part of parts) {
      const along = pointAlong(edge, part);
      const isInPlace = shift.x === 0 && shift.y === 0;
      const at = isInPlace ? along : point(along.x - shift.x, along.y - shift.y);
      distances[places.length] = distanceAt(at);
      places.push(at);
    }
  }
  const offset = distances.toSorted()[distances.length >> 1] ?? 0;
  let spread = 0;
  for (let index = 0; index < distances.length; index += 1) {
    const distance = distances[index]!;
    const departs = Math.abs(distance - offset);
    if (departs <= spread || isMitre(expected, places[index]!, { distance, offset })) continue;
    spread = departs;
  }
  return { offset, spread };
};

/** Every part of the line: for cuts, of which a file holds a hundred. */
export const CLOSE_PROBING: readonly number[] = [0, 0.25, 0.5, 0.75, 1];

/** Its corners and middles: for letters, of which it holds thousands of edges. */
export const WIDE_PROBING: readonly number[] = [0, 0.5];

export const shiftOfBox = (drawn: Extent, expected: Extent): Point =>
  point(
    (drawn.minX + drawn.maxX - expected.minX - expected.maxX) / 2,
    (drawn.minY + drawn.maxY - expected.minY - expected.maxY) / 2,
  );

/** A mitre at a sharp corner leaves the line at most this many offsets away (60 degrees between the edges). */
const LONGEST_MITRE = 2;

/**
 * A line that passes a sharp corner may run on straight, beside the edges made longer, until both meet: the part
 * comes out the same, because the beam rounds nothing that it does not touch.
 */
const isMitre = (
  expected: readonly Edge[],
  place: Point,
  run: { readonly distance: number; readonly offset: number },
): boolean =>
  run.distance > run.offset &&
  run.distance <= LONGEST_MITRE * run.offset + placeAllowance &&
  expected.some(
    (edge) => Math.abs(distanceToRunOut(edge, place) - run.offset) <= placeAllowance / 2,
  );

/** Distance to the edge made longer: a line endless, an arc the whole circle. */
const distanceToRunOut = (edge: Edge, place: Point): number => {
  if (edge.kind === "arc") {
    const x = place.x - edge.centre.x;
    const y = place.y - edge.centre.y;
    return Math.abs(Math.sqrt(x * x + y * y) - edge.radius);
  }
  const along = tangentAt(edge, "from");
  return Math.abs((place.x - edge.from.x) * along.y - (place.y - edge.from.y) * along.x);
};
