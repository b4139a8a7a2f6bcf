// A body of the console cut by the plane of a section: areas of material on the sheet, and lines where its surface is open. Takes a body and the plane (a view and a point in it).

import type { ConsoleBody } from "../fit/console-body.ts";
import { difference, intersection, unionRegions } from "../geometry/boolean.ts";
import { type Contour, type Path, type Point, point, type Region } from "../geometry/contour.ts";
import { contourExtent } from "../geometry/measure.ts";
import { polygon } from "../geometry/shapes.ts";
import type { Solid, SolidLayer } from "../geometry/solid/solid.ts";
import { solidSection } from "../geometry/solid/solid-section.ts";
import { slabsOf } from "../geometry/solid/solid-slabs.ts";
import { turnMatrix } from "../geometry/solid/turn.ts";
import {
  directionIn,
  type Frame,
  frameWithin,
  pointIn,
  pointOut,
} from "../geometry/space/frame.ts";
import { unitVector, type Vector, vector } from "../geometry/space/vector.ts";
import { drawnCorners } from "./console-corners.ts";
import { type ConsoleView, onSheet } from "./console-view.ts";
import { meshCut } from "./mesh-cut.ts";

export interface CutPlane {
  readonly view: ConsoleView;
  readonly through: Vector;
}

export interface BodyCut {
  readonly regions: readonly Region[];
  readonly lines: readonly Path[];
}

/** Nearer than this (a ten-thousandth of a degree) a plane counts as upright in a body's frame, or as level. */
const UPRIGHT = 2e-6;

export const bodyCut = ({ shape, frame }: ConsoleBody, plane: CutPlane): BodyCut => {
  switch (shape.kind) {
    case "recipe":
      return { regions: solidCut(shape.solid, frame, plane), lines: [] };
    case "mesh":
      return meshCut(shape.mesh, {
        normal: plane.view.toward,
        through: plane.through,
        stood: (corner) => pointOut(frame, corner),
        onSheet: (at) => onSheet(plane.view, at),
      });
  }
};

/** Each piece in its own frame: what is turned within another may be cut aslant although the other is not. */
export const solidCut = (solid: Solid, frame: Frame, plane: CutPlane): readonly Region[] => {
  switch (solid.kind) {
    case "composed": {
      const added = unionRegions(solid.add.flatMap((piece) => solidCut(piece, frame, plane)));
      const taken = solid.cut.flatMap((piece) => solidCut(piece, frame, plane));
      return taken.length === 0 ? added : without(added, taken);
    }
    case "placed":
      return solidCut(
        solid.solid,
        frameWithin(frame, { ...turnMatrix(solid.turn), origin: solid.to }),
        plane,
      );
    case "layered":
      return isUpright(frame, plane)
        ? uprightCut(solid, frame, plane)
        : unionRegions(solid.layers.flatMap((layer) => layerCut(layer, frame, plane)));
    case "revolved":
    case "lofted":
      return isUpright(frame, plane)
        ? uprightCut(solid, frame, plane)
        : unionRegions(
            slabsOf(solid).flatMap(({ from, to, regions }) =>
              regions.flatMap((region) => slabCut(region, { from, to }, { frame, plane })),
            ),
          );
  }
};

const isUpright = (frame: Frame, { view }: CutPlane): boolean =>
  Math.abs(directionIn(frame, view.toward).z) < UPRIGHT;

const without = (from: readonly Region[], taken: readonly Region[]): readonly Region[] =>
  taken.reduce(
    (left, { outline, holes }) => [
      ...difference(left, [outline]),
      ...intersection(
        left,
        holes.map((hole) => ({ outline: hole, holes: [] })),
      ),
    ],
    from,
  );

/** The plane holds the body's own upright: the recipe's section, laid on the sheet. */
const uprightCut = (solid: Solid, frame: Frame, { view, through }: CutPlane): readonly Region[] => {
  const normal = directionIn(frame, view.toward);
  const along = unitVector(vector(-normal.y, normal.x, 0));
  const foot = pointIn(frame, through);
  const line = { at: point(foot.x, foot.y), along: { x: along.x, y: along.y } };
  const place = ({ x, y }: Point): Point =>
    onSheet(view, pointOut(frame, vector(foot.x + along.x * x, foot.y + along.y * x, y)));
  return solidSection(solid, line).map((region) => mapped(region, place, view));
};

const mapped = (
  { outline, holes }: Region,
  place: (from: Point) => Point,
  view: ConsoleView,
): Region => {
  const contour = (from: Contour): Contour => polygon(drawnCorners(from, view).map(place));
  return { outline: contour(outline), holes: holes.map(contour) };
};

const layerCut = (
  { from, to, regions }: SolidLayer,
  frame: Frame,
  plane: CutPlane,
): readonly Region[] =>
  regions.flatMap(({ outline, holes }) =>
    slabCut(
      { outline: outline.contour, holes: holes.map(({ contour }) => contour) },
      { from, to },
      { frame, plane },
    ),
  );

/** Aslant: what of the outline lies where the plane runs between the two heights, laid on the plane along the upright. */
const slabCut = (
  region: Region,
  { from, to }: { readonly from: number; readonly to: number },
  { frame, plane }: { readonly frame: Frame; readonly plane: CutPlane },
): readonly Region[] => {
  const normal = directionIn(frame, plane.view.toward);
  const foot = pointIn(frame, plane.through);
  const height = (x: number, y: number): number =>
    foot.z - (normal.x * (x - foot.x) + normal.y * (y - foot.y)) / normal.z;
  const place = ({ x, y }: Point): Point =>
    onSheet(plane.view, pointOut(frame, vector(x, y, height(x, y))));
  const flatContour = (contour: Contour): Contour => polygon(drawnCorners(contour, plane.view));
  const flat = { outline: flatContour(region.outline), holes: region.holes.map(flatContour) };
  const steepness = Math.sqrt(normal.x * normal.x + normal.y * normal.y);
  if (steepness < UPRIGHT)
    return foot.z >= from && foot.z <= to ? [mapped(flat, place, plane.view)] : [];
  return intersection([flat], [band(flat, { from, to }, { normal, foot, steepness })]).map((part) =>
    mapped(part, place, plane.view),
  );
};

/** The strip of the body's own level in which the plane is between the heights, long enough for the outline. */
const band = (
  { outline }: Region,
  { from, to }: { readonly from: number; readonly to: number },
  of: { readonly normal: Vector; readonly foot: Vector; readonly steepness: number },
): Region => {
  const { normal, foot, steepness } = of;
  const box = contourExtent(outline);
  const reach =
    Math.abs(box.minX - foot.x) +
    Math.abs(box.maxX - foot.x) +
    Math.abs(box.minY - foot.y) +
    Math.abs(box.maxY - foot.y);
  const down = { x: normal.x / steepness, y: normal.y / steepness };
  const distance = (height: number): number => ((foot.z - height) * normal.z) / steepness;
  const corner = (height: number, side: number): Point =>
    point(
      foot.x + down.x * distance(height) - down.y * side * reach,
      foot.y + down.y * distance(height) + down.x * side * reach,
    );
  return {
    outline: polygon([corner(from, -1), corner(from, 1), corner(to, 1), corner(to, -1)]),
    holes: [],
  };
};
