// The pieces of a frame as a list: number, name, size, grain and section, and which of them are alike.

import { extent, extentHeight, extentWidth, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { decimal } from "../geometry/number.ts";
import type { Lettering } from "../lettering/lettering.ts";
import type { ConsoleFrame, FramePart } from "../parts/frame/frame-part.ts";
import type { Drawing } from "./drawing.ts";
import { type Column, tableBlock } from "./text-blocks.ts";
import { paperFace } from "./words.ts";

const COLUMNS: readonly Column[] = [
  { title: "No.", share: 0.06, align: "end" },
  { title: "Piece", share: 0.3, align: "start" },
  { title: "Sheet", share: 0.18, align: "start" },
  { title: "Along the grain x across, mm", share: 0.26, align: "start" },
  { title: "Holes", share: 0.08, align: "end" },
  { title: "Section", share: 0.12, align: "end" },
];

const WIDTH = 170;
const MARGIN = 5;

export const frameList = (
  frame: ConsoleFrame,
  options: { readonly title: string; readonly lettering: Lettering },
): Drawing => {
  const table = { columns: COLUMNS, rows: frame.parts.map(rowOf) };
  const block = tableBlock(paperFace(options.lettering), table, { left: 0, top: 0, width: WIDTH });
  return {
    title: `${options.title}: pieces of the frame`,
    box: grownExtent(extent(0, block.box.minY, WIDTH, 0), MARGIN),
    items: block.items,
  };
};

const rowOf = (part: FramePart): readonly string[] => [
  `${part.number}`,
  part.title,
  `${part.stock.id}, ${decimal(part.thickness, 2)}`,
  sizeOf(part),
  `${part.holes.length}`,
  `${part.section}`,
];

/** Along the grain first; the longer side first where there is none. */
const sizeOf = ({ region, grain }: FramePart): string => {
  const box = contourExtent(region.outline);
  const [x, y] = [extentWidth(box), extentHeight(box)];
  const isXFirst = grain === null ? x >= y : grain === "x";
  const [along, across] = isXFirst ? [x, y] : [y, x];
  return `${decimal(along, 1)} x ${decimal(across, 1)}`;
};
