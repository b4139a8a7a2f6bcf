// Components, layers and markings of a panel: what is read, what is taken where nothing is said, what stays when a neighbour fails.

import { describe, expect, test } from "vitest";
import { readDesign } from "../../src/design/read-design.ts";
import { codesOf, FILE, panelText, pointedAt, readComponent, readPanel } from "./reading.ts";

describe("a component", () => {
  test("that says little has the usual values", () => {
    expect(readComponent("{ part: led-5, at: centre }").component).toMatchObject({
      kind: "component",
      id: "a",
      part: "led-5",
      fittedWith: [],
      clamps: [],
      turn: 0,
      fitted: "now",
      important: false,
      legend: null,
      holeAsCut: null,
      measured: null,
    });
  });

  test("takes everything there is to say", () => {
    const { component, findings } = readComponent(`
    part: toggle-12
    at: centre
    knob: knob-22
    guard: guard-12
    clamps: [face, backing]
    turn: 90 deg
    group: DRIVE
    circuit: night
    fitted: later
    important: yes
    hole: 12.4 mm
    legend: { text: BRAKE, height: 4.5, font: b612-mono, side: left, gap: 3, turn: 90, alert: warning }
    scale: { labels: [OFF, LOW, HIGH] }
    measured: { hold.length: 9.2 mm, dated: 2026-10-02 }
    note: |
      Two lines
      of words.`);
    expect(codesOf(findings)).toEqual([]);
    expect(component).toMatchObject({
      fittedWith: [
        { role: "knob", part: "knob-22" },
        { role: "guard", part: "guard-12" },
      ],
      clamps: ["face", "backing"],
      turn: 90,
      group: "DRIVE",
      circuit: "night",
      fitted: "later",
      important: true,
      holeAsCut: 12.4,
      legend: { text: "BRAKE", height: 4.5, side: "left", gap: 3, turn: 90, alert: "warning" },
      scale: { from: 1, to: 3, major: 1, minor: null, labels: ["OFF", "LOW", "HIGH"] },
      measured: { values: { "hold.length": 9.2 }, dated: "2026-10-02" },
      note: "Two lines\nof words.",
    });
  });
});

describe("a component that", () => {
  test("clamps a single layer may name it alone", () => {
    expect(readComponent("{ part: p, at: centre, clamps: face }").component).toMatchObject({
      clamps: ["face"],
    });
  });

  test.each([
    ["{ at: centre }", "missing-key"],
    ["{ part: p }", "missing-key"],
    ["{ part: Toggle 12, at: centre }", "not-a-name"],
    ["{ part: p, at: centre, turn: 15 mm }", "unknown-unit"],
    ["{ part: p, at: centre, turn: 400 }", "out-of-range"],
    ["{ part: p, at: centre, important: maybe }", "unknown-word"],
    ["{ part: p, at: centre, hole: 0 }", "out-of-range"],
    ["{ part: p, at: centre, measured: { hold.length: long } }", "not-a-length"],
    ["{ part: p, at: centre, measured: { 'hold length': 3, dated: 2026-10-02 } }", "not-a-name"],
    ["toggle-12", "wrong-shape"],
    ["", "key-without-value"],
  ])("says %s can't be read", (text, code) => {
    const { component, findings } = readComponent(text);
    expect(codesOf(findings)).toContain(code);
    expect(component).toMatchObject({ kind: "unreadable", id: "a" });
    expect(findings[0]).toMatchObject({ subjects: ["a"], panel: "test" });
  });

  test.each([
    ["scale: { from: 0, to: 0, major: 1 }", "out-of-range"],
    ["scale: { from: 0, to: 10 }", "missing-key"],
    ["scale: { from: 0, to: 10, major: 20 }", "out-of-range"],
    ["scale: { from: 0, to: 10, major: 2, minor: 3 }", "out-of-range"],
    ["scale: { from: 0, to: 10, major: 0 }", "out-of-range"],
    ["dial: { sweep: 400, from: 0, to: 1, major: 1 }", "out-of-range"],
    ['legend: ""', "empty-text"],
    ['legend: "A\\nB"', "text-of-lines"],
    [`legend: ${"A".repeat(201)}`, "text-too-long"],
    ["positions: { Up there: HELD }", "not-a-name"],
  ])("stands although its %s can't be read", (key, code) => {
    const { component, findings } = readComponent(`{ part: p, at: centre, ${key} }`);
    expect(codesOf(findings)).toEqual([code]);
    expect(component?.kind).toBe("component");
  });

  test("is measured without a date is worth a note", () => {
    const { component, findings } = readComponent(
      "{ part: p, at: centre, measured: { hold.length: 9.2 } }",
    );
    expect(component?.kind).toBe("component");
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["design/undated", "note"],
    ]);
  });
});

