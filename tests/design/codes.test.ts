// The table of codes: each code is explained, and each one is really given by some text.

import { describe, expect, test } from "vitest";
import { DESIGN_CODES } from "../../src/design/codes.ts";
import { readComponentList } from "../../src/design/component-list.ts";
import { fileMissing, includeCycles } from "../../src/design/includes.ts";
import { readDesign } from "../../src/design/read-design.ts";
import { FILE, panelText } from "./reading.ts";

const COMPONENT = "components:\n  a: { part: led-5, at: centre, ";
const WORKSHOP = "consolewright: 1\nkind: workshop\nname: shed\n";

/** The examples of the table are pieces; here each stands in a file of its own. */
const TEXTS: Readonly<Record<string, string>> = {
  "too-large": "a".repeat(200_000),
  "too-deep": "[".repeat(50),
  "too-many-keys": "a: b\n".repeat(20_000),
  "hidden-character": "a\u0007",
  "empty-file": "# nothing but a comment",
  syntax: "at: { left: 24 mm, top: 30 mm",
  "tab-as-indent": "components:\n\tbrake: {}",
  anchor: panelText("title: &brake BRAKE"),
  alias: panelText("title: *brake"),
  tag: panelText("title: !important BRAKE"),
  directive: "%YAML 1.1\n---\nkind: panel",
  "merge-key": panelText("<<: common"),
  "second-document": "kind: panel\n---\nkind: panel",
  "duplicate-key": panelText("title: a\ntitle: b"),
  "duplicate-id": panelText(
    "components:\n  a: { part: b, at: centre }\n  a: { part: b, at: centre }",
  ),
  "key-without-value": panelText(`${COMPONENT}legend: { text: LEFT, RIGHT } }`),
  "comma-in-number": panelText("depth: 12,5 mm"),
  "comment-in-text": panelText("title: PUMP #3"),
  "wrong-shape": panelText("depth: [11]"),
  "not-a-length": panelText("depth: wide"),
  "unknown-unit": panelText("depth: 50 thou"),
  "fraction-without-unit": panelText("depth: 3/8"),
  "look-alike": panelText(`${COMPONENT}turn: 15º }`),
  exponent: panelText("depth: 1e1 mm"),
  "not-finite": panelText("depth: NaN"),
  "out-of-range": panelText("depth: -3 mm"),
  "not-an-angle": panelText(`${COMPONENT}turn: quarter }`),
  "not-a-number": panelText(`${COMPONENT}scale: { from: zero, to: 10, major: 2 } }`),
  "not-a-count": panelText("spare: { part: a, count: 2.5 }"),
  "not-a-size": panelText("width: tall"),
  "not-a-place": panelText("components:\n  a: { part: b, at: { x: middle, y: 3 } }"),
  "not-a-date": panelText("dated: 02.10.2026"),
  "not-a-name": panelText("").replace("name: test", 'name: "Fire Pump #2"'),
  "not-a-revision": panelText("revision: A, mended"),
  "not-a-colour": `${WORKSHOP}process-colours: { engrave: "red" }`,
  "unknown-word": panelText(`${COMPONENT}fitted: latter }`),
  "empty-text": panelText('title: ""'),
  "text-too-long": panelText(`title: ${"a".repeat(300)}`),
  "text-of-lines": panelText('title: "PAY\\nOUT"'),
  "list-or-decimal-comma": `${WORKSHOP}machines: { d: { type: drill-bench, bed: [1, 2], drills: [3,5 mm] } }`,
  "format-version": "consolewright: 99\nkind: panel",
  "unknown-kind": "consolewright: 1\nkind: pannel",
  "other-kind": "consolewright: 1\nkind: parts",
  "unknown-key": panelText(`${COMPONENT}legned: BRAKE }`),
  "missing-key": panelText("components:\n  a: { at: centre }"),
  contradiction: panelText(
    "components:\n  a: { part: b, at: { x: 20 mm, left: 24 mm, y: 10 mm } }",
  ),
  "one-of-keys": panelText("markings: [{ circle: 3 }]"),
  "place-incomplete": panelText("components:\n  a: { part: b, at: { left: 24 mm } }"),
  "wrong-count": panelText(
    "components:\n  a: { row: { part: b, count: 2, pitch: 9, x: 1, y: 2 }, legends: [A] }",
  ),
  "no-direction":
    "consolewright: 1\nkind: console\nname: c\nbays: { a: { mount: m, at: [0, 0, 0], along: [0, 0, 0], length: 9 modules, depth: 9 } }",
  "photo-marks": panelText(
    "photo: { file: a.jpg, points: [{ in-picture: [1, 1], on-panel: [0, 0] }, { in-picture: [2, 2], on-panel: [9, 0] }, { in-picture: [3, 3], on-panel: [9, 9] }, { in-picture: [4, 4], on-panel: [0, 9] }] }",
  ),
  undated: `${WORKSHOP}stock: { a: { material: mdf, nominal: 3, measured: 2.9 } }`,
  "path-refused": panelText("workshop: C:\\shed\\workshop.yaml"),
};

const LISTS: Readonly<Record<string, string>> = {
  "list-no-header": "toggle-12, 2, BRAKE",
  "list-unknown-column": "part, number",
  "list-column-twice": "part, quantity, quantity",
  "list-cells": "part\na, b",
  "list-quotes": 'part\n"a',
  "list-quantity": "part, quantity\na, two",
  "list-no-part": "part, quantity\n, 2",
  "list-leftover": "part, legend\na, #REF!",
  "list-empty": "part",
  "list-spreadsheet-date": "part, legend\na, 01-Feb",
};

const span = { file: "a", start: 0, end: 1 };

const given = new Set(
  [
    ...Object.values(TEXTS).flatMap((text) => readDesign(FILE, text).findings),
    ...Object.values(LISTS).flatMap((text) => readComponentList(FILE, text).findings),
    ...includeCycles(new Map([["a", [{ path: "a", span }]]])),
    fileMissing({ path: "b", span }, []),
  ].map(({ code }) => code),
);

describe("the codes of designs", () => {
  test("are given, every one, by some text", () => {
    expect(DESIGN_CODES.map(({ code }) => code).filter((code) => !given.has(code))).toEqual([]);
  });

  test("are all in the table", () => {
    const table = new Set(DESIGN_CODES.map(({ code }) => code));
    expect([...given].filter((code) => !table.has(code))).toEqual([]);
  });

  test.each(Object.entries(TEXTS))("%s is what its text gives", (name, text) => {
    expect(readDesign(FILE, text).findings.map(({ code }) => code)).toContain(`design/${name}`);
  });

  test.each(Object.entries(LISTS))("%s is what its list gives", (name, text) => {
    expect(readComponentList(FILE, text).findings.map(({ code }) => code)).toContain(
      `design/${name}`,
    );
  });

  test("are each named once and explained", () => {
    const names = DESIGN_CODES.map(({ code }) => code);
    expect(new Set(names).size).toBe(names.length);
    for (const { code, title, why, example } of DESIGN_CODES) {
      expect(code).toMatch(/^design\/[a-z]+(?:-[a-z]+)*$/);
      expect(title.length, code).toBeLessThan(80);
      expect(why.length, code).toBeGreaterThan(40);
      expect(example, code).not.toBe("");
    }
  });
});
