// Any text at all compiles to a result, in bounded time, without throwing: torn designs by the thousand, and a corpus of
// what has hurt readers of YAML and of drawings before.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compile } from "../../src/project.ts";
import { panelOf, panelText, projectOf, WORKSHOP } from "../layout/bench-panel.ts";
import { testLibrary } from "../support/test-library.ts";
import { changedText, SOUND_TEXTS, tornText } from "./any-text.ts";

/** The most that a text of a megabyte may take of the two cores that the project is tested on, in time of the processor. */
const MEGABYTE_MS = 2000;

const seed = Number(process.env["FC_SEED"] ?? 20_261_124);

const millisecondsOf = (work: () => unknown): number => {
  // Not by the clock: other programs would count.
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
};

describe(`any text at all (seed ${seed})`, () => {
  testLibrary();

  test("values and keys changed at random: a result, and mostly a layout", {
    timeout: 120_000,
  }, () => {
    let laidOut = 0;
    fc.assert(
      fc.property(changedText, (text) => {
        const { kind, panels } = projectOf(text);
        expect(["project", "stopped"]).toContain(kind);
        if (panels[0]?.layout != null) laidOut += 1;
      }),
      { seed, numRuns: 150 },
    );
    // Else the property would only have tried the reader.
    expect(laidOut).toBeGreaterThan(40);
  });

  test("torn anywhere: a result, and no panel is lost without a fault that says why", {
    timeout: 120_000,
  }, () => {
    fc.assert(
      fc.property(tornText, (text) => {
        const project = projectOf(text);
        expect(["project", "stopped"]).toContain(project.kind);
        const findings = [
          ...project.findings,
          ...project.panels.flatMap((panel) => panel.findings),
        ];
        const isWhole =
          project.panels.length > 0 && project.panels.every(({ layout }) => layout !== null);
        expect(isWhole || findings.some(({ severity }) => severity === "fault")).toBe(true);
      }),
      { seed, numRuns: 120 },
    );
  });
});

const [RICH = ""] = SOUND_TEXTS;

const many = (count: number, line: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => line(index)).join("\n");

const withComponents = (count: number, line: (index: number) => string): string =>
  `${panelText()}components:\n${many(count, line)}\n`;

const CORPUS: readonly (readonly [string, string])[] = [
  ["nothing", ""],
  ["tabs", RICH.replaceAll("  ", "\t")],
  ["anchors and aliases", RICH.replace("BRAKE", "&a BRAKE").replace("HAUL SPEED", "*a")],
  ["tags", RICH.replace("BRAKE", "!!binary aGVsbG8=")],
  ["a directive", `%YAML 1.2\n---\n${RICH}`],
  ["a megabyte of brackets", "[".repeat(1_000_000)],
  ["a megabyte of braces and colons", "{a:".repeat(333_333)],
  ["a megabyte of quotation marks", '"'.repeat(1_000_000)],
  ["a megabyte of one line", `${RICH}note: ${"x".repeat(1_000_000)}`],
  ["a megabyte of lines", "a: b\n".repeat(200_000)],
  ["20,000 keys", many(20_000, (index) => `key-${index}: ${index}`)],
  ["a legend of 100,000 characters", RICH.replace("BRAKE", "W".repeat(100_000))],
  ["emoji", RICH.replaceAll("BRAKE", "\u{1F600}\u{1F6A8}")],
  ["lone surrogates", RICH.replace("BRAKE", "\ud800")],
  ["CRLF", RICH.replaceAll("\n", "\r\n")],
  ["a byte order mark", `\uFEFF${RICH}`],
  ["NaN", RICH.replaceAll("3 mm", "NaN")],
  ["1e309", RICH.replaceAll("3 mm", "1e309 mm")],
  ["a row of 9999", RICH.replace("count: 4", "count: 9999")],
  ["a pitch of 0", RICH.replace("pitch: 15 mm", "pitch: 0")],
  ["a ring of 360", RICH.replace("count: 5", "count: 360")],
  ["a height of 0 modules", panelText({ height: "0 modules" })],
  ["a height of 1e9 mm", panelText({ height: "1000000000 mm" })],
  ["a height of 10 m", panelText({ height: "10 m" })],
  ["a height of 10.1 m", panelText({ height: "10.1 m" })],
  ["a list for a map", RICH.replace("components:", "components: [a, b]\nx:")],
  ["a text for a list", RICH.replace("markings:", "markings: none\nx:")],
  [
    "5,000 components",
    withComponents(
      5000,
      (index) => `  c${index}: { part: toggle-6, at: { x: 30 mm, y: ${index} mm } }`,
    ),
  ],
  [
    "a chain of 1,000, last first",
    withComponents(
      1000,
      (index) => `  c${index}: { part: led-5-bezel, at: { right-of: c${index + 1}, gap: 1 mm } }`,
    ),
  ],
  [
    "a ring of 1,000 that wait for each other",
    withComponents(
      1000,
      (index) =>
        `  c${index}: { part: led-5-bezel, at: { right-of: c${(index + 1) % 1000}, gap: 1 mm } }`,
    ),
  ],
  [
    "1,000 misspelt neighbours",
    withComponents(
      1000,
      (index) => `  c${index}: { part: led-5-bezel, at: { right-of: nobody-${index}, gap: 1 mm } }`,
    ),
  ],
  [
    "1,000 misspelt parts",
    withComponents(
      1000,
      (index) => `  c${index}: { part: toogle-${index}, at: { x: 1 mm, y: 1 mm } }`,
    ),
  ],
  [
    "30 grids of 200, all in one place",
    withComponents(
      20,
      (index) =>
        `  c${index}: { grid: { part: led-5-bezel, columns: 20, rows: 10, pitch: 0.01 mm, x: centre, y: centre } }`,
    ),
  ],
  [
    "200 windows in one place",
    `${panelText()}markings:\n${many(200, (index) => `  - window: { name: w${index}, at: { x: centre, y: centre }, width: 20 mm, height: 6 mm, layers: [face, metal] }`)}\n`,
  ],
  [
    "500 connectors in one place",
    withComponents(500, (index) => `  c${index}: { part: d-sub-9, at: { x: 70 mm, y: 30 mm } }`),
  ],
  [
    "700 legends in one place",
    `${panelText()}markings:\n${many(700, (index) => `  - legend: { name: w${index}, text: WWWWW, at: { x: 70 mm, y: 30 mm } }`)}\n`,
  ],
  [
    "600 selectors with scales, a millimetre apart",
    withComponents(
      600,
      (index) =>
        `  c${index}: { part: rotary-12, at: { x: ${index % 20} mm, y: ${Math.floor(index / 20)} mm }, scale: { from: 1, to: 12, major: 1 } }`,
    ),
  ],
];

