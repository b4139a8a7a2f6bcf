// Whatever is kept from one compilation to the next, an edited design says what it would say to a program that was just started, and
// is drawn and taken apart as it would be there: lists of edits as they come from hands, from undo and from outside.

import { join } from "node:path";
import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { panelDesign } from "../../bench/seeded-panel.ts";
import { exampleFiles } from "../../scripts/example-files.ts";
import { facePieces, seenExtents } from "../../src/drawings/face-view.ts";
import { compile, type PanelMemory, type Project } from "../../src/project.ts";
import { serviceItems } from "../../src/service/service-item.ts";
import { panelText, WORKSHOP } from "../layout/bench-panel.ts";
import { testLibrary } from "../support/test-library.ts";

const library = testLibrary();

type Files = ReadonlyMap<string, string>;

interface Step {
  /** What is done, which file, which line, and by how much. */
  readonly kind: "number" | "word" | "delete" | "repeat" | "comment" | "undo";
  readonly file: number;
  readonly line: number;
  readonly amount: number;
}

const STEP: fc.Arbitrary<Step> = fc.record({
  kind: fc.constantFrom(
    "number",
    "number",
    "number",
    "word",
    "delete",
    "repeat",
    "comment",
    "undo",
  ),
  file: fc.nat(99),
  line: fc.nat(999),
  amount: fc.integer({ min: 1, max: 200 }),
});

const edited = (before: readonly Files[], step: Step): Files => {
  const files = before.at(-1)!;
  if (step.kind === "undo") return before.at(-2) ?? files;
  const [path, text] = [...files][step.file % files.size]!;
  const lines = text.split("\n");
  const places = [...lines.keys()].filter((index) => APT[step.kind].test(lines[index] ?? ""));
  const at = places[step.line % Math.max(1, places.length)];
  if (at === undefined) return files;
  const changed = changedLine(lines[at]!, step);
  return new Map([...files, [path, lines.toSpliced(at, 1, ...changed).join("\n")]]);
};

