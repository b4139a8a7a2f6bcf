// What the parts drawer finds, and which lines of the text belong to which component.

import { expect, test } from "vitest";
import { matching, partCard } from "../../viewer/panel/part-card.ts";
import { sheetThings } from "../../viewer/panel/sheet-things.ts";
import { caretAfter, changeEnd, idsAt, linesOf } from "../../viewer/panel/text-places.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";
import { testLibrary } from "../support/test-library.ts";

const cards = [...testLibrary().catalogue.parts.values()].map(partCard);

test("the drawer holds every part, and finds by kind, by words and by dimension", () => {
  expect(cards.length).toBe(testLibrary().catalogue.parts.size);
  expect(matching(cards, "").length).toBe(cards.length);
  const toggles = matching(cards, "toggle");
  expect(toggles.length).toBeGreaterThan(2);
  expect(toggles.every(({ words }) => words.includes("toggle"))).toBe(true);
  expect(matching(cards, "12 toggle").map(({ id }) => id)).toContain("toggle-12");
  const [some] = cards.filter(({ hole }) => hole !== "");
  const width = /hole ([\d.]+) x/.exec(some?.sizes ?? "")?.[1] ?? "none";
  expect(matching(cards, width).map(({ id }) => id)).toContain(some?.id);
  // "6" is a dimension of others too: what goes by the name comes first.
  expect(matching(cards, "toggle 6")[0]?.id).toBe("toggle-6");
  expect(matching(cards, "no-such-thing")).toEqual([]);
});

test("an offset in an entry's lines, its name included, is the entry's", () => {
  const text = panelText({
    components: [
      "a:",
      "  part: led-5-bezel",
      "  at: { x: 40 mm, y: 38 mm }",
      "# between",
      "ab: { part: led-5-bezel, at: { right-of: a, centres: 30 mm } }",
    ],
  });
  const things = sheetThings(layoutOf(text), {});
  const at = (words: string): string | undefined =>
    idsAt(things, { file: "panel.yaml", text, offset: text.indexOf(words) })[0];
  expect([at("a:\n"), at("x: 40"), at("ab: {"), at("right-of"), at("mount:")]).toEqual([
    "a",
    "a",
    "ab",
    "ab",
    undefined,
  ]);
  const [first] = things;
  if (first === undefined) throw new Error("no component");
  const line = text.slice(0, text.indexOf("  a:\n")).split("\n").length;
  expect(linesOf(first, text)).toEqual({ first: line, last: line + 2 });
});

test.each([
  ["before the change", "x: 40, y: 1", "x: 45, y: 1", 2, 2],
  ["behind it, where it has grown", "x: 40, y: 1", "x: 400, y: 1", 8, 9],
  ["behind it, where it has shrunk", "x: 400, y: 1", "x: 4, y: 1", 9, 7],
  ["within what is gone", "abcdef", "af", 3, 1],
])("a caret stands %s", (_where, before, after, caret, then) => {
  expect(caretAfter(before, after, caret)).toBe(then);
});

test("what has changed ends where its last letter is", () => {
  expect(changeEnd("x: 40, y: 1", "x: 412, y: 1")).toBe("x: 412".length);
});
