// What is said of a console that can't be laid out: true of the text as written, with its numbers in the order in which they
// are written, once for each cause. Expectations are read off the texts by hand.

import { describe, expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const PANEL = `consolewright: 1
kind: panel
name: p
mount: console-rail
height: 6 modules
stack: [{ layer: face, sheet: aluminium-2 }]
components: {}
`;

const BAY =
  "{ mount: console-rail, at: [300, 0, 720], along: [1, 0, 0], length: 20 modules, depth: 150 mm }";

const faultsOf = (lines: string): readonly string[] => {
  const files = new Map([
    ["console.yaml", `consolewright: 1\nkind: console\nname: c\n${lines}`],
    ["p.yaml", PANEL],
  ]);
  return compile({ entry: "console.yaml", files }, testLibrary())
    .findings.filter(({ severity }) => severity === "fault")
    .map(({ code, message }) => `${code}: ${message}`);
};

const inProfile = (profile: string, ribs = "[]"): readonly string[] =>
  faultsOf(
    `bays:\n  b: ${BAY}\nenvelope: { profile: ${profile}, across: [-100, 100], ribs: ${ribs} }\n`,
  );

describe("the corners of a profile are told as they are written, forward and then up", () => {
  // The two diagonals of a rectangle meet in its middle: 500 forward, 450 up.
  test("where two edges cross", () => {
    expect(inProfile("[[200, 0], [800, 900], [800, 0], [200, 900]]")).toEqual([
      "layout/bad-outline: The profile of the envelope does not go round a surface: two edges cross or touch at 500, 450. Write its corners one after the other.",
    ]);
  });

  test("where a corner is written twice", () => {
    expect(inProfile("[[200, 0], [800, 0], [800, 900], [200, 900], [200, 900]]")[0]).toContain(
      "an edge without length at 200, 900.",
    );
  });
});

describe("a rib outside its profile is told of", () => {
  const PROFILE = "[[200, 0], [800, 0], [800, 900], [200, 900]]";

  test("behind its end", () => {
    expect(inProfile(PROFILE, "[{ name: bulkhead, at: 5000, thickness: 12 }]")).toEqual([
      "layout/rib-outside: Nothing of the rib bulkhead stands in the console: it goes from 5000 mm to 5012 mm forward, and the profile from 200 mm to 800 mm. at: 788 mm is the last place for it.",
    ]);
  });

  test("below it", () => {
    const low = "[{ name: sill, at: 300, thickness: 12, up-to: 50 }]";
    expect(inProfile("[[200, 60], [800, 60], [800, 900], [200, 900]]", low)).toEqual([
      "layout/rib-outside: Nothing of the rib sill stands in the console: it ends at 50 mm, and the profile goes from 60 mm to 900 mm up. up-to: 900 mm is the most.",
    ]);
  });

  test("inside it nothing is said", () => {
    expect(inProfile(PROFILE, "[{ name: bulkhead, at: 788, thickness: 12 }]")).toEqual([]);
  });
});

describe("a bay that could not be read is there all the same", () => {
  test("its panels say nothing of their own", () => {
    const bays = `bays:\n  b: { mount: console-rail, at: [300, 0, 720], along: [1, 0, 0], length: 20 modules, depth: -5 mm }\n`;
    const panels = `panels:\n  - { file: p.yaml, as: one, bay: b }\n  - { file: p.yaml, as: two, bay: b, after: one }\n`;
    const frame = "frame: { type: side-console, sheet: birch-ply-12 }\n";
    expect(faultsOf(`${bays}${panels}${frame}`)).toEqual([
      "design/out-of-range: bays.b.depth: `-5 mm` must be more than 0 mm",
    ]);
  });

  test("and so where none of them could", () => {
    expect(faultsOf("bays: 5\npanels:\n  - { file: p.yaml, as: one, bay: b }\n")).toHaveLength(1);
  });
});

describe("a panel to follow that stands elsewhere", () => {
  test("in another bay", () => {
    const bays = `bays:\n  b: ${BAY}\n  c: ${BAY.replace("[300, 0", "[300, 400")}\n`;
    const panels = `panels:\n  - { file: p.yaml, as: one, bay: b, module: 0 }\n  - { file: p.yaml, as: two, bay: c, after: one }\n`;
    expect(faultsOf(`${bays}${panels}`)).toEqual([
      "layout/unknown-panel: two stands in bay c and follows one, which stands in bay b; a panel follows a neighbour of its own bay. Write bay: b, or a module in place of after.",
    ]);
  });

  test("in none", () => {
    const panels = `panels:\n  - { file: p.yaml, as: one, stand: { at: [300, 900, 720], along: [1, 0, 0] } }\n  - { file: p.yaml, as: two, bay: b, after: one }\n`;
    expect(faultsOf(`bays:\n  b: ${BAY}\n${panels}`)).toEqual([
      "layout/unknown-panel: two stands in bay b and follows one, which stands in no bay; a panel follows a neighbour of its own bay. Write a module in place of after.",
    ]);
  });
});
