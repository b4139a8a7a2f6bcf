// Edits of a text: what they change, what they refuse, and that every one of them can be undone.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyEdits, type TextEdit, textHash } from "../../src/diagnostics/text-edit.ts";

const edit = (base: string, start: number, end: number, text: string): TextEdit => ({
  file: "panel.yaml",
  baseHash: textHash(base),
  start,
  end,
  text,
});

describe("the hash of a text", () => {
  // Test vectors of the IETF draft "The FNV Non-Cryptographic Hash Algorithm", Appendix C: 32-bit FNV-1a.
  test.each([
    ["", "811c9dc5"],
    ["a", "e40c292c"],
    ["foobar", "bf9cf968"],
  ])("begins with FNV-1a of %j", (text, hash) => expect(textHash(text).slice(0, 8)).toBe(hash));

  test("tells texts apart that differ in one character or in order", () => {
    const texts = ["", "a", "b", "ab", "ba", "a\n", "a\r\n", "\uFEFFa", "aa", "a a"];
    expect(new Set(texts.map(textHash)).size).toBe(texts.length);
  });
});

describe("edits", () => {
  const base = "x: 1\ny: 2\n";

  test("replace stretches from any order", () => {
    const result = applyEdits(base, [edit(base, 8, 9, "20"), edit(base, 3, 4, "10")]);
    expect(result).toMatchObject({ kind: "edited", text: "x: 10\ny: 20\n" });
  });

  test("insert at one place in the order given", () => {
    const result = applyEdits(base, [edit(base, 5, 5, "a: 0\n"), edit(base, 5, 5, "b: 0\n")]);
    expect(result).toMatchObject({ kind: "edited", text: "x: 1\na: 0\nb: 0\ny: 2\n" });
  });

  test("are refused on a text that has changed", () => {
    const result = applyEdits("x: 9\ny: 2\n", [edit(base, 3, 4, "10")]);
    expect(result).toEqual({
      kind: "refused",
      why: "panel.yaml has changed since this edit was made",
    });
  });

  test.each([
    ["overlapping", [edit(base, 0, 4, "a"), edit(base, 3, 6, "b")]],
    ["beyond the end", [edit(base, 3, 99, "a")]],
    ["before the beginning", [edit(base, -1, 2, "a")]],
    ["backward", [edit(base, 4, 3, "a")]],
    ["between characters", [edit(base, 0.5, 1, "a")]],
    ["for two files", [edit(base, 0, 1, "a"), { ...edit(base, 3, 4, "b"), file: "other.yaml" }]],
  ])("are refused when they are %s", (_what, edits) => {
    expect(applyEdits(base, edits).kind).toBe("refused");
  });

  test("undo to the text they came from", () => {
    const cuts = fc.array(fc.tuple(fc.nat(), fc.nat(), fc.string()), { maxLength: 6 });
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), cuts, (text, wanted) => {
        const edits = wanted.map(([a, b, added]) => {
          const [start, end] = [a % (text.length + 1), b % (text.length + 1)];
          return edit(text, Math.min(start, end), Math.max(start, end), added);
        });
        const result = applyEdits(text, edits);
        if (result.kind === "edited") {
          const undone = applyEdits(result.text, result.undo);
          expect(undone).toMatchObject({ kind: "edited", text });
        }
      }),
    );
  });
});
