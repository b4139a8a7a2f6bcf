// What holds the stack together and registers it: screws round the edge and two dowels that fit only one way.
// Where the design gives no places they are set by a house rule: along an inset rectangle, each moved to the nearest
// free spot, and further ones between any two that came to lie too far apart. Where all is taken none is set, and said.

import type { FixingsDesign } from "../design/panel-design.ts";
import type { Span } from "../diagnostics/finding.ts";
import { circle, type Point, point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { CLEARANCE_HOLES } from "../standards/metric-fasteners.ts";
import { freeSpot, type SearchField } from "./free-spot.ts";
import { type MountFrame, railWidth } from "./mount-frame.ts";
import { contourObstacle, type Obstacle } from "./obstacle.ts";
import type { PlacedFixing } from "./panel-layout.ts";
import type { PlaceFinder } from "./place-finder.ts";

/** Stack fixings at most 60 to 80 mm apart: common practice for 3 mm acrylic. Set at the middle, borne to the end. */
const SPAN = 75;
const MOST_APART = 80;
/** Web left between a fixing and whatever it stands beside: common practice, one sheet thickness. */
const CLEAR = 3;
/** How far the slotted dowel lies out of the round one's mirror place, so that no layer goes in turned or flipped. */
const UNEVEN = 9.525;

export interface FixingScene {
  readonly frame: MountFrame;
  /** Everything that a fixing must stay clear of: cut-outs and bodies in any layer, markings. */
  readonly obstacles: readonly Obstacle[];
  readonly finder: Pick<PlaceFinder, "placeOf" | "placesOf">;
}

export interface SetFixings {
  readonly fixings: readonly PlacedFixing[];
  /** Where one was wanted and no free spot lay within reach. */
  readonly unset: readonly { readonly kind: "screw" | "dowel"; readonly near: Point }[];
}

export const placeFixings = (design: FixingsDesign, scene: FixingScene): SetFixings => {
  const { span } = design.written;
  const dowels = dowelPlaces(design, scene);
  const taken = dowels.places.map((at) => contourObstacle(circle(at, design.dowels / 2)));
  const diameter = CLEARANCE_HOLES[design.screws].medium;
  const obstacles = [...scene.obstacles, ...taken];
  const screws = screwPlaces(design, diameter, { ...scene, obstacles });
  return {
    fixings: [
      ...screws.groups.flatMap((group, index) => {
        const before = screws.groups.slice(0, index).flat().length;
        const entry = entryOf(before + 1, before + group.length);
        return group.map((at, each) => screw(at, before + each, { diameter, span, entry }));
      }),
      ...dowels.places.map((at, index) => dowel(at, index, { diameter: design.dowels, span })),
    ],
    unset: [
      ...screws.unset.map((near) => ({ kind: "screw" as const, near })),
      ...dowels.unset.map((near) => ({ kind: "dowel" as const, near })),
    ],
  };
};

interface Sized {
  readonly diameter: Mm;
  readonly span: Span;
}

/** Several that are set out together are moved as one. */
const entryOf = (first: number, last: number): string =>
  first === last ? `fixing.${first}` : `fixing.${first}-${last}`;

const screw = (
  at: Point,
  index: number,
  sized: Sized & Pick<PlacedFixing, "entry">,
): PlacedFixing => ({ id: `fixing.${index + 1}`, kind: "screw", at, ...sized });

const dowel = (at: Point, index: number, sized: Sized): PlacedFixing => ({
  id: `dowel.${index + 1}`,
  entry: `dowel.${index + 1}`,
  kind: index === 0 ? "dowel-round" : "dowel-slotted",
  at,
  ...sized,
});

interface Places {
  readonly places: readonly Point[];
  readonly unset: readonly Point[];
}

interface ScrewPlaces {
  /** Those of one row or ring together, each other one by itself. */
  readonly groups: readonly (readonly Point[])[];
  readonly unset: readonly Point[];
}

const screwPlaces = (design: FixingsDesign, diameter: Mm, scene: FixingScene): ScrewPlaces => {
  const { placesOf } = scene.finder;
  if (design.at !== null) {
    const groups = design.at.map(({ place, pattern }) => placesOf(place, "fixings", pattern) ?? []);
    return { groups: groups.filter((group) => group.length > 0), unset: [] };
  }
  const box = fixingBox(scene.frame, diameter);
  const field = { box, reach: diameter / 2 + CLEAR, obstacles: [...scene.obstacles] };
  const ring: Point[] = [];
  const unset: Point[] = [];
  for (const wanted of aroundBox(box)) {
    const spot = freeSpot(wanted, field);
    if (spot === null) {
      unset.push(wanted);
      continue;
    }
    ring.push(spot);
    field.obstacles.push(contourObstacle(circle(spot, diameter / 2)));
  }
  closeGaps(ring, field, diameter);
  const sorted = ring.toSorted((a, b) => a.y - b.y || a.x - b.x);
  return { groups: sorted.map((at) => [at]), unset };
};

/** More screws between neighbours that came to lie too far apart, where there is room for them. */
const closeGaps = (
  ring: Point[],
  field: SearchField & { readonly obstacles: Obstacle[] },
  diameter: Mm,
): void => {
  for (let index = 0; index < ring.length && ring.length > 1; ) {
    const from = ring[index];
    const to = ring[(index + 1) % ring.length];
    const spot = from === undefined || to === undefined ? null : spotBetween(from, to, field);
    if (spot === null) {
      index += 1;
      continue;
    }
    // The same place again: the first half of the gap may still be too long.
    ring.splice(index + 1, 0, spot);
    field.obstacles.push(contourObstacle(circle(spot, diameter / 2)));
  }
};

/** A free spot that shortens a gap; null where the gap is short enough, or nothing is free. */
const spotBetween = (from: Point, to: Point, field: SearchField): Point | null => {
  if (apart(from, to) <= MOST_APART) return null;
  const middle = point((from.x + to.x) / 2, (from.y + to.y) / 2);
  const spot = freeSpot(onEdge(middle, field.box), field);
  if (spot === null) return null;
  return Math.max(apart(from, spot), apart(spot, to)) < apart(from, to) ? spot : null;
};

/** Along an edge, not across the inset: what matters is the stretch of edge that two screws hold down. */
const apart = (a: Point, b: Point): number => Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));

