// How findings are shown: to a person, to an editor, to a script.

import { describe, expect, test } from "vitest";
import { type CodeEntry, type Finding, finding } from "../../src/diagnostics/finding.ts";
import { renderHuman } from "../../src/diagnostics/render-human.ts";
import { renderJson } from "../../src/diagnostics/render-json.ts";
import { renderLine } from "../../src/diagnostics/render-line.ts";

const CODE: CodeEntry = {
  code: "checks/edge-distance",
  severity: "fault",
  title: "A hole is too near to an edge",
  why: "",
  example: "",
};

const TEXT = "name: winch\r\nx: 😀 1.5 mm\r\n";
const START = TEXT.indexOf("1.5");
const FILES = new Map([["panels/winch.yaml", TEXT]]);
const SPAN = { file: "panels/winch.yaml", start: START, end: START + 6 };

const found: Finding = finding(CODE, {
  message: "brake: 1.5 mm to the edge, 3 mm are needed",
  span: SPAN,
  panel: "winch",
  subjects: ["brake"],
  measured: { value: 1.5, unit: "mm" },
  limit: { value: 3, unit: "mm" },
  source: { kind: "house-rule", name: "edges of 3 mm", key: "edge" },
  remedies: [{ title: "x: 4.5 mm", edits: [{ ...SPAN, baseHash: "0", text: "4.5 mm" }] }],
  related: [{ what: "its panel", span: { ...SPAN, start: 6, end: 11 } }],
});

describe("findings", () => {
  test("for a person name place, limit and remedy under what is wrong", () => {
    expect(renderHuman([found], FILES).split("\n")).toEqual([
      "fault: brake: 1.5 mm to the edge, 3 mm are needed  [checks/edge-distance]",
      "  --> panels/winch.yaml:2:6",
      "    |",
      "  2 | x: 😀 1.5 mm",
      "    |      ^^^^^^",
      "  its panel",
      "  --> panels/winch.yaml:1:7",
      "    |",
      "  1 | name: winch",
      "    |       ^^^^^",
      "  limit: house rule, edges of 3 mm (house-rules: edge)",
      "  remedy: x: 4.5 mm (can be applied)",
      "",
    ]);
  });

  test("for an editor take one line each", () => {
    expect(renderLine([found, { ...found, message: "two\nlines" }], FILES)).toBe(
      "panels/winch.yaml:2:6: fault: brake: 1.5 mm to the edge, 3 mm are needed [checks/edge-distance]\n" +
        "panels/winch.yaml:2:6: fault: two\\u000alines [checks/edge-distance]\n",
    );
  });

  test("for a script are objects with the promised keys first, in their order", () => {
    const lines = renderJson([found, found], FILES).trimEnd().split("\n");
    expect(lines).toHaveLength(2);
    const record: unknown = JSON.parse(lines[0] ?? "");
    expect(record).toMatchObject({ line: 2, column: 6, measured: { value: 1.5, unit: "mm" } });
    expect(Object.keys(record ?? {}).slice(0, 10)).toEqual(
      "code severity file line column message measured limit source remedies".split(" "),
    );
  });

  test("without their file still say where they belong", () => {
    expect(renderHuman([found], new Map())).toContain("--> panels/winch.yaml");
    expect(renderLine([found], new Map())).toContain("panels/winch.yaml:1:1:");
  });

  test("never pass a control character on to a terminal", () => {
    const text = "name: \u001b[31mred\u0007\u202e";
    const hostile = finding(CODE, {
      message: `is ${text}`,
      span: { file: "\u001b]0;x", start: 0, end: text.length },
    });
    const files = new Map([["\u001b]0;x", text]]);
    const shown =
      renderHuman([hostile], files) + renderLine([hostile], files) + renderJson([hostile], files);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(shown).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
  });

  test("on very long lines show the stretch round the place", () => {
    const text = `${"a".repeat(5000)}HERE${"b".repeat(5000)}`;
    const shown = renderHuman(
      [finding(CODE, { message: "m", span: { file: "f", start: 5000, end: 5004 } })],
      new Map([["f", text]]),
    ).split("\n");
    const column = shown[4]?.indexOf("^") ?? 0;
    expect(shown[3]?.slice(column, column + 4)).toBe("HERE");
    expect(shown[3]?.length).toBeLessThan(120);
  });
});
