// A read file laid out in panel coordinates, seen from the front: what the reader gave, brought to true size and turned
// over where the rear was up. Takes the file and how it lies; gives single lines.

import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { mirroredEdge, movedEdge } from "./edge.ts";
import type { Edge, ReadFile, ReadItem } from "./read-file.ts";

export interface DrawnLine {
  readonly process: string;
  /** Id in an SVG; null in a DXF. */
  readonly name: string | null;
  readonly look: ReadItem["look"];
  readonly edges: readonly Edge[];
  readonly box: Extent;
  readonly gap: number;
  readonly chains: number;
}

/** How the drawn sheet lies over the panel. */
export interface Lie {
  readonly sheet: Extent;
  readonly mirrored: boolean;
  /** Drawn size over true size: 1 in a sound file. */
  readonly scale: number;
  /** Moved by this afterwards; 0, 0 in a sound file. */
  readonly shift: Point;
}

export const drawnLines = (file: ReadFile, lie: Lie): readonly DrawnLine[] =>
  file.items.flatMap((item) =>
    item.loops.map((loop) => ({
      process: item.process,
      name: item.feature,
      look: item.look,
      edges: loop.edges.map((edge) => laidEdge(edge, lie)),
      box: laidBox(loop.box, lie),
      gap: loop.gap,
      chains: loop.chains,
    })),
  );

/** Only the boxes: enough to tell how a file lies. */
export const drawnBoxes = (file: ReadFile, lie: Lie): readonly Extent[] =>
  file.items.flatMap((item) => item.loops.map((loop) => laidBox(loop.box, lie)));

const laidEdge = (edge: Edge, lie: Lie): Edge => {
  const { sheet, shift } = lie;
  const turned = lie.mirrored ? mirroredEdge(edge, 0) : edge;
  const left = lie.mirrored ? sheet.maxX : sheet.minX;
  return movedEdge(turned, point(left + shift.x, sheet.minY + shift.y), 1 / lie.scale);
};

const laidBox = (box: Extent, { sheet, mirrored, scale, shift }: Lie): Extent => {
  const left = mirrored ? sheet.maxX - box.maxX / scale : sheet.minX + box.minX / scale;
  const right = mirrored ? sheet.maxX - box.minX / scale : sheet.minX + box.maxX / scale;
  const [low, high] = [sheet.minY + box.minY / scale, sheet.minY + box.maxY / scale];
  return extent(left + shift.x, low + shift.y, right + shift.x, high + shift.y);
};
