// Drawing items as parts of a PDF page, in millimetres with y up: the page sets one scale to points in front.
// Arcs become cubic curves that stay within 0.0005 mm of them: pieces are halved until
// 2/27 r sin^6(a/4) / cos²(a/4) is below it (error of the curve with handles 4/3 tan(a/4)); 4 decimals add 0.0001.

import type { DrawingItem } from "../drawings/drawing.ts";
import type { Circle, Contour, Path, Point, Vertex } from "../geometry/contour.ts";
import { point, vertex } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent, joinedExtent, movedExtent } from "../geometry/extent.ts";
import { contourExtent, pathExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import { type ArcPiece, arcPieces } from "./arc-pieces.ts";
import { DASHES, INK_COLOURS } from "./ink-colours.ts";
import { type CopyKeeper, firstPlace, type Outlines } from "./shifted-copy.ts";

export type ContentPart =
  | {
      readonly kind: "operators";
      readonly text: string;
      /** Round what they draw, lines' width included; null where they only choose a pen or a colour. */
      readonly box: Extent | null;
    }
  | ShapePart;

/** A shape about its own first place: what looks the same is written once, wherever it stands. */
export interface ShapePart {
  readonly kind: "shape";
  readonly shape: WrittenShape;
  /** Where its first place lies. */
  readonly at: Point;
}

export interface WrittenShape {
  readonly operators: string;
  /** About the same place as the operators, lines' width included. */
  readonly box: Extent;
}

/** Shapes that are written already, for all parts of one file. */
export type WrittenShapes = CopyKeeper<WrittenShape>;

const CURVE_ERROR = 0.0005;
const PLACES = 4;
/** Half a line's width at most, and room for the curve's error. */
const BOX_MARGIN = 2;

export const itemParts = (item: DrawingItem, written: WrittenShapes): readonly ContentPart[] => {
  const colour = colourOperands(INK_COLOURS[item.ink]);
  switch (item.kind) {
    case "fill":
      return [
        { kind: "operators", text: `${colour} rg\n`, box: null },
        ...item.regions.map(({ outline, holes }) => shapePart([outline, ...holes], "f*", written)),
      ];
    case "outline": {
      const lines = item.contours.map((contour) => outlineOperators(contour, ORIGIN)).join("");
      const box = joinedBox(item.contours.map(contourExtent));
      return [{ kind: "operators", text: `${penOperators(item, colour)}${lines}S\n`, box }];
    }
    case "stroke":
      return [
        { kind: "operators", text: penOperators(item, colour), box: null },
        ...item.paths.filter(isDrawn).map((path) => shapePart([path], "S", written)),
      ];
  }
};

export const partBox = (part: ContentPart): Extent | null =>
  part.kind === "operators" ? part.box : movedExtent(part.shape.box, part.at.x, part.at.y);

export const pdfNumber = (value: number): string => decimal(value, PLACES);

const penOperators = (
  item: { readonly width: number; readonly dashed: boolean },
  colour: string,
): string =>
  `${pdfNumber(item.width)} w [${item.dashed ? DASHES.join(" ") : ""}] 0 d\n${colour} RG\n`;

/** `#rrggbb` as three shares of one. */
const colourOperands = (colour: string): string =>
  [1, 3, 5].map((at) => decimal(Number.parseInt(colour.slice(at, at + 2), 16) / 255, 3)).join(" ");

const ORIGIN: Point = point(0, 0);

const isDrawn = (path: Path): boolean => path.vertices.length > 1;

const shapePart = (outlines: Outlines, paint: "f*" | "S", written: WrittenShapes): ShapePart => ({
  kind: "shape",
  shape: written(outlines, () => writtenShape(outlines, paint)).kept,
  at: firstPlace(outlines),
});

/** A path is stroked and a contour filled, so that no shape of one is a copy of the other. */
const writtenShape = (outlines: Outlines, paint: "f*" | "S"): WrittenShape => {
  const zero = firstPlace(outlines);
  const lines = outlines.map((outline) => outlineOperators(outline, zero));
  const around = outlines.map((outline) =>
    outline.kind === "path" ? pathExtent(outline) : contourExtent(outline),
  );
  const box = joinedBox(around) ?? extent(0, 0, 0, 0);
  return { operators: `${lines.join("")}${paint}\n`, box: movedExtent(box, -zero.x, -zero.y) };
};

const joinedBox = (boxes: readonly Extent[]): Extent | null =>
  boxes.length === 0 ? null : grownExtent(boxes.reduce(joinedExtent), BOX_MARGIN);

/** `zero`: the place that the numbers count from. */
const outlineOperators = (outline: Contour | Path, zero: Point): string => {
  if (outline.kind === "path") return runOperators(outline.vertices, zero);
  const corners = outline.kind === "circle" ? circleCorners(outline) : outline.vertices;
  return `${runOperators([...corners, ...corners.slice(0, 1)], zero)}h\n`;
};

const circleCorners = ({ centre, radius }: Circle): readonly Vertex[] => [
  vertex(centre.x - radius, centre.y, 1),
  vertex(centre.x + radius, centre.y, 1),
];

const runOperators = (vertices: readonly Vertex[], zero: Point): string => {
  const first = vertices[0];
  if (first === undefined) return "";
  let operators = `${placeOperands(first.x, first.y, zero)} m\n`;
  for (const [index, from] of vertices.slice(0, -1).entries()) {
    for (const piece of arcPieces(from, vertices[index + 1]!, isCloseEnough))
      operators += pieceOperators(piece, zero);
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

const pieceOperators = ({ from, to }: ArcPiece, zero: Point): string => {
  const end = placeOperands(to.x, to.y, zero);
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  if (Math.abs(from.bulge) * Math.sqrt(dx * dx + dy * dy) <= 2 * CURVE_ERROR) return `${end} l\n`;
  // A handle is a third of the chord, turned by half the arc to either side and stretched to 4/3 tan(a/4) of the radius.
  const along = (1 - from.bulge * from.bulge) / 3;
  const across = (2 * from.bulge) / 3;
  const first = placeOperands(
    from.x + along * dx + across * dy,
    from.y + along * dy - across * dx,
    zero,
  );
  const second = placeOperands(
    to.x - along * dx + across * dy,
    to.y - along * dy - across * dx,
    zero,
  );
  return `${first} ${second} ${end} c\n`;
};

const placeOperands = (x: number, y: number, zero: Point): string =>
  `${pdfNumber(x - zero.x)} ${pdfNumber(y - zero.y)}`;
