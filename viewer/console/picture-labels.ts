// Words over the picture: names of bays and panels, numbers of the floor, of a measure, of what a drag meets. Elements of
// the page, so that letters stay crisp; moved after each drawing, hidden from those who hear the page (it is said elsewhere).

import { plus, scaled, type Vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene } from "./console-messages.ts";
import { floorGrid } from "./floor-grid.ts";
import type { Look } from "./look.ts";
import { crossesBox } from "./space-point.ts";

export interface Label {
  readonly key: string;
  readonly at: Vector;
  readonly words: string;
  readonly look: string;
}

/** `eye`: numbers of the floor that the console hides from there are left out. */
export const labelsOf = (scene: ConsoleScene, look: Look, eye: Vector): readonly Label[] => [
  ...(look.showNames ? names(scene, look) : []),
  ...floorGrid(scene)
    .numbers.filter(({ at }) => !crossesBox(eye, at, scene.box))
    .map(({ at, words }) => ({ key: `floor ${at.x} ${at.y}`, at, words, look: "floor" })),
  ...look.notes.map(({ kind, at, words }, index) => ({
    key: `note ${index}`,
    at,
    words,
    look: `note ${kind}`,
  })),
];

/** From the left edge of a panel to the middle of its name, mm. */
const BESIDE = 14;

const names = ({ bays, groups, panels }: ConsoleScene, look: Look): readonly Label[] => [
  ...bays.map(({ id, frame, width, length }) => ({
    key: `bay ${id}`,
    at: plus(plus(frame.origin, scaled(frame.x, width / 2 + 30)), scaled(frame.y, length / 2)),
    words: `bay ${id}`,
    look: "bay",
  })),
  ...panels.flatMap(({ name, height }) => {
    const frame = look.moved.get(name) ?? groups.find(({ key }) => key === name)?.frame;
    if (frame === undefined) return [];
    // Beside its left edge: over the panel it would hide what it names.
    const beside = plus(scaled(frame.x, -BESIDE), scaled(frame.y, height / 2));
    return [
      {
        key: `panel ${name}`,
        at: plus(frame.origin, beside),
        words: name,
        look: name === look.chosen ? "panel chosen" : "panel",
      },
    ];
  }),
];

/** `place`: pixels from the upper left, null where it lies behind the eye. */
export const showLabels = (
  holder: HTMLElement,
  labels: readonly Label[],
  place: (at: Vector) => { readonly x: number; readonly y: number } | null,
): void => {
  const known = new Map<string, HTMLElement>();
  for (const child of [...holder.children])
    if (child instanceof HTMLElement) known.set(child.dataset["key"] ?? "", child);
  for (const { key, at, words, look } of labels) {
    const element = known.get(key) ?? document.createElement("span");
    known.delete(key);
    if (element.textContent !== words) element.textContent = words;
    element.className = look;
    element.dataset["key"] = key;
    const seen = place(at);
    element.hidden = seen === null;
    if (seen !== null)
      element.style.transform = `translate(${seen.x.toFixed(1)}px, ${seen.y.toFixed(1)}px) translate(-50%, -50%)`;
    if (element.parentElement === null) holder.append(element);
  }
  for (const left of known.values()) left.remove();
};
