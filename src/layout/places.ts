// Places in millimetres. An entry waits for its neighbours; what can't be placed is named once, and what waited for it
// is left out and counted. A pattern is placed as a block: `left` holds its first column, `right` its last, `centre` its middle.

import type { AxisPlace, PlaceDesign } from "../design/panel-design.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { CIRCULAR_PLACE, UNKNOWN_NEIGHBOUR } from "./codes.ts";
import { unknownName } from "./context.ts";
import type { Entry } from "./instances.ts";

/** Where a placed thing stands, and how far it reaches round that place on the face. */
export interface Landmark {
  readonly at: Point;
  /** Reach on the face in panel coordinates. */
  readonly reach: Extent;
}

export interface PlaceFrame {
  readonly nominal: Extent;
  /** Width of the strip at each side that components leave free, for `x: left` and `x: right`. */
  readonly edge: number;
}

export interface Block {
  readonly id: string;
  readonly place: PlaceDesign;
  /** Offsets of the members' centres from the block's datum. */
  readonly centres: Extent;
  /** Reach of one member round its own centre. */
  readonly reach: Extent;
  readonly subject: string;
}

export interface PlacedEntries {
  /** Place of each entry's datum, by entry id. */
  readonly places: ReadonlyMap<string, Point>;
  readonly lost: readonly string[];
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
  const lost = new Set(options.lost);
  let waiting = entries;
  for (let settled = false; !settled; ) {
    const still = waiting.filter((entry) => {
      const reach = options.reachOf(entry);
      const at = blockPlace(blockOf(entry, reach), { frame: options.frame, landmarks });
      if (at === null) return true;
      places.set(entry.id, at);
      addLandmarks(entry, { at, reach, landmarks });
      return false;
    });
    settled = still.length === waiting.length;
    waiting = still;
  }
  const findings = unplaced(waiting, { landmarks, lost });
  return { places, lost: [...lost], findings };
};

const blockOf = (entry: Entry, reach: Extent): Block => ({
  id: entry.id,
  place: entry.place,
  centres: entry.members
    .map(({ offset }) => extent(offset.x, offset.y, offset.x, offset.y))
    .reduce(joinedExtent),
  reach,
  subject: entry.id,
});

const addLandmarks = (
  entry: Entry,
  options: {
    readonly at: Point;
    readonly reach: Extent;
    readonly landmarks: Map<string, Landmark>;
  },
): void => {
  const { at, reach, landmarks } = options;
  const members = entry.members.map(({ id, offset }) => {
    const centre = point(at.x + offset.x, at.y + offset.y);
    return { id, landmark: { at: centre, reach: movedExtent(reach, centre) } };
  });
  for (const { id, landmark } of members) landmarks.set(id, landmark);
  const whole = members.map(({ landmark }) => landmark.reach).reduce(joinedExtent);
  landmarks.set(entry.id, { at: members[0]?.landmark.at ?? at, reach: whole });
};

const movedExtent = (box: Extent, by: Point): Extent =>
  extent(box.minX + by.x, box.minY + by.y, box.maxX + by.x, box.maxY + by.y);

interface PlaceScene {
  readonly frame: PlaceFrame;
  readonly landmarks: ReadonlyMap<string, Landmark>;
}

/** The datum's place; null while a neighbour is still missing. */
export const blockPlace = (block: Block, scene: PlaceScene): Point | null => {
  const { centres, reach, place } = block;
  const x = axisPlace(place.across, {
    axis: "x",
    scene,
    size: { low: scene.frame.nominal.minX, high: scene.frame.nominal.maxX, edge: scene.frame.edge },
    block: { low: centres.minX, high: centres.maxX, reachLow: reach.minX, reachHigh: reach.maxX },
  });
  const y = axisPlace(place.along, {
    axis: "y",
    scene,
    size: { low: scene.frame.nominal.minY, high: scene.frame.nominal.maxY, edge: 0 },
    block: { low: centres.minY, high: centres.maxY, reachLow: reach.minY, reachHigh: reach.maxY },
  });
  return x === null || y === null ? null : point(x, y);
};

interface AxisScene {
  readonly axis: "x" | "y";
  readonly scene: PlaceScene;
  readonly size: { readonly low: number; readonly high: number; readonly edge: number };
  readonly block: {
    readonly low: number;
    readonly high: number;
    readonly reachLow: number;
    readonly reachHigh: number;
  };
}

const axisPlace = (place: AxisPlace, at: AxisScene): number | null => {
  const { size, block } = at;
  switch (place.kind) {
    case "from-low":
      return size.low + place.distance - block.low;
    case "from-high":
      return size.high - place.distance - block.high;
    case "centre":
      return (size.low + size.high) / 2 - (block.low + block.high) / 2;
    case "low-edge":
      return size.low + size.edge - block.reachLow - block.low;
    case "high-edge":
      return size.high - size.edge - block.reachHigh - block.high;
    case "in-line":
      return inLine(place.neighbour, at);
    case "beside":
      return beside(place, at);
  }
};

