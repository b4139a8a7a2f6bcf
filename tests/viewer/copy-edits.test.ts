// Whatever is picked, copied as a change of the text. What comes out is laid out anew: every copy must stand a shift away from
// its first one, and nothing else may have moved.

import { describe, expect, test } from "vitest";
import { namer } from "../../src/arrange/unit-names.ts";
import { source } from "../../src/design/source.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { type Copied, thingsCopied } from "../../viewer/panel/copy-edits.ts";
import { sheetThings } from "../../viewer/panel/sheet-things.ts";
import { layoutOf, panelText } from "../layout/bench-panel.ts";
import { changedText } from "../support/changed-text.ts";

const LAMP = "part: led-5-bezel";
const SHIFT: Shift = { x: 40, y: -10 };

const textOf = (components: readonly string[], ...markings: readonly string[]): string =>
  panelText({ height: "16 modules", fixings: "", components, markings });

function copied(text: string, entries: readonly string[]): Copied {
  const layout = layoutOf(text);
  const taken = [...layout.design.components, ...layout.design.markings].map(({ id }) => id);
  const name = namer(taken);
  const nameLike = (entry: string): string => name(null, entry);
  return thingsCopied(source("panel.yaml", text), { entries, shift: SHIFT, layout, nameLike });
}

/** The text after, and what has come to it, each with its place. */
function added(text: string, made: Copied): { text: string; places: Record<string, string> } {
  if (made.kind === "refused") throw new Error(made.why);
  const next = changedText(text, made.edit);
  const places = (of: string): readonly (readonly [string, string])[] =>
    sheetThings(layoutOf(of), {}).map(({ id, at }) => [
      id,
      `${Math.round(at.x * 100) / 100}, ${Math.round(at.y * 100) / 100}`,
    ]);
  const before = new Map(places(text));
  const now = new Map(places(next));
  for (const [id, place] of before) expect(`${id} ${now.get(id)}`).toBe(`${id} ${place}`);
  return { text: next, places: Object.fromEntries([...now].filter(([id]) => !before.has(id))) };
}

describe("a copy of components", () => {
  test("in lines of its own: in the same style, comments left alone", () => {
    const text = textOf([
      "a:",
      `  ${LAMP}`,
      "  at: { right-of: b, centres: 20 mm }",
      "  legend: ONE   # said once",
      "# what follows",
      `b: { ${LAMP}, at: { x: 40 mm, y: 50 mm } }`,
    ]);
    const { text: next, places } = added(text, copied(text, ["a"]));
    // 40 + 20 = 60, and 40 to the right and 10 lower.
    expect(places).toMatchObject({ "a-2": "100, 40" });
    expect(next).toContain(
      "  legend: ONE   # said once\n  a-2:\n    part: led-5-bezel\n    at: { x: 100 mm, y: 40 mm }\n    legend: ONE\n  # what follows\n",
    );
  });

  test("of a row is the whole row", () => {
    const text = textOf([`w: { row: { ${LAMP}, count: 2, pitch: 20 mm, x: 30 mm, y: 60 mm } }`]);
    const { places } = added(text, copied(text, ["w"]));
    expect(places).toMatchObject({ "w-2.1": "70, 50", "w-2.2": "90, 50" });
  });
});

