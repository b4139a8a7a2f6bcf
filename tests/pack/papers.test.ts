import { expect, test, vi } from "vitest";
import { pathFault } from "../../src/pack/file-name.ts";
import { findingsPaper } from "../../src/pack/findings-paper.ts";
import { handOperationsPaper } from "../../src/pack/hand-operations.ts";
import { measuringListPaper } from "../../src/pack/measuring-list.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { packOfPanel } from "../../src/pack/pack-of-panel.ts";
import { packReadme } from "../../src/pack/pack-readme.ts";
import { partsListPapers } from "../../src/pack/parts-list.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { pumpPanel, pumpProject, pumpWorkshop, wholePumpPack } from "./pump-panel.ts";

const textOf = (file: PackFile | undefined | null): string => {
  if (file === undefined || file === null) throw new Error("the paper is not in the pack");
  return utf8Text(file.bytes);
};

const partsTable = async (): Promise<string> =>
  textOf(partsListPapers(await pumpPanel()).find(({ path }) => path === "parts-list.csv"));

const FASCIA = { only: "fascia", card: false } as const;

test("the panel of these tests has no fault", async () => {
  const { panels, findings } = await pumpProject();
  const all = [...findings, ...panels.flatMap((panel) => panel.findings)];
  expect(all.filter(({ severity }) => severity === "fault")).toEqual([]);
});

test("the parts list counts exact pieces", async () => {
  const rows = (await partsTable())
    .trimEnd()
    .split("\r\n")
    .map((line) => line.split(","));
  const count = (section: string, part: string): number =>
    rows
      .filter(([where, , id]) => where === section && id === part)
      .reduce((sum, [, pieces]) => sum + Number(pieces), 0);
  // Counted by hand from the design: a row of three, one pot, one lamp for later, two spares.
  expect(count("components", "toggle-12")).toBe(3);
  expect(count("components", "pot-16")).toBe(1);
  expect(count("components", "led-5-bezel")).toBe(1);
  expect(count("fitted to components", "knob-22-skirt")).toBe(1);
  expect(count("spares", "toggle-12")).toBe(2);
  expect(count("sheets", "opal-acrylic-3")).toBe(1);
  expect(rows.find(([, , part]) => part === "led-5-bezel")?.join(",")).toContain("fitted later");
});

test("stack screws reach through the thickest stack and its nut, and no further than need be", async () => {
  // ISO 7823-1: 3 mm cast acrylic is at most 3.7; paint 0.08 on its front, for light leaves at its rear;
  // aluminium measured 1.98; an M3 nut is 2.4 (ISO 4032). 3.7 + 0.08 + 1.98 + 2.4 = 8.16, and a millimetre of thread: 9.16. Screws are sold in 8, 10, 12.
  expect(await partsTable()).toMatch(/stack fixings,8,screw-m3-[a-z]+,"[^"]*, 10 mm long",stack/);
});

test("the measuring list asks for what nobody measured, and for nothing else", async () => {
  const list = textOf(measuringListPaper(await pumpPanel()));
  expect(list).toContain("opal-acrylic-3");
  // ISO 7823-1: 3 ± (0.4 + 0.3).
  expect(list).toMatch(/2\\?\.3 to 3\.7 mm/);
  expect(list).not.toContain("aluminium-2");
  expect(list).not.toContain("kerf, across");
  // Three toggles of one kind are measured once.
  expect(list.match(/\| toggle-12 \| hold/g)).toHaveLength(1);
  const unmeasured = pumpWorkshop.replace(/, measured: \[.*?\] \}/, " }");
  expect(textOf(measuringListPaper(await pumpPanel(unmeasured)))).toContain("kerf, across");
});

test("hand operations are listed with their tool, side and place", async () => {
  const page = textOf(handOperationsPaper((await pumpPanel()).sheetParts));
  expect(page).toContain("| deburr | whole sheet |");
  expect(page).toMatch(
    /\| drill \| pump\.1\/clamp\\?@backing \| drill [\d.]+ mm \| front \| through \| 40 \|/,
  );
  expect(page).toMatch(/\| paint \| whole sheet \| white, then black \| front \| {2}\|/);
});

