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

const circlePathData = (circle: Circle, frame: SvgFrame): string => {
  const left = svgNumber(circle.centre.x - circle.radius - frame.left);
  const right = svgNumber(circle.centre.x + circle.radius - frame.left);
  const y = svgNumber(frame.top - circle.centre.y);
  const radius = decimal((Number(right) - Number(left)) / 2, RADIUS_PLACES);
  const halfTurn = (x: string): string => `A${radius} ${radius} 0 0 0 ${x} ${y}`;
  return `M${left} ${y}${halfTurn(right)}${halfTurn(left)}Z`;
};

const runPathData = (vertices: readonly Vertex[], frame: SvgFrame, closes: boolean): string => {
  const first = vertices[0];
  if (first === undefined) return "";
  let here = writtenPlace(first, frame);
  let data = `M${here.text}`;
  for (let index = 0; index < vertices.length - 1; index += 1) {
    const from = vertices[index]!;
    // Z draws the last straight edge of a closed run.
    if (closes && index === vertices.length - 2 && from.bulge === 0) break;
    for (const piece of arcPieces(from, vertices[index + 1]!, isShortEnough)) {
      const end = writtenPlace(piece.to, frame);
      data += pieceData(here, end, piece.from.bulge);
      here = end;
    }
  }
  return data;
};

const isShortEnough = (piece: ArcPiece): boolean => Math.abs(piece.from.bulge) <= LONGEST_BULGE;

/** A place as the file has it, in its digits and as the numbers that these are. */
interface WrittenPlace {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

const writtenPlace = (at: Point, frame: SvgFrame): WrittenPlace => {
  const x = svgNumber(at.x - frame.left);
  const y = svgNumber(frame.top - at.y);
  return { text: `${x} ${y}`, x: Number(x), y: Number(y) };
};

const pieceData = (from: WrittenPlace, to: WrittenPlace, bulge: number): string => {
  // Shorter than the last digit: both ends are the same place in the file.
  if (from.text === to.text) return "";
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const chord = Math.sqrt(dx * dx + dy * dy);
  const bow = Math.abs(bulge);
  if (bow * chord < 2 * STRAIGHT_BOW) return `L${to.text}`;
  // From the ends as written, so that bow and ends agree in the file.
  const radius = decimal((chord * (1 + bow * bow)) / (4 * bow), RADIUS_PLACES);
  // With y down a counter-clockwise arc is one of negative angle: sweep flag 0.
  return `A${radius} ${radius} 0 0 ${bulge > 0 ? 0 : 1} ${to.text}`;
};
