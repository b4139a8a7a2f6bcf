// Whatever is kept from one compilation to the next, an edited design says what it would say to a program that was just started:
// lists of edits as they come from hands, from undo and from outside, on the bench's panel and on the tug trainer.

import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { panelDesign } from "../../bench/seeded-panel.ts";
import { exampleFiles } from "../../scripts/example-files.ts";
import { compile, type PanelMemory, type Project } from "../../src/project.ts";
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

type Compile = (files: Files) => Project;

/** By modules of their own, which never see the edits on the way: a text comes to them as it is at the end. */
async function freshly(entry: string): Promise<Compile> {
  vi.resetModules();
  const { compile: fresh } = await import("../../src/project.ts");
  const { testLibrary: opened } = await import("../support/test-library.ts");
  return (files) => fresh({ entry, files }, opened());
}

const said = ({ panels, findings, console: standing }: Project) => ({
  findings,
  console: standing === null ? null : { layout: standing.layout, frame: standing.frame },
  panels: panels.map(({ name, layout, sheetParts, printedParts, findings: own }) => ({
    name,
    layout,
    sheetParts,
    printedParts,
    findings: own,
  })),
});

async function holds(entry: string, files: Files, runs: number): Promise<void> {
  const fresh = await freshly(entry);
  fc.assert(
    fc.property(fc.array(STEP, { minLength: 1, maxLength: 6 }), (steps) => {
      const texts: Files[] = [files];
      let now = compile({ entry, files }, library);
      let memory: PanelMemory = now.memory;
      for (const step of steps) {
        texts.push(edited(texts, step));
        now = compile({ entry, files: texts.at(-1)! }, library, memory);
        memory = now.memory;
      }
      // By its own words `expect` takes seconds over a console of a dozen panels.
      expect(isDeepStrictEqual(said(now), said(fresh(texts.at(-1)!)))).toBe(true);
    }),
    { numRuns: runs },
  );
}

test("the bench's panel of 60 components", async () => {
  const { entry, files } = panelDesign(0, "b612");
  await holds(entry, files, 8);
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
  await holds("panel.yaml", files, 20);
}, 120_000);

test("the tug trainer", async () => {
  const root = join(import.meta.dirname, "../..");
  const files = new Map(Object.entries(exampleFiles(root)["tug-trainer"] ?? {}));
  await holds("console.yaml", files, 1);
}, 120_000);
