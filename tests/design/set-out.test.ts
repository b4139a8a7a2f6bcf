// Rows, columns, grids and rings of windows, free markings and screws, as they are read: the words of components, and what is
// told where they contradict each other.

import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { nameReferences } from "../../src/design/name-references.ts";
import { designSchema } from "../../src/design/schema.ts";
import { source } from "../../src/design/source.ts";
import { codesOf, FILE, panelText, pointedAt, readPanel } from "./reading.ts";
import { isValid } from "./schema-check.ts";

const WINDOW = "width: 6 mm, height: 4 mm, layers: [backing]";

const marking = (words: string): ReturnType<typeof readPanel> =>
  readPanel(`markings:\n  - ${words}`);

/** What can't be meant, the code that says so, and words of its sentence. */
const CONTRADICTIONS = [
  [`window: { ${WINDOW} }`, "missing-key", "`at` is missing (Where its centre is)"],
  [
    `window: { ${WINDOW}, row: { count: 2, pitch: 9 } }`,
    "missing-key",
    "`at` is missing (where the row stands)",
  ],
  [
    `window: { ${WINDOW}, at: centre, row: { count: 2, pitch: 9, x: 5, y: 5 } }`,
    "contradiction",
    "at and row's place say the same thing twice",
  ],
  [
    `window: { ${WINDOW}, at: centre, row: { count: 2, pitch: 9 }, ring: { count: 3, radius: 9 } }`,
    "contradiction",
    "row and ring say the same thing twice",
  ],
  [
    `window: { ${WINDOW}, row: { part: led-5, count: 2, pitch: 9, x: 5, y: 5 } }`,
    "unknown-key",
    "part",
  ],
  ["legend: { at: centre }", "missing-key", "`text` is missing"],
  [
    "legend: { text: A, texts: [A, B], at: centre, row: { count: 2, pitch: 9 } }",
    "contradiction",
    "text and texts",
  ],
  ["legend: { texts: [A, B], at: centre }", "contradiction", "`texts` belongs to a row"],
  [
    "legend: { texts: [A, B], at: centre, row: { count: 3, pitch: 9 } }",
    "wrong-count",
    "2 texts for 3 members",
  ],
  [
    'legend: { texts: ["", ""], at: centre, row: { count: 2, pitch: 9 } }',
    "missing-key",
    "`text` is missing",
  ],
  [
    "line: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 }, ring: { count: 3, radius: 5 } }",
    "unknown-key",
    "ring",
  ],
  [
    "line: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 }, row: { count: 3, pitch: 5, x: 3 } }",
    "unknown-key",
    "x",
  ],
  ["border: { around: [a], row: { count: 3, pitch: 5 } }", "unknown-key", "row"],
] as const;

describe("a marking in a pattern", () => {
  test.each([
    [
      `window: { ${WINDOW}, row: { count: 4, pitch: 9 mm, x: 5, y: 5 } }`,
      { kind: "row", count: 4, pitch: 9 },
    ],
    [
      `window: { ${WINDOW}, at: centre, column: { count: 2, pitch: 9 } }`,
      { kind: "column", count: 2, pitch: 9 },
    ],
    [
      "legend: { text: ON, grid: { columns: 3, rows: 2, pitch: 9, x: 5, y: 5 } }",
      { kind: "grid", columns: 3, rows: 2, pitch: 9, rowPitch: 9 },
    ],
    [
      "legend: { text: ON, ring: { count: 8, radius: 20, x: centre, y: centre } }",
      { kind: "ring", count: 8, radius: 20, from: 0, step: 45 },
    ],
    [
      "line: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 }, row: { count: 3, pitch: 5 } }",
      { kind: "row", count: 3, pitch: 5 },
    ],
  ])("is read: %s", (words, pattern) => {
    const { panel, findings } = marking(words);
    expect(codesOf(findings)).toEqual([]);
    expect(panel?.markings[0]).toMatchObject({ pattern });
  });

  test.each(CONTRADICTIONS)("is told of: %s", (words, code, said) => {
    const { findings } = marking(words);
    expect(codesOf(findings)).toEqual([code]);
    expect(findings[0]?.message).toContain(said);
  });

  test("counts its members with all other markings", () => {
    const grid = `window: { ${WINDOW}, at: centre, grid: { columns: 50, rows: 41, pitch: 9 } }`;
    const { findings } = marking(grid);
    expect(codesOf(findings)).toEqual(["wrong-count"]);
    expect(findings[0]?.message).toContain(
      "has 2050 markings, the members of rows and grids counted",
    );
  });

  test("may not be named like the panel's own holes, where its members would be called like them", () => {
    const words = `window: { name: fixing, ${WINDOW}, at: centre, row: { count: 2, pitch: 9 } }`;
    expect(codesOf(marking(words).findings)).toEqual(["duplicate-id"]);
    expect(codesOf(marking(`window: { name: fixing, ${WINDOW}, at: centre }`).findings)).toEqual(
      [],
    );
  });
});

