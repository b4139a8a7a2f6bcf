// Words over the picture: names of bays and panels, numbers of the floor, of a measure, of what a drag meets. Elements of
// the page, so that letters stay crisp; moved after each drawing, hidden from those who hear the page (it is said elsewhere).

import { dot, plus, scaled, type Vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene } from "./console-messages.ts";
import { floorGrid } from "./floor-grid.ts";
import type { Cut, Look } from "./look.ts";
import { crossesBox } from "./space-point.ts";

export interface Label {
  readonly key: string;
  readonly at: Vector;
  readonly words: string;
  readonly look: string;
  /** Which stays where two would lie over each other: the higher. */
  readonly rank: number;
}

/** `eye`: numbers of the floor that the console hides from there are left out. */
export const labelsOf = (scene: ConsoleScene, look: Look, eye: Vector): readonly Label[] => [
  ...(look.showNames ? names(scene, look) : []),
  ...floorGrid(scene)
    .numbers.filter(({ at }) => !crossesBox(eye, at, scene.box))
    .map(({ at, words }) => ({ key: `floor ${at.x} ${at.y}`, at, words, look: "floor", rank: 0 })),
  ...look.notes.map(({ kind, at, words }, index) => ({
    key: `note ${index}`,
    at,
    words,
    look: `note ${kind}`,
    rank: 4,
  })),
];

/** From the left edge of a panel to the middle of its name, mm. */
const BESIDE = 14;

const names = ({ bays, groups, panels }: ConsoleScene, look: Look): readonly Label[] => [
  ...bays.flatMap(({ id, frame, width, length }) =>
    firstKept(look.cut, [
      plus(plus(frame.origin, scaled(frame.x, width / 2 + 30)), scaled(frame.y, length / 2)),
    ]).map((at) => ({ key: `bay ${id}`, at, words: `bay ${id}`, look: "bay", rank: 1 })),
  ),
  ...panels.flatMap(({ name, width, height }) => {
    const frame = look.moved.get(name) ?? groups.find(({ key }) => key === name)?.frame;
    if (frame === undefined) return [];
    // Beside its edges: over the panel it would hide what it names.
    const places = [-BESIDE, width + BESIDE].flatMap((aside) =>
      [height / 2, 0, height].map((up) =>
        plus(frame.origin, plus(scaled(frame.x, aside), scaled(frame.y, up))),
      ),
    );
    const isChosen = name === look.chosen;
    return firstKept(look.cut, places).map((at) => ({
      key: `panel ${name}`,
      at,
      words: name,
      look: isChosen ? "panel chosen" : "panel",
      rank: isChosen ? 3 : 2,
    }));
  }),
];

/** What is cut away keeps no name in the air. */
const firstKept = (cut: Cut | null, places: readonly Vector[]): readonly Vector[] =>
  places.filter((at) => cut === null || dot(cut.normal, at) >= cut.offset).slice(0, 1);

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Between two labels, in pixels. */
const GAP = 2;

/** Where each is drawn, by its key: a lower one gives way by its own height, and is left out where that does not help. */
export const partedSpots = (
  wanted: readonly (Spot & { readonly key: string; readonly rank: number })[],
): ReadonlyMap<string, Spot> => {
  const taken = new Map<string, Spot>();
  for (const { key, x, y, width, height } of wanted.toSorted((a, b) => b.rank - a.rank)) {
    const free = [0, 1, -1]
      .map((by) => ({ x, y: y + by * (height + GAP), width, height }))
      .find((spot) => ![...taken.values()].some((other) => isOver(spot, other)));
    if (free !== undefined) taken.set(key, free);
  }
  return taken;
};

const isOver = (a: Spot, b: Spot): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + GAP &&
  Math.abs(a.y - b.y) < (a.height + b.height) / 2 + GAP - 1;

/** `place`: pixels from the upper left, null where it lies behind the eye. */
export const showLabels = (
  holder: HTMLElement,
  labels: readonly Label[],
  place: (at: Vector) => { readonly x: number; readonly y: number } | null,
): void => {
  const known = new Map<string, HTMLElement>();
  for (const child of [...holder.children])
    if (child instanceof HTMLElement) known.set(child.dataset["key"] ?? "", child);
  const wanted = labels.flatMap(({ key, at, words, look, rank }) => {
    const element = known.get(key) ?? document.createElement("span");
    known.delete(key);
    element.className = look;
    element.dataset["key"] = key;
    if (element.parentElement === null) holder.append(element);
    const size = sizeOf(element, words);
    const seen = place(at);
    element.hidden = true;
    return seen === null ? [] : [{ key, rank, element, ...seen, ...size }];
  });
  for (const left of known.values()) left.remove();
  const spots = partedSpots(wanted);
  for (const { key, element, x, y } of wanted) {
    const spot = spots.get(key);
    element.hidden = false;
    element.style.visibility = spot === undefined ? "hidden" : "";
    element.style.transform = `translate(${x.toFixed(1)}px, ${(spot?.y ?? y).toFixed(1)}px) translate(-50%, -50%)`;
  }
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
