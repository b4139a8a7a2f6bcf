// Our papers taken apart again: what a builder wrote comes back as the same words, and nothing of it as a heading, a list or a table.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { markdownTable, markdownText } from "../../src/export/markdown-table.ts";
import { plainText } from "../../src/export/plain-text.ts";
import { type PaperWords, paperBlocks, paperWords } from "../../viewer/job-pack/paper-blocks.ts";

const said = (words: readonly PaperWords[]): string => words.map((each) => each.words).join("");

const HOSTILE = [
  "**bold** `code` <b>tag</b> &amp; [a](b) ![p](drawings/x.svg)",
  "| bar | \\| \\\\ | end\\",
  "# heading",
  "- [ ] list",
  "1. number",
  "<script>document.title='taken'</script>",
];

describe("words of a design", () => {
  test.each(HOSTILE)("%s come back as they are, in a line", (text) => {
    expect(paperWords(markdownText(text))).toEqual([{ kind: "plain", words: text }]);
  });

  test("come back as they are in any line, and by themselves are a paragraph", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const wanted = plainText(text, 2000).trim();
        expect(said(paperWords(markdownText(text)))).toBe(wanted);
        const blocks = paperBlocks(markdownText(text));
        expect(blocks.map(({ kind }) => kind)).toEqual(wanted === "" ? [] : ["paragraph"]);
      }),
    );
  });

  test("come back from their own cell of a table", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.string(), fc.string()), { minLength: 1 }), (rows) => {
        const text = markdownTable(
          [
            { title: "what | it is", align: "left" },
            { title: "x", align: "right" },
          ],
          rows,
        );
        const [table, ...others] = paperBlocks(text);
        expect(others).toEqual([]);
        if (table?.kind !== "table") throw new Error("a table is read as one");
        expect(table.isNumber).toEqual([false, true]);
        expect(table.head.map(said)).toEqual(["what | it is", "x"]);
        expect(table.rows.map((row) => row.map(said))).toEqual(
          rows.map((row) => row.map((cell) => plainText(cell, 2000).trim())),
        );
      }),
    );
  });
});

test("a paper is headings, paragraphs, pictures and lists, in their order", () => {
  const paper = [
    "# Pumps",
    "",
    "Two lines",
    "of one paragraph, with **one strong word** and `.nominal`.",
    "",
    "![front of the panel](drawings/pumps.svg)",
    "",
    "- [ ] **HOLD** measure it",
    "  - one way",
    "  - another",
    "- no box",
    "",
    "1. first",
    "2. second",
    "",
  ].join("\n");
  const plain = (words: string): PaperWords => ({ kind: "plain", words });
  expect(paperBlocks(paper)).toEqual([
    { kind: "heading", level: 1, words: [plain("Pumps")] },
    {
      kind: "paragraph",
      words: [
        plain("Two lines of one paragraph, with "),
        { kind: "strong", words: "one strong word" },
        plain(" and "),
        { kind: "code", words: ".nominal" },
        plain("."),
      ],
    },
    { kind: "picture", path: "drawings/pumps.svg", name: "front of the panel" },
    {
      kind: "list",
      isNumbered: false,
      items: [
        {
          isTick: true,
          words: [{ kind: "strong", words: "HOLD" }, plain(" measure it")],
          inner: [[plain("one way")], [plain("another")]],
        },
        { isTick: false, words: [plain("no box")], inner: [] },
      ],
    },
    {
      kind: "list",
      isNumbered: true,
      items: ["first", "second"].map((words) => ({
        isTick: false,
        words: [plain(words)],
        inner: [],
      })),
    },
  ]);
});
