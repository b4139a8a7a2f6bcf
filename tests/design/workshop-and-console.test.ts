// Workshops and consoles: their own faults, and what stays when one entry can't be read.

import { describe, expect, test } from "vitest";
import { readDesign } from "../../src/design/read-design.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { codesOf } from "./reading.ts";

const workshop = (lines: string): ReturnType<typeof readDesign> =>
  readDesign("workshop.yaml", `consolewright: 1\nkind: workshop\nname: shed\n${lines}\n`);

const console_ = (lines: string): ReturnType<typeof readDesign> =>
  readDesign("console.yaml", `consolewright: 1\nkind: console\nname: side\n${lines}\n`);

const severities = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ severity }) => severity);

describe("a workshop", () => {
  test("may override house rules, colours and paper", () => {
    const { design, findings } = workshop(
      'house-rules: { web: 1.2 mm, edge: 1/8 in }\nprocess-colours: { engrave: "#00F0ff" }\npaper: Letter',
    );
    expect(findings).toEqual([]);
    expect(design).toMatchObject({
      houseRules: { web: 1.2, edge: 3.175 },
      processColours: { engrave: "#00f0ff" },
      paper: "Letter",
    });
  });

  test("keeps the house rules that can be read, and names the nearest to one that is misspelt", () => {
    const { design, findings } = workshop("house-rules: { wep: 1 mm, edge: 3 mm }");
    expect(findings.map(({ message }) => message).join()).toContain("web");
    expect(design).toMatchObject({ houseRules: { edge: 3 } });
  });

  test.each([
    ["stock:\n  a: { material: acrylic-cast, nominal: 3, colour: Opal white }", "translucent"],
    ["stock:\n  a: { material: acrylic-cast, nominal: 3, colour: clear }", "clear"],
    ["stock:\n  a: { material: acrylic-cast, nominal: 3, colour: black }", "opaque"],
    ["stock:\n  a: { material: plywood, nominal: 3 }", "opaque"],
    [
      "stock:\n  a: { material: acrylic-cast, nominal: 3, colour: clear, light: translucent }",
      "translucent",
    ],
  ])("tells what light does in %s", (lines, light) => {
    expect(workshop(lines).design).toMatchObject({ stock: { a: { light } } });
  });

  test.each([
    ["stock:\n  a: { material: acrylic-cast, colour: opal }", "missing-key"],
    ["stock:\n  a: { material: acryl, nominal: 3 }", "unknown-word"],
    ["stock:\n  a: { material: mdf, nominal: -3 }", "out-of-range"],
    ["finishes:\n  a: { coats: [], order: engrave-fill }", "wrong-count"],
    ["machines:\n  a: { type: lasr, bed: [1, 2] }", "unknown-word"],
    ["machines:\n  a: { bed: [1, 2] }", "missing-key"],
    ["machines:\n  a: { type: router, bed: [600], tools: [{ diameter: 3 }] }", "wrong-count"],
    ["machines:\n  a: { type: printer, bed: [1, 2], line: 1, layer: 1 }", "wrong-count"],
    [
      "machines:\n  a: { type: router, bed: [1, 2], tools: [{ diameter: 3 }], spot: 1 }",
      "unknown-key",
    ],
    ["use: { face: Laser 2 }", "not-a-name"],
    ["house-rules: { web: thin }", "not-a-length"],
    ["house-rules: { webs: 1.2 mm }", "unknown-key"],
    ['process-colours: { engrave: "red" }', "not-a-colour"],
    ['process-colours: { engraving: "#000000" }', "unknown-key"],
    ["paper: A3", "unknown-word"],
  ])("has a fault in %s and stands", (lines, code) => {
    const { design, findings } = workshop(lines);
    expect(codesOf(findings)).toEqual([code]);
    expect(design?.kind).toBe("workshop");
  });

  test("takes kerf as one number or two, with the allowance of the row of gauges", () => {
    const laser = (reading: string): ReturnType<typeof readDesign> =>
      workshop(
        `machines:\n  l: { type: diode-laser, bed: [1, 2], spot: 0.1, kerf: left-to-cutter, measured: [${reading}] }`,
      );
    expect(
      laser("{ stock: a, kerf: 0.2, hole-allowance: -0.05, dated: 2026-10-02 }").design,
    ).toMatchObject({
      machines: {
        l: { kind: "diode-laser", measured: [{ kerf: [0.2, 0.2], holeAllowance: -0.05 }] },
      },
    });
    const undated = laser("{ stock: a, kerf: [0.2, 0.21] }");
    expect(codesOf(undated.findings)).toEqual(["undated"]);
    expect(severities(undated.findings)).toEqual(["note"]);
  });
});

