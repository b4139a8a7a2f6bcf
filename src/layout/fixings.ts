// What holds the stack together and registers it: screws round the edge and two dowels that fit only one way.
// Where the design gives no places, they are set by a house rule: along an inset rectangle, at most `span` apart,
// each moved along its side to the nearest free spot.

import type { FixingsDesign, PlaceDesign } from "../design/panel-design.ts";
import type { Span } from "../diagnostics/finding.ts";
import { type Contour, circle, type Point, point } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import type { Extent } from "../geometry/extent.ts";
import { extentsOverlap, grownExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { CLEARANCE_HOLES } from "../standards/metric-fasteners.ts";
import type { MountFrame } from "./mount-frame.ts";
import type { PlacedFixing } from "./panel-layout.ts";

/** Stack fixings at most 60 to 80 mm apart: common practice for 3 mm acrylic. */
const SPAN = 75;
/** Web left between a fixing and whatever it stands beside: common practice, one sheet thickness. */
const CLEAR = 3;
/** Step and reach of the search for a free spot. */
const STEP = 1;
const SEARCH_REACH = 36;
/** How far the slotted dowel lies out of the round one's mirror place, so that no layer goes in turned or flipped. */
const UNEVEN = 9.525;

export interface FixingScene {
  readonly frame: MountFrame;
  /** Everything that a fixing must stay clear of: cut-outs and bodies, any layer. */
  readonly obstacles: readonly Contour[];
  readonly placeOf: (place: PlaceDesign) => Point | null;
}

export const placeFixings = (
  design: FixingsDesign,
  scene: FixingScene,
): readonly PlacedFixing[] => {
  const span = design.written.span;
  const screwDiameter = CLEARANCE_HOLES[design.screws].medium;
  const dowels = dowelPlaces(design, scene).map(
    (at, index): PlacedFixing => ({
      id: `dowel.${index + 1}`,
      kind: index === 0 ? "dowel-round" : "dowel-slotted",
      at,
      diameter: design.dowels,
      span,
    }),
  );
  const taken = dowels.map(({ at, diameter }) => circle(at, diameter / 2));
  const screws = screwPlaces(design, screwDiameter, {
    ...scene,
    obstacles: [...scene.obstacles, ...taken],
  });
  return [
    ...screws.map((at, index) => screw(at, index, { diameter: screwDiameter, span })),
    ...dowels,
  ];
};

const screw = (
  at: Point,
  index: number,
  options: { readonly diameter: Mm; readonly span: Span },
): PlacedFixing => ({ id: `fixing.${index + 1}`, kind: "screw", at, ...options });

const screwPlaces = (design: FixingsDesign, diameter: Mm, scene: FixingScene): readonly Point[] => {
  if (design.at !== null) return givenPlaces(design.at, scene);
  const box = fixingBox(scene.frame, diameter);
  const placed: Point[] = [];
  for (const wanted of aroundBox(box)) {
    const obstacles = [...scene.obstacles, ...placed.map((at) => circle(at, diameter / 2))];
    placed.push(nearestFree(wanted, diameter / 2, { box, obstacles }));
  }
  return placed;
};

const dowelPlaces = (design: FixingsDesign, scene: FixingScene): readonly Point[] => {
  if (design.dowelsAt !== null) return givenPlaces(design.dowelsAt, scene);
  const box = fixingBox(scene.frame, design.dowels);
  const third = (box.maxY - box.minY) / 3;
  const low = point(box.minX, box.minY + third);
  const high = point(box.maxX, Math.min(box.maxY, box.maxY - third + UNEVEN));
  const first = nearestFree(low, design.dowels / 2, { box, obstacles: scene.obstacles });
  const rest = [...scene.obstacles, circle(first, design.dowels / 2)];
  return [first, nearestFree(high, design.dowels / 2, { box, obstacles: rest })];
};

const givenPlaces = (places: readonly PlaceDesign[], scene: FixingScene): readonly Point[] =>
  places.map(scene.placeOf).filter((at): at is Point => at !== null);

/** The rectangle that fixings stand on: clear of the rails and of the outline. */
const fixingBox = (frame: MountFrame, diameter: number): Extent => {
  const rail = frame.rails[0] === undefined ? 0 : frame.rails[0].maxX - frame.rails[0].minX;
  const outline = contourExtent(frame.outline);
  const side = Math.max(rail, outline.minX) + CLEAR + diameter / 2;
  const end = outline.minY + CLEAR + diameter / 2;
  return {
    minX: mm(side),
    minY: mm(end),
    maxX: mm(frame.nominal.maxX - side),
    maxY: mm(frame.nominal.maxY - end),
  };
};

/** Corners, and points between them so that none lies farther than SPAN from the next. */
const aroundBox = (box: Extent): readonly Point[] => {
  const columns = divided(box.minX, box.maxX);
  const rows = divided(box.minY, box.maxY);
  const inner = rows.slice(1, -1);
  return [
    ...columns.map((x) => point(x, box.minY)),
    ...inner.flatMap((y) => [point(box.minX, y), point(box.maxX, y)]),
    ...columns.map((x) => point(x, box.maxY)),
  ];
};

const divided = (low: number, high: number): readonly number[] => {
  const gaps = Math.max(1, Math.ceil((high - low) / SPAN));
  return Array.from({ length: gaps + 1 }, (_, index) => low + ((high - low) * index) / gaps);
};

/** The free spot nearest to `wanted` inside the box; `wanted` itself where there is none within reach. */
const nearestFree = (
  wanted: Point,
  radius: number,
  options: { readonly box: Extent; readonly obstacles: readonly Contour[] },
): Point => {
  const { box } = options;
  const isFree = freeSpot(radius, options.obstacles);
  for (const [dx, dy] of SEARCH) {
    const spot = point(wanted.x + dx, wanted.y + dy);
    const isInside =
      spot.x >= box.minX && spot.x <= box.maxX && spot.y >= box.minY && spot.y <= box.maxY;
    if (isInside && isFree(spot)) return spot;
  }
  return wanted;
};

/** Offsets on a grid, nearest first; of two as near, the one along the edges before the one across. */
const SEARCH: readonly (readonly [number, number])[] = (() => {
  const steps = Math.round(SEARCH_REACH / STEP);
  const offsets: [number, number][] = [];
  for (let column = -steps; column <= steps; column += 1)
    for (let row = -steps; row <= steps; row += 1) offsets.push([column * STEP, row * STEP]);
  return offsets.sort((a, b) => a[0] * a[0] + a[1] * a[1] - (b[0] * b[0] + b[1] * b[1]));
})();

const freeSpot = (radius: number, obstacles: readonly Contour[]): ((spot: Point) => boolean) => {
  const boxed = obstacles.map((contour) => ({ contour, box: contourExtent(contour) }));
  return (spot) => {
    const own = circle(spot, radius);
    const zone = grownExtent(contourExtent(own), CLEAR);
    return boxed.every(({ contour, box }) => {
      if (!extentsOverlap(zone, box)) return true;
      const { gap, overlaps } = contourDistance(own, contour);
      return !overlaps && gap >= CLEAR;
    });
  };
};
