// Places in millimetres. An entry waits for its neighbours; what can't be placed is named once, and what waited for it
// is left out and counted. A pattern is placed as a block: `left` holds its first column, `right` its last, `centre` its middle.

import { entryName } from "../design/entry-name.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import {
  type Block,
  blockPlace,
  type Landmark,
  neighboursOf,
  type PlaceFrame,
} from "./axis-place.ts";
import { CIRCULAR_PLACE, UNKNOWN_NEIGHBOUR } from "./codes.ts";
import { unknownName } from "./context.ts";
import type { Entry } from "./instances.ts";
import { offsetsExtent } from "./pattern-offsets.ts";

export interface PlacedEntries {
  /** Place of each entry's datum, by entry id. */
  readonly places: ReadonlyMap<string, Point>;
  /** Every placed entry and every member of it, by id. */
  readonly landmarks: ReadonlyMap<string, Landmark>;
  /** What could not be placed, by id, with the id of the entry where the trouble began. */
  readonly lost: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
}

/** Resolves every entry. `lost` are ids that were lost before; whoever leans on them is lost too. */
export const placeEntries = (
  entries: readonly Entry[],
  options: {
    readonly frame: PlaceFrame;
    readonly reachOf: (entry: Entry) => Extent;
    readonly lost: readonly string[];
  },
): PlacedEntries => {
  const places = new Map<string, Point>();
  const landmarks = new Map<string, Landmark>();
  const leaners = leanersOf(entries);
  // Whoever has just been placed wakes those that lean on it: each entry is tried once for each of its neighbours.
  const queue = [...entries];
  for (const entry of queue) {
    if (places.has(entry.id)) continue;
    const reach = options.reachOf(entry);
    const at = blockPlace(blockOf(entry, reach), { frame: options.frame, landmarks });
    if (at === null) continue;
    places.set(entry.id, at);
    for (const [id, landmark] of landmarksOf(entry, at, reach)) landmarks.set(id, landmark);
    queue.push(...(leaners.get(entry.id) ?? []));
  }
  const waiting = entries.filter(({ id }) => !places.has(id));
  const { lost, findings } = unplaced(waiting, { landmarks, leaners, lost: options.lost });
  return { places, landmarks, lost, findings };
};

