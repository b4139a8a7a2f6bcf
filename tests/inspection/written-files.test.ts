// The program's own files, measured by its own inspection: a plate with every kind of opening and a legend in every face
// of the library, in all three formats, front up and rear up. And the same with one digit changed in each.

import { describe, expect, test } from "vitest";
import { fontRecords } from "../../scripts/font-records.ts";
import { dxfCutFile } from "../../src/export/dxf-cut-file.ts";
import { dxfR12CutFile } from "../../src/export/dxf-r12-cut-file.ts";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { svgCutFile } from "../../src/export/svg-cut-file.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { placedPath, placedRegion, placement } from "../../src/geometry/transform.ts";
import { inspectDxf } from "../../src/inspection/inspect-dxf.ts";
import { inspectSvg } from "../../src/inspection/inspect-svg.ts";
import type { InspectionRow } from "../../src/inspection/row.ts";
import { openLettering } from "../../src/lettering/lettering.ts";
import { setText } from "../../src/lettering/set-text.ts";
import type { Operation, SetUp, SheetPart } from "../../src/parts/sheet-part.ts";
import { BACKING_SET_UP, FACE, FACE_SET_UP } from "./hand-plate.ts";

/** Letters with corners of every sharpness, islands, and bowls tighter than the spot. */
const LEGEND = "AMVWK 8&%R@ S3";

const legends: readonly Operation[] = Array.from(
  openLettering(fontRecords()).faces.values(),
  (face, index): Operation => {
    const set = setText(face, LEGEND, { capHeight: mm(2.6 + 0.3 * index), align: "start" });
    const at = placement(12, 22 + 4.6 * index);
    const feature = `legend.${index + 1}`;
    return set.fills.length > 0
      ? {
          kind: "fill",
          process: "engrave",
          feature,
          regions: set.fills.map((region) => placedRegion(region, at)),
        }
      : {
          kind: "stroke",
          process: "engrave",
          feature,
          paths: set.strokes.map((path) => placedPath(path, at)),
          width: mm(0.15),
        };
  },
);

const lettered = (setUp: SetUp): SetUp => ({
  ...setUp,
  operations: [...setUp.operations.filter(({ feature }) => feature !== "brake/legend"), ...legends],
});

const partOf = (setUp: SetUp): SheetPart => ({ ...FACE, setUps: [setUp] });

const OPTIONS = { colours: DEFAULT_COLOURS, title: "Plate" };

const failed = (rows: readonly InspectionRow[]): readonly InspectionRow[] =>
  rows.filter(({ passed }) => !passed);

const SET_UPS = [
  ["front up", lettered(FACE_SET_UP)],
  ["rear up", lettered(BACKING_SET_UP)],
  ["kerf left to the cutter", { ...lettered(FACE_SET_UP), kerf: { kind: "left-to-cutter" } }],
] as const satisfies readonly (readonly [string, SetUp])[];

describe.each(SET_UPS)("%s", (_, setUp: SetUp) => {
  const part = partOf(setUp);
  const of = { part, setUp, file: "plate" };
  const svg = svgCutFile(part, setUp, OPTIONS);
  const dxf = dxfCutFile(part, setUp, OPTIONS);
  const r12 = dxfR12CutFile(part, setUp, OPTIONS);

  test.each([
    ["SVG", inspectSvg(svg, of)],
    ["DXF", inspectDxf(dxf, of)],
    ["R12", inspectDxf(r12, of)],
  ])("%s is right to a thousandth", (_format, rows) => {
    expect(failed(rows)).toEqual([]);
    const cuts = rows.filter(({ feature, what }) => feature.includes("@") && what !== "area");
    const worst = Math.max(...cuts.map(({ difference }) => difference ?? 0));
    expect(worst).toBeLessThanOrEqual(0.0002);
    expect(rows.filter(({ feature }) => feature.startsWith("legend."))).toHaveLength(
      6 * legends.length,
    );
  });

  test("SVG with one digit changed is not", () => {
    // The first coordinate of the window, 0.01 aside.
    const spoilt = svg.replace(
      /(id="meter\/window@\w+"[^>]* d="M)([\d.]+)/,
      (_whole, head: string, x: string) => `${head}${Number(x) + 0.01}`,
    );
    expect(spoilt).not.toBe(svg);
    expect(failed(inspectSvg(spoilt, of)).map(({ feature }) => feature)).toContain(
      setUp.operations.find(({ feature }) => feature.startsWith("meter/window"))?.feature,
    );
  });

  test.each([
    ["DXF", dxf],
    ["R12", r12],
  ])("%s with one radius changed is not", (_format, text) => {
    const spoilt = text.replace(
      // Code and value by pairs: 40 may be a value too.
      /(\nCIRCLE\n(?: *\d+\n.*\n)*? *40\n)([\d.]+)/,
      (_whole, head: string, radius: string) => `${head}${Number(radius) + 0.001}`,
    );
    expect(spoilt).not.toBe(text);
    const rows = failed(inspectDxf(spoilt, of));
    expect(rows.map(({ what }) => what).toSorted()).toEqual(["area", "size"]);
    expect(new Set(rows.map(({ feature }) => feature)).size).toBe(1);
  });
});

describe("names that become one id in an SVG", () => {
  const named = (names: readonly string[]): SetUp => ({
    ...FACE_SET_UP,
    operations: FACE_SET_UP.operations.map((operation, index) => ({
      ...operation,
      feature: names[index] ?? operation.feature,
    })),
  });

  test.each([
    ["two names that differ in a space", named(["outline", "a b", "a_b", "a\u00a0b"])],
    ["a name that is the second of another", named(["outline", "a.2", "a", "a"])],
    ["names of processes", named(["cut-outer", "cut-inner", "drill", "engrave"])],
    ["names that no id may have", named(["1", "2", "", "x".repeat(300)])],
  ])("%s: every line is still found", (_, setUp) => {
    const part = partOf(setUp);
    const rows = inspectSvg(svgCutFile(part, setUp, OPTIONS), { part, setUp, file: "plate" });
    expect(failed(rows)).toEqual([]);
  });
});
