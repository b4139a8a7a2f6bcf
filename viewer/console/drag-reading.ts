// One step of a drag as the page shows it: where the panel and what follows it go, and what they meet there, each with a
// number. Kernel-free: what meets may only be hollow there, what is free is free.

import { type BodyGroup, bodyGroups } from "../../src/fit/body-groups.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { shapePieces } from "../../src/fit/convex/recipe-pieces.ts";
import { type DragFact, type DragMove, dragStep } from "../../src/fit/drag-step.ts";
import { searchLength } from "../../src/fit/fit-tolerance.ts";
import {
  directionIn,
  type Frame,
  movedFrame,
  pointIn,
  pointOut,
} from "../../src/geometry/space/frame.ts";
import { dot, minus, scaled, type Vector, vector } from "../../src/geometry/space/vector.ts";
import { arithmeticNoise } from "../../src/geometry/tolerance.ts";
import type {
  BayLayout,
  ConsoleLayout,
  PlacedPanel,
} from "../../src/layout/console/console-layout.ts";
import type { BodyName, DragMeeting, DragReading, PanelMove } from "./console-messages.ts";
import { followersOf } from "./followers.ts";

export interface StandingConsole {
  readonly layout: ConsoleLayout;
  readonly groups: readonly BodyGroup[];
  /** How near is near. */
  readonly within: number;
  /** What each body takes along a bay as it stands, by bay and id; found when it is first asked for. */
  readonly stretches: Map<string, Stretch>;
}

/** From the beginning of the rails; `x` and `z` of its middle in the frame of the bay. */
interface Stretch {
  readonly low: number;
  readonly high: number;
  readonly x: number;
  readonly z: number;
}

export const standingConsole = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
  within: number = searchLength,
): StandingConsole => ({ layout, groups: bodyGroups(bodies), within, stretches: new Map() });

/** null for a panel that stands in no bay. The clock is handed in: the step says what it took. */
export const dragReading = (
  { layout, groups, within, stretches }: StandingConsole,
  move: PanelMove,
): Omit<DragReading, "milliseconds"> | null => {
  const panel = layout.panels.find(({ name }) => name === move.panel);
  const place = panel?.place;
  if (panel === undefined || place?.kind !== "bay") return null;
  const bay = layout.bays.find(({ id }) => id === place.bay);
  if (bay === undefined) return null;
  const by = (move.module - place.module) * bay.pitch;
  const train = [panel, ...followersOf(layout, panel.name)];
  const names = new Set(train.map(({ name }) => name));
  const rest = groups.filter((group) => group.panel === null || !names.has(group.panel));
  const meetings = train.flatMap(({ name, frame }) =>
    meetingsOf(
      { groups, rest, bay, by, within, stretches, overlaps: overlapsOf(layout, by) },
      { panel: name, from: frame, to: shifted(frame, bay, by) },
    ),
  );
  const modules = (place.to - place.from) / bay.pitch;
  const end = Math.max(...train.map((each) => endOf(each) + by));
  return {
    move,
    frames: train.map(({ name, frame }) => ({ panel: name, frame: shifted(frame, bay, by) })),
    meetings: meetings.toSorted((a, b) => ORDER[a.kind] - ORDER[b.kind] || worse(a, b)),
    from: move.module,
    to: move.module + modules,
    over: Math.max(0, (end - bay.length) / bay.pitch),
  };
};

const ORDER = { clash: 0, touching: 1, near: 2 } as const;

const worse = (a: DragMeeting, b: DragMeeting): number =>
  a.kind === "clash" ? b.length - a.length : a.length - b.length;

const shifted = (frame: Frame, bay: BayLayout, by: number): Frame =>
  movedFrame(frame, scaled(bay.frame.y, by));

const endOf = ({ place }: PlacedPanel): number => (place.kind === "bay" ? place.to : 0);

interface Along {
  readonly groups: readonly BodyGroup[];
  /** What does not move along. */
  readonly rest: readonly BodyGroup[];
  readonly bay: BayLayout;
  readonly by: number;
  readonly within: number;
  readonly stretches: StandingConsole["stretches"];
  /** Whether a panel that has been moved lies over one that has not. */
  readonly overlaps: (moved: string, standing: string | null) => boolean;
}

