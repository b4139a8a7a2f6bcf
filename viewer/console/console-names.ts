// Names over the console's picture: of each panel by itself, or of a bay's panels together in one list, where they are seen end
// on or from behind and lines to each of them would run through each other. Pure: a scene in, labels out.

import {
  dot,
  minus,
  plus,
  scaled,
  spaceDistance,
  unitVector,
  type Vector,
} from "../../src/geometry/space/vector.ts";
import { calledAmong } from "../panel-called.ts";
import type { ConsoleScene, SceneBay, ScenePanel } from "./console-messages.ts";
import { type Cut, faceLift, isCutAway, type Look } from "./look.ts";
import { middleOf } from "./operator-figure.ts";
import type { Label } from "./picture-label.ts";
import type { Point } from "./spot-lines.ts";

/** Bays whose panels are named in one list, by their ids. */
export type Gathered = ReadonlySet<string>;

export const NONE_GATHERED: Gathered = new Set();

/** From where they are seen, and where in the picture: null where a point is not in it. */
export interface NameView {
  readonly eye: Vector;
  readonly place: (at: Vector) => Point | null;
}

/** Under the one a row is gathered, over the other it comes apart: in between it stays as it was, so that no turn has it flicker. */
interface Bounds {
  readonly apart: number;
  readonly gathered: number;
}

/** From one panel of a row to the next in the picture, in pixels: under it names of six find no room. */
const STEP: Bounds = { apart: 19, gathered: 21 };
/** How much a row's faces look toward whoever sees them, as a sine: of 3 and of 5 degrees. */
const FACING: Bounds = { apart: 0.05, gathered: 0.09 };

export const gatheredBays = (
  scene: ConsoleScene,
  look: Look,
  { eye, place, before }: NameView & { readonly before: Gathered },
): Gathered => {
  const named = namedPanels(scene, look);
  const isGathered = (bay: SceneBay): boolean => {
    const spots = rowOf(bay, named, look).flatMap(({ at }) => place(at) ?? []);
    if (spots.length === 0) return false;
    const was = before.has(bay.id) ? "gathered" : "apart";
    const facing = dot(bay.frame.z, unitVector(minus(eye, middleOf(bay))));
    return facing < FACING[was] || stepOf(spots) < STEP[was];
  };
  return new Set(scene.bays.filter(isGathered).map(({ id }) => id));
};

/** A row that goes upright has room for its names at both sides, where they are read line by line: its steps count for more. */
const UPRIGHT = 1.4;

/** Endless for a panel by itself. */
const stepOf = (spots: readonly Point[]): number => {
  const [first, last] = [spots[0]!, spots.at(-1)!];
  return spots.length < 2
    ? Number.POSITIVE_INFINITY
    : Math.hypot(last.x - first.x, UPRIGHT * (last.y - first.y)) / (spots.length - 1);
};

export const consoleNames = (
  scene: ConsoleScene,
  look: Look,
  { eye, place, gathered }: NameView & { readonly gathered: Gathered },
): readonly Label[] => {
  const named = namedPanels(scene, look);
  const rows = new Map(
    scene.bays
      .filter(({ id }) => gathered.has(id))
      .map((bay) => [bay, rowOf(bay, named, look).filter(({ at }) => place(at) !== null)]),
  );
  const inRows = new Set([...rows.values()].flat());
  return [
    ...scene.bays.flatMap((bay) => {
      const row = rows.get(bay) ?? [];
      return row.length > 0 ? [listOf(bay, row, eye)] : bayName(bay, { scene, look, place });
    }),
    ...named
      .filter((each) => !inRows.has(each))
      .map(({ panel: { name }, words, at, corners }) => ({
        key: `panel ${name}`,
        at,
        words,
        look: name === look.chosen ? "panel chosen" : "panel",
        stands: "anywhere" as const,
        rank: name === look.chosen ? 4 : 2,
        over: corners,
      })),
  ];
};

interface NamedPanel {
  readonly panel: ScenePanel;
  readonly words: string;
  readonly at: Vector;
  readonly corners: readonly Vector[];
}