describe("recovery", () => {
  const text = panelText(`titel: Winch
dated: yesterday
components:
  a: { part: led-5, at: { x: 12,5 mm, y: 3 } }
  b: { part: led-5, at: centre, colour: red }
  c: { part: led-5, at: centre }
  c: { part: led-3, at: centre }
  D: { part: led-5, at: centre }
markings:
  - legend: { text: OK, at: centre }
  - circle: { at: centre }
  - legend: { text: GONE }`);
  const { design, findings } = readDesign(FILE, text);

  test("is per item: everything else is still read", () => {
    expect(design).toMatchObject({
      title: "test",
      dated: null,
      components: [
        { kind: "unreadable", id: "a" },
        { kind: "component", id: "b" },
        { kind: "component", id: "c", part: "led-5" },
        { kind: "unreadable", id: "D" },
      ],
      markings: [{ kind: "legend", id: "legend-1" }],
      unread: ["dated"],
    });
  });

  test("tells all of it, in the order of the text", () => {
    expect(codesOf(findings)).toEqual([
      "unknown-key",
      "not-a-date",
      "comma-in-number",
      "unknown-key",
      "duplicate-id",
      "not-a-name",
      "one-of-keys",
      "missing-key",
    ]);
    expect(findings.map((found) => pointedAt(text, found)).slice(0, 4)).toEqual([
      "titel",
      "yesterday",
      "12,5 mm",
      "colour",
    ]);
  });

  test("of a thing written twice shows both places", () => {
    const twice = findings.find(({ code }) => code === "design/duplicate-id");
    const places = [twice?.span, twice?.related[0]?.span].map((span) => span?.start);
    expect(places).toEqual([text.lastIndexOf("  c:") + 2, text.indexOf("  c:") + 2]);
    expect(twice?.subjects).toEqual(["c"]);
  });

  test("stops where nothing would be right without the value", () => {
    const broken = panelText("").replace("6 modules", "tall");
    expect(readDesign(FILE, broken).design).toBeNull();
    expect(codesOf(readDesign(FILE, broken).findings)).toEqual(["not-a-size"]);
  });
});

describe("layers", () => {
  const stack = (layers: string): ReturnType<typeof readDesign> =>
    readDesign(FILE, panelText("").replace("{ layer: face, sheet: opal-acrylic-3 }", layers));

  test("are sheets, spacers, air and trays", () => {
    const { design, findings } = stack(`{ layer: face, sheet: opal, worked-from: rear }
  - { layer: gap, air: 5 mm }
  - { layer: spacer, print: petg, depth: 14 }
  - { layer: tray, behind: 18 }`);
    expect(codesOf(findings)).toEqual([]);
    expect(design).toMatchObject({
      stack: [
        { kind: "sheet", workedFrom: "rear" },
        { kind: "air", id: "gap", depth: 5 },
        { kind: "spacer", lighting: null },
        { kind: "tray", boards: [] },
      ],
    });
  });

  test.each([
    ["{ layer: face }", "one-of-keys"],
    ["{ layer: face, sheet: opal, air: 3 }", "one-of-keys"],
    ["{ layer: face, print: petg }", "missing-key"],
    ["{ layer: face, air: -3 }", "out-of-range"],
    ["{ sheet: opal }", "missing-key"],
    ["{ layer: face, sheet: opal }\n  - { layer: face, sheet: black }", "duplicate-id"],
  ])("are not %s", (layers, code) => expect(codesOf(stack(layers).findings)).toEqual([code]));

  test("can't be none", () => {
    const none = panelText("").replace(/stack:\n.*\n/, "stack: []\n");
    expect(codesOf(readDesign(FILE, none).findings)).toEqual(["wrong-count"]);
  });

  test("are held by screws of known threads", () => {
    expect(readPanel("fixings: { screws: m2.5, dowels: 3 mm }").panel?.fixings).toMatchObject({
      screws: "m2.5",
    });
    const { panel, findings } = readPanel("fixings: { screws: m7, dowels: 3 mm }");
    expect(codesOf(findings)).toEqual(["unknown-word"]);
    expect(panel).toMatchObject({ fixings: null, unread: ["fixings"] });
  });
});

describe("markings", () => {
  test("of every kind are read and numbered by kind", () => {
    const { panel, findings } = readPanel(`markings:
  - legend: { name: heading, text: DRIVE, at: centre, align: left }
  - line: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 } }
  - arrow: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 }, width: 0.6 }
  - border: { around: [a, b.2], gap: 0 }
  - border: { around: [a] }
  - bracket: { around: [a], side: below, legend: { text: B } }
  - window: { at: centre, width: 20, height: 10, layers: [backing] }`);
    expect(codesOf(findings)).toEqual([]);
    expect(panel?.markings.map(({ id }) => id)).toEqual([
      "heading",
      "line-1",
      "arrow-1",
      "border-1",
      "border-2",
      "bracket-1",
      "window-1",
    ]);
    expect(panel?.markings[3]).toMatchObject({ gap: 0, corner: 2 });
  });

  test("may not be named like a component", () => {
    const { findings } = readPanel(`components:
  a: { part: led-5, at: centre }
markings:
  - legend: { name: a, text: A, at: centre }`);
    expect(codesOf(findings)).toEqual(["duplicate-id"]);
  });
});

describe("a row whose members would be called like the panel's own holes", () => {
  test.each(["fixing", "dowel", "mount"])("is told of: %s", (name) => {
    const row = "{ row: { part: led-5, count: 2, pitch: 15 mm }, at: centre }";
    const { findings } = readPanel(`components:\n  ${name}: ${row}`);
    expect(codesOf(findings)).toEqual(["duplicate-id"]);
    expect(findings[0]?.message).toContain(`${name}.1, ${name}.2`);
    expect(readPanel(`components:\n  ${name}-keys: ${row}`).findings).toEqual([]);
  });

  test("one component of that name has no number, and is left alone", () => {
    const one = "components:\n  fixing: { part: led-5, at: centre }";
    expect(readPanel(one).findings).toEqual([]);
  });
});
