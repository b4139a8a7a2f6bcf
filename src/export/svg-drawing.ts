// A drawing as an SVG for the screen and the README: millimetres, y down, a paper background, text already outlines.
// Takes the drawing, gives the file's text. Only its title is words; they are escaped.

import type { Drawing, DrawingItem } from "../drawings/drawing.ts";
import type { Region } from "../geometry/contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { DASHES, INK_COLOURS } from "./ink-colours.ts";
import { contourPathData, openPathData, type SvgFrame, svgNumber } from "./svg-path.ts";
import { xmlText } from "./xml-text.ts";

export const svgDrawing = (drawing: Drawing): string => {
  const width = svgNumber(extentWidth(drawing.box));
  const height = svgNumber(extentHeight(drawing.box));
  const frame: SvgFrame = { left: drawing.box.minX, top: drawing.box.maxY };
  const title = xmlText(drawing.title);
  return [
    `<?xml version="1.0" encoding="UTF-8"?>\n`,
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" aria-label="${title}">\n`,
    `<title>${title}</title>\n`,
    `<path fill="${INK_COLOURS.paper}" stroke="none" d="M0 0H${width}V${height}H0Z"/>\n`,
    ...drawing.items.map((item) => itemElement(item, frame)),
    "</svg>\n",
  ].join("");
};

const itemElement = (item: DrawingItem, frame: SvgFrame): string => {
  const colour = INK_COLOURS[item.ink];
  switch (item.kind) {
    case "fill": {
      // A path a region: even-odd over several would cut holes where two of them overlap.
      const paths = item.regions.map((region) => `<path d="${regionPathData(region, frame)}"/>`);
      return `<g fill="${colour}" fill-rule="evenodd" stroke="none">${paths.join("")}</g>\n`;
    }
    case "outline": {
      const data = item.contours.map((contour) => contourPathData(contour, frame)).join("");
      return `<path ${strokeLook(item)} d="${data}"/>\n`;
    }
    case "stroke": {
      const data = item.paths.map((path) => openPathData(path, frame)).join("");
      return `<path ${strokeLook(item)} d="${data}"/>\n`;
    }
  }
};

const regionPathData = (region: Region, frame: SvgFrame): string =>
  [region.outline, ...region.holes].map((contour) => contourPathData(contour, frame)).join("");

const strokeLook = (item: Exclude<DrawingItem, { readonly kind: "fill" }>): string => {
  const dashes = item.dashed ? ` stroke-dasharray="${DASHES.join(" ")}"` : "";
  return `fill="none" stroke="${INK_COLOURS[item.ink]}" stroke-width="${svgNumber(item.width)}" stroke-linejoin="round"${dashes}`;
};
