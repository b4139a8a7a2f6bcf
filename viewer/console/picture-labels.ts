// Words over the picture: names of bays and panels, numbers of the floor, of a measure, of what a drag meets. Elements of
// the page, so that letters stay crisp; moved after each drawing, hidden from those who hear the page (it is said elsewhere).

import { plus, scaled, type Vector } from "../../src/geometry/space/vector.ts";
import { calledAmong } from "../panel-called.ts";
import type { ConsoleScene } from "./console-messages.ts";
import { floorGrid, type Grid } from "./floor-grid.ts";
import { glided, NONE_SHOWN, type Shown } from "./gliding-names.ts";
import { type Cut, faceLift, isCutAway, type Look } from "./look.ts";
import {
  leadOf,
  NO_WAYS,
  type Point,
  partedSpots,
  type Spot,
  spotRound,
  type WantedSpot,
  type Ways,
} from "./name-spots.ts";
import { crossesBox } from "./space-point.ts";

export interface Label {
  readonly key: string;
  readonly at: Vector;
  readonly words: string;
  readonly look: string;
  readonly stands: WantedSpot["stands"];
  /** Which stays where two would lie over each other: the higher. */
  readonly rank: number;
  /** Corners of the panel that it names; none of what is no name of one. */
  readonly over: readonly Vector[];
}

/** `eye`: numbers of the floor that the console hides from there are left out. */
export const labelsOf = (scene: ConsoleScene, look: Look, eye: Vector): readonly Label[] => [
  ...(look.showNames ? names(scene, look) : []),
  ...floorNumbers(scene)
    .filter(({ at }) => !crossesBox(eye, at, scene.box))
    .map(({ at, words }) => ({
      key: `floor ${at.x} ${at.y}`,
      at,
      words,
      look: "floor",
      stands: "on" as const,
      rank: 0,
      over: [],
    })),
  ...look.notes
    .filter(({ at }) => !isCutAway(look.cut, at))
    .map(({ kind, at, words, isOnIt }, index) => ({
      key: `note ${index}`,
      at,
      words,
      look: `note ${kind}`,
      stands: isOnIt ? ("on" as const) : ("beside" as const),
      rank: 4,
      over: [],
    })),
];

/** Of each scene once: labels are placed with every drawing. */
const floorNumbers = (scene: ConsoleScene): Grid["numbers"] => {
  const numbers = numbersOf.get(scene) ?? floorGrid(scene).numbers;
  numbersOf.set(scene, numbers);
  return numbers;
};

const numbersOf = new WeakMap<ConsoleScene, Grid["numbers"]>();

const names = ({ bays, groups, panels }: ConsoleScene, look: Look): readonly Label[] => [
  ...bays.flatMap(({ id, frame, width, length }) =>
    firstKept(look.cut, [
      plus(plus(frame.origin, scaled(frame.x, width / 2 + 30)), scaled(frame.y, length / 2)),
    ]).map((at) => ({
      key: `bay ${id}`,
      at,
      words: `bay ${id}`,
      look: "bay",
      stands: "anywhere" as const,
      rank: 1,
      over: [],
    })),
  ),
  ...panels.flatMap((panel) => {
    const { name, width, height } = panel;
    const frame = look.moved.get(name) ?? groups.find(({ key }) => key === name)?.frame;
    if (frame === undefined) return [];
    const lowerLeft = plus(frame.origin, scaled(frame.z, faceLift(look, panel)));
    const onFace = (across: number, up: number): Vector =>
      plus(lowerLeft, plus(scaled(frame.x, across * width), scaled(frame.y, up * height)));
    const corners = [onFace(0, 0), onFace(1, 0), onFace(1, 1), onFace(0, 1)];
    const isChosen = name === look.chosen;
    // Where the middle is cut away, what is left of the panel is named.
    return firstKept(look.cut, [onFace(0.5, 0.5), ...corners]).map((at) => ({
      key: `panel ${name}`,
      at,
      words: calledAmong(panel, panels),
      look: isChosen ? "panel chosen" : "panel",
      stands: "anywhere" as const,
      rank: isChosen ? 3 : 2,
      over: corners,
    }));
  }),
];

/** What is cut away keeps no name in the air. */
const firstKept = (cut: Cut | null, places: readonly Vector[]): readonly Vector[] =>
  places.filter((at) => !isCutAway(cut, at)).slice(0, 1);

/**
 * How a point of the console is seen: pixels from the upper left of a picture of that size, null where it is not in it;
 * `beyond`: only where it lies behind whoever looks.
 */
export interface Seen {
  readonly place: (at: Vector, beyond?: boolean) => Point | null;
  readonly width: number;
  readonly height: number;
}

/** Names as they were last drawn: the ways that they go, where they are shown, and whether one is still under way to there. */
export interface DrawnNames {
  readonly ways: Ways;
  readonly shown: Shown;
  readonly isGliding: boolean;
}

export const NO_NAMES: DrawnNames = { ways: NO_WAYS, shown: NONE_SHOWN, isGliding: false };

/** Since they were drawn `before`, in ms; null: nothing glides. */
interface Drawing extends Seen {
  readonly before: DrawnNames;
  readonly elapsed: number | null;
}

