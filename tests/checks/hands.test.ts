// Controls too close for a hand, against the published tables, at and around each figure, for every two kinds of hold that
// the catalogue has parts of.

import { expect, test } from "vitest";
import { contourExtent } from "../../src/geometry/measure.ts";
import { testLibrary } from "../support/test-library.ts";
import { checked, ofCode } from "./panel.ts";

// MIL-STD-1472E Table VII and NUREG-0700 Rev 3 Table 11.5, edge to edge, one bare hand; selectors among themselves by
// MIL-STD-1472E figure 4. Knob to knob and lever-lock toggles among themselves: from memory, unverified.
const PUBLISHED: Readonly<Record<string, number>> = {
  "push-button push-button": 13,
  "push-button toggle": 13,
  "push-button thumbwheel": 13,
  "push-button rotary-selector": 13,
  "knob push-button": 13,
  "push-button slide": 13,
  "toggle toggle": 19,
  "thumbwheel toggle": 13,
  "rotary-selector toggle": 19,
  "knob toggle": 19,
  "slide toggle": 19,
  "thumbwheel thumbwheel": 13,
  "rotary-selector thumbwheel": 19,
  "knob thumbwheel": 19,
  "slide thumbwheel": 13,
  "rotary-selector rotary-selector": 25,
  "knob rotary-selector": 25,
  "rotary-selector slide": 13,
  "knob knob": 25,
  "knob slide": 13,
  "slide slide": 13,
  "key-operated key-operated": 25,
  "key-operated push-button": 13,
  "key-operated toggle": 19,
  "key-operated knob": 19,
  "lever-lock-toggle lever-lock-toggle": 25,
  "lever-lock-toggle toggle": 25,
};

/** A limit that no document gives is none of a standard's. */
const REMEMBERED: ReadonlySet<string> = new Set([
  "knob knob",
  "lever-lock-toggle lever-lock-toggle",
  "lever-lock-toggle toggle",
  "toggle lever-lock-toggle",
]);

interface Grasped {
  readonly hand: string;
  readonly part: string;
  /** Reach of what a hand holds, left and right of the axis; and of everything solid. */
  readonly left: number;
  readonly right: number;
  readonly solid: number;
}

const graspOf = (part: string): Grasped | null => {
  const { layout } = checked(`components:\n  a: { part: ${part}, at: { x: 210 mm, y: 110 mm } }\n`);
  const [component] = layout.components;
  if (component?.grasp == null) return null;
  const box = contourExtent(component.grasp);
  const solids = component.bodies.map((body) => contourExtent(body.footprint));
  return {
    hand: component.part.hand,
    part,
    left: component.at.x - box.minX,
    right: box.maxX - component.at.x,
    solid: Math.max(...solids.map(({ minX, maxX }) => maxX - minX)),
  };
};

/** Of each kind of hold the part with the least behind it, so that nothing else collides first. */
const slimmest = (): readonly Grasped[] => {
  const best = new Map<string, Grasped>();
  for (const { id, hand } of testLibrary().catalogue.parts.values()) {
    const grasp = hand === "none" ? null : graspOf(id);
    if (grasp === null) continue;
    const before = best.get(hand);
    if (before === undefined || grasp.solid < before.solid) best.set(hand, grasp);
  }
  return [...best.values()];
};

const kinds = slimmest();
const pairs = kinds.flatMap((a, index) =>
  kinds.slice(index).flatMap((b) => {
    const least = PUBLISHED[[a.hand, b.hand].toSorted().join(" ")];
    return least === undefined ? [] : [{ name: `${a.hand}, ${b.hand}: ${least}`, a, b, least }];
  }),
);

test("the catalogue has the holds of the tables' first columns", () => {
  const hands = kinds.map(({ hand }) => hand);
  for (const hand of ["push-button", "toggle", "rotary-selector", "knob", "key-operated"])
    expect(hands).toContain(hand);
  expect(pairs.length).toBeGreaterThanOrEqual(16);
});

const gapFindings = (a: Grasped, b: Grasped, gap: number): ReturnType<typeof ofCode> => {
  const centres = a.right + gap + b.left;
  return ofCode(
    checked(
      `components:\n  a: { part: ${a.part}, at: { x: 150 mm, y: 110 mm } }\n  b: { part: ${b.part}, at: { right-of: a, centres: ${centres.toFixed(4)} mm } }\n`,
    ),
    "checks/hands",
  );
};

test.each(pairs)("$name", ({ a, b, least }) => {
  expect(gapFindings(a, b, least)).toEqual([]);
  expect(gapFindings(a, b, least + 0.01)).toEqual([]);
  const [found, ...others] = gapFindings(a, b, least - 0.01);
  expect(others).toEqual([]);
  expect(found?.measured?.value).toBeCloseTo(least - 0.01, 3);
  expect(found?.limit).toEqual({ value: least, unit: "mm" });
  expect(found?.source?.kind).toBe(REMEMBERED.has(`${a.hand} ${b.hand}`) ? "memory" : "standard");
});

test("lamps, displays and connectors ask for no room for a hand", () => {
  const close = `components:\n  a: { part: led-3, at: { x: 150 mm, y: 110 mm } }\n  b: { part: led-3, at: { right-of: a, centres: 7 mm } }\n`;
  expect(ofCode(checked(close), "checks/hands")).toEqual([]);
});
