// The sizes behind a cut file: what is to be had when it is finished, what leaves the machine, and, to be seen at all, where the
// beam would run if its kerf were several times as wide. Takes a sheet part, gives path data for each of its files.

import { machinePaths } from "../../src/export/machine-paths.ts";
import { contourPathData } from "../../src/export/svg-path.ts";
import type { Contour } from "../../src/geometry/contour.ts";
import {
  type Extent,
  extent,
  extentCentre,
  extentHeight,
  extentWidth,
} from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { mirroredContour } from "../../src/geometry/transform.ts";
import type { LayerLayout } from "../../src/layout/panel-layout.ts";
import { setUpName } from "../../src/pack/cut-files.ts";
import type { KerfSetting, SetUp, SheetPart } from "../../src/parts/sheet-part.ts";
import { contourWords } from "./cut-rows.ts";
import type { CutSizes } from "./pack-messages.ts";

/** `layer`: of the panel that it is part of; null where finished and cut sizes are one. */
export const cutSizes = (
  part: SheetPart,
  layer: LayerLayout | null,
): readonly (readonly [string, CutSizes])[] =>
  part.setUps.flatMap((setUp) => {
    const stem = `cut/${setUpName(part, setUp)}`;
    const sizes = setUpSizes(setUp, layer);
    return [".svg", ".dxf", ".r12.dxf"].map((ending) => [`${stem}${ending}`, sizes] as const);
  });

const setUpSizes = (setUp: SetUp, layer: LayerLayout | null): CutSizes => {
  const cuts = setUp.operations.filter((operation) => operation.kind === "cut");
  const features = new Set(cuts.map(({ feature }) => feature));
  const finished = (layer?.cutOuts ?? []).filter(({ id }) => features.has(id));
  const outline = cuts.some(({ process }) => process === "cut-outer") ? layer?.outline : undefined;
  const isPainted = layer !== null && layer.holePaint.nominal > 0;
  const draw = (contours: readonly Contour[]): string =>
    contours.map((contour) => onSheet(contour, setUp)).join("");
  const shapes = [
    ...finished.map(({ contour }) => contour),
    ...(outline === undefined ? [] : [outline]),
  ];
  return {
    width: extentWidth(setUp.sheet),
    height: extentHeight(setUp.sheet),
    isRearUp: setUp.faceUp === "rear",
    setUp: setUp.id,
    instructions: setUp.instructions,
    kerf: setUp.kerf.kind === "in-file" ? setUp.kerf.kerf : null,
    cut: draw(cuts.map(({ contour }) => contour)),
    finished: isPainted && shapes.length > 0 ? draw(shapes) : null,
    wide: wideKerf(setUp),
    features: cuts.map(({ feature, process, contour }) => {
      const whole = process === "cut-outer" ? layer?.outline : undefined;
      const own = finished.find(({ id }) => id === feature)?.contour ?? whole;
      return {
        feature,
        box: boxOnSheet(contour, setUp),
        cut: contourWords(contour),
        finished: own === undefined ? null : contourWords(own),
      };
    }),
  };
};

const boxOnSheet = (contour: Contour, { faceUp, sheet }: SetUp): Extent => {
  const { minX, maxX, minY, maxY } = contourExtent(contour);
  const [left, right] =
    faceUp === "rear"
      ? [sheet.maxX - maxX, sheet.maxX - minX]
      : [minX - sheet.minX, maxX - sheet.minX];
  return extent(left, minY - sheet.minY, right, maxY - sheet.minY);
};

/** To the sheet as it lies under the tool, y down from its upper edge. */
const onSheet = (contour: Contour, { faceUp, sheet }: SetUp): string =>
  contourPathData(faceUp === "rear" ? mirroredContour(contour, extentCentre(sheet).x) : contour, {
    left: sheet.minX,
    top: sheet.maxY,
  });

/** Times that a kerf of a few tenths is to be seen at; less where an opening would close. */
const TIMES = [10, 5, 3];

const wideKerf = (setUp: SetUp): CutSizes["wide"] => {
  const { kerf } = setUp;
  if (kerf.kind === "left-to-cutter") return null;
  const operations = setUp.operations.filter(({ kind }) => kind === "cut");
  for (const times of TIMES) {
    const paths = machinePaths({ ...setUp, operations, kerf: widened(kerf, times) });
    if (paths.kind === "refused") continue;
    const contours = paths.groups
      .flatMap(({ shapes }) => shapes)
      .flatMap((shape) => (shape.kind === "cut" ? [shape.contour] : []));
    const frame = { left: 0, top: paths.height };
    return { times, line: contours.map((contour) => contourPathData(contour, frame)).join("") };
  }
  return null;
};

const widened = (
  kerf: Extract<KerfSetting, { readonly kind: "in-file" }>,
  times: number,
): KerfSetting => ({
  ...kerf,
  kerf: mm(kerf.kerf * times),
  x: mm(kerf.x * times),
  y: mm(kerf.y * times),
});