/** The nearest place on the box's own edge. */
const onEdge = (at: Point, box: Extent): Point => {
  const sides = [
    { gap: Math.abs(at.x - box.minX), place: point(box.minX, at.y) },
    { gap: Math.abs(box.maxX - at.x), place: point(box.maxX, at.y) },
    { gap: Math.abs(at.y - box.minY), place: point(at.x, box.minY) },
    { gap: Math.abs(box.maxY - at.y), place: point(at.x, box.maxY) },
  ];
  return sides.reduce((a, b) => (b.gap < a.gap ? b : a)).place;
};

const dowelPlaces = (design: FixingsDesign, scene: FixingScene): Places => {
  if (design.dowelsAt !== null) {
    const { placeOf } = scene.finder;
    return {
      places: design.dowelsAt.flatMap((place) => placeOf(place, "dowels") ?? []),
      unset: [],
    };
  }
  const box = fixingBox(scene.frame, design.dowels);
  const third = (box.maxY - box.minY) / 3;
  const low = point(box.minX, box.minY + third);
  const high = point(box.maxX, Math.min(box.maxY, box.maxY - third + UNEVEN));
  const field = { box, reach: design.dowels / 2 + CLEAR, obstacles: scene.obstacles };
  const first = freeSpot(low, field);
  const taken = first === null ? [] : [contourObstacle(circle(first, design.dowels / 2))];
  const second = freeSpot(high, { ...field, obstacles: [...field.obstacles, ...taken] });
  return {
    places: [first, second].filter((at): at is Point => at !== null),
    unset: [first === null ? low : null, second === null ? high : null].filter(
      (at): at is Point => at !== null,
    ),
  };
};

/** The rectangle that fixings stand on: clear of the rails and of the outline. */
const fixingBox = (frame: MountFrame, diameter: number): Extent => {
  const rail = railWidth(frame.rails, frame.nominal);
  const outline = contourExtent(frame.outline);
  const side = Math.max(rail.x, outline.minX) + CLEAR + diameter / 2;
  const end = Math.max(rail.y, outline.minY) + CLEAR + diameter / 2;
  return {
    minX: mm(side),
    minY: mm(end),
    maxX: mm(frame.nominal.maxX - side),
    maxY: mm(frame.nominal.maxY - end),
  };
};

/** Once round the box from its lower left corner: corners, and points between them so that none lies farther than SPAN from the next. */
const aroundBox = (box: Extent): readonly Point[] => {
  const columns = divided(box.minX, box.maxX);
  const rows = divided(box.minY, box.maxY);
  return [
    ...columns.map((x) => point(x, box.minY)),
    ...rows.slice(1, -1).map((y) => point(box.maxX, y)),
    ...columns.toReversed().map((x) => point(x, box.maxY)),
    ...rows
      .slice(1, -1)
      .toReversed()
      .map((y) => point(box.minX, y)),
  ];
};

const divided = (low: number, high: number): readonly number[] => {
  const gaps = Math.max(1, Math.ceil((high - low) / SPAN));
  return Array.from({ length: gaps + 1 }, (_, index) => low + ((high - low) * index) / gaps);
};