describe("the screws' list", () => {
  const fixings = (at: string): ReturnType<typeof readPanel> =>
    readPanel(`fixings: { screws: m3, dowels: 3, at: ${at} }`);

  test("takes places and patterns beside each other", () => {
    const { panel, findings } = fixings("[centre, { ring: { count: 6, radius: 9, x: 5, y: 5 } }]");
    expect(codesOf(findings)).toEqual([]);
    expect(panel?.fixings?.at).toMatchObject([
      { pattern: null },
      { pattern: { kind: "ring", count: 6, radius: 9 } },
    ]);
  });

  test.each([
    ["[centre]", "wrong-count", "has 1 screw; at least 2 are needed"],
    [
      "[{ row: { count: 101, pitch: 9, x: 5, y: 5 } }]",
      "wrong-count",
      "has 101 screws; at most 100",
    ],
    ["[centre, { row: { count: 2, pitch: 9 } }]", "missing-key", "where the row stands"],
    ["[centre, { x: 5, row: { count: 2, pitch: 9, x: 5, y: 5 } }]", "unknown-key", "x"],
  ])("is told of: %s", (at, code, said) => {
    const { findings } = fixings(at);
    expect(codesOf(findings)).toEqual([code]);
    expect(findings[0]?.message).toContain(said);
  });
});

test("a neighbour named in a pattern's place is followed", () => {
  const text = panelText(`components:
  a: { part: led-5, at: centre }
fixings: { screws: m3, dowels: 3, at: [{ right-of: a, gap: 5 }, { row: { count: 2, pitch: 9, below: a, gap: 9 } }] }
markings:
  - window: { ${WINDOW}, row: { count: 2, pitch: 9, above: a, gap: 9 } }`);
  const references = nameReferences(source(FILE, text));
  expect(references.map(({ path }) => path.join("/"))).toEqual([
    "markings/0/window/row/above",
    "fixings/at/0/right-of",
    "fixings/at/1/row/below",
  ]);
});

test.each([
  [`markings:\n  - window: { ${WINDOW}, row: { count: 4, pitch: 9 mm, x: 5, y: 5 } }`, true],
  [
    'markings:\n  - legend: { texts: [A, "", [B, C]], at: centre, row: { count: 3, pitch: 9 } }',
    true,
  ],
  [
    "markings:\n  - line: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 }, grid: { columns: 2, rows: 2, pitch: 5 } }",
    true,
  ],
  [
    "fixings: { screws: m3, dowels: 3, at: [centre, { ring: { count: 6, radius: 9, x: 5, y: 5 } }] }",
    true,
  ],
  [
    "markings:\n  - line: { from: { x: 1, y: 2 }, to: { x: 3, y: 4 }, ring: { count: 3, radius: 5 } }",
    false,
  ],
  ["fixings: { screws: m3, dowels: 3, at: [centre, { ring: { count: 6, x: 5, y: 5 } }] }", false],
])("the schema agrees with the reader on %s", (lines, isRead) => {
  const text = panelText(lines);
  expect(readPanel(lines).findings.length === 0).toBe(isRead);
  expect(isValid(JSON.parse(JSON.stringify(designSchema())), parse(text))).toBe(isRead);
});

test("a missing word is pointed at by its legend", () => {
  const lines = "markings:\n  - legend: { texts: [A], at: centre, row: { count: 2, pitch: 9 } }";
  const [found] = readPanel(lines).findings;
  expect(pointedAt(panelText(lines), found!)).toBe("[A]");
});
