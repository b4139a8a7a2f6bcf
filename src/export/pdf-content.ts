// Drawing items as parts of a PDF page, in millimetres with y up: the page sets one scale to points in front.
// Arcs become cubic curves that stay within 0.0005 mm of them: pieces are halved until
// 2/27 r sin^6(a/4) / cos²(a/4) is below it (error of the curve with handles 4/3 tan(a/4)); 4 decimals add 0.0001.

import type { DrawingItem } from "../drawings/drawing.ts";
import type { Circle, Contour, Path, Region, Vertex } from "../geometry/contour.ts";
import { vertex } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent } from "../geometry/extent.ts";
import { contourExtent, pathExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { type ArcPiece, arcPieces } from "./arc-pieces.ts";
import { DASHES, INK_COLOURS } from "./ink-colours.ts";

/** Added to every coordinate: where the drawing's origin lies on the page. */
export interface PageShift {
  readonly x: number;
  readonly y: number;
}

export type ContentPart =
  | { readonly kind: "operators"; readonly text: string }
  /** A shape about its own first place: what looks the same is written once, wherever it stands. */
  | {
      readonly kind: "shape";
      readonly operators: string;
      readonly at: PageShift;
      /** About the same place as the operators, lines' width included. */
      readonly box: Extent;
    };

const CURVE_ERROR = 0.0005;
const PLACES = 4;
/** Half a line's width at most, and room for the curve's error. */
const BOX_MARGIN = 2;

export const itemParts = (item: DrawingItem, shift: PageShift): readonly ContentPart[] => {
  const colour = colourOperands(INK_COLOURS[item.ink]);
  switch (item.kind) {
    case "fill":
      return [
        { kind: "operators", text: `${colour} rg\n` },
        ...item.regions.map((region) => regionPart(region, shift)),
      ];
    case "outline": {
      const lines = item.contours.map((contour) => contourOperators(contour, shift)).join("");
      return [{ kind: "operators", text: `${penOperators(item, colour)}${lines}S\n` }];
    }
    case "stroke":
      return [
        { kind: "operators", text: penOperators(item, colour) },
        ...item.paths.filter(isDrawn).map((path) => pathPart(path, shift)),
      ];
  }
};

export const pdfNumber = (value: number): string => decimal(value, PLACES);

const penOperators = (
  item: { readonly width: number; readonly dashed: boolean },
  colour: string,
): string =>
  `${pdfNumber(item.width)} w [${item.dashed ? DASHES.join(" ") : ""}] 0 d\n${colour} RG\n`;

/** `#rrggbb` as three shares of one. */
const colourOperands = (colour: string): string =>
  [1, 3, 5].map((at) => decimal(Number.parseInt(colour.slice(at, at + 2), 16) / 255, 3)).join(" ");

const regionPart = (region: Region, shift: PageShift): ContentPart => {
  const first = firstPlace(region.outline);
  const lines = [region.outline, ...region.holes].map((contour) =>
    contourOperators(contour, first),
  );
  const box = contourExtent(region.outline);
  return shapePart(`${lines.join("")}f*\n`, box, { first, shift });
};

const pathPart = (path: Path, shift: PageShift): ContentPart => {
  const first = firstPlace(path);
  return shapePart(`${pathOperators(path, first)}S\n`, pathExtent(path), { first, shift });
};

const isDrawn = (path: Path): boolean => path.vertices.length > 1;

const shapePart = (
  operators: string,
  box: Extent,
  place: { readonly first: PageShift; readonly shift: PageShift },
): ContentPart => ({
  kind: "shape",
  operators,
  at: { x: place.shift.x - place.first.x, y: place.shift.y - place.first.y },
  box: grownExtent(
    extent(
      box.minX + place.first.x,
      box.minY + place.first.y,
      box.maxX + place.first.x,
      box.maxY + place.first.y,
    ),
    BOX_MARGIN,
  ),
});

/** What takes the shape's first vertex, or a circle's centre, to zero. */
const firstPlace = (shape: Contour | Path): PageShift => {
  const first = shape.kind === "circle" ? shape.centre : shape.vertices[0];
  return first === undefined ? { x: 0, y: 0 } : { x: -first.x, y: -first.y };
};

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
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  if (Math.abs(from.bulge) * Math.sqrt(dx * dx + dy * dy) <= 2 * CURVE_ERROR) return `${end} l\n`;
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
