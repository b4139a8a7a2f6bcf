// A console's pack: complete, the same every time, and nothing that somebody wrote is more than words in any of its files.

import { validateBytes } from "gltf-validator";
import { describe, expect, test } from "vitest";
import { processColours } from "../../src/export/process-colours.ts";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import type { ConsoleForPack } from "../../src/pack/console-pack.ts";
import { pathFault } from "../../src/pack/file-name.ts";
import { readManifest } from "../../src/pack/manifest.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { packOfConsole } from "../../src/pack/pack-of-console.ts";
import type { PanelPack } from "../../src/pack/panel-pack.ts";
import { sha256 } from "../../src/pack/sha256.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { HOSTILE_NAMES } from "../export/bureau-plate.ts";
import { openKernel } from "../support/kernel.ts";
import { readPdf } from "../support/pdf-reader.ts";
import { DESK, deskProject } from "./desk-console.ts";
import { deskFacts } from "./desk-facts.ts";
import { deskFrame } from "./desk-frame.ts";

const kernel = await openKernel();
const everything = { only: "everything", card: false, kernel } as const;

const input = (text = DESK, name = "main"): ConsoleForPack => {
  const project = deskProject(text);
  const { catalogue, lettering, findings, files: texts, console } = project;
  if (console === null) throw new Error("the design is a console");
  const { layout, workshop } = console;
  const frame = deskFrame(name);
  const printedParts = new Map(project.panels.map((panel) => [panel.name, panel.printedParts]));
  const fit = deskFacts(consoleBodies({ layout, printedParts, frame }), name);
  const { colours } = processColours({});
  return {
    layout,
    fit,
    frame,
    workshop,
    findings,
    catalogue,
    lettering,
    colours,
    paper: "A4",
    texts,
  };
};

const pack = packOfConsole(input(), everything);
const file = (path: string, of: PanelPack = pack): PackFile => {
  const found = of.files.find((each) => each.path === path);
  if (found === undefined) throw new Error(`no ${path} in the pack`);
  return found;
};
const text = (path: string, of: PanelPack = pack): string => utf8Text(file(path, of).bytes);

test("nothing that was written measures wrong", () => {
  expect(pack.findings).toEqual([]);
  expect(pack.inspection.filter(({ passed }) => !passed)).toEqual([]);
  expect(pack.inspection.some(({ file: of }) => of === "console.glb")).toBe(true);
  expect(pack.inspection.some(({ file: of }) => of.startsWith("cut/cheek-left"))).toBe(true);
});

test("the pack holds what a builder needs of a console", () => {
  for (const path of [
    "README.md",
    "console.glb",
    "inspection.md",
    "inspection.csv",
    "drawings/desk-plan.svg",
    "drawings/desk-side.svg",
    "drawings/desk-front.svg",
    "drawings/desk-section-level.svg",
    "drawings/desk-section-raised.svg",
    "drawings/desk-frame-pieces.svg",
    "drawings/desk-frame-step-1.svg",
    "drawings/desk-frame-step-2.svg",
    "drawings/desk.pdf",
    "mock-up.pdf",
    "fit-report.md",
    "fit-report.html",
    "fit-report.json",
    "fit-report.csv",
    "frame-parts.md",
    "frame-parts.csv",
    "frame-assembly.md",
    "cut/cheek-left-1-cut.kerf-0.20.svg",
    "cut/rib-1-1-cut.kerf-0.20.dxf",
  ])
    expect(file(path).bytes.length).toBeGreaterThan(0);
  expect(text("frame-assembly.md")).toContain("2. Stand the rib in its slot.\n   - 3 Rib 1");
});

test("each picture of the assembly is in the pack, and on a page of the drawings", () => {
  const pictures = [...text("frame-assembly.md").matchAll(/!\[Step (\d+)\]\((.+)\)/g)];
  expect(pictures.map(([, number]) => number)).toEqual(["1", "2", "3"]);
  for (const [, number = "", path = ""] of pictures)
    expect(text(path)).toContain(`step ${number} of 3</title>`);
  // Plan, side, front and two sections; then the pieces, and a page a step.
  expect(readPdf(file("drawings/desk.pdf").bytes).pages).toHaveLength(5 + 1 + 3);
});

test("the manifest, which is the last file, lists every other with its hash", () => {
  const last = pack.files.at(-1);
  expect(last?.path).toBe("manifest.json");
  const manifest = readManifest(text("manifest.json"));
  expect(manifest?.files.map(({ path }) => path)).toEqual(
    pack.files.slice(0, -1).map(({ path }) => path),
  );
  for (const { path, sha256: hash, bytes } of manifest?.files ?? []) {
    expect(sha256(file(path).bytes)).toBe(hash);
    expect(file(path).bytes.length).toBe(bytes);
  }
  expect(manifest?.parts.map(({ id }) => id)).toEqual(["cheek-left", "cheek-right", "rib-1"]);
});

