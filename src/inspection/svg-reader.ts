// Reads a written SVG cut file: its statements, its units, and every path under the group that it stands in.
// Takes the text; gives a ReadFile with y turned upward. What has no place in a cut file is listed as a stranger.

import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { edgeOfCircle } from "./edge.ts";
import { loopOfEdges } from "./loop.ts";
import { type MarkupPiece, markupPieces } from "./markup.ts";
import { loopsOfPathData } from "./path-data.ts";
import type { ReadFile, ReadItem, ReadLoop, ReadUnits } from "./read-file.ts";
import { statementsIn } from "./statements.ts";
import { loopsOfPath } from "./svg-path.ts";

export const readSvg = (text: string, corner: Point): ReadFile => {
  const pieces = markupPieces(text);
  const root = pieces.find((piece) => piece.kind === "open" && piece.name === "svg");
  const page = pageOf(root?.kind === "open" ? root.attributes : new Map());
  const read = drawnThings(pieces, zeroOf(page.box, corner));
  return {
    format: "svg",
    statements: statementsIn(read.words.flatMap((words) => words.split("\n"))),
    units: page.units,
    items: read.items,
    strangers: read.strangers,
  };
};

interface Page {
  readonly units: ReadUnits;
  readonly box: Extent;
}

/** Width and height carry the unit; the viewBox says how many of the file's numbers they are. */
const pageOf = (attributes: ReadonlyMap<string, string>): Page => {
  const width = attributes.get("width") ?? "none";
  const height = attributes.get("height") ?? "none";
  const viewBox = attributes.get("viewBox") ?? "none";
  const [x = 0, y = 0, across = 0, up = 0] = viewBox.split(/[\s,]+/).map(Number);
  const perUnit = [inMillimetres(width) / across, inMillimetres(height) / up];
  const known = perUnit.every((value) => Number.isFinite(value) && value > 0);
  return {
    units: {
      stated: `${width} x ${height}, viewBox ${viewBox}`,
      millimetres: known ? Math.max(...perUnit) : null,
      sheet: known ? extent(0, 0, across, up) : null,
    },
    box: Number.isFinite(x + y + across + up) ? extent(x, y, x + across, y + up) : NO_PAGE,
  };
};

const NO_PAGE = extent(0, 0, 0, 0);

/** NaN where the size is not written in millimetres. */
const inMillimetres = (size: string): number =>
  size.endsWith("mm") ? Number(size.slice(0, -2)) : Number.NaN;

interface DrawnThings {
  readonly items: readonly ReadItem[];
  readonly words: readonly string[];
  readonly strangers: readonly string[];
}

const SILENT: readonly string[] = ["svg", "g", "title", "desc", "metadata", "path", "circle"];

interface OpenTag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

const drawnThings = (pieces: readonly MarkupPiece[], zero: Point): DrawnThings => {
  const items: ReadItem[] = [];
  const words: string[] = [];
  const strangers: string[] = [];
  const open: OpenTag[] = [];
  for (const piece of pieces) {
    switch (piece.kind) {
      case "close":
        open.pop();
        break;
      case "text":
        if (open[open.length - 1]?.name === "desc") words.push(piece.text);
        break;
      case "open":
        strangers.push(...strangersOf(piece));
        if (isDrawn(piece)) items.push(itemOf(piece, [...open, piece], zero));
        if (!piece.isEmpty) open.push(piece);
        break;
    }
  }
  return { items, words, strangers };
};

const isDrawn = (tag: OpenTag): boolean => tag.name === "path" || tag.name === "circle";

const strangersOf = (tag: OpenTag): readonly string[] => {
  const name = tag.attributes.get("id") ?? tag.name;
  const found = SILENT.includes(tag.name) ? [] : [`<${tag.name}>`];
  return tag.attributes.has("transform") ? [...found, `transform on ${name}`] : found;
};

const itemOf = (tag: OpenTag, tags: readonly OpenTag[], zero: Point): ReadItem => {
  const group = tags.findLast(({ name, attributes }) => name === "g" && attributes.has("id"));
  const look = lookOf(tags);
  return {
    process: group?.attributes.get("id") ?? "none",
    feature: tag.attributes.get("id") ?? null,
    loops: loopsOfTag(tag, look, zero),
    look,
  };
};

/** SVG 2, sections 13.2 and 13.4: what says nothing is filled and has no stroke. */
const lookOf = (tags: readonly OpenTag[]): NonNullable<ReadItem["look"]> => {
  const isFilled = inherited(tags, "fill") !== "none";
  const isStroked = (inherited(tags, "stroke") ?? "none") !== "none";
  if (isFilled) return isStroked ? "both" : "fill";
  return isStroked ? "line" : "none";
};

const inherited = (tags: readonly OpenTag[], property: string): string | undefined =>
  tags.findLast(({ attributes }) => attributes.has(property))?.attributes.get(property);

/** Cuts, which are closed lines, are read by makerjs; letters and strokes, of which there are thousands, by the quick reader. */
const loopsOfTag = (tag: OpenTag, look: ReadItem["look"], zero: Point): readonly ReadLoop[] => {
  if (tag.name === "path") {
    const data = tag.attributes.get("d") ?? "";
    const isCut = look === "line" && /z\s*$/i.test(data);
    return (isCut ? null : loopsOfPathData(data, zero)) ?? loopsOfPath(data, zero);
  }
  const value = (name: string): number => Number(tag.attributes.get(name) ?? Number.NaN);
  const centre = point(zero.x + value("cx"), zero.y - value("cy"));
  const circle = loopOfEdges([edgeOfCircle(centre, value("r"))]);
  return circle === null || !Number.isFinite(circle.box.minX) ? [] : [circle];
};

/** Where the file's own zero lies, once its lower left corner lies at `corner`. */
const zeroOf = (page: Extent, corner: Point): Point =>
  point(corner.x - page.minX, corner.y + page.maxY);
