// Several things that each go another way. The check is plain addition: the text that comes out is laid out anew, and each
// must stand where its own shift puts it, whatever leans on what.

import { describe, expect, test } from "vitest";
import { source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import { movableThings } from "../../src/layout/movable-things.ts";
import type { MoveOutcome } from "../../src/layout/place-moves.ts";
import { type Shift, separateMoves } from "../../src/layout/separate-moves.ts";
import { layoutOf, panelText } from "./bench-panel.ts";

const LAMP = "part: led-5-bezel";

const textOf = (components: readonly string[], ...markings: readonly string[]): string =>
  panelText({ height: "16 modules", fixings: "", components, markings });

const moved = (text: string, shifts: Readonly<Record<string, Shift>>): MoveOutcome =>
  separateMoves(new Map(Object.entries(shifts)), layoutOf(text), source("panel.yaml", text));

const changed = (text: string, edits: readonly TextEdit[]): string => {
  const applied = applyEdits(text, edits);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

const editsOf = (outcome: MoveOutcome): readonly TextEdit[] => {
  if (outcome.kind === "edits") return outcome.edits;
  if (outcome.kind === "choice") return outcome.free;
  throw new Error(JSON.stringify(outcome));
};

/** By id, and the end of a line. */
const places = (text: string): Readonly<Record<string, string>> => {
  const round = (value: number): number => Math.round(value * 1000) / 1000;
  return Object.fromEntries(
    movableThings(layoutOf(text)).map(({ id, end, at }) => [
      end === "at" ? id : `${id} ${end}`,
      `${round(at.x)}, ${round(at.y)}`,
    ]),
  );
};

describe("each goes its own way", () => {
  test("where one leans on another, it says only the rest", () => {
    const text = textOf([
      `a: { ${LAMP}, at: { x: 30 mm, y: 50 mm } }`,
      `b: { ${LAMP}, at: { right-of: a, centres: 20 mm } }`,
      `c: { ${LAMP}, at: { right-of: b, centres: 20 mm } }`,
    ]);
    const outcome = moved(text, { c: { x: 1, y: 0 }, a: { x: 5, y: 0 }, b: { x: 2, y: 0 } });
    expect(outcome.kind).toBe("edits");
    // 30 + 5, 50 + 2, 70 + 1.
    expect(places(changed(text, editsOf(outcome)))).toEqual({
      a: "35, 50",
      b: "52, 50",
      c: "71, 50",
    });
  });

  test("a member of a row leads what stands by it; both ends of a line go", () => {
    const text = textOf(
      [
        `w: { row: { ${LAMP}, count: 2, pitch: 20 mm, x: 30 mm, y: 40 mm } }`,
        `d: { ${LAMP}, at: { above: w.2, centres: 30 mm } }`,
      ],
      "line: { name: rule, from: { in-line-with: w.1, y: 90 mm }, to: { x: 70 mm, y: 90 mm } }",
      "window: { name: slot, at: { x: 60 mm, y: 110 mm }, width: 20 mm, height: 10 mm, layers: [face] }",
    );
    const outcome = moved(text, {
      w: { x: 4, y: 0 },
      d: { x: 1, y: 0 },
      rule: { x: 4, y: -3 },
      slot: { x: -6, y: 2 },
    });
    expect(places(changed(text, editsOf(outcome)))).toEqual({
      "w.1": "34, 40",
      "w.2": "54, 40",
      d: "51, 70",
      "rule from": "34, 87",
      "rule to": "74, 87",
      slot: "54, 112",
    });
  });

  test("what no key can say is offered a number, each its own", () => {
    const text = textOf([
      `a: { ${LAMP}, at: { x: centre, y: 50 mm } }`,
      `b: { ${LAMP}, at: { x: 30 mm, level-with: a } }`,
    ]);
    const outcome = moved(text, { a: { x: 2, y: 0 }, b: { x: 0, y: 7 } });
    expect(outcome).toMatchObject({ kind: "choice", why: expect.stringContaining("a stands in") });
    // 146.05 / 2 + 2 = 75.025.
    expect(places(changed(text, editsOf(outcome)))).toEqual({ a: "75.025, 50", b: "30, 57" });
  });

  test("screws that the rule sets are written down, each where it goes", () => {
    const text = panelText({
      height: "16 modules",
      stack: ["{ layer: face, sheet: opal }", "{ layer: backing, sheet: black }"],
      fixings: "{ screws: m3, dowels: 3 mm }",
    });
    const [first, second] = layoutOf(text).fixings;
    const outcome = moved(text, { [first!.id]: { x: 1, y: 0 }, [second!.id]: { x: 0, y: 2 } });
    const now = layoutOf(changed(text, editsOf(outcome))).fixings;
    expect(now[0]!.at.x - first!.at.x).toBeCloseTo(1, 3);
    expect(now[1]!.at.y - second!.at.y).toBeCloseTo(2, 3);
    expect(now[1]!.at.x - second!.at.x).toBeCloseTo(0, 3);
  });

  test("a border is not set beside others: what it goes round is", () => {
    const text = textOf(
      [`a: { ${LAMP}, at: { x: 30 mm, y: 50 mm } }`],
      "border: { name: frame, around: [a] }",
    );
    expect(moved(text, { frame: { x: 5, y: 0 } })).toEqual({
      kind: "refused",
      why: "frame goes round a; take a instead",
    });
  });
});
