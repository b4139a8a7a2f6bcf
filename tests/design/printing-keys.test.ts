// The keys that printed parts are made from: lit areas, the inside of a light box, a printer's own figures, washers.

import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { readDesign } from "../../src/design/read-design.ts";
import { designSchema } from "../../src/design/schema.ts";
import { codesOf, FILE, panelText, readComponent } from "./reading.ts";
import { isValid } from "./schema-check.ts";

const SCHEMA: unknown = JSON.parse(JSON.stringify(designSchema()));

const passes = (text: string): boolean => isValid(SCHEMA, parse(text));

const workshop = (lines: string): string =>
  `consolewright: 1\nkind: workshop\nname: shed\n${lines}\n`;

const litStack = (lighting: string): string =>
  panelText("").replace(
    "{ layer: face, sheet: opal-acrylic-3 }",
    `{ layer: face, sheet: opal-acrylic-3 }\n  - { layer: spacer, print: petg, depth: 14, lighting: ${lighting} }`,
  );

describe("lighting", () => {
  test("is one circuit unless areas stand apart", () => {
    const { design, findings } = readDesign(FILE, litStack("{ strip: s, circuit: night }"));
    expect(codesOf(findings)).toEqual([]);
    expect(design).toMatchObject({ stack: [{}, { lighting: { circuit: "night", apart: [] } }] });
  });

  test("has areas on circuits of their own", () => {
    const { design, findings } = readDesign(
      FILE,
      litStack("{ strip: s, circuit: night, apart: [{ circuit: day, around: [a, b.2], gap: 3 }] }"),
    );
    expect(codesOf(findings)).toEqual([]);
    expect(design).toMatchObject({
      stack: [{}, { lighting: { apart: [{ circuit: "day", around: ["a", "b.2"], gap: 3 }] } }],
    });
  });

  test.each([
    ["{ strip: s }", "missing-key"],
    ["{ strip: s, circuit: n, apart: [{ circuit: d }] }", "missing-key"],
    ["{ strip: s, circuit: n, apart: [{ circuit: d, around: [] }] }", "wrong-count"],
    ["{ strip: s, circuit: n, apart: [{ circuit: d, around: [a], gap: -1 }] }", "out-of-range"],
  ])("%s is refused", (lighting, code) => {
    expect(codesOf(readDesign(FILE, litStack(lighting)).findings)).toContain(code);
  });
});

describe("a workshop", () => {
  test("paints the inside of its light boxes unless it says otherwise", () => {
    expect(readDesign("w.yaml", workshop("")).design).toMatchObject({ inside: "paint" });
    expect(readDesign("w.yaml", workshop("inside: white-body")).design).toMatchObject({
      inside: "white-body",
    });
    expect(codesOf(readDesign("w.yaml", workshop("inside: foil")).findings)).toEqual([
      "unknown-word",
    ]);
  });

  test("has a printer with the figures of its test piece", () => {
    const { design, findings } = readDesign(
      "w.yaml",
      workshop(
        "machines:\n  p: { type: printer, bed: [200, 200, 180], line: 0.42, layer: 0.2, holes: [{ to: 6, add: 0.25 }], pegs: [{ to: 6, add: -0.1 }], first-layer: 0.3, clearances: { press: 0.05, snug: 0.1, sliding: 0.2, loose: 0.4 } }",
      ),
    );
    expect(findings).toEqual([]);
    expect(design).toMatchObject({
      machines: {
        p: {
          holes: [{ to: 6, add: 0.25 }],
          pegs: [{ to: 6, add: -0.1 }],
          firstLayer: 0.3,
          clearances: { press: 0.05, snug: 0.1, sliding: 0.2, loose: 0.4 },
        },
      },
    });
  });

  test("has a printer that nobody has measured", () => {
    expect(
      readDesign(
        "w.yaml",
        workshop("machines:\n  p: { type: printer, bed: [200, 200, 180], line: 0.4, layer: 0.2 }"),
      ).design,
    ).toMatchObject({
      machines: { p: { holes: [], pegs: [], firstLayer: null, clearances: null } },
    });
  });
});

test("a component has a washer where it asks for one", () => {
  expect(readComponent("{ part: p, at: centre }").component).toMatchObject({ lightTight: false });
  expect(readComponent("{ part: p, at: centre, washer: light-tight }").component).toMatchObject({
    lightTight: true,
  });
});

test.each([
  litStack("{ strip: s, circuit: night }"),
  litStack("{ strip: s, circuit: n, apart: [{ circuit: d, around: [a] }] }"),
  litStack("{ strip: s, circuit: n, apart: [{ circuit: d, around: [] }] }"),
  workshop("inside: liner"),
  workshop("inside: foil"),
  workshop(
    "machines:\n  p: { type: printer, bed: [1, 1, 1], line: 1, layer: 1, clearances: { press: 0 } }",
  ),
  panelText("components:\n  a: { part: p, at: centre, washer: light-tight }"),
  panelText("components:\n  a: { part: p, at: centre, washer: thin }"),
])("the schema agrees with the reader on %j", (text) => {
  const hasFault = readDesign(FILE, text).findings.some(({ severity }) => severity === "fault");
  expect(passes(text)).toBe(!hasFault);
});