describe("texts that hurt", () => {
  test.each(CORPUS)("%s", (_name, text) => {
    testLibrary();
    let kind = "";
    const taken = millisecondsOf(() => {
      kind = projectOf(text).kind;
    });
    expect(["project", "stopped"]).toContain(kind);
    expect(taken).toBeLessThan(MEGABYTE_MS);
  });

  test("files that name each other in a circle, and files above the root", () => {
    const files = new Map([
      [
        "console.yaml",
        "consolewright: 1\nkind: console\nname: ring\nworkshop: ../../etc/x.yaml\npanels:\n  - { file: console.yaml, as: a }\n  - { file: panel.yaml, as: b }\n",
      ],
      ["panel.yaml", panelText().replace("workshop.yaml", "panel.yaml")],
    ]);
    const { findings } = compile({ entry: "console.yaml", files }, testLibrary());
    expect(findings.map(({ code }) => code)).toContain("design/include-cycle");
    expect(findings.map(({ code }) => code)).toContain("design/path-refused");
  });

  test("an entry that is not among the files", () => {
    const project = compile({ entry: "gone.yaml", files: new Map() }, testLibrary());
    expect(project.kind).toBe("stopped");
    expect(project.findings.map(({ code }) => code)).toEqual(["design/file-missing"]);
  });

  test("a workshop torn in the same ways", { timeout: 60_000 }, () => {
    const words = [
      "0 mm",
      "-1",
      "x",
      "[]",
      "{}",
      "1e309",
      "opal",
      "laser",
      "cut-paint-engrave",
      "9 m",
    ];
    const places = [...WORKSHOP.matchAll(/(?<=[:[,] )[\w.-]+(?: mm)?/g)].map(({ index }) => index);
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.constantFrom(...words), (at, word) => {
        const value = /[\w.-]+(?: mm)?/y;
        value.lastIndex = at;
        const found = value.exec(WORKSHOP)?.[0] ?? "";
        const workshop = WORKSHOP.slice(0, at) + word + WORKSHOP.slice(at + found.length);
        const text = panelText({ components: ["a: { part: toggle-6, at: centre, legend: A }"] });
        expect(panelOf(text, workshop).name).toBe("bench");
      }),
      { seed, numRuns: 80 },
    );
  });
});