/** Lines that a step is made on. */
const APT: Readonly<Record<Step["kind"], RegExp>> = {
  number: /\d mm/,
  word: /legend: [A-Z]+/,
  delete: /^ {2}\w/,
  repeat: /^ {2}\w[\w-]*: \{/,
  comment: /./,
  undo: /./,
};

const changedLine = (line: string, { kind, amount }: Step): readonly string[] => {
  switch (kind) {
    case "number":
      // Of the same length, longer and shorter.
      return [
        line.replace(/(\d+(?:\.\d+)?) mm/, (_all, number: string) => {
          const digits = [number.split(".")[1]?.length ?? 0, 1, 3][amount % 3];
          return `${(Number(number) + amount / 20).toFixed(digits)} mm`;
        }),
      ];
    case "word":
      return [line.replace(/legend: [A-Z]+/, `legend: ${"NEW".repeat(1 + (amount % 3))}`)];
    case "delete":
      return [];
    case "repeat":
      return [line, line.replace(/^ {2}([\w-]+)/, `  $1-${amount}`)];
    case "comment":
      return [line, `# ${amount}`];
    case "undo":
      return [line];
  }
};

type Said = (files: Files) => string;

/**
 * By modules of their own, which never see the edits on the way, and each time under names that they have not read: by those that
 * they know they would move a tree of the last text along as well.
 */
async function freshly(entry: string): Promise<Said> {
  vi.resetModules();
  const { compile: fresh } = await import("../../src/project.ts");
  const { testLibrary: opened } = await import("../support/test-library.ts");
  const face = await import("../../src/drawings/face-view.ts");
  const service = await import("../../src/service/service-item.ts");
  let count = 0;
  return (files) => {
    count += 1;
    const folder = `unread-${count}`;
    const own = new Map([...files].map(([path, text]) => [`${folder}/${path}`, text]));
    const project = fresh({ entry: `${folder}/${entry}`, files: own }, opened());
    return said(project, { ...face, ...service }).replaceAll(`${folder}/`, "");
  };
}

/** What looks at a panel as it is laid out, and keeps of it what an edit leaves. */
const LOOKS = { facePieces, seenExtents, serviceItems };

const said = (
  { panels, findings, catalogue, console: standing }: Project,
  looks: typeof LOOKS,
): string =>
  inWords({
    findings,
    console: standing === null ? null : { layout: standing.layout, frame: standing.frame },
    panels: panels.map(({ name, layout, sheetParts, printedParts, findings: own }) => ({
      name,
      layout,
      sheetParts,
      printedParts,
      findings: own,
      looks:
        layout === null
          ? null
          : {
              picture: looks.facePieces(layout, "picture", "legend"),
              paper: looks.facePieces(layout, "paper", "line"),
              seen: looks.seenExtents(layout),
              service: looks.serviceItems({ layout, printedParts, catalogue }),
            },
    })),
  });

const inWords = (data: object): string =>
  JSON.stringify(data, (_key, value: unknown) =>
    value instanceof Map || value instanceof Set ? [...value] : value,
  );

async function holds(entry: string, files: Files, runs: number): Promise<void> {
  const fresh = await freshly(entry);
  fc.assert(
    fc.property(fc.array(STEP, { minLength: 1, maxLength: 6 }), (steps) => {
      const texts: Files[] = [files];
      let now = compile({ entry, files }, library);
      let memory: PanelMemory = now.memory;
      let kept = said(now, LOOKS);
      for (const step of steps) {
        texts.push(edited(texts, step));
        now = compile({ entry, files: texts.at(-1)! }, library, memory);
        memory = now.memory;
        kept = said(now, LOOKS);
      }
      // By its own words `expect` takes seconds over a console of a dozen panels.
      expect(kept === fresh(texts.at(-1)!)).toBe(true);
    }),
    { numRuns: runs },
  );
}

test("the bench's panel of 60 components", async () => {
  const { entry, files } = panelDesign(0, "b612");
  await holds(entry, files, 5);
}, 120_000);

test("a panel of rows and rings of everything", async () => {
  const text = panelText({
    height: "16 modules",
    fixings:
      "{ screws: m3, dowels: 3 mm, at: [{ ring: { count: 6, radius: 60 mm, x: centre, y: centre } }] }",
    components: [
      "warn: { row: { part: led-5-bezel, count: 3, pitch: 20 mm, x: 40 mm, y: 60 mm } }",
    ],
    markings: [
      "window: { row: { count: 3, pitch: 12 mm, below: warn, centres: 20 mm }, width: 6 mm, height: 4 mm, layers: [metal] }",
      "legend: { texts: [OFF, LOW, HIGH], column: { count: 3, pitch: 9 mm, x: 110 mm, y: 80 mm } }",
      "legend: { text: ON, ring: { count: 4, radius: 14 mm, x: 50 mm, y: 100 mm } }",
      "line: { from: { x: 20 mm, y: 20 mm }, to: { x: 20 mm, y: 30 mm }, row: { count: 4, pitch: 8 mm } }",
    ],
  });
  const files = new Map([
    ["panel.yaml", text],
    ["workshop.yaml", WORKSHOP],
  ]);
  await holds("panel.yaml", files, 10);
}, 120_000);

/** All that components say of themselves. */
const SAYING = panelText({
  height: "16 modules",
  stack: [
    "{ layer: face, sheet: opal, finish: painted }",
    "{ layer: metal, sheet: metal }",
    "{ layer: spacer, print: black-petg, depth: 18 mm }",
  ],
  components: [
    "window: { grid: { part: lamp-window-18x12, columns: 2, rows: 2, pitch: 24 mm, row-pitch: 13.5 mm }, at: { x: centre, top: 20 mm }, legends: [FIRE, BILGE, BILGE, NONE], lamp-box: { leds: 2, flange: 0.75 mm } }",
    "report: { part: vacuum-display-20x2, at: { x: centre, top: 60 mm }, trim: { filter: smoke-acrylic-2 } }",
    "pump: { part: toggle-6, at: { x: 20 mm, y: 40 mm }, legend: PUMP, hole: 6.4 mm }",
    "drain: { part: toggle-12, at: { right-of: pump, centres: 24 mm }, legend: PUMP, clamps: [face, metal] }",
    "speed: { part: pot-16, knob: knob-16, at: { right-of: drain, centres: 30 mm }, scale: { from: 0, to: 10, major: 5, minor: 1 }, measured: { hold.length: 7.6 mm, dated: 2026-10-03 }, legend: { text: SPEED, side: below, gap: 4 mm } }",
    "warn: { part: led-5-bezel, fitted: later, at: { right-of: speed, centres: 30 mm }, legend: { text: FIRE, alert: warning } }",
  ],
  // Two of the same words in one place.
  markings: [
    "legend: { text: PUMP, at: { x: 20 mm, y: 20 mm } }",
    "legend: { text: PUMP, at: { x: 20 mm, y: 20 mm } }",
    "arrow: { from: { x: 20 mm, y: 10 mm }, to: { x: 60 mm, y: 10 mm } }",
  ],
});

const DESK = `consolewright: 1
kind: console
name: desk
workshop: workshop.yaml
bays: [{ id: main, mount: console-rail, modules: 40, at: [400, 0, 720], along: right }]
panels:
  - { file: panel.yaml, as: left, bay: main, module: 0 }
  - { file: panel.yaml, as: right, bay: main, module: 16 }
`;

const PETG = "black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }";

const SAYING_FILES: Files = new Map([
  ["panel.yaml", SAYING],
  ["workshop.yaml", WORKSHOP.replace("stock:\n", `stock:\n  ${PETG}\n`)],
]);

test("a panel whose components say all that they can, as one line after the other grows and shrinks", async () => {
  const entry = "panel.yaml";
  const fresh = await freshly(entry);
  const lines = SAYING.split("\n");
  const measured = [...lines.keys()].filter((index) => / mm/.test(lines[index] ?? ""));
  let memory: PanelMemory = new Map();
  const differing = measured.filter((index, count) => {
    // A length in millimetres, or with a figure more: what stands behind is moved along the text, and places are as they were.
    const [, first = ""] = /(\d+(?:\.\d+)?) mm/.exec(lines[index] ?? "") ?? [];
    const now =
      count % 3 === 0 ? `${Number(first) + 1}` : `${first}${first.includes(".") ? "" : "."}0`;
    lines[index] = (lines[index] ?? "").replace(`${first} mm`, `${now} mm`);
    const files = new Map([...SAYING_FILES, [entry, lines.join("\n")]]);
    const project = compile({ entry, files }, library, memory);
    memory = project.memory;
    return said(project, LOOKS) !== fresh(files);
  });
  expect(measured.length).toBeGreaterThan(10);
  expect(differing).toEqual([]);
}, 120_000);

test("a console with one file in it twice, and with parts of its own", async () => {
  const files = new Map([
    ...SAYING_FILES,
    ["desk.yaml", DESK],
    [
      "panel.yaml",
      SAYING.replace(
        "workshop: workshop.yaml",
        "workshop: workshop.yaml\ncatalogue: [measured.yaml]",
      ),
    ],
    [
      "measured.yaml",
      "consolewright: 1\nkind: parts\nname: measured\nmeasured:\n  toggle-6: { hold.length: 8.2 mm, dated: 2026-10-16 }\n",
    ],
  ]);
  await holds("desk.yaml", files, 2);
}, 120_000);

test("the tug trainer", async () => {
  const root = join(import.meta.dirname, "../..");
  const files = new Map(Object.entries(exampleFiles(root)["tug-trainer"] ?? {}));
  await holds("console.yaml", files, 1);
}, 120_000);
