// One cause, one finding: what can't be placed is told once, and whatever leans on it is counted there, not told again.

import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { codes, panelOf, panelText, projectOf } from "./bench-panel.ts";

const faults = (words: Parameters<typeof panelOf>[0]): readonly Finding[] =>
  panelOf(words).findings.filter(({ severity }) => severity === "fault");

const chain = [
  "b: { part: led-5-bezel, at: { right-of: a, centres: 20 mm } }",
  "c: { part: led-5-bezel, at: { right-of: b, centres: 20 mm } }",
];
const leaning = [
  "border: { name: box, around: [a, b] }",
  "legend: { name: word, text: X, at: { above: c, gap: 9 mm } }",
];

describe("what follows a lost component", () => {
  test("of an unknown part: two components, a border and a legend are counted on it", () => {
    const found = faults({
      components: ["a: { part: toggel-6, at: { x: 30 mm, y: 30 mm } }", ...chain],
      markings: leaning,
    });
    expect(codes(found)).toEqual(["layout/unknown-part"]);
    // b, c, the border (once for a, once for b) and the legend.
    expect(found[0]?.suppressed).toBe(5);
    expect(found[0]?.message).toContain("toggle-6");
  });

  test("that could not be read: counted on the finding that says why", () => {
    const found = faults({
      components: ["a: { part: toggle-6, at: { x: thirty, y: 30 mm } }", ...chain],
    });
    expect(found).toHaveLength(1);
    expect(found[0]?.code).toMatch(/^design\//);
    expect(found[0]?.suppressed).toBe(2);
  });

  test("that leans on nobody", () => {
    const found = faults({
      components: ["a: { part: toggle-6, at: { right-of: nobody, gap: 3 mm } }", ...chain],
    });
    expect(found.map(({ code, suppressed }) => [code, suppressed])).toEqual([
      ["layout/unknown-neighbour", 2],
    ]);
  });

  test("a ring of three is one finding that names them, and what waits for the ring is counted", () => {
    const found = faults({
      components: [
        "a: { part: toggle-6, at: { right-of: c, centres: 20 mm } }",
        "b: { part: toggle-6, at: { right-of: a, centres: 20 mm } }",
        "c: { part: toggle-6, at: { right-of: b, centres: 20 mm } }",
        "d: { part: toggle-6, at: { right-of: c, centres: 20 mm } }",
      ],
    });
    expect(codes(found)).toEqual(["layout/circular-place"]);
    expect([...(found[0]?.subjects ?? [])].sort()).toEqual(["a", "b", "c"]);
    // Two others of the ring, and d.
    expect(found[0]?.suppressed).toBe(3);
  });

  test("two rings are two findings", () => {
    const pair = (a: string, b: string): readonly string[] => [
      `${a}: { part: toggle-6, at: { right-of: ${b}, centres: 20 mm } }`,
      `${b}: { part: toggle-6, at: { right-of: ${a}, centres: 20 mm } }`,
    ];
    const found = faults({ components: [...pair("a", "b"), ...pair("c", "d")] });
    expect(codes(found)).toEqual(["layout/circular-place", "layout/circular-place"]);
  });

  test("a neighbour may be a member of a row, and may stand later in the text", () => {
    const { layout } = panelOf({
      components: [
        "a: { part: led-5-bezel, at: { right-of: row.2, centres: 15 mm } }",
        "row: { row: { part: led-5-bezel, count: 2, pitch: 15 mm, left: 30 mm, top: 30 mm } }",
      ],
    });
    expect(layout?.components.find(({ id }) => id === "a")?.at.x).toBeCloseTo(60, 9);
  });
});

describe("markings and fixings beside a misspelt neighbour are told, not dropped", () => {
  test.each([
    ["legend", "legend: { name: w, text: X, at: { above: nobody, gap: 3 mm } }"],
    [
      "line",
      "line: { name: w, from: { x: 3 mm, y: 3 mm }, to: { right-of: nobody, centres: 3 mm } }",
    ],
    [
      "window",
      "window: { name: w, at: { above: nobody, gap: 3 mm }, width: 9 mm, height: 5 mm, layers: [face] }",
    ],
    ["border", "border: { name: w, around: [nobody] }"],
  ])("%s", (_kind, marking) => {
    expect(codes(faults({ markings: [marking] }))).toEqual(["layout/unknown-neighbour"]);
  });

  test("fixings", () => {
    const fixings =
      "{ screws: m3, dowels: 3 mm, at: [{ above: nobody, gap: 3 mm }, { x: 30 mm, y: 6 mm }] }";
    expect(codes(faults({ fixings }))).toEqual(["layout/unknown-neighbour"]);
  });
});

describe("what the stack names", () => {
  test("an unknown stock is one fault: nothing is guessed about depth", () => {
    const panel = panelOf({
      stack: ["{ layer: face, sheet: opal }", "{ layer: metal, sheet: steel-9 }"],
      components: ["a: { part: toggle-6, clamps: metal, at: centre }"],
    });
    expect(panel.layout).toBeNull();
    expect(codes(panel.findings)).toEqual(["layout/unknown-stock"]);
  });

  test("an unknown stock to print with leaves the depth known", () => {
    const found = faults({
      stack: [
        "{ layer: face, sheet: opal, finish: painted }",
        "{ layer: gap, print: petg-9, depth: 14 mm }",
      ],
    });
    expect(codes(found)).toContain("layout/unknown-stock");
  });

  test("an unknown machine", () => {
    const [panel] = projectOf(panelText(), WITH_UNKNOWN_MACHINE).panels;
    expect(codes(panel?.findings ?? [])).toContain("layout/unknown-machine");
  });

  test("a window that opens no layer", () => {
    const markings = ["window: { name: w, at: centre, width: 9 mm, height: 5 mm, layers: [gap] }"];
    expect(
      codes(
        faults({
          stack: ["{ layer: face, sheet: opal }", "{ layer: gap, behind: 9 mm }"],
          fixings: "",
          markings,
        }),
      ),
    ).toEqual(["layout/window-nowhere"]);
  });
});

const WITH_UNKNOWN_MACHINE = `consolewright: 1
kind: workshop
name: bench
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm }
  metal: { material: aluminium, colour: grey, light: opaque, nominal: 2 mm }
finishes:
  painted: { coats: [white], order: cut-paint-engrave }
use: { default: lazer }
`;
