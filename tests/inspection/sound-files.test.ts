// Sound files pass in every row, whoever wrote them: here they are written by hand in three formats, face up and face down.

import { describe, expect, test } from "vitest";
import { inspectDxf } from "../../src/inspection/inspect-dxf.ts";
import { inspectSvg } from "../../src/inspection/inspect-svg.ts";
import type { InspectionRow } from "../../src/inspection/row.ts";
import { handDxf, handR12, handSvg, REAR_SHEET } from "./hand-files.ts";
import { BACKING, BACKING_SET_UP, FACE, FACE_SET_UP, FACE_SHAPES, handCuts } from "./hand-plate.ts";

const face = { part: FACE, setUp: FACE_SET_UP, file: "face" };
const backing = { part: BACKING, setUp: BACKING_SET_UP, file: "backing" };

const failed = (rows: readonly InspectionRow[]): readonly InspectionRow[] =>
  rows.filter(({ passed }) => !passed);

describe("a sound file", () => {
  test.each([
    ["SVG", inspectSvg(handSvg(FACE_SHAPES), face)],
    ["DXF", inspectDxf(handDxf(FACE_SHAPES), face)],
    ["R12", inspectDxf(handR12(FACE_SHAPES), face)],
    ["SVG cut face down", inspectSvg(handSvg(handCuts("backing"), REAR_SHEET), backing)],
    ["DXF cut face down", inspectDxf(handDxf(handCuts("backing"), REAR_SHEET), backing)],
    ["R12 cut face down", inspectDxf(handR12(handCuts("backing"), REAR_SHEET), backing)],
  ])("%s passes", (_, rows) => {
    expect(failed(rows)).toEqual([]);
    // Eight cuts with six rows each, beside those of the sheet.
    expect(rows.length).toBeGreaterThan(48);
  });

  test("gives a row for everything that a cut can get wrong", () => {
    const rows = inspectSvg(handSvg(FACE_SHAPES), face).filter(
      ({ feature }) => feature === "brake/clamp@face",
    );
    expect(rows).toEqual([
      expectedRow("process", "cut-inner", "cut-inner", null),
      expectedRow("x", "20.0000", "20.0000", 0),
      expectedRow("y", "40.0000", "40.0000", 0),
      // Hole 6.4 less a kerf of 0.2.
      expectedRow("size", "diameter 6.2000", "diameter 6.2000", 0),
      // pi 3.1²
      expectedRow("area", "30.1907", "30.1907", 0),
      expectedRow(
        "outline",
        "one closed loop, evenly beside the cut size",
        "one closed loop, even within 0.0000",
        0,
      ),
    ]);
  });

  test("is judged the same, wherever a file puts its order of groups that do not matter", () => {
    const witnessLast = [
      ...FACE_SHAPES.filter(({ process }) => process === "score"),
      ...FACE_SHAPES.filter(({ process }) => process === "engrave"),
      ...FACE_SHAPES.filter(({ process }) => process === "witness"),
      ...FACE_SHAPES.filter(({ process }) => process.startsWith("cut")),
    ];
    expect(failed(inspectSvg(handSvg(witnessLast), face))).toEqual([]);
  });
});

const expectedRow = (
  what: InspectionRow["what"],
  expected: string,
  measured: string,
  difference: number | null,
): InspectionRow => ({
  file: "face",
  feature: "brake/clamp@face",
  what,
  expected,
  measured,
  difference,
  passed: true,
});