test("the same console gives the same bytes", () => {
  const again = packOfConsole(input(), everything);
  expect(again.files.map(({ path, bytes }) => `${path} ${sha256(bytes)}`)).toEqual(
    pack.files.map(({ path, bytes }) => `${path} ${sha256(bytes)}`),
  );
});

test("the model satisfies the validator of its format", async () => {
  const { issues, info } = await validateBytes(file("console.glb").bytes);
  expect(issues.messages.filter(({ severity }) => severity <= 1)).toEqual([]);
  expect(info.totalTriangleCount).toBeGreaterThan(1000);
});

test("the mock-up is in true size: a panel's outline and a cheek's can be measured on its pages", () => {
  const pages = readPdf(file("mock-up.pdf").bytes).pages;
  const sizes = pages.flatMap(({ runs }) =>
    runs
      .filter(({ closed }) => closed)
      .map(({ pieces }) => {
        const xs = pieces.flatMap(({ from, to }) => [from.x, to.x]);
        const ys = pieces.flatMap(({ from, to }) => [from.y, to.y]);
        return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
      }),
  );
  const has = (width: number, height: number): boolean =>
    sizes.some(([x, y]) => Math.abs(x - width) < 0.01 && Math.abs(y - height) < 0.01);
  // A panel of 6 modules is cut smaller all round by the mount's undersize; the cheek is 300 x 640 by hand.
  const { layout } = input();
  const { nominal, mount } = layout.panels[0]!.layout;
  expect(nominal.maxY).toBeCloseTo(57.15, 9);
  expect(has(146.05 - 2 * mount.undersize, 57.15 - 2 * mount.undersize)).toBe(true);
  expect(has(300, 640)).toBe(true);
});

test("cautions stand where they apply", () => {
  const readme = text("README.md");
  for (const word of ["Tipping:", "20 kg", "Pinching:", "Sloped bays:", "licensed electrician"])
    expect(readme).toContain(word);
  const level = DESK.replace("slope: 30 deg", "slope: 0");
  expect(text("README.md", packOfConsole(input(level), everything))).not.toContain("Sloped bays:");
});

test("the fascia alone is what a cutter needs; without a kernel there is no model, and all the rest", () => {
  const cut = packOfConsole(input(), { ...everything, only: "fascia" });
  expect(cut.files.every(({ path }) => /^(cut\/|inspection|manifest)/.test(path))).toBe(true);
  const bare = packOfConsole(input(), { ...everything, kernel: null });
  expect(bare.files.map(({ path }) => path)).toEqual(
    pack.files.map(({ path }) => path).filter((path) => path !== "console.glb"),
  );
});

test("a console without a frame has no cut files and says so", () => {
  const bare = packOfConsole({ ...input(), frame: null }, everything);
  expect(bare.files.some(({ path }) => path.startsWith("cut/"))).toBe(false);
  expect(text("fit-report.md", bare)).toContain("No frame is made");
});

describe("whatever somebody calls things", () => {
  const quoted = (name: string): string => JSON.stringify(name.slice(0, 500));
  const hostileText = (title: string, duct: string): string =>
    DESK.replace("title: Desk of the tests", `title: ${quoted(title)}`).replace(
      "name: duct",
      `name: ${quoted(duct)}`,
    );
  const names = [...HOSTILE_NAMES, "../../etc/passwd", "con", "a/b\\c:d", "x".repeat(500)];
  const sets = names.flatMap((name, index) =>
    index % 3 === 0
      ? [
          [
            index,
            { title: name, duct: names[index + 1] ?? name, name: names[index + 2] ?? name },
          ] as const,
        ]
      : [],
  );
  /** What the design itself refuses to read reaches the pack by boards and facts alone. */
  const readable = (written: string): string =>
    deskProject(written).console === null ? DESK : written;
  test.each(sets)(
    "names from %i on stay words and inside the folder",
    (_, { title, duct, name }) => {
      const source = input(readable(hostileText(title, duct)), name);
      const made = packOfConsole(source, { ...everything, kernel: null });
      const paths = made.files.map(({ path }) => path);
      expect(paths.map(pathFault).filter((fault) => fault !== null)).toEqual([]);
      expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length);
      expect(paths.every((path) => path.split("/").length <= 2)).toBe(true);
      for (const { path, bytes } of made.files.filter((each) =>
        /\.(svg|html|md)$/.test(each.path),
      )) {
        const words = utf8Text(bytes);
        expect(words, path).not.toMatch(/<script|<text|<!--|\son\w+="?alert|javascript:/i);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
        expect(words, path).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u202e\u2066]/);
      }
      expect(() => JSON.parse(text("fit-report.json", made))).not.toThrow();
    },
  );
});
