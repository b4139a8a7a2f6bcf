// The assembly paper against the order that the program judges and against the design: every step once, under its number,
// each component with what its catalogue record holds it by, cautions before the steps that they are about.

import { expect, test } from "vitest";
import { assemblyPaper } from "../../src/pack/assembly-paper.ts";
import { idWords, listWords } from "../../src/pack/list-words.ts";
import { packOfPanel } from "../../src/pack/pack-of-panel.ts";
import type { PanelForPack } from "../../src/pack/panel-pack.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { compile } from "../../src/project.ts";
import { serviceOrder } from "../../src/service/service-order.ts";
import { exampleTexts, packOf, textOf } from "../examples/example-projects.ts";
import { testLibrary } from "../support/test-library.ts";
import { pumpPanel } from "./pump-panel.ts";

const paperOf = (panel: PanelForPack): string => {
  const paper = assemblyPaper(panel);
  if (paper === null) throw new Error("there is something to put together");
  return utf8Text(paper.bytes);
};

/** Numbers in the order in which they stand on the paper. */
const numbersOn = (page: string): readonly number[] =>
  [...page.matchAll(/^- \[ \] \*\*(\d+)(?: to (\d+))?\.\*\*/gm)].flatMap(([, first, last]) => {
    const from = Number(first);
    const to = Number(last ?? first);
    return Array.from({ length: to - from + 1 }, (_, index) => from + index);
  });

const lineWith = (page: string, words: string): string =>
  page.split("\n").find((line) => line.includes(words)) ?? "";

test("has every step of the order once, by its own number", async () => {
  const panel = await pumpPanel();
  const count = serviceOrder(panel).steps.length;
  expect(numbersOn(paperOf(panel))).toEqual(Array.from({ length: count }, (_, index) => index + 1));
});

test("says part, side, tool and fastener as the design and the catalogue have them", async () => {
  const page = paperOf(await pumpPanel());
  // Three toggles: shoulder behind, nut in front, 22 mm over the nut's socket (catalogue record toggle-12).
  const toggles = lineWith(page, "pump.1, pump.2 and pump.3 (");
  expect(toggles).toContain("from the rear and fasten them to backing from the front");
  expect(toggles).toContain("each Lock washer for 15/32 in and Nut, 15/32-32");
  expect(toggles).toContain("with a socket 22 mm across");
  expect(toggles).toContain("face will stand in the way");
  expect(lineWith(page, "Put in run")).toContain("LATER");
  expect(lineWith(page, "Put on speed")).toContain("Knob with a 22 mm skirt");
  // Eight screws of 10 mm: worked out by hand in the test of the parts list.
  expect(lineWith(page, "Screw the stack together")).toMatch(/8 screws.*8 x .*M3, 10 mm long/);
});

test("plugs come before the tray that closes over them, and inserts before all steps", () => {
  const files = new Map(Object.entries(exampleTexts("tug-trainer")));
  const project = compile({ entry: "panels/winch.yaml", files }, testLibrary());
  const [panel] = project.panels;
  if (panel === undefined) throw new Error("the trainer has a winch");
  const { pack } = packOf(project, panel, { only: "everything" });
  const file = pack.files.find(({ path }) => path === "assembly.md");
  const page = textOf(file?.bytes ?? new Uint8Array());
  const places = ["8 x heat-set insert M3", "## Steps", "Plug in warn.1", "Lay tray", "Screw the"];
  const found = places.map((words) => page.indexOf(words));
  expect(found).not.toContain(-1);
  expect(found).toEqual(found.toSorted((a, b) => a - b));
  expect(lineWith(page, "Plug in warn.1")).toContain("tray will stand in the way");
});

test("cautions stand before the first step that they are about, each once", async () => {
  const page = paperOf(await pumpPanel());
  for (const [caution, step] of [
    ["**Caution.** Acrylic:", "fasten"],
    ["**Caution.** Low volts", "Plug in"],
  ] as const) {
    expect(page.split(caution)).toHaveLength(2);
    expect(page.indexOf(caution)).toBeGreaterThan(0);
    expect(page.indexOf(caution)).toBeLessThan(page.indexOf(step));
  }
  expect(page).toContain("no certified controls");
  // What is said about cutting has its place in the README, not here.
  expect(page).not.toContain("**Caution.** Laser");
});

test("is reached from the README, named there in the order of work, and in the manifest", async () => {
  const { files } = packOfPanel(await pumpPanel(), { only: "everything", card: false });
  const readme = utf8Text(files.find(({ kind }) => kind === "readme")!.bytes);
  expect(readme).toMatch(/^\d+\. Put it together by assembly\.md/m);
  expect(readme).toContain("| assembly.md | how it goes together, step by step |");
  const manifest = JSON.parse(utf8Text(files.at(-1)!.bytes));
  expect(JSON.stringify(manifest)).toContain('"assembly.md"');
});

test("a step that its tool does not come to says HOLD, and past what", async () => {
  const panel = await pumpPanel();
  const [first, second, ...others] = panel.layout.components;
  if (first === undefined || second === undefined) throw new Error("two components");
  // The second toggle's bodies in the place of the first's: no socket comes to either nut.
  const near = {
    ...second,
    at: { ...second.at, x: first.at.x },
    bodies: first.bodies.map((body) => ({ ...body, owner: second.id })),
  };
  const crowded = { ...panel, layout: { ...panel.layout, components: [first, near, ...others] } };
  const order = serviceOrder({ ...crowded, printedParts: [] });
  expect(order.outOfReach.length).toBeGreaterThan(0);
  const page = paperOf({ ...crowded, printedParts: [] });
  for (const { number } of order.outOfReach) expect(page).toContain(`**HOLD ${number}**`);
});

test("names in a row are said as people say them", () => {
  expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(listWords)).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
  expect(idWords(["w.8", "w.9", "w.10", "w.11", "w.12"])).toBe("w.8 to w.12");
  expect(idWords(["w.8", "w.9", "w.11", "w.12", "w.13"])).toBe("w.8, w.9, w.11, w.12 and w.13");
  expect(idWords(["w.1", "w.2"])).toBe("w.1 and w.2");
});
