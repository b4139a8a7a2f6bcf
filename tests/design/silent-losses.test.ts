// What YAML reads without a word and loses: each has a finding of its own at its place, and a remedy that clears it.

import { describe, expect, test } from "vitest";
import { readDesign } from "../../src/design/read-design.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { codesOf, FILE, panelText, pointedAt, readPanel } from "./reading.ts";

const A = "components:\n  a: ";

const LOSSES: readonly (readonly [string, string, string, string])[] = [
  [
    "a place in square brackets",
    `${A}{ part: led-5, at: [30, 5 mm] }`,
    "wrong-shape",
    "[30, 5 mm]",
  ],
  ["a place in round brackets", `${A}{ part: led-5, at: (30, 5) }`, "key-without-value", "(30, 5)"],
  ["a place of two numbers", `${A}{ part: led-5, at: 30 5 }`, "wrong-shape", "30 5"],
  [
    "a key that has another name here",
    `${A}{ part: led-5, at: centre, label: UP }`,
    "unknown-key",
    "label",
  ],
  ["a comma left out behind a word", `${A}{ part: led-5 at: { x: 30, y: 5 } }`, "syntax", " at:"],
  ["a comma left out behind a number", `${A}{ part: led-5, at: { x: 30 y: 5 } }`, "syntax", " y:"],
  [
    "a comma left out behind a place",
    `${A}{ part: led-5, at: { x: 30, y: 5 } legend: UP }`,
    "syntax",
    " legend:",
  ],
  [
    "a comma left out behind quotes",
    `${A}{ part: led-5, legend: "UP" at: centre }`,
    "syntax",
    " at:",
  ],
  ["a semicolon for a comma", `${A}{ part: led-5; at: centre }`, "syntax", "; at:"],
  [
    "a unit in full",
    `${A}{ part: led-5, at: { x: 12 Millimeters, y: 5 } }`,
    "unknown-unit",
    "12 Millimeters",
  ],
  ["feet", `${A}{ part: led-5, at: { x: 0.25 ft, y: 5 } }`, "unknown-unit", "0.25 ft"],
  [
    "thousandths of an inch",
    `${A}{ part: led-5, at: { x: 1500 mil, y: 5 } }`,
    "unknown-unit",
    "1500 mil",
  ],
  [
    "degrees in full",
    `${A}{ part: led-5, at: centre, turn: 90 degrees }`,
    "unknown-unit",
    "90 degrees",
  ],
  [
    "a decimal comma in braces",
    `${A}{ part: led-5, at: { left: 12,5 mm, top: 3 } }`,
    "comma-in-number",
    "12,5 mm",
  ],
  [
    "a decimal comma in a line",
    `${A}{ part: led-5, turn: "1,5" , at: centre }`,
    "comma-in-number",
    '"1,5"',
  ],
  [
    "a text with a comma",
    `${A}{ part: led-5, at: centre, legend: LEFT, RIGHT }`,
    "key-without-value",
    "LEFT, RIGHT",
  ],
  [
    "a text with two commas",
    `${A}{ part: led-5, legend: A, B, C, at: centre }`,
    "key-without-value",
    "A, B, C",
  ],
  [
    "a number sign",
    `${A}\n    part: led-5\n    at: centre\n    legend: PUMP #3`,
    "comment-in-text",
    "PUMP #3",
  ],
  ["a look-alike degree", `${A}{ part: led-5, at: centre, turn: 15º }`, "look-alike", "15º"],
  ["a look-alike minus", `${A}{ part: led-5, at: centre, turn: −15 }`, "look-alike", "−15"],
  ["a bare fraction", `${A}{ part: led-5, at: { x: 3/8, y: 5 } }`, "fraction-without-unit", "3/8"],
  ["an exponent", `${A}{ part: led-5, at: { x: 1e1, y: 5 } }`, "exponent", "1e1"],
  [
    "thousands behind a comma",
    `${A}{ part: led-5, at: { x: 1,000.5 mm, y: 5 } }`,
    "comma-in-number",
    "1,000.5 mm",
  ],
  ["a mistyped key", `${A}{ part: led-5, at: centre, legned: UP }`, "unknown-key", "legned"],
  ["a mistyped word", `${A}{ part: led-5, at: centre, fitted: latter }`, "unknown-word", "latter"],
];

