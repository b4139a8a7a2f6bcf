// Reads the path data of letters and strokes: straight lines, circular arcs, closed by Z. The second reader of SVG
// here: makerjs takes 0.1 ms a letter, which 120 legends make 70 ms; this one takes a tenth of it.
// SVG 2, sections 9.3 and B.2.4 (where an arc's centre is). Null where something else stands in it.

import { type Point, point } from "../geometry/contour.ts";
import { radians } from "../geometry/quantity.ts";
import { arcTangent } from "../geometry/trigonometry.ts";
import { loopOfEdges } from "./loop.ts";
import { numbersBetween } from "./plain-number.ts";
import type { Edge, ReadLoop } from "./read-file.ts";

/** The loops of `d`, y turned upward; `zero`: where the place 0 0 of the file lies. */
export const loopsOfPathData = (data: string, zero: Point): readonly ReadLoop[] | null => {
  const pen: Pen = { zero, at: zero, start: zero, edges: [], loops: [] };
  let at = nextLetter(data, 0);
  while (at < data.length) {
    const next = nextLetter(data, at + 1);
    if (!drawStep(pen, data[at] ?? "", numbersBetween(data, at + 1, next))) return null;
    at = next;
  }
  endLoop(pen);
  return pen.loops;
};

const nextLetter = (data: string, start: number): number => {
  let at = start;
  while (at < data.length && !isLetter(data.charCodeAt(at))) at += 1;
  return at;
};

/** A bit tells small letters from capitals. */
const SMALL = 32;
const FIRST_LETTER = 97;
const LAST_LETTER = 122;

const isLetter = (code: number): boolean =>
  code > SMALL && (code | SMALL) >= FIRST_LETTER && (code | SMALL) <= LAST_LETTER;

interface Pen {
  readonly zero: Point;
  at: Point;
  start: Point;
  edges: Edge[];
  loops: ReadLoop[];
}

const endLoop = (pen: Pen): void => {
  const loop = loopOfEdges(pen.edges);
  if (loop !== null) pen.loops.push(loop);
  pen.edges = [];
};

/** False where the command is not one that a cut file uses. */
const drawStep = (pen: Pen, command: string, numbers: readonly number[]): boolean => {
  switch (command) {
    case "M":
      endLoop(pen);
      pen.start = upward(pen, numbers[0], numbers[1]);
      pen.at = pen.start;
      return drawLines(pen, numbers.slice(2));
    case "L":
      return drawLines(pen, numbers);
    case "H":
      for (const x of numbers) lineTo(pen, point(pen.zero.x + x, pen.at.y));
      return numbers.length > 0;
    case "V":
      for (const y of numbers) lineTo(pen, point(pen.at.x, pen.zero.y - y));
      return numbers.length > 0;
    case "A":
      return drawArcs(pen, numbers);
    case "Z":
    case "z":
      lineTo(pen, pen.start);
      endLoop(pen);
      return numbers.length === 0;
    default:
      return false;
  }
};

const drawLines = (pen: Pen, numbers: readonly number[]): boolean => {
  for (let at = 0; at + 1 < numbers.length; at += 2) {
    lineTo(pen, upward(pen, numbers[at], numbers[at + 1]));
  }
  return numbers.length % 2 === 0;
};

const lineTo = (pen: Pen, to: Point): void => {
  if (to.x !== pen.at.x || to.y !== pen.at.y) {
    pen.edges.push({ kind: "line", from: pen.at, to });
  }
  pen.at = to;
};

/** Numbers of one arc: two radii, a rotation, two flags, an end. */
const ARC_NUMBERS = 7;

const drawArcs = (pen: Pen, numbers: readonly number[]): boolean => {
  for (let at = 0; at + ARC_NUMBERS <= numbers.length; at += ARC_NUMBERS) {
    const radius = numbers[at] ?? 0;
    if (radius !== numbers[at + 1]) return false;
    const [isLarge, turnsLeft] = [numbers[at + 3] === 1, numbers[at + 4] === 0];
    arcTo(pen, upward(pen, numbers[at + 5], numbers[at + 6]), { radius, isLarge, turnsLeft });
  }
  return numbers.length % ARC_NUMBERS === 0;
};

const FULL_TURN = 2 * Math.PI;

/** In SVG's downward y a sweep flag of 1 turns clockwise as seen: to the right. */
const arcTo = (
  pen: Pen,
  to: Point,
  arc: { readonly radius: number; readonly isLarge: boolean; readonly turnsLeft: boolean },
): void => {
  const from = pen.at;
  const x = to.x - from.x;
  const y = to.y - from.y;
  const chord = Math.sqrt(x * x + y * y);
  pen.at = to;
  if (chord === 0) return;
  // Radii that are too short for their chord are made to reach (SVG 2, B.2.5).
  const radius = Math.max(arc.radius, chord / 2);
  const height = Math.sqrt(radius * radius - (chord * chord) / 4) / chord;
  const side = arc.turnsLeft === arc.isLarge ? -height : height;
  const centre = point((from.x + to.x) / 2 - y * side, (from.y + to.y) / 2 + x * side);
  // Half the chord over the bow's height is the tangent of a quarter of the smaller arc.
  const smaller = 4 * arcTangent(1 / (2 * (radius / chord + height)));
  const turned = arc.isLarge ? FULL_TURN - smaller : smaller;
  const sweep = radians(arc.turnsLeft ? turned : -turned);
  pen.edges.push({ kind: "arc", from, to, centre, radius, sweep });
};

const upward = ({ zero }: Pen, x: number | undefined, y: number | undefined): Point =>
  point(zero.x + (x ?? 0), zero.y - (y ?? 0));
