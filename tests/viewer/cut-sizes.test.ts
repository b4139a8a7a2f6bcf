// The three sizes that the page draws of a cut, by hand arithmetic: a 16.25 mm hole in a painted sheet (0.08 mm a wall) cut with a
// kerf of 0.2 mm leaves the machine 16.25 + 2 * 0.08 = 16.41 wide, and the beam's middle runs at 16.41 - 0.2 = 16.21.

import { describe, expect, test } from "vitest";
import { point } from "../../src/geometry/contour.ts";
import { readDxf } from "../../src/inspection/dxf-reader.ts";
import { readSvg } from "../../src/inspection/svg-reader.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { compile, packOfProject } from "../../src/project.ts";
import { cutRows } from "../../viewer/job-pack/cut-rows.ts";
import { cutSizes } from "../../viewer/job-pack/cut-sizes.ts";
import { drawnProcesses } from "../../viewer/job-pack/read-lines.ts";
import { tableRows } from "../../viewer/job-pack/table-rows.ts";
import { testLibrary } from "../support/test-library.ts";

const SHED = `consolewright: 1
kind: workshop
name: shed
stock:
  opal: { material: acrylic-cast, colour: opal, light: translucent, nominal: 3 mm, measured: 3 mm, dated: 2026-01-31 }
finishes:
  painted: { coats: [white, black], thickness: 0.08 mm, dated: 2026-01-31, order: cut-paint-engrave }
machines:
  laser: { type: co2-laser, bed: [600, 400], spot: 0.15 mm, kerf: in-file, measured: [{ stock: opal, kerf: 0.2, dated: 2026-01-31 }] }
use: { face: laser }
`;

const BELL = `consolewright: 1
kind: panel
name: bell
workshop: shed.yaml
mount: box-lid
width: 60 mm
height: 50 mm
stack: [{ layer: face, sheet: opal, finish: painted }]
components:
  ring: { part: push-button-16, at: { x: 20 mm, y: 30 mm } }
`;

const bell = async () => {
  const files = new Map([
    ["bell.yaml", BELL],
    ["shed.yaml", SHED],
  ]);
  const project = compile({ entry: "bell.yaml", files }, await testLibrary());
  const [panel] = project.panels;
  const [part] = panel?.sheetParts ?? [];
  const layer = panel?.layout?.layers[0];
  if (panel === undefined || part === undefined || layer === undefined) throw new Error("no part");
  const sizes = new Map(cutSizes(part, layer));
  const pack = packOfProject(project, panel, { only: "fascia", card: false });
  return { sizes, pack };
};

/** 60 by 50 less the 0.5 mm that the mount leaves free; less twice 0.08 of paint; and with twice half a kerf of 0.2. */
const OUTLINE = { finished: "59.5 by 49.5", cut: "59.34 by 49.34", file: "59.54 by 49.54" };

/** Diameters of the arcs in path data. */
const widths = (data: string): readonly string[] => [
  ...new Set([...data.matchAll(/A([\d.]+)/g)].map(([, radius]) => (2 * Number(radius)).toFixed(3))),
];

describe("the sizes behind a cut file", () => {
  test("are those of hand arithmetic, and each file of the set-up has them", async () => {
    const { sizes, pack } = await bell();
    const cut = pack.files.filter(({ kind }) => kind.startsWith("cut-"));
    expect(cut.map(({ path }) => path).filter((path) => !sizes.has(path))).toEqual([]);
    const [one] = [...sizes].flatMap(([path, each]) => (path.includes("-1-cut") ? [each] : []));
    if (one === undefined) throw new Error("no set-up");
    expect(one.kerf).toBe(0.2);
    expect(widths(one.finished ?? "")).toContain("16.250");
    expect(widths(one.cut)).toContain("16.410");
    expect(one.wide?.times).toBe(10);
    expect(widths(one.wide?.line ?? "")).toContain((16.41 - 10 * 0.2).toFixed(3));
  });

  test("the file as it was read back is drawn at the middle of the beam, at the same place", async () => {
    const { sizes, pack } = await bell();
    for (const { path, kind, bytes } of pack.files) {
      const size = sizes.get(path);
      if (size === undefined || !path.includes("-1-cut")) continue;
      const text = utf8Text(bytes);
      const read = kind === "cut-svg" ? readSvg(text, point(0, 0)) : readDxf(text, point(0, 0));
      const drawn = drawnProcesses(read, size.height);
      const inner = drawn.find(({ process }) => process.toLowerCase().includes("inner"));
      expect(widths(inner?.data ?? "")).toContain("16.210");
      // Its centre is that of the cut size: left and right ends a half width from it.
      const ends = (data: string): readonly number[] =>
        [...data.matchAll(/([\d.]+) ([\d.]+)(?=[AZML]|$)/g)].map(([, x]) => Number(x));
      const middle = (data: string): number => {
        const all = ends(data);
        return (Math.min(...all) + Math.max(...all)) / 2;
      };
      const hole = (data: string): string =>
        data.split("M").find((run) => widths(run)[0]?.startsWith("16.") === true) ?? "";
      expect(middle(hole(inner?.data ?? ""))).toBeCloseTo(middle(hole(size.cut)), 3);
    }
  });
});

describe("the sizes in numbers", () => {
  test("are those of hand arithmetic in each of the three formats", async () => {
    const { sizes, pack } = await bell();
    const cut = pack.files.filter(({ path }) => path.includes("-1-cut") && sizes.has(path));
    expect(cut).toHaveLength(3);
    for (const { path, kind, bytes } of cut) {
      const text = utf8Text(bytes);
      const read = kind === "cut-svg" ? readSvg(text, point(0, 0)) : readDxf(text, point(0, 0));
      const rows = cutRows(sizes.get(path)?.features ?? [], read);
      expect(rows.find(({ feature }) => feature === "ring/clamp@face")).toEqual({
        feature: "ring/clamp@face",
        file: "diameter 16.21",
        cut: "diameter 16.41",
        finished: "diameter 16.25",
      });
      const outline = rows.find(({ cut: size }) => size.includes(" by "));
      expect(outline).toMatchObject(OUTLINE);
    }
  });

  test("a cut that is not in the file is said to be not there", async () => {
    const { sizes } = await bell();
    const [one] = [...sizes].flatMap(([path, each]) => (path.includes("-1-cut") ? [each] : []));
    const rows = cutRows(one?.features ?? [], readSvg("<svg/>", point(0, 0)));
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.map(({ file }) => file)).toEqual(rows.map(() => null));
  });
});

test("a table's cells are read as RFC 4180 writes them", () => {
  expect(tableRows('a,b\r\n"1, one","say ""so"""\r\n,\r\n')).toEqual([
    ["a", "b"],
    ["1, one", 'say "so"'],
    ["", ""],
  ]);
  expect(tableRows("")).toEqual([]);
  expect(tableRows('"two\nlines",x')).toEqual([["two\nlines", "x"]]);
});