describe("a copy", () => {
  test("of a window, a line and a legend: words, names and comments as the author writes them", () => {
    const text = panelText({
      height: "16 modules",
      fixings: "",
      markings: [
        "window: { name: slot, at: { x: 30 mm, top: 52.4 mm }, width: 9 mm, height: 6 mm, layers: [metal] }  # for the tape",
        "legend:\n      text: [FIRE, ROOM]\n      at: { x: 30 mm, y: 60 mm }",
        "line: { from: { x: 20 mm, y: 50 mm }, to: { x: 40 mm, y: 50 mm } }",
      ],
    });
    const made = copied(text, ["slot", "legend-1", "line-1"]);
    const next = added(text, made);
    // 152.4 - 52.4 = 100, and each 40 to the right and 10 lower.
    expect(next.places).toEqual({ "slot-2": "70, 90", "legend-2": "70, 50", "line-2": "70, 40" });
    expect(made).toMatchObject({ names: ["slot-2", "legend-2", "line-2"] });
    expect(next.text).toContain(
      "  - window: { name: slot-2, at: { x: 70 mm, y: 90 mm }, width: 9 mm, height: 6 mm, layers: [metal] }\n" +
        "  - legend:\n      text: [FIRE, ROOM]\n      at: { x: 70 mm, y: 50 mm }\n" +
        "  - line: { from: { x: 60 mm, y: 40 mm }, to: { x: 80 mm, y: 40 mm } }\n",
    );
  });

  test("of what stands by one that is copied too stands by the copy, and a border goes round the copies", () => {
    const text = textOf(
      [
        `a: { ${LAMP}, at: { x: 30 mm, y: 50 mm } }`,
        `b: { ${LAMP}, at: { right-of: a, centres: 15 mm } }`,
        `c: { ${LAMP}, at: { above: b, centres: 15 mm } }`,
      ],
      "border: { name: frame, around: [a, b] }",
      "legend: { text: HEAT, at: { above: a, centres: 14 mm } }",
    );
    const { text: next, places } = added(text, copied(text, ["b", "a", "frame", "legend-1"]));
    expect(places).toMatchObject({ "a-2": "70, 40", "b-2": "85, 40", "legend-2": "70, 54" });
    expect(next).toContain("b-2: { part: led-5-bezel, at: { right-of: a-2, centres: 15 mm } }");
    expect(next).toContain("border: { name: frame-2, around: [a-2, b-2] }");
    expect(next).toContain("text: HEAT, at: { above: a-2, centres: 14 mm }");
  });

  test("of a border alone is offered with what it goes round", () => {
    const text = textOf(
      [`a: { ${LAMP}, at: { x: 30 mm, y: 50 mm } }`, `b: { ${LAMP}, at: { x: 50 mm, y: 50 mm } }`],
      "border: { name: frame, around: [a, b] }",
    );
    const made = copied(text, ["frame", "a"]);
    expect(made).toMatchObject({
      kind: "choice",
      title: "Copy b too",
      why: "frame goes round a and b",
    });
    expect(added(text, made).text).toContain("around: [a-2, b-2]");
  });

  test("of what was read off a photograph says that no more", () => {
    const text = textOf([`a: { ${LAMP}, at: { x: 30 mm, y: 50 mm, residual: 0.4 mm } }`]);
    expect(added(text, copied(text, ["a"])).text).toContain(
      "a-2: { part: led-5-bezel, at: { x: 70 mm, y: 40 mm } }",
    );
  });
});

test("a copy of sixty at once, each a shift away from its own first one", () => {
  const spots = Array.from({ length: 60 }, (_, index) => ({
    x: 16 + 13 * (index % 4),
    y: 30 + 6 * Math.floor(index / 4),
  }));
  const text = textOf(
    spots.map(({ x, y }, index) => `l${index}: { ${LAMP}, at: { x: ${x} mm, y: ${y} mm } }`),
  );
  const { places } = added(
    text,
    copied(
      text,
      spots.map((_, index) => `l${index}`),
    ),
  );
  expect(places).toEqual(
    Object.fromEntries(
      spots.map(({ x, y }, index) => [`l${index}-2`, `${x + SHIFT.x}, ${y + SHIFT.y}`]),
    ),
  );
});

describe("of screws and dowels", () => {
  const SCREWED = {
    height: "16 modules",
    stack: ["{ layer: face, sheet: opal }", "{ layer: metal, sheet: metal }"],
  };
  const GIVEN = "at: [{ x: 20 mm, y: 60 mm }, { x: 120 mm, y: 60 mm }, { x: 70 mm, y: 90 mm }]";

  test("a screw with a place gets another one", () => {
    const text = panelText({ ...SCREWED, fixings: `{ screws: m3, dowels: 3 mm, ${GIVEN} }` });
    const made = copied(text, ["fixing.1"]);
    expect(made).toMatchObject({ kind: "copied", names: ["fixing.4"] });
    expect(added(text, made).places).toEqual({ "fixing.4": "60, 50" });
  });

  test("one that the rule sets offers to write down all of them", () => {
    const text = panelText({ ...SCREWED, fixings: "{ screws: m3, dowels: 3 mm }" });
    const screws = layoutOf(text).fixings.filter(({ kind }) => kind === "screw");
    const { x, y } = screws[0]!.at;
    const made = copied(text, ["fixing.1"]);
    expect(made).toMatchObject({
      kind: "choice",
      title: expect.stringContaining(
        `Write down where all ${screws.length} screws stand, with 1 more`,
      ),
    });
    if (made.kind === "refused") throw new Error(made.why);
    const now = layoutOf(changedText(text, made.edit)).fixings.filter(
      ({ kind }) => kind === "screw",
    );
    expect(now).toHaveLength(screws.length + 1);
    expect(now.at(-1)!.at.x - x).toBeCloseTo(40, 3);
    expect(now.at(-1)!.at.y - y).toBeCloseTo(-10, 3);
  });

  test("a third dowel is refused with the reason", () => {
    const text = panelText({ ...SCREWED, fixings: "{ screws: m3, dowels: 3 mm }" });
    expect(copied(text, ["dowel.1"])).toEqual({
      kind: "refused",
      why: "the stack takes two dowels, and no third",
    });
  });
});
