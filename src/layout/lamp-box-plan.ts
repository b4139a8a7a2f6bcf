// The room that a lamp box takes behind a pattern of lamp windows: its cells as rows and columns, its outside, its depth.
// Each window owns the tile of the box behind it, so that box and neighbours are judged and pocketed like any body.

import { shapeContour } from "../catalogue/shape-contour.ts";
import type { LampBoxDesign } from "../design/printed-design.ts";
import { circle, type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent, joinedExtent } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import type { LayerLayout, PlacedBody, PlacedComponent } from "./panel-layout.ts";

export interface LampBoxPlan {
  /** Windows in the panel, by component, left to right and top to bottom as the box has them. */
  readonly windows: readonly { readonly id: string; readonly at: Point; readonly box: Extent }[];
  /** Centres of columns and rows, rising. */
  readonly columns: readonly Mm[];
  readonly rows: readonly Mm[];
  /** Round all windows, without walls. */
  readonly inside: Extent;
  /** With its walls at the most that they can be. */
  readonly outside: Extent;
  readonly flange: Extent;
  /** Bosses of the lid's screws, beside the walls. */
  readonly ears: readonly Point[];
  /** z of the sheet's rear that it lies on, and of its own rear, where the lid lies. */
  readonly front: Mm;
  readonly rear: Mm;
}

/** Outer walls: 2.0 to 2.5 mm keep light in (common practice). */
export const LAMP_BOX_WALL_ROOM = 2.5;
/** Boss of an M2 insert: twice its outside (common practice). It bites one millimetre into the wall. */
export const LAMP_BOX_EAR = 7.2;
const EAR_BITE = 1;
/** Screws of a lid stand at most this far apart: common practice for a light-tight joint. */
const EARS_APART = 60;
/** Where neither the box nor a spacer says: the middle of 15 to 20 mm (common practice). */
const USUAL_DEPTH = 18;
/** Behind the box: its lid, and the leads of the LEDs with their wires. */
const LID_ROOM = 3;
const LEADS = 8;

export const lampBoxPlan = (
  members: readonly PlacedComponent[],
  design: LampBoxDesign,
  layers: readonly Pick<LayerLayout, "kind" | "thickness" | "index">[],
): LampBoxPlan => {
  const windows = members.map(({ id, at, part, turn }) => ({
    id,
    at,
    box: contourExtent(
      placedContour(shapeContour(part.openings.clamp), placement(at.x, at.y, turn)),
    ),
  }));
  const inside = windows.map(({ box }) => box).reduce(joinedExtent);
  const outside = grownExtent(inside, LAMP_BOX_WALL_ROOM);
  const spacer = layers.find(
    ({ kind, index }) => kind === "spacer" && index > (members[0]?.clamped.last ?? 0),
  );
  const front = members[0]?.seat ?? mm(0);
  return {
    windows,
    columns: distinct(windows.map(({ at }) => at.x)),
    rows: distinct(windows.map(({ at }) => at.y)),
    inside,
    outside,
    flange: grownExtent(outside, design.flange),
    ears: earsOf(outside),
    front,
    rear: mm(front - (design.depth ?? spacer?.thickness.nominal ?? USUAL_DEPTH)),
  };
};

const distinct = (values: readonly Mm[]): readonly Mm[] =>
  values
    .toSorted((a, b) => a - b)
    .filter((value, index, sorted) => index === 0 || value - sorted[index - 1]! > samePlace);

/** At both sides, evenly. */
const earsOf = (outside: Extent): readonly Point[] => {
  const height = outside.maxY - outside.minY;
  const count = Math.max(1, Math.ceil(height / EARS_APART));
  const off = LAMP_BOX_EAR / 2 - EAR_BITE;
  return [outside.minX - off, outside.maxX + off].flatMap((x) =>
    Array.from({ length: count }, (_, index) =>
      point(x, outside.minY + (height * (index + 1 / 2)) / count),
    ),
  );
};

/** The pieces of the box and of its lid behind each window, in place of the bodies that a window has by itself. */
export const lampBoxBodies = (plan: LampBoxPlan): ReadonlyMap<string, readonly PlacedBody[]> => {
  const { columns, rows, flange, front, rear } = plan;
  const leads = mm(rear - LID_ROOM - LEADS);
  const owners = plan.ears.map((ear) => nearest(ear, plan.windows));
  return new Map(
    plan.windows.map(({ id, at, box }) => {
      const [minX, maxX] = span(columns, at.x, [flange.minX, flange.maxX]);
      const [minY, maxY] = span(rows, at.y, [flange.minY, flange.maxY]);
      const tile = rectangle(extent(minX, minY, maxX, maxY));
      const ears = plan.ears.filter((_, index) => owners[index] === id);
      const lid = mm(rear - LID_ROOM);
      const bodies: readonly PlacedBody[] = [
        { owner: id, role: "case", footprint: tile, low: lid, high: front },
        ...ears.map((ear) => ({
          owner: id,
          role: "case" as const,
          footprint: circle(ear, LAMP_BOX_EAR / 2),
          low: lid,
          high: front,
        })),
        { owner: id, role: "tails", footprint: rectangle(box), low: leads, high: lid },
      ];
      return [id, bodies] as const;
    }),
  );
};

/** Half way to the neighbours, or to the box's own side. */
const span = (
  centres: readonly Mm[],
  at: number,
  [low, high]: readonly [number, number],
): readonly [number, number] => {
  const index = centres.findIndex((centre) => Math.abs(centre - at) <= samePlace);
  const before = centres[index - 1];
  const after = centres[index + 1];
  return [
    before === undefined ? low : (before + at) / 2,
    after === undefined ? high : (at + after) / 2,
  ];
};

const nearest = (ear: Point, windows: LampBoxPlan["windows"]): string => {
  const away = ({ at }: { readonly at: Point }): number =>
    (at.x - ear.x) * (at.x - ear.x) + (at.y - ear.y) * (at.y - ear.y);
  return windows.toSorted((a, b) => away(a) - away(b))[0]?.id ?? "";
};
