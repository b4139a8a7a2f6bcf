// Contours and paths as SVG path data: lines as L, arcs as A, a whole circle as two half turns, closed by Z.
// Takes millimetres with y up and the frame that they are seen in; gives millimetres with y down, 4 decimals (0.1 µm).

import type { Circle, Contour, Path, Point, Vertex } from "../geometry/contour.ts";
import { decimal } from "../geometry/number.ts";
import { type ArcPiece, arcPieces } from "./arc-pieces.ts";

/** The upper left corner of what is shown, in the coordinates of the shapes. */
export interface SvgFrame {
  readonly left: number;
  readonly top: number;
}

const PLACES = 4;

/** Half the difference of two numbers of 4 decimals needs 5: a circle's radius fits its two ends exactly. */
const RADIUS_PLACES = 5;

/**
 * Arcs are written in pieces of at most 4 atan(1/2) = 106 degrees. Near a half turn the centre hangs on the last digit of
 * the ends: at radius 3.5 their rounding alone would move it by 0.018 mm.
 */
const LONGEST_BULGE = 0.5;

/** A bow lower than half the last digit written is straight in the file. */
const STRAIGHT_BOW = 0.00005;

export const contourPathData = (contour: Contour, frame: SvgFrame): string =>
  contour.kind === "circle"
    ? circlePathData(contour, frame)
    : `${runPathData([...contour.vertices, ...contour.vertices.slice(0, 1)], frame, true)}Z`;

/** An open stroke. */
export const openPathData = (path: Path, frame: SvgFrame): string =>
  runPathData(path.vertices, frame, false);

export const svgNumber = (value: number): string => decimal(value, PLACES);

/** A piece's ends as they are written. */
interface WrittenEnds {
  readonly fromX: number;
  readonly fromY: number;
  readonly toX: number;
  readonly toY: number;
}

const circlePathData = (circle: Circle, frame: SvgFrame): string => {
  const left = rounded(circle.centre.x - circle.radius - frame.left);
  const right = rounded(circle.centre.x + circle.radius - frame.left);
  const y = svgNumber(frame.top - circle.centre.y);
  const radius = decimal((right - left) / 2, RADIUS_PLACES);
  const halfTurn = (x: number): string => `A${radius} ${radius} 0 0 0 ${svgNumber(x)} ${y}`;
  return `M${svgNumber(left)} ${y}${halfTurn(right)}${halfTurn(left)}Z`;
};

const runPathData = (vertices: readonly Vertex[], frame: SvgFrame, closes: boolean): string => {
  const first = vertices[0];
  if (first === undefined) return "";
  let data = `M${placeOf(first, frame)}`;
  for (const [index, from] of vertices.slice(0, -1).entries()) {
    const to = vertices[index + 1]!;
    // Z draws the last straight edge of a closed run.
    if (closes && index === vertices.length - 2 && from.bulge === 0) break;
    for (const piece of arcPieces(from, to, isShortEnough)) data += pieceData(piece, frame);
  }
  return data;
};

const isShortEnough = (piece: ArcPiece): boolean => Math.abs(piece.from.bulge) <= LONGEST_BULGE;

const pieceData = ({ from, to }: ArcPiece, frame: SvgFrame): string => {
  const ends = writtenEnds(from, to, frame);
  const dx = ends.toX - ends.fromX;
  const dy = ends.toY - ends.fromY;
  // Shorter than the last digit: the file's ends are the same place.
  if (dx === 0 && dy === 0) return "";
  const chord = Math.sqrt(dx * dx + dy * dy);
  const bulge = Math.abs(from.bulge);
  if (bulge * chord < 2 * STRAIGHT_BOW) return `L${placeOf(to, frame)}`;
  // From the ends as written, so that bow and ends agree in the file.
  const radius = decimal((chord * (1 + bulge * bulge)) / (4 * bulge), RADIUS_PLACES);
  // With y down a counter-clockwise arc is one of negative angle: sweep flag 0.
  return `A${radius} ${radius} 0 0 ${from.bulge > 0 ? 0 : 1} ${placeOf(to, frame)}`;
};

const writtenEnds = (from: Point, to: Point, frame: SvgFrame): WrittenEnds => ({
  fromX: rounded(from.x - frame.left),
  fromY: rounded(frame.top - from.y),
  toX: rounded(to.x - frame.left),
  toY: rounded(frame.top - to.y),
});

const placeOf = (at: Point, frame: SvgFrame): string =>
  `${svgNumber(at.x - frame.left)} ${svgNumber(frame.top - at.y)}`;

const rounded = (value: number): number => Number(svgNumber(value));
