// What is picked turned counter-clockwise, as a change of the text. What comes out is laid out anew: ends of a line must lie where
// a turn about its middle, worked by hand, puts them.

import { describe, expect, test } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { thingsTurned } from "../../viewer/panel/turn-edits.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";

const TEXT = panelText({
  height: "16 modules",
  components: ["a: { part: led-5-bezel, at: { x: 30 mm, y: 50 mm }, turn: 350 deg }"],
  markings: [
    "window: { name: slot, at: { x: 40 mm, y: 90 mm }, width: 12 mm, height: 1/4 in, layers: [metal] }",
    "line: { name: rule, from: { x: 60 mm, y: 40 mm }, to: { right: 46.05 mm, y: 40 mm } }",
    "border: { name: frame, around: [a] }",
  ],
});

const turning = (entries: readonly string[], by: number) =>
  thingsTurned(source("panel.yaml", TEXT), entries, { by, layout: layoutOf(TEXT) });

const turned = (entries: readonly string[], by: number): string => {
  const { edit } = turning(entries, by);
  if (edit.kind === "refused") throw new Error(edit.why);
  const applied = applyEdits(TEXT, [edit.edit]);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

describe("turned", () => {
  test("a component by what is typed, past the whole turn", () => {
    expect(turned(["a"], 25)).toContain("y: 50 mm }, turn: 15 deg }");
  });

  test("a window by a quarter changes its sides, as they are written; by half a turn nothing", () => {
    expect(turned(["slot"], -90)).toContain("width: 1/4 in, height: 12 mm");
    expect(turned(["slot"], 180)).toBe(TEXT);
    expect(turning(["slot"], 45).edit).toEqual({
      kind: "refused",
      why: "a window is turned by quarters",
    });
  });

  test("a line about its middle", () => {
    // From 60 to 100 at 40: about 80, 40, a quarter puts its ends at 80, 20 and 80, 60.
    const ends = layoutOf(turned(["rule"], 90)).ownPlaces.filter(({ id }) => id === "rule");
    expect(ends.map(({ end }) => end)).toEqual(["from", "to"]);
    expect(ends[0]!.at.x).toBeCloseTo(80, 3);
    expect(ends[0]!.at.y).toBeCloseTo(20, 3);
    expect(ends[1]!.at.x).toBeCloseTo(80, 3);
    expect(ends[1]!.at.y).toBeCloseTo(60, 3);
    // By thirty degrees: 20 times the cosine and the sine.
    const slant = layoutOf(turned(["rule"], 30)).ownPlaces.filter(({ id }) => id === "rule");
    expect(slant[1]!.at.x).toBeCloseTo(80 + 17.320508, 3);
    expect(slant[1]!.at.y).toBeCloseTo(50, 3);
  });

  test("what can't be is named, and keeps the others from nothing", () => {
    const { edit, unturned } = turning(["a", "frame", "fixing.1"], 90);
    expect(edit.kind).toBe("edit");
    expect(unturned).toEqual(["frame", "fixing.1"]);
    expect(turning(["frame"], 90).edit).toEqual({
      kind: "refused",
      why: "frame can't be turned",
    });
  });
});
