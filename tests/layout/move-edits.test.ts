// What a drag edits. The check is the shift itself: the text that comes out is laid out anew, and every component must
// stand where plain addition puts it, or where it stood.

import { describe, expect, test } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { MoveOutcome } from "../../src/layout/place-moves.ts";
import { layoutOf, panelText } from "./bench-panel.ts";

const LAMP = "part: led-5-bezel";

const textOf = (...components: readonly string[]): string =>
  panelText({ height: "16 modules", fixings: "", components });

interface Dragged {
  readonly outcome: MoveOutcome;
  readonly before: PanelLayout;
  readonly text: string;
}

const drag = (text: string, entries: readonly string[], x: number, y: number): Dragged => {
  const before = layoutOf(text);
  return {
    outcome: moveEdits({ entries, x, y }, before, source("panel.yaml", text)),
    before,
    text,
  };
};

const after = (text: string, edits: readonly TextEdit[]): string => {
  const applied = applyEdits(text, edits);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

const shiftsOf = (before: PanelLayout, text: string): Readonly<Record<string, string>> => {
  const now = layoutOf(text);
  return Object.fromEntries(
    before.components.map(({ id, at }) => {
      const moved = now.components.find((one) => one.id === id);
      if (moved === undefined) throw new Error(`${id} is gone`);
      const round = (value: number): number => Math.round(value * 1000) / 1000 + 0;
      return [id, `${round(moved.at.x - at.x)}, ${round(moved.at.y - at.y)}`];
    }),
  );
};

const edited = ({ outcome, text }: Dragged): string => {
  if (outcome.kind !== "edits") throw new Error(`not by its keys: ${JSON.stringify(outcome)}`);
  return after(text, outcome.edits);
};

const freed = ({ outcome, text }: Dragged): string => {
  if (outcome.kind !== "choice") throw new Error(`no choice: ${JSON.stringify(outcome)}`);
  return after(text, outcome.free);
};

describe("a key keeps its word and takes the new number", () => {
  test.each([
    ["x and y", "x: 40 mm, y: 50 mm", "x: 43 mm, y: 48 mm"],
    ["left and bottom", "left: 40 mm, bottom: 50 mm", "left: 43 mm, bottom: 48 mm"],
    [
      "right and top, which grow the other way",
      "right: 40 mm, top: 50 mm",
      "right: 37 mm, top: 52 mm",
    ],
    ["a bare number stays bare", "x: 40, y: 50", "x: 43, y: 48"],
    [
      "an inch stays an inch (3 mm is 0.11811 in)",
      "x: 1 1/2 in, y: 50 mm",
      "x: 1.61811 in, y: 48 mm",
    ],
  ])("%s", (_name, place, expected) => {
    const dragged = drag(textOf(`a: { ${LAMP}, at: { ${place} } } # a lamp`), ["a"], 3, -2);
    const text = edited(dragged);
    expect(text).toContain(`at: { ${expected} } } # a lamp`);
    expect(shiftsOf(dragged.before, text)).toEqual({ a: "3, -2" });
  });

  test.each([
    ["right-of", "centres: 30 mm", "centres: 33 mm", 3, 0],
    ["left-of", "centres: 30 mm", "centres: 27 mm", 3, 0],
    ["above", "gap: 20 mm", "gap: 24 mm", 0, 4],
    ["below", "gap: 20 mm", "gap: 16 mm", 0, 4],
  ])("%s edits its %s", (key, was, is, x, y) => {
    const dragged = drag(
      textOf(
        `a: { ${LAMP}, at: { x: 70 mm, y: 70 mm } }`,
        `b: { ${LAMP}, at: { ${key}: a, ${was} } }`,
        `c: { ${LAMP}, at: { right-of: b, centres: 20 mm } }`,
      ),
      ["b"],
      x,
      y,
    );
    const text = edited(dragged);
    expect(text).toContain(`${key}: a, ${is}`);
    expect(shiftsOf(dragged.before, text)).toEqual({ a: "0, 0", b: `${x}, ${y}`, c: `${x}, ${y}` });
  });
});

describe("a pattern moves whole", () => {
  test.each([
    ["row", `row: { ${LAMP}, count: 3, pitch: 20 mm, left: 30 mm, bottom: 40 mm }`],
    [
      "column, from the top",
      `column: { ${LAMP}, count: 3, pitch: 20 mm, right: 30 mm, top: 40 mm }`,
    ],
    ["ring", `ring: { ${LAMP}, count: 3, radius: 20 mm }, at: { x: 70 mm, y: 70 mm }`],
  ])("%s", (_name, pattern) => {
    const dragged = drag(textOf(`warn: { ${pattern} }`), ["warn"], -4, 5.5);
    const shift = "-4, 5.5";
    expect(shiftsOf(dragged.before, edited(dragged))).toEqual({
      "warn.1": shift,
      "warn.2": shift,
      "warn.3": shift,
    });
  });
});

test("of several that lean on each other only the first says the move", () => {
  const dragged = drag(
    textOf(
      `a: { ${LAMP}, at: { x: 40 mm, y: 50 mm } }`,
      `b: { ${LAMP}, at: { right-of: a, centres: 20 mm } }`,
      `c: { ${LAMP}, at: { right-of: b, centres: 20 mm } }`,
    ),
    ["a", "c"],
    5,
    6,
  );
  const text = edited(dragged);
  expect(text).toContain("right-of: b, centres: 20 mm");
  expect(shiftsOf(dragged.before, text)).toEqual({ a: "5, 6", b: "5, 6", c: "5, 6" });
});

describe("what no key can say is a named choice", () => {
  test.each([
    [
      "both by one word",
      "centre",
      "Set a free at x: 76.025 mm, y: 74.2 mm",
      "3, -2",
      "{ x: 76.025 mm, y: 74.2 mm }",
    ],
    [
      "the middle across",
      "{ x: centre, y: 40 mm }",
      "Set a free at x: 76.025 mm",
      "3, -2",
      "{ x: 76.025 mm, y: 38 mm }",
    ],
  ])("%s", (_name, place, title, shift, written) => {
    // 146.05 mm wide and 16 modules of 9.525 mm high: the middle is at 73.025, 76.2.
    const dragged = drag(textOf(`a: { ${LAMP}, at: ${place} }`), ["a"], 3, -2);
    expect(dragged.outcome).toMatchObject({ kind: "choice", title });
    const text = freed(dragged);
    expect(text).toContain(written);
    expect(shiftsOf(dragged.before, text)).toEqual({ a: shift });
  });

  test("in line with a neighbour: the line is left, the distance stays a distance", () => {
    const dragged = drag(
      textOf(
        `a: { ${LAMP}, at: { x: 40 mm, y: 50 mm } }`,
        `b: { ${LAMP}, at: { right-of: a, centres: 20 mm } }`,
      ),
      ["b"],
      1,
      7,
    );
    expect(dragged.outcome).toMatchObject({
      why: "b keeps the line of a",
      title: "Set b free at y: 57 mm",
    });
    const text = freed(dragged);
    expect(text).toContain("right-of: a, centres: 21 mm, y: 57 mm");
    expect(shiftsOf(dragged.before, text)).toEqual({ a: "0, 0", b: "1, 7" });
    const kept = dragged.outcome.kind === "choice" ? dragged.outcome.kept : [];
    expect(shiftsOf(dragged.before, after(dragged.text, kept))).toEqual({ a: "0, 0", b: "1, 0" });
  });
});

describe("what is set free leaves nothing behind", () => {
  test("level-with goes, and so does a neighbour that would be passed, with its measure", () => {
    const dragged = drag(
      textOf(
        `a: { ${LAMP}, at: { x: 60 mm, y: 50 mm } }`,
        `b: { ${LAMP}, at: { x: 90 mm, level-with: a } }`,
        `c: { ${LAMP}, at: { right-of: a, centres: 15 mm } }`,
      ),
      ["b", "c"],
      -20,
      30,
    );
    expect(dragged.outcome).toMatchObject({
      title: "Set c free at x: 55 mm, y: 80 mm; Set b free at y: 80 mm",
    });
    const text = freed(dragged);
    expect(text).not.toContain("centres");
    expect(text).not.toContain("level-with");
    expect(shiftsOf(dragged.before, text)).toEqual({ a: "0, 0", b: "-20, 30", c: "-20, 30" });
  });

  test("a row's own keys", () => {
    const dragged = drag(
      textOf(`warn: { row: { ${LAMP}, count: 3, pitch: 20 mm, x: centre, y: 40 mm } }`),
      ["warn"],
      -3,
      0,
    );
    expect(shiftsOf(dragged.before, freed(dragged))["warn.2"]).toBe("-3, 0");
  });
});

test("no shift is no edit", () => {
  expect(drag(textOf(`a: { ${LAMP}, at: centre }`), ["a"], 0, 0).outcome).toEqual({
    kind: "still",
  });
});

describe("a place from a photograph that is moved by hand", () => {
  const READ = "{ left: 20 mm, bottom: 30 mm, residual: 0.4 mm }";

  test("says so no more, in the same edit", () => {
    const moved = edited(drag(textOf(`a: { ${LAMP}, at: ${READ} }`), ["a"], 3, 2));
    expect(moved).toContain("at: { left: 23 mm, bottom: 32 mm }");
    expect(moved).not.toContain("residual");
  });

  test("nor where one axis is set free, and others keep their word", () => {
    const held = "{ left: 20 mm, y: centre, residual: 0.4 mm }";
    const text = textOf(
      `a: { ${LAMP}, at: ${held} }`,
      `b: { ${LAMP}, at: { left: 50 mm, bottom: 30 mm, residual: 0.3 mm } }`,
    );
    const moved = freed(drag(text, ["a"], 3, 2));
    expect(moved).toContain("left: 23 mm");
    expect(moved.match(/residual/g)).toHaveLength(1);
    expect(moved).toContain("residual: 0.3 mm");
  });
});