/** As they lie now: where the middle is cut away, what is left of a panel is named, and nothing of what is gone. */
const namedPanels = ({ groups, panels }: ConsoleScene, look: Look): readonly NamedPanel[] =>
  panels.flatMap((panel) => {
    const { name, width, height } = panel;
    const frame = look.moved.get(name) ?? groups.find(({ key }) => key === name)?.frame;
    if (frame === undefined) return [];
    const lowerLeft = plus(frame.origin, scaled(frame.z, faceLift(look, panel)));
    const onFace = (across: number, up: number): Vector =>
      plus(lowerLeft, plus(scaled(frame.x, across * width), scaled(frame.y, up * height)));
    const corners = [onFace(0, 0), onFace(1, 0), onFace(1, 1), onFace(0, 1)];
    const words = calledAmong(panel, panels);
    return firstKept(look.cut, [onFace(0.5, 0.5), ...corners]).map((at) => ({
      panel,
      words,
      at,
      corners,
    }));
  });

const firstKept = (cut: Cut | null, places: readonly Vector[]): readonly Vector[] =>
  places.filter((at) => !isCutAway(cut, at)).slice(0, 1);

/** The chosen one keeps its own name. */
const rowOf = (
  { id }: SceneBay,
  named: readonly NamedPanel[],
  { chosen }: Look,
): readonly NamedPanel[] =>
  named
    .filter(({ panel: { name, place } }) => place?.bay === id && name !== chosen)
    .toSorted((a, b) => a.panel.place!.module - b.panel.place!.module);

interface ShownNames {
  readonly scene: ConsoleScene;
  readonly look: Look;
  readonly place: NameView["place"];
}

/** From the edge of a bay to where its name belongs, mm. */
const OFF_BAY = 30;

/** Past the end that lies farther out in the console: beside a row the lines of its panels go. Else beside it, where that is seen. */
const bayName = (
  { id, frame, length, width }: SceneBay,
  { scene: { box }, look: { cut }, place }: ShownNames,
): readonly Label[] => {
  const middle = scaled(plus(box.low, box.high), 1 / 2);
  const pointAt = (along: number, aside: number): Vector =>
    plus(plus(frame.origin, scaled(frame.y, along)), scaled(frame.x, aside));
  const [outer, inner] = [pointAt(length + OFF_BAY, 0), pointAt(-OFF_BAY, 0)].toSorted(
    (a, b) => spaceDistance(b, middle) - spaceDistance(a, middle),
  );
  const places = [outer!, pointAt(length / 2, width / 2 + OFF_BAY), inner!].filter(
    (at) => place(at) !== null,
  );
  return firstKept(cut, places).map((at) => ({
    key: `bay ${id}`,
    at,
    words: `bay ${id}`,
    look: "bay",
    stands: "anywhere" as const,
    rank: 3,
    over: [],
  }));
};

/** More would cover the picture. */
const MOST_LISTED = 8;

/** The nearest first: from the end of the rail that lies nearer, so that the order turns round once and not name by name. */
const listOf = (bay: SceneBay, row: readonly NamedPanel[], eye: Vector): Label => {
  const isFromLow = dot(bay.frame.y, minus(eye, middleOf(bay))) < 0;
  const nearFirst = isFromLow ? row : row.toReversed();
  const listed = row.length > MOST_LISTED ? nearFirst.slice(0, MOST_LISTED - 1) : nearFirst;
  const more = row.length - listed.length;
  return {
    key: `bay ${bay.id}`,
    at: row[Math.floor(row.length / 2)]!.at,
    words: [
      `bay ${bay.id}: ${row.length} ${row.length === 1 ? "panel" : "panels"}`,
      ...listed.map(({ words }) => words),
      ...(more > 0 ? [`and ${more} more`] : []),
    ].join("\n"),
    look: "bay row",
    stands: "anywhere",
    rank: 3,
    over: row.flatMap(({ corners }) => corners),
  };
};
