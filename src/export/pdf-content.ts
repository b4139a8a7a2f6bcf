// Drawing items as the operators of a PDF page, in millimetres with y up: the page sets one scale to points in front.
// Arcs become cubic curves that stay within 0.0005 mm of them: pieces are halved until
// 2/27 r sin^6(a/4) / cos²(a/4) is below it (error of the curve with handles 4/3 tan(a/4)), and 4 decimals add 0.00007.

import type { DrawingItem } from "../drawings/drawing.ts";
import type { Circle, Contour, Path, Region, Vertex } from "../geometry/contour.ts";
import { vertex } from "../geometry/contour.ts";
import { decimal } from "../geometry/number.ts";
import { type ArcPiece, arcPieces } from "./arc-pieces.ts";
import { DASHES, INK_COLOURS } from "./ink-colours.ts";

/** Added to every coordinate: where the drawing's origin lies on the page. */
export interface PageShift {
  readonly x: number;
  readonly y: number;
}

const CURVE_ERROR = 0.0005;
const PLACES = 4;

export const itemOperators = (item: DrawingItem, shift: PageShift): string => {
  const colour = colourOperands(INK_COLOURS[item.ink]);
  switch (item.kind) {
    case "fill":
      return `${colour} rg\n${item.regions.map((region) => `${regionOperators(region, shift)}f*\n`).join("")}`;
    case "outline":
      return `${penOperators(item)}${colour} RG\n${item.contours.map((contour) => contourOperators(contour, shift)).join("")}S\n`;
    case "stroke":
      return `${penOperators(item)}${colour} RG\n${item.paths.map((path) => pathOperators(path, shift)).join("")}S\n`;
  }
};

export const pdfNumber = (value: number): string => decimal(value, PLACES);

const penOperators = (item: { readonly width: number; readonly dashed: boolean }): string =>
  `${pdfNumber(item.width)} w [${item.dashed ? DASHES.join(" ") : ""}] 0 d\n`;

/** `#rrggbb` as three shares of one. */
const colourOperands = (colour: string): string =>
  [1, 3, 5].map((at) => decimal(Number.parseInt(colour.slice(at, at + 2), 16) / 255, 3)).join(" ");

const regionOperators = (region: Region, shift: PageShift): string =>
  [region.outline, ...region.holes].map((contour) => contourOperators(contour, shift)).join("");

const contourOperators = (contour: Contour, shift: PageShift): string => {
  const corners = contour.kind === "circle" ? circleCorners(contour) : contour.vertices;
  return `${runOperators([...corners, ...corners.slice(0, 1)], shift)}h\n`;
};

const pathOperators = (path: Path, shift: PageShift): string => runOperators(path.vertices, shift);

const circleCorners = ({ centre, radius }: Circle): readonly Vertex[] => [
  vertex(centre.x - radius, centre.y, 1),
  vertex(centre.x + radius, centre.y, 1),
];

const runOperators = (vertices: readonly Vertex[], shift: PageShift): string => {
  const first = vertices[0];
  if (first === undefined) return "";
  let operators = `${placeOperands(first.x, first.y, shift)} m\n`;
  for (const [index, from] of vertices.slice(0, -1).entries()) {
    for (const piece of arcPieces(from, vertices[index + 1]!, isCloseEnough))
      operators += pieceOperators(piece, shift);
  }
  return operators;
};

const isCloseEnough = ({ from, to }: ArcPiece): boolean => {
  const bulge = Math.abs(from.bulge);
  if (bulge === 0) return true;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = bulge * bulge;
  const radius = (Math.sqrt(dx * dx + dy * dy) * (1 + square)) / (4 * bulge);
  const error = ((2 / 27) * radius * square * square * square) / ((1 + square) * (1 + square));
  return bulge < 1 && error <= CURVE_ERROR;
};

const pieceOperators = ({ from, to }: ArcPiece, shift: PageShift): string => {
  const end = placeOperands(to.x, to.y, shift);
  if (from.bulge === 0) return `${end} l\n`;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  // A handle is a third of the chord, turned by half the arc to either side and stretched to 4/3 tan(a/4) of the radius.
  const along = (1 - from.bulge * from.bulge) / 3;
  const across = (2 * from.bulge) / 3;
  const first = placeOperands(
    from.x + along * dx + across * dy,
    from.y + along * dy - across * dx,
    shift,
  );
  const second = placeOperands(
    to.x - along * dx + across * dy,
    to.y - along * dy - across * dx,
    shift,
  );
  return `${first} ${second} ${end} c\n`;
};

const placeOperands = (x: number, y: number, shift: PageShift): string =>
  `${pdfNumber(x + shift.x)} ${pdfNumber(y + shift.y)}`;