describe("a loss that a remedy clears", () => {
  test.each(LOSSES)("by %s", (_what, lines, code, place) => {
    const text = panelText(lines);
    const { findings } = readDesign(FILE, text);
    expect(codesOf(findings)).toEqual([code]);
    const [found] = findings;
    if (found === undefined) throw new Error("there is one");
    expect(pointedAt(text, found)).toBe(place);
    expect(found.remedies.length).toBeGreaterThan(0);
    for (const remedy of found.remedies) {
      const mended = applyEdits(text, remedy.edits);
      if (mended.kind === "refused") throw new Error(mended.why);
      expect(readDesign(FILE, mended.text).findings).toEqual([]);
    }
  });
});

describe("a loss", () => {
  test("by an empty value that a comment follows says so", () => {
    const { findings } = readPanel(`${A}\n    part: led-5\n    at: centre\n    legend: #3`);
    expect(codesOf(findings)).toEqual(["key-without-value"]);
    expect(findings[0]?.message).toContain("a # begins a comment");
  });

  test("by a lone key in the block form is that key's own", () => {
    const { panel, findings } = readPanel("title: Winch\n? depth");
    expect(codesOf(findings)).toEqual(["key-without-value"]);
    expect(panel?.title).toBe("Winch");
  });

  test("by a comma over two lines is told on one", () => {
    const { findings } = readPanel(`${A}{ part: led-5, at: centre, legend: LEFT,\n    RIGHT }`);
    expect(findings.map(({ message }) => message)).toEqual([
      'components.a.legend: the comma cuts `LEFT, RIGHT` off behind `LEFT`; write "LEFT, RIGHT"',
    ]);
  });

  test("by a colour that is a comment says so", () => {
    const workshop =
      "consolewright: 1\nkind: workshop\nname: shed\nprocess-colours:\n  engrave: #ff0000\n";
    expect(codesOf(readDesign("w.yaml", workshop).findings)).toEqual(["key-without-value"]);
  });

  test("is none where a comment has its space, or follows a number", () => {
    const lines = `${A}\n    part: led-5 #a part\n    at: { x: 3, y: 4 } #there\n    turn: 15 #deg\n    legend: PUMP # three`;
    const { panel, findings } = readPanel(lines);
    expect(findings).toEqual([]);
    expect(panel?.components[0]).toMatchObject({ turn: 15, legend: { text: "PUMP" } });
  });

  test("by two lengths that may be one is asked about", () => {
    const workshop = (drills: string): string =>
      `consolewright: 1\nkind: workshop\nname: shed\nmachines:\n  d: { type: drill-bench, bed: [300,200], drills: ${drills} }\n`;
    const { findings } = readDesign("w.yaml", workshop("[3,5 mm, 8 mm]"));
    expect(codesOf(findings)).toEqual(["list-or-decimal-comma"]);
    expect(findings[0]?.severity).toBe("query");
    expect(readDesign("w.yaml", workshop("[3, 5 mm, 8 mm]")).findings).toEqual([]);
  });
});

describe("words that other readers take for something else", () => {
  test.each([
    "on",
    "OFF",
    "yes",
    "No",
    "TRUE",
    "null",
    "~",
    "007",
    "1.50",
    "0x1F",
    "1_000",
    "12:30",
    "2026-10-02",
    ".inf",
    "NaN",
  ])("stay the legend %s", (word) => {
    const { panel, findings } = readPanel(`${A}{ part: led-5, at: centre, legend: ${word} }`);
    expect(findings).toEqual([]);
    expect(panel?.components[0]).toMatchObject({ legend: { text: word } });
  });
});
