// What a machine runs for one set-up: lines at the middle of the beam, in groups in the order of work, from the lower left
// corner of the sheet with y up. Kerf and the mirror of a set-up with its rear up happen here, once; the writers of the
// single formats only spell it out. Kept by identity: SVG, DXF and R12 of one set-up share one result.

import { comparedTexts } from "../diagnostics/compared-texts.ts";
import type { Contour, Path, Region } from "../geometry/contour.ts";
import { type Extent, extentCentre, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourArea, contourExtent, pathExtent } from "../geometry/measure.ts";
import { fixed } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";
import {
  mirroredContour,
  mirroredPath,
  mirroredRegion,
  placedContour,
  placedPath,
  placedRegion,
  placement,
} from "../geometry/transform.ts";
import type { Operation, Process, SetUp } from "../parts/sheet-part.ts";
import { compensate, type Refusal } from "./kerf.ts";
import { PROCESS_ORDER } from "./process-order.ts";
import { sharedInsets } from "./shared-insets.ts";

export interface MachinePaths {
  readonly kind: "machine-paths";
  /** Size of the sheet. */
  readonly width: Mm;
  readonly height: Mm;
  readonly mirrored: boolean;
  /** Only groups that hold something, in the order of work. */
  readonly groups: readonly ProcessGroup[];
}

export interface ProcessGroup {
  readonly process: Process;
  readonly shapes: readonly MachineShape[];
}

export type MachineShape =
  | { readonly kind: "cut"; readonly feature: string; readonly contour: Contour }
  | { readonly kind: "fill"; readonly feature: string; readonly region: Region }
  | {
      readonly kind: "stroke";
      readonly feature: string;
      readonly path: Path;
      /** Width as cut; the file's line is the middle of it. */
      readonly width: Mm;
    };

export interface RefusedPaths {
  readonly kind: "refused";
  readonly refusals: readonly Refusal[];
}

export const machinePaths = (setUp: SetUp): MachinePaths | RefusedPaths => {
  const known = kept.get(setUp);
  if (known !== undefined) return known;
  const paths = workedOut(setUp);
  kept.set(setUp, paths);
  return paths;
};

const kept = new WeakMap<SetUp, MachinePaths | RefusedPaths>();

const workedOut = (setUp: SetUp): MachinePaths | RefusedPaths => {
  const refusals: Refusal[] = [];
  const inset = sharedInsets();
  const byProcess = new Map<Process, MachineShape[]>(PROCESS_ORDER.map((name) => [name, []]));
  for (const operation of setUp.operations) {
    const compensated = compensate(operation, setUp, inset);
    if (compensated.kind === "refusal") refusals.push(compensated);
    else
      byProcess
        .get(operation.process)
        ?.push(...shapesOf(compensated.operation).map(toSheet(setUp)));
  }
  const groups = PROCESS_ORDER.map((process) => ({
    process,
    shapes: (byProcess.get(process) ?? []).toSorted(inOrderOfWork),
  })).filter((group) => group.shapes.length > 0);
  refusals.push(...doubleLines(groups), ...shapesOffSheet(groups, setUp.sheet));
  if (refusals.length > 0) return { kind: "refused", refusals };
  return {
    kind: "machine-paths",
    width: extentWidth(setUp.sheet),
    height: extentHeight(setUp.sheet),
    mirrored: isRearUp(setUp),
    groups,
  };
};

const isRearUp = (setUp: SetUp): boolean => setUp.faceUp === "rear";

const shapesOf = (operation: Operation): readonly MachineShape[] => {
  const { feature } = operation;
  switch (operation.kind) {
    case "cut":
      return [{ kind: "cut", feature, contour: operation.contour }];
    case "fill":
      return operation.regions.map((region) => ({ kind: "fill", feature, region }));
    case "stroke":
      return operation.paths.map((path) => ({
        kind: "stroke",
        feature,
        path,
        width: operation.width,
      }));
  }
};

/** Panel coordinates, seen from the front, to the sheet as it lies under the tool. */
const toSheet = (setUp: SetUp): ((shape: MachineShape) => MachineShape) => {
  const axis = extentCentre(setUp.sheet).x;
  const shift = placement(-setUp.sheet.minX, -setUp.sheet.minY);
  const mirrors = isRearUp(setUp);
  return (shape) => {
    switch (shape.kind) {
      case "cut": {
        const contour = mirrors ? mirroredContour(shape.contour, axis) : shape.contour;
        return { ...shape, contour: placedContour(contour, shift) };
      }
      case "fill": {
        const region = mirrors ? mirroredRegion(shape.region, axis) : shape.region;
        return { ...shape, region: placedRegion(region, shift) };
      }
      case "stroke": {
        const path = mirrors ? mirroredPath(shape.path, axis) : shape.path;
        return { ...shape, path: placedPath(path, shift) };
      }
    }
  };
};

/** Small openings before large ones, so that nothing is cut out of a piece that is already free; then by name and place. */
const inOrderOfWork = (a: MachineShape, b: MachineShape): number =>
  sizeInOrder(a) - sizeInOrder(b) ||
  comparedTexts(a.feature, b.feature) ||
  byPlace(shapeExtent(a), shapeExtent(b));

const sizeInOrder = (shape: MachineShape): number =>
  shape.kind === "cut" ? Math.abs(contourArea(shape.contour)) : 0;

const byPlace = (a: Extent, b: Extent): number => a.minX - b.minX || a.minY - b.minY;

const shapeExtent = (shape: MachineShape): Extent => {
  switch (shape.kind) {
    case "cut":
      return contourExtent(shape.contour);
    case "fill":
      return contourExtent(shape.region.outline);
    case "stroke":
      return pathExtent(shape.path);
  }
};

/** Digits that two lines are compared in: what the coarsest of the formats writes. */
const PLACES = 4;

const doubleLines = (groups: readonly ProcessGroup[]): readonly Refusal[] => {
  const seen = new Map<string, string>();
  const refusals: Refusal[] = [];
  for (const shape of groups.flatMap((group) => group.shapes)) {
    if (shape.kind !== "cut") continue;
    const line = lineKey(shape.contour);
    const other = seen.get(line);
    if (other !== undefined)
      refusals.push({
        kind: "refusal",
        reason: "same-line",
        feature: shape.feature,
        why: `${other} is cut on the same line`,
      });
    seen.set(line, shape.feature);
  }
  return refusals;
};

/** Bounding box and area in the digits of a file: two cuts that share all five share their line. */
const lineKey = (contour: Contour): string => {
  const box = contourExtent(contour);
  return [box.minX, box.minY, box.maxX, box.maxY, Math.abs(contourArea(contour))]
    .map((value) => fixed(value, PLACES))
    .join(" ");
};

const shapesOffSheet = (groups: readonly ProcessGroup[], sheet: Extent): readonly Refusal[] => {
  const width = fixedNumber(extentWidth(sheet));
  const height = fixedNumber(extentHeight(sheet));
  return groups
    .flatMap((group) => group.shapes)
    .filter((shape) => {
      const box = shapeExtent(shape);
      const low = Math.min(fixedNumber(box.minX), fixedNumber(box.minY));
      return low < 0 || fixedNumber(box.maxX) > width || fixedNumber(box.maxY) > height;
    })
    .map((shape) => ({
      kind: "refusal",
      reason: "off-the-sheet",
      feature: shape.feature,
      why: "its line runs over the edge of the sheet",
    }));
};

const fixedNumber = (value: number): number => Number(fixed(value, PLACES));
