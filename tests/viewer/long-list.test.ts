// A list that is too long to be read: the field gets whole lines, and not a character of it is lost.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readComponentList } from "../../src/design/component-list.ts";
import { lineCount, MOST_LIST_LINES, splitList } from "../../viewer/panel/long-list.ts";

const LINE = "toggle-6,1,PUMP,Pumps,\n";
const listOf = (lines: number): string => `part,quantity,legend,group,note\n${LINE.repeat(lines)}`;

describe("a pasted list", () => {
  test("of 200,000 lines is split into the lines that are read and all others", () => {
    const whole = listOf(200_000);
    const { head, rest } = splitList(whole);
    expect(head + rest).toBe(whole);
    expect([lineCount(head), lineCount(rest)]).toEqual([2000, 198_001]);
    expect(readComponentList("list.csv", head).lines).toHaveLength(1999);
  });

  test("of few lines and more characters than are read goes in as far as whole lines go", () => {
    const whole = `part,note\n${`toggle-6,${"x".repeat(150_000)}\n`.repeat(2)}`;
    const { head, rest } = splitList(whole);
    expect([lineCount(head), lineCount(rest)]).toEqual([2, 1]);
    expect(readComponentList("list.csv", head).findings.map(({ code }) => code)).not.toContain(
      "text/too-large",
    );
  });

  test("that has room stays whole, with and without a last line end", () => {
    expect(splitList(listOf(MOST_LIST_LINES - 1)).rest).toBe("");
    expect(splitList("part\ntoggle-6").rest).toBe("");
    expect(lineCount("part\ntoggle-6")).toBe(2);
  });

  test("of any text loses nothing, and ends at a line's end", () => {
    fc.assert(
      fc.property(fc.string(), fc.nat(4000), (line, count) => {
        const whole = `${line}\n`.repeat(count);
        const { head, rest } = splitList(whole);
        expect(head + rest).toBe(whole);
        expect(head === "" || head.endsWith("\n")).toBe(true);
      }),
    );
  });
});
