// The recipes of a lamp box and its lid: layers only, so that both have STEP files. The lid's plugs fill the cells' mouths,
// each LED sits in a round seat in it, and each window's number stands on its rear.

import { unionRegions } from "../../geometry/boolean.ts";
import { type Contour, circle, type Region } from "../../geometry/contour.ts";
import { type Extent, grownExtent } from "../../geometry/extent.ts";
import { rectangle, roundedRectangle } from "../../geometry/shapes.ts";
import { type LayeredSolid, layered, type SolidLayer } from "../../geometry/solid/solid.ts";
import { LAMP_BOX_EAR } from "../../layout/lamp-box-plan.ts";
import type { Lettering } from "../../lettering/lettering.ts";
import { HEAT_SET_BOSS } from "../../standards/heat-set.ts";
import { CLEARANCE_HOLES } from "../../standards/metric-fasteners.ts";
import { plainRegion } from "./grown-regions.ts";
import { lampBoxNumbers, NUMBER_RELIEF } from "./lamp-box-numbers.ts";
import type { LampBoxScene, LampBoxSizes } from "./lamp-box-sizes.ts";
import { allowedHole } from "./print-allowance.ts";
import { layerOf } from "./region-sums.ts";

/** Inside corners of cells: a line's own. */
const CELL_CORNER = 0.5;
const OUTSIDE_CORNER = 1;

export const cellContour = (box: Extent): Contour => roundedRectangle(box, CELL_CORNER);

export const lampBoxSolid = (
  sizes: LampBoxSizes,
  { insert, design }: LampBoxScene,
): LayeredSolid => {
  const { plan, cells, shelfDepth, flangeThickness } = sizes;
  const { front, rear } = plan;
  const shelf = front - shelfDepth;
  const flange = design.flange > 0 ? front - flangeThickness : front;
  const bores = pilotHoles(sizes);
  const bored = insert === null ? rear : rear + insert.length + HEAT_SET_BOSS.holeBeyondInsert.most;
  const body = outlineWithEars(sizes, sizes.outside);
  const flanged = outlineWithEars(sizes, grownExtent(sizes.outside, design.flange));
  const openings = cells.map(({ opening }) => cellContour(opening));
  const insides = cells.map(({ inside }) => cellContour(inside));
  return layered(
    between([rear, bored, shelf, flange, front]).map(([from, to]): SolidLayer => {
      const holes = [...(from < shelf ? insides : openings), ...(from < bored ? bores : [])];
      const outline = from < flange ? body : flanged;
      return layerOf(from, to, { regions: [{ outline, holes }], loops: "clear" });
    }),
  );
};

export const lampBoxLid = (
  sizes: LampBoxSizes,
  scene: LampBoxScene,
  lettering: Lettering,
): LayeredSolid => {
  const { plan, cells, lidThickness, plug, lens, rim, clearance } = sizes;
  const { rear } = plan;
  const seats = cells.flatMap(({ leds }) => leds.map((at) => circle(at, rim.modelled / 2)));
  const plate: Region = {
    outline: outlineWithEars(sizes, sizes.outside),
    holes: [...seats, ...screwHoles(sizes, scene)],
  };
  const plugs = cells.map(({ inside, leds }) => ({
    outline: cellContour(grownExtent(inside, -clearance)),
    holes: leds.map((at) => circle(at, lens.modelled / 2)),
  }));
  const numbers = lampBoxNumbers(sizes, lettering).flatMap(({ regions }) => regions);
  const plateRear = rear - lidThickness;
  return layered([
    ...(numbers.length === 0
      ? []
      : [layerOf(plateRear - NUMBER_RELIEF, plateRear, { regions: numbers, loops: "exact" })]),
    layerOf(plateRear, rear, { regions: [plate], loops: "exact" }),
    layerOf(rear, rear + plug, { regions: plugs, loops: "exact" }),
  ]);
};

const between = (heights: readonly number[]): readonly (readonly [number, number])[] => {
  const steps = [...new Set(heights)].sort((a, b) => a - b);
  return steps.slice(1).map((to, index) => [steps[index]!, to] as const);
};

const pilotHoles = ({ plan, pilot }: LampBoxSizes): readonly Contour[] =>
  pilot === null ? [] : plan.ears.map((ear) => circle(ear, pilot.modelled / 2));

const screwHoles = ({ plan }: LampBoxSizes, { printer }: LampBoxScene): readonly Contour[] => {
  const hole = allowedHole(CLEARANCE_HOLES.m2.medium, "ISO 273, medium", printer);
  return plan.ears.map((ear) => circle(ear, hole.modelled / 2));
};

/** The bosses bite into the wall, so that box and bosses are one outline. */
const outlineWithEars = ({ plan }: LampBoxSizes, box: Extent): Contour => {
  const ears = plan.ears.map((ear) => plainRegion(circle(ear, LAMP_BOX_EAR / 2)));
  const whole = unionRegions([plainRegion(roundedRectangle(box, OUTSIDE_CORNER)), ...ears]);
  return whole[0]?.outline ?? rectangle(box);
};