test("queries are HOLD lines with their place", async () => {
  const panel = await pumpPanel();
  const page = textOf(findingsPaper(panel.findings, panel.texts));
  const queries = panel.findings.filter(({ severity }) => severity === "query");
  expect(queries.length).toBeGreaterThan(0);
  expect(page.match(/- \[ \] \*\*HOLD\*\*/g)).toHaveLength(queries.length);
  expect(page).toMatch(/panel\.yaml, line \d+/);
});

test("the first page shows picture, holds, the cautions that apply, the steps in order and every file", async () => {
  const { files } = await wholePumpPack();
  const page = textOf(files.find(({ path }) => path === "README.md"));
  expect(page).toContain("](drawings/pumps-picture.svg)");
  expect(page).toContain("**HOLD:");
  for (const word of ["Laser:", "Paint:", "Drilling:", "Acrylic:", "Aluminium:", "Low volts"])
    expect(page).toContain(`- ${word}`);
  expect(page).toContain("ISO 13850");
  for (const word of ["Router:", "Printing:", "Diode laser:", "Vacuum display:", "Mains:"])
    expect(page).not.toContain(`- ${word}`);
  const order = page.slice(page.indexOf("## Order of work"), page.indexOf("## Files"));
  const steps = ["measuring-list.md", "findings.md", "100 mm bars", "card/", "1-cut", "2-engrave"];
  const places = steps.map((step) => order.indexOf(step));
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  for (const { path, kind } of files)
    if (kind !== "manifest" && kind !== "readme") expect(page).toContain(`| ${path} |`);
});

test("names are safe everywhere, each once, and the manifest comes last", async () => {
  const paths = (await wholePumpPack()).files.map(({ path }) => path);
  expect(paths.map(pathFault).filter((fault) => fault !== null)).toEqual([]);
  expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length);
  expect(paths.at(-1)).toBe("manifest.json");
});

test("no file knows the day on which it was made", async () => {
  const today = await wholePumpPack();
  vi.setSystemTime(new Date("1999-12-31"));
  try {
    const then = packOfPanel(await pumpPanel(), { only: "everything", card: true });
    for (const [index, { path, bytes }] of then.files.entries())
      expect(utf8Text(bytes) === utf8Text(today.files[index]?.bytes ?? bytes), path).toBe(true);
  } finally {
    vi.useRealTimers();
  }
});

test("two processes of one colour are refused", async () => {
  const colours = `${pumpWorkshop}process-colours: { engrave: "#ff0000", cut-inner: "#ff0000" }\n`;
  const { findings } = packOfPanel(await pumpPanel(colours), FASCIA);
  expect(findings).toContainEqual(
    expect.objectContaining({ code: "pack/refused-colour", severity: "fault" }),
  );
});

test("the card set has no paint and no engraving, and lies in a folder of its own", async () => {
  const { files, inspection } = packOfPanel(await pumpPanel(), { only: "fascia", card: true });
  const card = files.filter(({ path }) => path.startsWith("card/"));
  expect(card.map(({ path }) => path).filter((path) => path.endsWith(".svg"))).toEqual([
    "card/pumps-face-1-cut.kerf-0.15.svg",
    "card/pumps-backing-1-cut.nominal.svg",
  ]);
  expect(card.every(({ bytes }) => !utf8Text(bytes).includes('id="engrave"'))).toBe(true);
  expect(inspection.filter(({ passed }) => !passed)).toEqual([]);
});

test("a panel of one component is said to have one", async () => {
  const panel = await pumpPanel();
  const [only] = panel.layout.components;
  if (only === undefined) throw new Error("the pump panel has components");
  const one = { ...panel, layout: { ...panel.layout, components: [only] } };
  expect(textOf(packReadme(one, []))).toMatch(/, 1 component\.$/m);
  expect(textOf(packReadme(panel, []))).toMatch(/, \d+ components\.$/m);
});