/** Entries by the entry that they lean on, themselves or one of its members. */
const leanersOf = (entries: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> => {
  const leaners = new Map<string, Entry[]>();
  for (const entry of entries) {
    for (const { id } of neighboursOf(entry.place)) {
      const list = leaners.get(entryName(id)) ?? [];
      list.push(entry);
      leaners.set(entryName(id), list);
    }
  }
  return leaners;
};

const blockOf = (entry: Entry, reach: Extent): Block => ({
  place: entry.place,
  centres: offsetsExtent(entry.members.map(({ offset }) => offset)),
  reach,
});

const landmarksOf = (
  entry: Entry,
  at: Point,
  reach: Extent,
): readonly (readonly [string, Landmark])[] => {
  const members = entry.members.map(({ id, offset }) => {
    const centre = point(at.x + offset.x, at.y + offset.y);
    return [id, landmarkAt(centre, movedExtent(reach, centre))] as const;
  });
  if (members.length === 1 && members[0]?.[0] === entry.id) return members;
  return [...members, [entry.id, joinedLandmark(members.map(([, landmark]) => landmark))]];
};

const landmarkAt = (at: Point, reach: Extent): Landmark => ({
  at,
  centres: extent(at.x, at.y, at.x, at.y),
  reach,
});

/** A pattern: it stands where its first member does, and reaches as far as all of them. */
const joinedLandmark = (members: readonly Landmark[]): Landmark =>
  members.reduce((pattern, member) => ({
    at: pattern.at,
    centres: joinedExtent(pattern.centres, member.centres),
    reach: joinedExtent(pattern.reach, member.reach),
  }));

const movedExtent = (box: Extent, by: Point): Extent =>
  extent(box.minX + by.x, box.minY + by.y, box.maxX + by.x, box.maxY + by.y);

interface Unplaced {
  readonly lost: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
}

const unplaced = (
  waiting: readonly Entry[],
  among: {
    readonly landmarks: ReadonlyMap<string, Landmark>;
    readonly leaners: ReadonlyMap<string, readonly Entry[]>;
    readonly lost: readonly string[];
  },
): Unplaced => {
  const { landmarks, leaners } = among;
  const lost = new Map(among.lost.map((id) => [id, id]));
  const findings: Finding[] = [];
  const known = new Set([...landmarks.keys(), ...idsOf(waiting)]);
  const roots = waiting.filter((entry) => {
    const unknown = neighboursOf(entry.place).find(
      ({ id }) => !known.has(id) && !lost.has(entryName(id)),
    );
    if (unknown !== undefined) findings.push(unknownNeighbour(entry, unknown, known));
    return unknown !== undefined;
  });
  for (const { id } of roots) lost.set(id, id);
  loseLeaners([...lost.keys()], { leaners, lost });
  for (const ring of ringsAmong(waiting.filter(({ id }) => !lost.has(id)))) {
    findings.push(circular(ring));
    for (const { id } of ring) lost.set(id, ring[0]?.id ?? id);
    loseLeaners(
      ring.map(({ id }) => id),
      { leaners, lost },
    );
  }
  return { lost, findings };
};

const idsOf = (entries: readonly Entry[]): readonly string[] =>
  entries.flatMap((entry) => [entry.id, ...entry.members.map(({ id }) => id)]);

/** More names than this say nothing more, and comparing a misspelt one with each costs time. */
const MOST_NAMES = 200;

const unknownNeighbour = (
  entry: Entry,
  unknown: { readonly id: string; readonly key: string },
  known: ReadonlySet<string>,
): Finding => {
  const names = [...known].filter((id) => id !== entry.id).slice(0, MOST_NAMES);
  const span = spanOf(entry.place.written, unknown.key);
  return unknownName(UNKNOWN_NEIGHBOUR, unknown.id, { span, known: names, subjects: [entry.id] });
};

/** Everything that leans on what is lost is lost for the same reason. */
const loseLeaners = (
  ids: readonly string[],
  among: {
    readonly leaners: ReadonlyMap<string, readonly Entry[]>;
    readonly lost: Map<string, string>;
  },
): void => {
  const { leaners, lost } = among;
  const queue = [...ids];
  for (const id of queue) {
    for (const leaner of leaners.get(id) ?? []) {
      if (lost.has(leaner.id)) continue;
      lost.set(leaner.id, lost.get(id) ?? id);
      queue.push(leaner.id);
    }
  }
};

/** Entries that wait for each other in a ring; those that merely wait for a ring are not in it. */
const ringsAmong = (waiting: readonly Entry[]): readonly (readonly Entry[])[] => {
  const byId = new Map(waiting.map((entry) => [entry.id, entry]));
  const seen = new Set<string>();
  const rings: Entry[][] = [];
  for (const start of waiting) {
    const walk: Entry[] = [];
    let next: Entry | undefined = start;
    while (next !== undefined && !seen.has(next.id)) {
      seen.add(next.id);
      walk.push(next);
      next = waitsFor(next, byId);
    }
    const from = walk.findIndex(({ id }) => id === next?.id);
    if (from !== -1) rings.push(walk.slice(from));
  }
  return rings;
};

const waitsFor = (entry: Entry, waiting: ReadonlyMap<string, Entry>): Entry | undefined => {
  const ids = neighboursOf(entry.place).map(({ id }) => entryName(id));
  return waiting.get(ids.find((id) => waiting.has(id)) ?? "");
};

/** A long ring is shown by its beginning. */
const MOST_SHOWN = 8;

const circular = (ring: readonly Entry[]): Finding => {
  const names = ring.map(({ id }) => id);
  const shown = names.slice(0, MOST_SHOWN).join(", ");
  const more = names.length > MOST_SHOWN ? ` and ${names.length - MOST_SHOWN} more` : "";
  const [first, ...others] = ring;
  return finding(CIRCULAR_PLACE, {
    message:
      names.length === 1
        ? `${shown} takes its place from itself. Give it a distance from an edge, such as left: 24 mm.`
        : `${shown}${more} take their places from each other. Give one of them a distance from an edge, such as left: 24 mm.`,
    span: first?.place.written.span ?? { file: "", start: 0, end: 0 },
    subjects: names.slice(0, MOST_SHOWN),
    related: others
      .slice(0, MOST_SHOWN)
      .map((entry) => ({ what: `${entry.id} waits too`, span: entry.place.written.span })),
  });
};
