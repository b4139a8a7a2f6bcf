// One step of a drag as the page shows it: where the panel and what follows it go, and what they meet there, each with a
// number. Kernel-free: what meets may only be hollow there, what is free is free.

import { type BodyGroup, bodyGroups } from "../../src/fit/body-groups.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { type DragFact, dragStep } from "../../src/fit/drag-step.ts";
import { searchLength } from "../../src/fit/fit-tolerance.ts";
import { type RailScene, railScene } from "../../src/fit/rail-scene.ts";
import { type Frame, movedFrame, pointOut } from "../../src/geometry/space/frame.ts";
import { scaled, type Vector, vector } from "../../src/geometry/space/vector.ts";
import { arithmeticNoise } from "../../src/geometry/tolerance.ts";
import type {
  BayLayout,
  ConsoleLayout,
  PlacedPanel,
} from "../../src/layout/console/console-layout.ts";
import { bodyName } from "./body-name.ts";
import type { DragMeeting, DragReading, PanelMove } from "./console-messages.ts";
import { followersOf } from "./followers.ts";

export interface StandingConsole {
  readonly layout: ConsoleLayout;
  readonly groups: readonly BodyGroup[];
  /** How near is near. */
  readonly within: number;
  /** The console seen along each bay, by the bay's id, and what goes along with each panel: found when first asked for. */
  readonly rails: Map<string, RailScene>;
  readonly trains: Map<string, readonly PlacedPanel[]>;
}

export const standingConsole = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
  within: number = searchLength,
): StandingConsole => ({
  layout,
  groups: bodyGroups(bodies),
  within,
  rails: new Map(),
  trains: new Map(),
});

/** null for a panel that stands in no bay. The clock is handed in: the step says what it took. */
export const dragReading = (
  standing: StandingConsole,
  move: PanelMove,
): Omit<DragReading, "milliseconds"> | null => {
  const { layout } = standing;
  const panel = layout.panels.find(({ name }) => name === move.panel);
  const place = panel?.place;
  if (panel === undefined || place?.kind !== "bay") return null;
  const bay = layout.bays.find(({ id }) => id === place.bay);
  if (bay === undefined) return null;
  const by = (move.module - place.module) * bay.pitch;
  const train = trainOf(standing, panel);
  const meetings = meetingsOf(standing, { train, bay, by });
  const modules = (place.to - place.from) / bay.pitch;
  const end = Math.max(...train.map((each) => endOf(each) + by));
  return {
    move,
    frames: train.map(({ name, frame }) => ({ panel: name, frame: shifted(frame, bay, by) })),
    meetings: meetings.toSorted((a, b) => ORDER[a.kind] - ORDER[b.kind] || worse(a, b)),
    from: move.module,
    to: move.module + modules,
    over: Math.max(0, (end - bay.length) / bay.pitch),
    within: standing.within,
  };
};

/** The console seen along a bay. */
export const railOf = ({ groups, rails }: StandingConsole, { id, frame }: BayLayout): RailScene => {
  const known = rails.get(id) ?? railScene(groups, frame);
  rails.set(id, known);
  return known;
};

/** The panel and what moves along with it. */
const trainOf = (
  { layout, trains }: StandingConsole,
  panel: PlacedPanel,
): readonly PlacedPanel[] => {
  const known = trains.get(panel.name) ?? [panel, ...followersOf(layout, panel.name)];
  trains.set(panel.name, known);
  return known;
};

const ORDER = { clash: 0, touching: 1, near: 2 } as const;

const worse = (a: DragMeeting, b: DragMeeting): number =>
  a.kind === "clash" ? b.length - a.length : a.length - b.length;

const shifted = (frame: Frame, bay: BayLayout, by: number): Frame =>
  movedFrame(frame, scaled(bay.frame.y, by));

const endOf = ({ place }: PlacedPanel): number => (place.kind === "bay" ? place.to : 0);

interface MovingTrain {
  readonly train: readonly PlacedPanel[];
  readonly bay: BayLayout;
  readonly by: number;
}

const meetingsOf = (
  console: StandingConsole,
  { train, bay, by }: MovingTrain,
): readonly DragMeeting[] => {
  const { layout, within } = console;
  const rail = railOf(console, bay);
  const names = new Set<string | null>(train.map(({ name }) => name));
  const standing = new Map(
    layout.panels.flatMap(({ name, place }) =>
      names.has(name) || place.kind !== "bay" || place.bay !== bay.id ? [] : [[name, place]],
    ),
  );
  return train.flatMap(({ name, place }) => {
    const isOver = (other: string | null): boolean => {
      const there = standing.get(other ?? "");
      return (
        place.kind === "bay" &&
        there !== undefined &&
        place.from + by < there.to - arithmeticNoise &&
        there.from < place.to + by - arithmeticNoise
      );
    };
    // Two panels that want the same rails clash: how far apart the rest of them is, nobody asks, and it is half of the work.
    return dragStep(rail, { panel: name, by }, (other) =>
      names.has(other) ? null : isOver(other) ? 0 : within,
    ).map((fact) => meeting(fact, bay));
  });
};

const meeting = ({ a, b, relation, boxes }: DragFact, bay: BayLayout): DragMeeting => {
  const names = { a: bodyName(a), b: bodyName(b) };
  switch (relation.kind) {
    case "meet":
      return { kind: "clash", ...names, ...sharedStretch(boxes, bay) };
    case "touching":
      return { kind: "touching", ...names, length: 0, at: relation.at };
    case "apart":
      return relation.gap > arithmeticNoise
        ? { kind: "near", ...names, length: relation.gap, at: relation.at }
        : { kind: "touching", ...names, length: 0, at: relation.at };
  }
};

/**
 * What both take along the rail: by so much, at most, one of them must move to be free of the other. `at`: the middle of
 * what both take.
 */
const sharedStretch = (
  { a, b }: DragFact["boxes"],
  { frame }: BayLayout,
): { readonly length: number; readonly at: Vector } => {
  const middle = vector(
    (Math.max(a.minX, b.minX) + Math.min(a.maxX, b.maxX)) / 2,
    (Math.max(a.minY, b.minY) + Math.min(a.maxY, b.maxY)) / 2,
    (Math.max(a.minZ, b.minZ) + Math.min(a.maxZ, b.maxZ)) / 2,
  );
  return { length: Math.min(a.maxY - b.minY, b.maxY - a.minY), at: pointOut(frame, middle) };
};
