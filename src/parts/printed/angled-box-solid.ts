// The recipe of an angled box in the panel's coordinates: the face with its opening and bosses as layers, walls and flange
// made upright on the console and turned under it.

import { type Contour, circle } from "../../geometry/contour.ts";
import {
  composed,
  layered,
  placed,
  prism,
  type Solid,
  solidRegion,
} from "../../geometry/solid/solid.ts";
import type { AngledBoxPlan, AngledBoxScene } from "./angled-box-plan.ts";
import { slopedWalls } from "./angled-box-walls.ts";
import { plainRegion } from "./grown-regions.ts";
import { layerOf } from "./region-sums.ts";

/**
 * How far the walls go into the face. On a slope, numbers are rounded, and parts that should just touch may miss each
 * other by half a micrometre and print as two. The volume counts this bite twice: 0.02 % of a box.
 */
const BITE = 0.02;

export const angledBoxSolid = (plan: AngledBoxPlan, scene: AngledBoxScene): Solid =>
  composed([faceSolid(plan, scene), turnedUnder(plan, scene, standing(plan))]);

const faceSolid = (plan: AngledBoxPlan, { layout }: AngledBoxScene): Solid => {
  const { front, underside, holeEnd, bossEnd } = plan.heights;
  const places = layout.mountHoles.map(({ at }) => at);
  const bosses = places.map((at) => circle(at, plan.boss.outside / 2));
  const bore = (at: (typeof places)[number]): Contour => circle(at, plan.boss.hole.modelled / 2);
  const bored = places.map((at, index) => ({ outline: bosses[index]!, holes: [bore(at)] }));
  const face = { outline: plan.face, holes: [plan.openingContour, ...places.map(bore)] };
  const clear = "clear" as const;
  return layered([
    layerOf(bossEnd, holeEnd, { regions: bosses.map(plainRegion), loops: clear }),
    layerOf(holeEnd, underside, { regions: bored, loops: clear }),
    layerOf(underside, front, { regions: [face], loops: clear }),
  ]);
};

/** Upright on the console: the flange, and on it the walls up to the face. */
const standing = (plan: AngledBoxPlan): Solid => {
  const { flange, inner, outer, flangeThickness, flangeHoles, flangeHole, slope } = plan;
  const holes = flangeHoles.map((at) => circle(at, flangeHole.modelled / 2));
  const foot = prism(
    0,
    flangeThickness,
    solidRegion({ outline: flange, holes: [inner, ...holes] }),
  );
  const walls = slopedWalls({
    outer,
    inner,
    foot: flangeThickness,
    topAt: (y) => plan.undersideAt(y) + BITE / slope.cosine,
  });
  return composed([foot, ...walls]);
};

const turnedUnder = (plan: AngledBoxPlan, { design }: AngledBoxScene, solid: Solid): Solid => {
  const { middle, heights, undersideAt } = plan;
  const { cosine, sine } = plan.slope;
  const { x, y } = middle.console;
  const z = undersideAt(y);
  return placed(
    solid,
    {
      x: middle.panel.x - x,
      y: middle.panel.y - (y * cosine + z * sine),
      z: heights.underside + y * sine - z * cosine,
    },
    { x: -design.slope },
  );
};