/** Puts them over the picture, names by the ways that they went before; gives the ways that they go now. */
export const showLabels = (
  holder: HTMLElement,
  { labels, stretch }: { readonly labels: readonly Label[]; readonly stretch: Look["stretch"] },
  { place, width, height, before, elapsed }: Drawing,
): DrawnNames => {
  const known = new Map<string, HTMLElement>();
  for (const child of [...holder.children])
    if (child instanceof HTMLElement) known.set(child.dataset["key"] ?? "", child);
  const elementFor = (key: string): HTMLElement => {
    const element = known.get(key) ?? document.createElement("span");
    known.delete(key);
    if (element.parentElement === null) {
      element.dataset["key"] = key;
      holder.append(element);
    }
    return element;
  };
  const wanted = labels.flatMap(({ key, at, words, look, stands, rank, over }) => {
    const element = elementFor(key);
    if (element.className !== look) element.className = look;
    const size = sizeOf(element, words);
    // What is spoken of out of the picture is spoken of at its edge.
    const seen = place(at, stands === "beside");
    hide(element, seen === null);
    if (seen === null) return [];
    return [{ key, rank, element, stands, isOfPanel: over.length > 0, ...seen, ...size }];
  });
  const covered = labels.flatMap(
    ({ over }) => spotRound(over.flatMap((corner) => place(corner) ?? [])) ?? [],
  );
  const { spots, ways } = partedSpots(wanted, { width, height, covered }, before.ways);
  const { shown, isGliding } = glided(before.shown, ways, elapsed);
  for (const each of wanted) {
    const spot = shownSpot(each, spots.get(each.key), shown.get(each.key));
    const { element, isOfPanel } = each;
    const at = spot ?? each;
    draw(element, {
      visibility: spot === undefined ? "hidden" : "",
      transform: `translate(${at.x.toFixed(1)}px, ${at.y.toFixed(1)}px) translate(-50%, -50%)`,
    });
    if (isOfPanel) element.dataset["names"] = `${each.x.toFixed(1)} ${each.y.toFixed(1)}`;
    if (spot !== undefined && hasLine(each, spot))
      lead(() => elementFor(`${each.key} lead`), spot, each);
  }
  if (stretch !== null) ruleStretch(() => elementFor("stretch"), stretch, place);
  for (const left of known.values()) left.remove();
  return { ways, shown, isGliding };
};

const hasLine = (
  { x, y, stands, isOfPanel }: Point & Pick<Label, "stands"> & { readonly isOfPanel: boolean },
  spot: Spot,
): boolean =>
  // The name of a bay mostly has room beside it, and needs a line only where it has not.
  isOfPanel ||
  stands === "beside" ||
  (stands === "anywhere" && Math.hypot(spot.x - x, spot.y - y) > BESIDE);

/** So near to its place, in pixels, the name of a bay is taken for that bay's: two of its lines. */
const BESIDE = 40;

/** Of a name on its way; of what goes none, its own. */
const shownSpot = (
  { x, y }: Point,
  spot: Spot | undefined,
  way: Point | undefined,
): Spot | undefined =>
  spot === undefined || way === undefined ? spot : { ...spot, x: x + way.x, y: y + way.y };

const hide = (element: HTMLElement, isHidden: boolean): void => {
  if (element.hidden !== isHidden) element.hidden = isHidden;
};

type Drawn = Readonly<Partial<Record<"visibility" | "transform" | "width", string>>>;

const drawn = new WeakMap<HTMLElement, Drawn>();

/** What stands as it stood is not written: the browser would style it anew. */
const draw = (element: HTMLElement, next: Drawn): void => {
  const last = drawn.get(element);
  for (const key of ["visibility", "transform", "width"] as const) {
    const value = next[key] ?? "";
    if (last?.[key] !== value) element.style[key] = value;
  }
  drawn.set(element, { visibility: "", transform: "", width: "", ...next });
};

/** A line to what is named, with a dot at its end. */
const lead = (element: () => HTMLElement, spot: Spot, to: Point): void => {
  const line = leadOf(spot, to);
  if (line !== null) rule(element(), "lead", line);
};

/** Between what is measured, as far as both ends lie before whoever looks. */
const ruleStretch = (
  element: () => HTMLElement,
  stretch: NonNullable<Look["stretch"]>,
  place: Seen["place"],
): void => {
  const [from, to] = [place(stretch.from, true), place(stretch.to, true)];
  if (from !== null && to !== null) rule(element(), "stretch", { from, to });
};

const rule = (
  shown: HTMLElement,
  look: string,
  { from, to }: { readonly from: Point; readonly to: Point },
): void => {
  const [x, y] = [to.x - from.x, to.y - from.y];
  if (shown.className !== look) shown.className = look;
  draw(shown, {
    width: `${Math.hypot(x, y).toFixed(1)}px`,
    transform: `translate(${from.x.toFixed(1)}px, ${from.y.toFixed(1)}px) rotate(${Math.atan2(y, x).toFixed(4)}rad)`,
  });
};

interface Measured {
  readonly words: string;
  readonly width: number;
  readonly height: number;
}

const measured = new WeakMap<HTMLElement, Measured>();

/** Measured when its words are new: a measuring in each frame would have the page laid out again. */
const sizeOf = (element: HTMLElement, words: string): Measured => {
  const known = measured.get(element);
  if (known?.words === words && known.width > 0) return known;
  element.textContent = words;
  element.hidden = false;
  const size = { words, width: element.offsetWidth, height: element.offsetHeight };
  measured.set(element, size);
  return size;
};
