// A panel from the front as the page draws it: shapes as path data in millimetres, y down, one piece for each sheet, component
// and marking. Made in the worker. Data of a shape that is a shifted copy of one met before is not written again.

import type { DrawingItem, Ink } from "../../src/drawings/drawing.ts";
import { faceLook } from "../../src/drawings/face-look.ts";
import { type FacePiece, facePieces, seenExtents } from "../../src/drawings/face-view.ts";
import { firstPlace, type Outlines } from "../../src/export/shifted-copy.ts";
import { circle, type Point } from "../../src/geometry/contour.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { madeOnce, madeOnceWith } from "../../src/geometry/made-once.ts";
import { offsetContour } from "../../src/geometry/offset.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { shapeOf } from "../../src/layout/component-shape.ts";
import type { PanelLayout, PlacedComponent } from "../../src/layout/panel-layout.ts";
import { separation } from "../../src/standards/separation.ts";
import { contourData } from "../contour-path.ts";
import type { ShapeData } from "./shape-data.ts";

export interface PanelPicture {
  readonly face: Ink;
  readonly sheets: readonly PictureSheet[];
  /** In the order of painting. */
  readonly pieces: readonly PicturePiece[];
  /** What is seen of each component from the front, by id. */
  readonly boxes: Readonly<Record<string, Extent>>;
  readonly keepOuts: readonly KeepOut[];
}

export interface PictureSheet {
  readonly id: string;
  readonly outline: string;
  /** Its openings, as one piece of path data. */
  readonly openings: string;
}

export interface PicturePiece {
  readonly kind: "component" | "marking";
  readonly id: string;
  readonly owner: string;
  readonly shapes: readonly PictureShape[];
}

export interface PictureShape {
  readonly data: string;
  /** Where the data's own origin stands. */
  readonly x: number;
  readonly y: number;
  readonly ink: Ink;
  /** null: an area. */
  readonly width: number | null;
  readonly dashed: boolean;
}

export interface KeepOut {
  readonly kind: "rail" | "spanner" | "hand";
  readonly owner: string;
  readonly data: string;
}

export function panelPicture(layout: PanelLayout, data: ShapeData): PanelPicture {
  const look = faceLook(layout.layers[0]);
  return {
    face: look.face,
    sheets: layout.layers.map(({ id, outline, cutOuts }) => ({
      id,
      outline: outlineData(outline),
      openings: cutOuts.map(({ contour }) => outlineData(contour)).join(""),
    })),
    pieces: facePieces(layout, "picture", look.legend).map((piece) => pictured(piece, { data })),
    boxes: Object.fromEntries(seenExtents(layout).map(([{ id }, box]) => [id, box])),
    keepOuts: keepOutsOf(layout),
  };
}

const outlineData = madeOnce(contourData);

const pictured = madeOnceWith(
  (
    { kind, id, owner, items }: FacePiece,
    { data }: { readonly data: ShapeData },
  ): PicturePiece => ({
    kind,
    id,
    owner,
    shapes: items.flatMap((item) => shapesOf(item, data)),
  }),
);

export function shapesOf(item: DrawingItem, data: ShapeData): readonly PictureShape[] {
  const { ink } = item;
  switch (item.kind) {
    case "fill":
      return item.regions.map((region) => {
        const outlines = [region.outline, ...region.holes];
        const at = firstPlace(outlines);
        return { ...placed(at), data: data(outlines), ink, width: null, dashed: false };
      });
    case "outline":
    case "stroke": {
      const runs: readonly Outlines[] =
        item.kind === "outline"
          ? item.contours.map((contour) => [contour])
          : item.paths.map((path) => [path]);
      return runs.map((outlines) => ({
        ...placed(firstPlace(outlines)),
        data: data(outlines),
        ink,
        width: item.width,
        dashed: item.dashed,
      }));
    }
  }
}

const placed = ({ x, y }: Point): { readonly x: number; readonly y: number } => ({ x, y: -y });

function keepOutsOf(layout: PanelLayout): readonly KeepOut[] {
  const rails = layout.rails.map(
    (box, index): KeepOut => ({
      kind: "rail",
      owner: `rail ${index + 1}`,
      data: contourData(rectangle(box)),
    }),
  );
  return [
    ...rails,
    ...layout.components.flatMap(spannerRoom),
    ...layout.components.flatMap(handRoom),
  ];
}

const spannerRoom = madeOnce(
  ({ id, at, part }: PlacedComponent): readonly KeepOut[] =>
    part.hold.kind === "bush"
      ? [{ kind: "spanner", owner: id, data: contourData(circle(at, part.hold.spanner / 2)) }]
      : [],
  shapeOf,
);

/** Half the distance to another of its own kind: where two such rooms meet, hands have what the table asks for. */
const handRoom = madeOnce(({ id, grasp, part }: PlacedComponent): readonly KeepOut[] => {
  const rule = separation(part.hand, part.hand);
  if (grasp === null || rule === null) return [];
  const room = offsetContour(grasp, rule.least / 2);
  return room.kind === "offset"
    ? [{ kind: "hand", owner: id, data: contourData(room.contour) }]
    : [];
}, shapeOf);
