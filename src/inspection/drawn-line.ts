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
      edges: laidEdges(loop.edges, lie),
      box: laidBox(loop.box, lie),
      gap: loop.gap,
      chains: loop.chains,
    })),
  );

/** Only the boxes: enough to tell how a file lies. */
export const drawnBoxes = (file: ReadFile, lie: Lie): readonly Extent[] =>
  file.items.flatMap((item) => item.loops.map((loop) => laidBox(loop.box, lie)));

const laidEdges = (edges: readonly Edge[], lie: Lie): readonly Edge[] => {
  const { sheet, mirrored, scale, shift } = lie;
  if (!mirrored && scale === 1) return edges;
  const corner = point(-sheet.minX, -sheet.minY);
  const back = point((mirrored ? sheet.maxX : sheet.minX) + shift.x, sheet.minY + shift.y);
  return edges.map((edge) => {
    const fromCorner = movedEdge(edge, corner);
    return movedEdge(mirrored ? mirroredEdge(fromCorner, 0) : fromCorner, back, 1 / scale);
  });
};

const laidBox = (box: Extent, { sheet, mirrored, scale, shift }: Lie): Extent => {
  const low = (box.minX - sheet.minX) / scale;
  const high = (box.maxX - sheet.minX) / scale;
  const left = mirrored ? sheet.maxX - high : sheet.minX + low;
  const right = mirrored ? sheet.maxX - low : sheet.minX + high;
  const bottom = sheet.minY + (box.minY - sheet.minY) / scale;
  const top = sheet.minY + (box.maxY - sheet.minY) / scale;
  return extent(left + shift.x, bottom + shift.y, right + shift.x, top + shift.y);
};
