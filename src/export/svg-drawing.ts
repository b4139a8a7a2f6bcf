// A drawing as an SVG for the screen and the README: millimetres, y down, a paper background, text already outlines.
// Takes the drawing, gives the file's text. Only its title is words; they are escaped. Letters that come again are
// defined once and placed with <use>.

import type { Drawing, DrawingItem } from "../drawings/drawing.ts";
import type { Point, Region } from "../geometry/contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { DASHES, INK_COLOURS } from "./ink-colours.ts";
import { repeatedShapes, type ShapeNames } from "./repeated-shapes.ts";
import { type CopyKeeper, copyKeeper, firstPlace } from "./shifted-copy.ts";
import { contourPathData, openPathData, type SvgFrame, svgNumber } from "./svg-path.ts";
import { xmlText } from "./xml-text.ts";

export const svgDrawing = (drawing: Drawing): string => {
  const width = svgNumber(extentWidth(drawing.box));
  const height = svgNumber(extentHeight(drawing.box));
  const frame: SvgFrame = { left: drawing.box.minX, top: drawing.box.maxY };
  const title = xmlText(drawing.title);
  const written = copyKeeper<string>();
  const shapes = drawing.items.map((item) => filledShapes(item, written));
  const names = repeatedShapes(
    shapes.flatMap((filled) => filled.map(({ data }) => data)),
    "s",
  );
  return [
    `<?xml version="1.0" encoding="UTF-8"?>\n`,
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-label="${title}">\n`,
    `<title>${title}</title>\n`,
    definitions(names),
    `<path fill="${INK_COLOURS.paper}" stroke="none" d="M0 0H${width}V${height}H0Z"/>\n`,
    ...drawing.items.map((item, index) =>
      item.kind === "fill"
        ? fillElement(item, placedShapes(shapes[index] ?? [], names, frame))
        : strokeElement(item, frame),
    ),
    "</svg>\n",
  ].join("");
};

/** A region about its own first place, so that equal letters have equal data. */
interface FilledShape {
  readonly data: string;
  readonly at: Point;
  readonly region: Region;
}

type FillItem = Extract<DrawingItem, { readonly kind: "fill" }>;
type LineItem = Exclude<DrawingItem, { readonly kind: "fill" }>;

const filledShapes = (item: DrawingItem, written: CopyKeeper<string>): readonly FilledShape[] => {
  if (item.kind !== "fill") return [];
  return item.regions.map((region): FilledShape => {
    const outlines = [region.outline, ...region.holes];
    const at = firstPlace(outlines);
    const { kept } = written(outlines, () => regionPathData(region, { left: at.x, top: at.y }));
    return { data: kept, at, region };
  });
};

const definitions = (names: ShapeNames): string => {
  if (names.size === 0) return "";
  const paths = Array.from(names, ([data, name]) => `<path id="${name}" d="${data}"/>\n`);
  return `<defs>\n${paths.join("")}</defs>\n`;
};

const placedShapes = (
  shapes: readonly FilledShape[],
  names: ShapeNames,
  frame: SvgFrame,
): readonly string[] =>
  shapes.map(({ data, at, region }) => {
    const name = names.get(data);
    if (name === undefined) return `<path d="${regionPathData(region, frame)}"/>`;
    return `<use href="#${name}" x="${svgNumber(at.x - frame.left)}" y="${svgNumber(frame.top - at.y)}"/>`;
  });

/** An element a region: even-odd over several would cut holes where two of them overlap. */
const fillElement = (item: FillItem, shapes: readonly string[]): string =>
  `<g fill="${INK_COLOURS[item.ink]}" fill-rule="evenodd" stroke="none">${shapes.join("")}</g>\n`;

const strokeElement = (item: LineItem, frame: SvgFrame): string => {
  const runs =
    item.kind === "outline"
      ? item.contours.map((contour) => contourPathData(contour, frame))
      : item.paths.map((path) => openPathData(path, frame));
  const dashes = item.dashed ? ` stroke-dasharray="${DASHES.join(" ")}"` : "";
  const look = `fill="none" stroke="${INK_COLOURS[item.ink]}" stroke-width="${svgNumber(item.width)}"`;
  return `<path ${look} stroke-linejoin="round"${dashes} d="${runs.join("")}"/>\n`;
};

const regionPathData = (region: Region, frame: SvgFrame): string =>
  [region.outline, ...region.holes].map((contour) => contourPathData(contour, frame)).join("");