describe("a console", () => {
  const bay = (change: string): string =>
    `bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 60 modules, depth: 180 mm${change} }`;

  test("counts the length of a bay in its mount's own count, or in mm", () => {
    const { design } = console_(bay("").replace("60 modules", "571.5 mm"));
    expect(design).toMatchObject({ bays: { aft: { length: { kind: "length", mm: 571.5 } } } });
  });

  test("has bays that lie level unless they say so", () => {
    expect(console_(bay("")).design).toMatchObject({
      bays: { aft: { slope: 0, cant: 0, length: { unit: "modules" } } },
    });
    expect(console_(bay(", slope: -12°")).design).toMatchObject({ bays: { aft: { slope: -12 } } });
  });

  test.each([
    [bay("").replace("[1, 0, 0]", "[0, 0, 0]"), "no-direction"],
    [bay("").replace("[1, 0, 0]", "[1, 0]"), "wrong-count"],
    [bay("").replace("60 modules", "sixty"), "not-a-size"],
    [bay(", slope: 100"), "out-of-range"],
    ["panels:\n  - { file: a.yaml }", "missing-key"],
    ["panels:\n  - { as: a }", "one-of-keys"],
    ["panels:\n  - { file: a.yaml, as: a, module: 3, after: b }", "contradiction"],
    ["panels:\n  - { file: a.yaml, as: a }\n  - { file: a.yaml, as: a }", "duplicate-id"],
    ["panels:\n  - { file: ../a.yaml, as: a }", "path-refused"],
    ["workshop: /etc/passwd", "path-refused"],
    ["catalogue: [C:\\parts.yaml]", "path-refused"],
    ["operator: { seat-height: 430, at: [0, 0], hand: both }", "unknown-word"],
    ["frame: { sheet: ply }", "missing-key"],
    ["obstacles:\n  - { name: pipe, box: [1, 2], at: [1, 2, 3] }", "wrong-count"],
  ])("has a fault in %s and stands", (lines, code) => {
    const { design, findings } = console_(lines);
    expect(codesOf(findings)).toEqual([code]);
    expect(design?.kind).toBe("console");
  });

  test("may use one file twice under two names", () => {
    const { design, findings } = console_(
      "panels:\n  - { file: a.yaml, as: a }\n  - { file: a.yaml, as: b }",
    );
    expect(findings).toEqual([]);
    expect(design).toMatchObject({ panels: [{ as: "a" }, { as: "b" }] });
  });
});

describe("the head of a file", () => {
  test.each([
    ["kind: panel\nname: a", "missing-key"],
    ["consolewright: 2\nkind: panel\nname: a", "format-version"],
    ["consolewright: one\nkind: panel", "format-version"],
    ["consolewright: 1\nname: a", "unknown-kind"],
    ["consolewright: 1\nkind: pannel", "unknown-kind"],
    ["consolewright: 1\nkind: [panel]", "unknown-kind"],
    ["consolewright: 1\nkind: parts\nname: a", "other-kind"],
    ["consolewright: 1\nkind: console", "missing-key"],
    ["consolewright: 1\nkind: console\nname: a\nkind: panel", "duplicate-key"],
  ])("%s", (text, code) => {
    expect(codesOf(readDesign("a.yaml", text).findings)).toContain(code);
  });
});
