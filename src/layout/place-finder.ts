// Places of windows, markings and fixings: they may lean on components, not on each other. What leans on nothing known
// is told; what leans on something lost is counted as its follower. One finder serves one panel and gathers both.

import { entryName } from "../design/entry-name.ts";
import type { PlaceDesign } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import type { Finding } from "../diagnostics/finding.ts";
import type { Point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { blockPlace, type Landmark, neighboursOf, type PlaceFrame } from "./axis-place.ts";
import { UNKNOWN_NEIGHBOUR } from "./codes.ts";
import { unknownName } from "./context.ts";

/** Where it is; null where it can't be told, and then a finding or a cause has been gathered. */
export type PlaceOf = (place: PlaceDesign, subject: string) => Point | null;

export interface FoundPlace {
  readonly subject: string;
  readonly place: PlaceDesign;
  readonly at: Point;
}

export interface PlaceFinder {
  readonly placeOf: PlaceOf;
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
  const placeOf: PlaceOf = (place, subject) => {
    const at = blockPlace({ place, centres: NOTHING, reach: NOTHING }, { frame, landmarks });
    if (at !== null) {
      found.push({ subject, place, at });
      return at;
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
  return { placeOf, isLost, findings, found, causes };
};

const NOTHING: Extent = extent(0, 0, 0, 0);
