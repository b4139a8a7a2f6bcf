// A legend typed in the ticket, as a change of the panel's text. What comes out is read by the program's own reader and by
// the yaml library, which must both find exactly what was typed.

import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { legendTyped, titleTyped, wordsTyped } from "../../viewer/panel/legend-edits.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";
import { changedText } from "../support/changed-text.ts";

const PLACE = "part: led-5-bezel, at: { x: 40 mm, y: 50 mm }";

const textOf = (...components: readonly string[]): string =>
  panelText({ height: "16 modules", fixings: "", components });

const typedInto = (text: string, typed: string): string => {
  const made = legendTyped(source("panel.yaml", text), "a", typed);
  if (made.kind === "refused") throw new Error(made.why);
  const applied = applyEdits(text, [made.edit]);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

const legendRead = (text: string): string | null => {
  const [component] = layoutOf(text).design.components;
  return component?.kind === "component" ? (component.legend?.text ?? null) : null;
};

describe("a legend that is typed", () => {
  test.each([
    ["BRAKE"],
    ["NO"],
    ["12"],
    ["PUMP #3"],
    ["A: B, {C} [D]"],
    ['"quoted" \\ it'],
    ["&a *b !c - ? |"],
    ["FIRE\nENGINE ROOM"],
    ["ON\n1"],
  ])("is read as it was typed: %j", (typed) => {
    for (const own of [
      "",
      ", legend: OLD",
      ", legend: [OLD, ER]",
      ", legend: { text: OLD, side: below }",
    ]) {
      const next = typedInto(textOf(`a: { ${PLACE}${own} }`), typed);
      const found = parse(next).components.a.legend;
      const written = found.text ?? found;
      expect(Array.isArray(written) ? written.join("\n") : written).toBe(typed);
      expect(found.side).toBe(own.includes("side") ? "below" : undefined);
      expect(legendRead(next)).toBe(typed);
    }
  });

  test("takes the place of lines of its own, and leaves the comments alone", () => {
    const text = textOf(
      "a:",
      "  part: led-5-bezel",
      "  legend: # two lines",
      "    - FIRE",
      "    - PUMP",
      "  at: { x: 40 mm, y: 50 mm } # here",
    );
    const next = typedInto(text, "BILGE");
    expect(legendRead(next)).toBe("BILGE");
    expect(next).toContain("# here");
  });

  test("is taken off where nothing is typed, and is refused with a line of no words", () => {
    expect(legendRead(typedInto(textOf(`a: { ${PLACE}, legend: OLD }`), " "))).toBe(null);
    const bare = source("panel.yaml", textOf(`a: { ${PLACE} }`));
    expect(legendTyped(bare, "a", "A\n\nB").kind).toBe("refused");
    expect(legendTyped(bare, "a", "")).toEqual({ kind: "refused", why: "a has no legend" });
    expect(legendTyped(bare, "b", "B").kind).toBe("refused");
  });
});

describe("the words of a marking", () => {
  const text = panelText({
    height: "16 modules",
    fixings: "",
    components: [`a: { ${PLACE} }`],
    markings: [
      "legend: { text: [FIRE, ROOM], height: 5 mm, at: { x: 40 mm, y: 90 mm } }",
      "border: { around: [a], legend: DRIVE }",
    ],
  });
  const from = source("panel.yaml", text);

  test("of a legend by itself are its lines, and it keeps the rest", () => {
    const made = wordsTyped(from, ["markings", "0", "legend"], "NO\nENTRY: 2");
    if (made.kind === "refused") throw new Error(made.why);
    const applied = applyEdits(text, [made.edit]);
    if (applied.kind === "refused") throw new Error(applied.why);
    const [legend] = layoutOf(applied.text).design.markings;
    expect(legend).toMatchObject({ legends: [{ text: "NO\nENTRY: 2", height: 5 }] });
    expect(wordsTyped(from, ["markings", "0", "legend"], " ")).toEqual({
      kind: "refused",
      why: "a legend by itself has words: take it off instead",
    });
  });

  test("the title of a border is typed, and taken off with nothing typed", () => {
    const typed = (words: string): string =>
      changedText(text, titleTyped(from, ["markings", "1", "border"], words));
    expect(layoutOf(typed("12")).design.markings[1]).toMatchObject({ legend: { text: "12" } });
    expect(layoutOf(typed("")).design.markings[1]).toMatchObject({ legend: null });
    expect(titleTyped(from, ["markings", "1", "border"], "A\n\nB")).toMatchObject({
      kind: "refused",
      why: expect.stringMatching(/^a line of the legend of \S+.* has no words$/),
    });
  });
});
