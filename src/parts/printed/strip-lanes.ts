// Lanes for strips or LED boards on the floor of a lit area: straight, between the rows of bodies, each a whole number of
// cut lengths and a joint. Of all ways to lay them the one with the most lit length is taken.

import type { Point, Region } from "../../geometry/contour.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { bandArea, freeStretches, placeOn, type Stretch, type Way } from "./free-bands.ts";
import type { LampSource } from "./lamp-source.ts";

export interface Lane {
  readonly way: Way;
  /** The strip's ends on its middle line, joint included; the joint is at `from`. */
  readonly from: Point;
  readonly to: Point;
  readonly cuts: number;
  readonly leds: readonly Point[];
  readonly box: Extent;
}

/** LED pitch over distance to the face, from even to barely even: common practice. */
export const PITCH_OVER_DISTANCE = { least: 1, most: 1.5 } as const;

/** Strip and channel: a loose fit, a side. */
export const LANE_CLEARANCE = 0.4;

/** Places are tried this far apart across an area: half a millimetre is what a strip is laid to by hand. */
const STEP = 0.5;

/** `distance`: from the LEDs to what they light. Lanes lie at least that far apart, so that rows light as evenly as pitches. */
export const lanesOf = (area: Region, source: LampSource, distance: number): readonly Lane[] => {
  const across = chosenRows(area, { way: "x", source, distance });
  const along = chosenRows(area, { way: "y", source, distance });
  return litLength(along, source) > litLength(across, source) ? along : across;
};

interface LaneOptions {
  readonly way: Way;
  readonly source: LampSource;
  readonly distance: number;
}

interface Row {
  readonly across: number;
  readonly lanes: readonly Lane[];
  readonly lit: number;
}

const litLength = (lanes: readonly Lane[], source: LampSource): number =>
  lanes.reduce((sum, { cuts }) => sum + cuts * source.length, 0);

/** Rows from low to high; among equals the lowest, so that the same area always gives the same lanes. */
const chosenRows = (area: Region, options: LaneOptions): readonly Lane[] => {
  const rows = rowsOf(area, options);
  const least = Math.max(
    options.distance * PITCH_OVER_DISTANCE.least,
    options.source.width + 2 * LANE_CLEARANCE,
  );
  const best: { readonly lit: number; readonly before: number }[] = [];
  let reached = -1;
  for (const [index, row] of rows.entries()) {
    while (rows[reached + 1] !== undefined && rows[reached + 1]!.across <= row.across - least)
      reached += 1;
    const before = bestUpTo(best, reached);
    best.push({ lit: row.lit + (before < 0 ? 0 : best[before]!.lit), before });
    if (index === rows.length - 1) break;
  }
  const chosen: Row[] = [];
  for (let at = bestUpTo(best, rows.length - 1); at >= 0; at = best[at]!.before)
    chosen.push(rows[at]!);
  return chosen.toReversed().flatMap(({ lanes }) => lanes);
};

const bestUpTo = (best: readonly { readonly lit: number }[], last: number): number => {
  let found = -1;
  for (let index = 0; index <= last; index += 1)
    if (found < 0 || best[index]!.lit > best[found]!.lit) found = index;
  return found;
};

const rowsOf = (region: Region, options: LaneOptions): readonly Row[] => {
  const { way, source } = options;
  const area = bandArea(region, way);
  const half = source.width / 2 + LANE_CLEARANCE;
  const rows: Row[] = [];
  for (
    let across = Math.ceil((area.low + half) / STEP) * STEP;
    across + half < area.high;
    across += STEP
  ) {
    const lanes = freeStretches(area, across - half, across + half).flatMap((stretch) =>
      laneIn(stretch, across, options),
    );
    if (lanes.length > 0) rows.push({ across, lanes, lit: litLength(lanes, source) });
  }
  return rows;
};

const laneIn = (
  stretch: Stretch,
  across: number,
  { way, source }: LaneOptions,
): readonly Lane[] => {
  const room = stretch.to - stretch.from - 2 * LANE_CLEARANCE - source.joint;
  const cuts = Math.floor((room + source.between) / (source.length + source.between));
  if (cuts < 1) return [];
  const lit = cuts * source.length + (cuts - 1) * source.between;
  const spare = room - lit;
  const from = stretch.from + LANE_CLEARANCE + spare / 2;
  const to = from + source.joint + lit;
  const half = source.width / 2 + LANE_CLEARANCE;
  const corner = placeOn(way, from - LANE_CLEARANCE, across - half);
  const opposite = placeOn(way, to + LANE_CLEARANCE, across + half);
  const starts = Array.from(
    { length: cuts },
    (_, index) => from + source.joint + index * (source.length + source.between),
  );
  return [
    {
      way,
      from: placeOn(way, from, across),
      to: placeOn(way, to, across),
      cuts,
      leds: starts.flatMap((start) =>
        source.leds.map((led) => placeOn(way, start + led.x, across + led.y)),
      ),
      box: extent(corner.x, corner.y, opposite.x, opposite.y),
    },
  ];
};
