// Places of windows, markings and fixings: they may lean on components, not on each other. What leans on nothing known
// is told; what leans on something lost is counted as its follower. One finder serves one panel and gathers both.

import { entryName } from "../design/entry-name.ts";
import type { PatternDesign, PlaceDesign } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import type { Finding } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { steadyLists } from "../geometry/made-once.ts";
import { blockPlace, type Landmark, neighboursOf, type PlaceFrame } from "./axis-place.ts";
import { UNKNOWN_NEIGHBOUR } from "./codes.ts";
import { unknownName } from "./context.ts";
import { offsetsExtent, patternOffsets } from "./pattern-offsets.ts";

/** Where it is; null where it can't be told, and then a finding or a cause has been gathered. */
export type PlaceOf = (place: PlaceDesign, subject: string) => Point | null;

/** The same of each member of a pattern, in reading order; of one by itself a list of one. */
export type PlacesOf = (
  place: PlaceDesign,
  subject: string,
  pattern: PatternDesign | null,
) => readonly Point[] | null;

export interface FoundPlace {
  readonly place: PlaceDesign;
  /** Of each member. */
  readonly ats: readonly Point[];
}

export interface PlaceFinder {
  readonly placeOf: PlaceOf;
  readonly placesOf: PlacesOf;
  /** True where an id was lost: then it counts as one more follower of what it was lost by. */
  readonly isLost: (id: string) => boolean;
  readonly findings: readonly Finding[];
  /** Every place that was asked for and found, in that order. */
  readonly found: readonly FoundPlace[];
  /** Ids of the entries where the trouble began, once for each thing that was left out because of it. */
  readonly causes: readonly string[];
}

export const placeFinder = (
  placed: {
    readonly landmarks: ReadonlyMap<string, Landmark>;
    readonly lost: ReadonlyMap<string, string>;
  },
  frame: PlaceFrame,
): PlaceFinder => {
  const { landmarks, lost } = placed;
  const findings: Finding[] = [];
  const causes: string[] = [];
  const found: FoundPlace[] = [];
  const isLost = (id: string): boolean => {
    const cause = lost.get(entryName(id));
    if (cause !== undefined) causes.push(cause);
    return cause !== undefined;
  };
  const placesOf: PlacesOf = (place, subject, pattern) => {
    const offsets = pattern === null ? BY_ITSELF : patternOffsets(pattern);
    const block = { place, centres: offsetsExtent(offsets), reach: NOTHING };
    const at = blockPlace(block, { frame, landmarks });
    if (at !== null) {
      const ats = steady(
        place,
        offsets.map(({ x, y }) => point(at.x + x, at.y + y)),
      );
      found.push({ place, ats });
      return ats;
    }
    const missing = neighboursOf(place).find(({ id }) => !landmarks.has(id));
    if (missing !== undefined && !isLost(missing.id)) {
      const span = spanOf(place.written, missing.key);
      const known = landmarks.keys();
      findings.push(
        unknownName(UNKNOWN_NEIGHBOUR, missing.id, { span, known, subjects: [subject] }),
      );
    }
    return null;
  };
  const placeOf: PlaceOf = (place, subject) => placesOf(place, subject, null)?.[0] ?? null;
  return { placeOf, placesOf, isLost, findings, found, causes };
};

const BY_ITSELF: readonly Point[] = [point(0, 0)];

/** What stands where it stood need not be made again. */
const steady = steadyLists<PlaceDesign, Point>(
  (one, other) => one.x === other.x && one.y === other.y,
);

const NOTHING: Extent = extent(0, 0, 0, 0);
