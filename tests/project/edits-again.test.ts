// A design that is edited again and again, as the page has it: every reading rests on the one before (panels that stay, trees of
// texts of which one line has changed). Held against the same texts under names that nobody has read before.

import fc from "fast-check";
import { expect, test } from "vitest";
import { compile, type PanelMemory, type Project } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";

const panel = (name: string, height: number): string => `consolewright: 1
kind: panel
name: ${name}
workshop: shed.yaml
mount: console-rail
height: 9 modules
stack:
  - { layer: face, sheet: opal, finish: painted }
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
fixings: { screws: m3, dowels: 3 mm }
components:
  one: { part: toggle-6, at: { x: 40 mm, y: ${height} mm }, legend: ONE }
  two: { part: led-5-bezel, at: { right-of: one, centres: 24 mm }, legend: TWO }
  three:
    part: pot-16
    at: { x: 100 mm, y: 40 mm }
    legend: THREE
markings:
  - legend: { name: note, text: NOTE, height: 3 mm, at: { x: 60 mm, y: 15 mm } }
`;

const FILES: ReadonlyMap<string, string> = new Map([
  [
    "desk.yaml",
    `consolewright: 1
kind: console
name: desk
workshop: shed.yaml
bays: [{ id: main, mount: console-rail, modules: 20, at: [400, 0, 720], along: right }]
panels:
  - { file: left.yaml, as: left, bay: main, module: 0 }
  - { file: right.yaml, as: right, bay: main, module: 10 }
`,
  ],
  ["left.yaml", panel("left", 45)],
  ["right.yaml", panel("right", 50)],
  [
    "shed.yaml",
    `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 2.9 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
finishes:
  painted: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
`,
  ],
]);

interface Edit {
  readonly file: string;
  readonly line: number;
  readonly how: "number" | "word" | "drop" | "twice" | "back";
  readonly amount: number;
}

const edit: fc.Arbitrary<Edit> = fc.record({
  file: fc.constantFrom("left.yaml", "left.yaml", "right.yaml", "shed.yaml", "desk.yaml"),
  line: fc.nat(30),
  how: fc.constantFrom("number", "number", "number", "word", "drop", "twice", "back"),
  amount: fc.integer({ min: -6, max: 6 }),
});

const WORDS = ["toggle-12", "no-such", "{ a: 1 }", "centre", '"', "", "PUMP #1"] as const;

const edited = (text: string, { line, how, amount, file }: Edit): string => {
  const lines = text.split("\n");
  const at = line % lines.length;
  const old = lines[at] ?? "";
  switch (how) {
    case "number":
      lines[at] = old.replace(/\d+/, (found) => `${Math.max(0, Number(found) + amount)}`);
      break;
    case "word":
      lines[at] = old.replace(/: [^:]*$/, `: ${WORDS[(amount + 6) % WORDS.length]}`);
      break;
    case "drop":
      lines.splice(at, 1);
      break;
    case "twice":
      lines.splice(at, 0, old);
      break;
    case "back":
      return FILES.get(file) ?? "";
  }
  return lines.join("\n");
};

let count = 0;

/** Everything that is said and made, whatever folder it lies in. */
const said = (folder: string, files: ReadonlyMap<string, string>, before?: PanelMemory) => {
  const own = new Map([...files].map(([path, text]) => [`${folder}/${path}`, text]));
  const project: Project = compile(
    { entry: `${folder}/desk.yaml`, files: own },
    testLibrary(),
    before,
  );
  const { kind, panels, console, findings, memory } = project;
  const words = JSON.stringify({ kind, panels, console, findings }).replaceAll(`${folder}/`, "");
  return { words, memory };
};

test("any list of edits gives what its last texts give", () => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 5 }), (edits) => {
      count += 1;
      const folder = `kept-${count}`;
      let files = FILES;
      let { memory } = said(folder, files);
      for (const [index, one] of edits.entries()) {
        files = new Map([...files, [one.file, edited(files.get(one.file) ?? "", one)]]);
        const again = said(folder, files, memory);
        memory = again.memory;
        expect(again.words).toBe(said(`new-${count}-${index}`, files).words);
        // Of the last reading alone: a page that is open all day keeps nothing else.
        expect(memory.size).toBeLessThanOrEqual(2);
      }
    }),
    { numRuns: 5 },
  );
}, 120_000);