const overlapsOf =
  (layout: ConsoleLayout, by: number): Along["overlaps"] =>
  (moved, standing) => {
    const [one, other] = [moved, standing].map(
      (name) => layout.panels.find((panel) => panel.name === name)?.place,
    );
    return (
      one?.kind === "bay" &&
      other?.kind === "bay" &&
      one.bay === other.bay &&
      one.from + by < other.to - arithmeticNoise &&
      other.from < one.to + by - arithmeticNoise
    );
  };

const meetingsOf = (along: Along, move: DragMove): readonly DragMeeting[] => {
  const own = along.groups.find(({ panel }) => panel === move.panel);
  if (own === undefined) return [];
  const over = along.rest.filter(({ panel }) => along.overlaps(move.panel, panel));
  const beside = along.rest.filter((group) => !over.includes(group));
  // Two panels that want the same rails clash: how far apart the rest of them is, nobody asks, and it is half of the work.
  return [
    ...(over.length === 0 ? [] : dragStep([own, ...over], move, 0)),
    ...dragStep([own, ...beside], move, along.within),
  ].map((fact) => meeting(fact, move.panel, along));
};

const meeting = ({ a, b, relation }: DragFact, panel: string, along: Along): DragMeeting => {
  const names = { a: nameOf(a), b: nameOf(b) };
  switch (relation.kind) {
    case "meet":
      return { kind: "clash", ...names, ...sharedStretch(a, b, { panel, along }) };
    case "touching":
      return { kind: "touching", ...names, length: 0, at: relation.at };
    case "apart":
      return relation.gap > arithmeticNoise
        ? { kind: "near", ...names, length: relation.gap, at: relation.at }
        : { kind: "touching", ...names, length: 0, at: relation.at };
  }
};

const nameOf = ({ panel, id, thing, what }: ConsoleBody): BodyName => ({
  group: panel ?? "",
  id,
  words: `${what === "" || what === thing ? thing : `${what} of ${thing}`}${panel === null ? "" : ` on ${panel}`}`,
});

/** What both take along the rail: by so much, at most, one of them must move to be free of the other. */
const sharedStretch = (
  a: ConsoleBody,
  b: ConsoleBody,
  { panel, along }: { readonly panel: string; readonly along: Along },
): { readonly length: number; readonly at: Vector } => {
  const standing = (body: ConsoleBody): Stretch =>
    stretchOf(body, along, body.panel === panel ? along.by : 0);
  const [one, other] = [standing(a), standing(b)];
  const middle = scaled(vector(one.x + other.x, 0, one.z + other.z), 1 / 2);
  const shared = (Math.max(one.low, other.low) + Math.min(one.high, other.high)) / 2;
  return {
    length: Math.min(one.high - other.low, other.high - one.low),
    at: pointOut(along.bay.frame, vector(middle.x, shared, middle.z)),
  };
};

/** `body` has been moved by `by` along the bay: what is kept is where it stood. */
const stretchOf = (body: ConsoleBody, { bay, stretches }: Along, by: number): Stretch => {
  const key = `${bay.id} ${body.id}`;
  const standing = stretches.get(key) ?? measuredStretch(body, bay.frame, by);
  stretches.set(key, standing);
  return { ...standing, low: standing.low + by, high: standing.high + by };
};

const measuredStretch = ({ shape, frame }: ConsoleBody, rail: Frame, by: number): Stretch => {
  const axis = directionIn(frame, rail.y);
  const start = dot(rail.y, minus(frame.origin, rail.origin)) - by;
  let [low, high] = [Infinity, -Infinity];
  let middle = frame.origin;
  for (const { corners, middle: inner } of shapePieces(shape)) {
    middle = pointOut(frame, inner);
    for (let at = 0; at < corners.length; at += 3) {
      const along =
        start + axis.x * corners[at]! + axis.y * corners[at + 1]! + axis.z * corners[at + 2]!;
      if (along < low) low = along;
      if (along > high) high = along;
    }
  }
  const { x, z } = pointIn(rail, middle);
  return { low, high, x, z };
};