const inLine = (neighbour: string, at: AxisScene): number | null => {
  const landmark = at.scene.landmarks.get(neighbour);
  return landmark === undefined ? null : landmark.at[at.axis];
};

const beside = (place: AxisPlace & { readonly kind: "beside" }, at: AxisScene): number | null => {
  const landmark = at.scene.landmarks.get(place.neighbour);
  if (landmark === undefined) return null;
  const own = place.toward === "high" ? at.block.low : at.block.high;
  const sign = place.toward === "high" ? 1 : -1;
  if (place.measure === "centres")
    return (
      centreLine(landmark, { axis: at.axis, scene: at.scene, place }) + sign * place.distance - own
    );
  const reach = landmark.reach;
  const [low, high] = at.axis === "x" ? [reach.minX, reach.maxX] : [reach.minY, reach.maxY];
  return place.toward === "high"
    ? high + place.distance - at.block.reachLow - own
    : low - place.distance - at.block.reachHigh - own;
};

/** Of a pattern, the centre line of the member that lies nearest in the direction asked for. */
const centreLine = (
  landmark: Landmark,
  options: {
    readonly axis: "x" | "y";
    readonly scene: PlaceScene;
    readonly place: AxisPlace & { readonly kind: "beside" };
  },
): number => {
  const { axis, scene, place } = options;
  const prefix = `${place.neighbour}.`;
  const lines = [...scene.landmarks]
    .filter(([id]) => id.startsWith(prefix))
    .map(([, member]) => member.at[axis]);
  if (lines.length === 0) return landmark.at[axis];
  return place.toward === "high" ? Math.max(...lines) : Math.min(...lines);
};

/** The neighbours that a place leans on, with the key that names each. */
export const neighboursOf = (
  place: PlaceDesign,
): readonly { readonly id: string; readonly key: string }[] =>
  [place.across, place.along].flatMap((axis) => {
    if (axis.kind === "beside") return [{ id: axis.neighbour, key: axis.key as string }];
    return axis.kind === "in-line" ? [{ id: axis.neighbour, key: "in-line-with" }] : [];
  });

const unplaced = (
  waiting: readonly Entry[],
  options: { readonly landmarks: ReadonlyMap<string, Landmark>; readonly lost: Set<string> },
): readonly Finding[] => {
  const { landmarks, lost } = options;
  const waitingIds = new Set(
    waiting.flatMap((entry) => [entry.id, ...entry.members.map(({ id }) => id)]),
  );
  const findings: Finding[] = [];
  const roots: Entry[] = [];
  for (const entry of waiting) {
    const unknown = neighboursOf(entry.place).find(
      ({ id }) =>
        !landmarks.has(id) && !waitingIds.has(id) && !lost.has(id) && !lost.has(entryOf(id)),
    );
    if (unknown === undefined) continue;
    const span = spanOf(entry.place.written, unknown.key);
    const known = [...landmarks.keys(), ...waitingIds].filter((id) => id !== entry.id);
    findings.push(
      unknownName(UNKNOWN_NEIGHBOUR, unknown.id, { span, known, subjects: [entry.id] }),
    );
    roots.push(entry);
  }
  for (const entry of roots) lost.add(entry.id);
  const cycles = followersLost(waiting, lost);
  findings.push(...circularFindings(cycles));
  for (const entry of cycles) lost.add(entry.id);
  return findings;
};

const entryOf = (id: string): string => id.split(".")[0] ?? id;

/** Marks everything that leans on something lost; what is left over leans on itself in a ring. */
const followersLost = (waiting: readonly Entry[], lost: Set<string>): readonly Entry[] => {
  let rest = waiting.filter((entry) => !lost.has(entry.id));
  for (let settled = false; !settled; ) {
    const still = rest.filter(
      (entry) => !neighboursOf(entry.place).some(({ id }) => lost.has(id) || lost.has(entryOf(id))),
    );
    for (const entry of rest) if (!still.includes(entry)) lost.add(entry.id);
    settled = still.length === rest.length;
    rest = still;
  }
  return rest;
};

const circularFindings = (cycles: readonly Entry[]): readonly Finding[] => {
  const first = cycles[0];
  if (first === undefined) return [];
  const names = cycles.map((entry) => entry.id);
  return [
    finding(CIRCULAR_PLACE, {
      message: `${names.join(", ")} take their places from each other. Give one of them a distance from an edge, such as left: 24 mm.`,
      span: first.place.written.span,
      subjects: names,
      related: cycles
        .slice(1)
        .map((entry) => ({ what: `${entry.id} waits too`, span: entry.place.written.span })),
    }),
  ];
};
