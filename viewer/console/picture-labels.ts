// Words over the picture: names of bays and panels, numbers of the floor, of a measure, of what a drag meets. Elements of
// the page, so that letters stay crisp; moved after each drawing, hidden from those who hear the page (it is said elsewhere).

import type { Vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene } from "./console-messages.ts";
import { consoleNames, type Gathered, type NameView } from "./console-names.ts";
import { floorGrid, type Grid } from "./floor-grid.ts";
import { glided, NONE_SHOWN, type Shown } from "./gliding-names.ts";
import { isCutAway, type Look } from "./look.ts";
import { NO_WAYS, partedSpots, type Ways } from "./name-spots.ts";
import type { Label } from "./picture-label.ts";
import { crossesBox } from "./space-point.ts";
import { leadOf, type Point, type Spot, spotRound } from "./spot-lines.ts";

/** Numbers of the floor that the console hides from the eye are left out. */
export const labelsOf = (
  scene: ConsoleScene,
  look: Look,
  view: NameView & { readonly gathered: Gathered },
): readonly Label[] => [
  ...(look.showNames ? consoleNames(scene, look, view) : []),
  ...floorNumbers(scene)
    .filter(({ at }) => !crossesBox(view.eye, at, scene.box))
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
      rank: 5,
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
