// Tables: CSV against RFC 4180 by a parser of the test's own, Markdown against CommonMark's rule that a backslash before
// punctuation is that character (section 2.4).

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { csvText } from "../../src/export/csv.ts";
import { markdownTable, markdownText } from "../../src/export/markdown-table.ts";
import { HOSTILE_NAMES } from "./bureau-plate.ts";

/** RFC 4180, section 2. */
const parseCsv = (text: string): readonly (readonly string[])[] => {
  const rows: string[][] = [];
  let row: string[] = [];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  while (field.lastIndex < text.length) {
    const found = field.exec(text);
    if (found === null) throw new Error("not RFC 4180");
    row.push(found[1] === undefined ? (found[2] ?? "") : found[1].replaceAll('""', '"'));
    if (found[3] === ",") continue;
    rows.push(row);
    row = [];
  }
  return rows;
};

describe("csv", () => {
  test("any words come back, with an apostrophe only before a formula", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.string(), fc.string()), { minLength: 1 }), (rows) => {
        const back = parseCsv(csvText(["a", "b"], rows));
        expect(back).toHaveLength(rows.length + 1);
        for (const [index, row] of rows.entries())
          for (const [column, cell] of row.entries()) {
            const read = back[index + 1]?.[column];
            expect([cell, `'${cell}`]).toContain(read);
            expect(read).not.toMatch(/^\s*[=+\-@]/);
          }
      }),
    );
  });

  test.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "  =cmd|' /C calc'!A0", "\uff1d1"])(
    "%j is words to a spreadsheet",
    (cell) => {
      expect(parseCsv(csvText(["a"], [[cell]]))[1]).toEqual([`'${cell}`]);
    },
  );

  test("numbers stay numbers", () => {
    expect(csvText(["x"], [[-5.2], [1 / 3], [1e-9]])).toBe("x\r\n-5.2\r\n0.333333\r\n0\r\n");
  });
});

describe("markdown", () => {
  const cellsOf = (line: string): number => line.match(/(?<!\\)\|/g)?.length ?? 0;

  test.each([
    ...HOSTILE_NAMES,
    "a|b",
    "[a](javascript:x)",
    "![](x)",
    "`code`",
    "http://a.b",
    "www.a.b",
    "x@y.z",
    "# h",
    "- l",
    "1. l",
    "***",
    "$x$",
    "a\\|b",
  ])("%j stays in its cell and means nothing", (name) => {
    const table = markdownTable(
      [
        { title: "a", align: "left" },
        { title: "b", align: "right" },
      ],
      [[name, "end"]],
    );
    const lines = table.split("\n");
    expect(lines).toHaveLength(4);
    for (const line of lines.slice(0, 3)) expect(cellsOf(line)).toBe(3);
    expect(table).not.toMatch(/[<>]|(?<!\\)[`[\]!#@$~]|[^\\]:\/\/|www\./);
  });

  test("reading the escapes gives the words back", () => {
    const back = (text: string): string =>
      text
        .replaceAll(/\\([!-/:-@[-`{-~])/g, "$1")
        .replaceAll("&lt;", "<")
        .replaceAll("&gt;", ">")
        .replaceAll("&amp;", "&");
    fc.assert(
      fc.property(fc.string(), (words) => {
        expect(back(markdownText(words))).toBe(words.replaceAll(/\p{Cc}/gu, "\ufffd").trim());
      }),
    );
  });

  test("plain words stay plain", () => {
    expect(markdownText("Hole 6.4 mm (stud), 2 of 4")).toBe("Hole 6.4 mm (stud), 2 of 4");
  });
});

// CommonMark 0.31, section 5.2: a list begins with digits, a point or bracket, and then a space or the line's end.
test.each([
  ["0.2", "0.2"],
  ["-0.25", "-0.25"],
  ["12.7 mm", "12.7 mm"],
  ["1. saw", "1\\. saw"],
  ["1.", "1\\."],
  ["- none", "\\- none"],
  ["-", "\\-"],
  ["---", "\\---"],
  ["= = =", "\\= = ="],
])("%s at the head of a cell becomes %s", (words, escaped) => {
  expect(markdownText(words)).toBe(escaped);
});
