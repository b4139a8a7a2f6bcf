// Face and backing laid on each other, the backing cut face down: they agree; one mirrored file, one layer of an older
// revision or one dowel out of place is named.

import { describe, expect, test } from "vitest";
import { inspectFiles } from "../../src/inspection/inspect-files.ts";
import { inspectTogether } from "../../src/inspection/inspect-together.ts";
import type { InspectionRow } from "../../src/inspection/row.ts";
import type { WrittenFile } from "../../src/inspection/written-file.ts";
import { FRONT_SHEET, type HandSheet, handDxf, handSvg, REAR_SHEET } from "./hand-files.ts";
import { BACKING, BACKING_SET_UP, FACE, FACE_SET_UP, FACE_SHAPES, handCuts } from "./hand-plate.ts";

const face = (sheet: HandSheet = FRONT_SHEET): WrittenFile => ({
  format: "svg",
  file: "face.svg",
  part: FACE,
  setUp: FACE_SET_UP,
  text: handSvg(FACE_SHAPES, sheet),
});

const backing = (sheet: HandSheet = REAR_SHEET, shapes = handCuts("backing")): WrittenFile => ({
  format: "dxf",
  file: "backing.dxf",
  part: BACKING,
  setUp: BACKING_SET_UP,
  text: handDxf(shapes, sheet),
});

/** A third layer, cut face up. */
const diffuser = (sheet: HandSheet = { ...FRONT_SHEET, part: "plate-diffuser" }): WrittenFile => ({
  format: "svg",
  file: "diffuser.svg",
  part: { ...FACE, id: "plate-diffuser", layer: "diffuser" },
  setUp: FACE_SET_UP,
  text: handSvg(FACE_SHAPES, sheet),
});

const failed = (rows: readonly InspectionRow[]): readonly string[] =>
  rows.filter(({ passed }) => !passed).map(({ file, what }) => `${file} ${what}`);

describe("layers of one panel", () => {
  test("lie on each other when the one that is cut face down is turned over", () => {
    const rows = inspectTogether([face(), backing(), diffuser()]);
    expect(failed(rows)).toEqual([]);
    expect(rows).toHaveLength(6);
    expect(rows[1]).toMatchObject({
      file: "backing.dxf",
      feature: "layers",
      what: "register",
      expected: "axes within 0.0500 of the other layers",
      measured: expect.stringMatching(/^0\.0000 at most, at /),
    });
    expect(rows[1]?.difference).toBeLessThan(0.00001);
  });

  test("do not where one of three is mirrored once more: that one is named", () => {
    const mirrored = backing({ ...REAR_SHEET, mirrored: false });
    expect(failed(inspectTogether([face(), mirrored, diffuser()]))).toEqual([
      "backing.dxf register",
    ]);
    const both = failed(inspectTogether([face(), mirrored]));
    expect(both).toEqual(["face.svg register", "backing.dxf register"]);
  });

  test("do not where a file says the wrong side, though its lines are as its set-up asks", () => {
    const misnamed = backing({ ...REAR_SHEET, faceUp: "front" });
    expect(failed(inspectTogether([face(), misnamed, diffuser()]))).toEqual([
      "backing.dxf register",
    ]);
  });

  test("must be of one revision: the older one is named", () => {
    const older = backing({ ...REAR_SHEET, revision: "A" });
    expect(failed(inspectTogether([face(), older]))).toEqual(["backing.dxf revision"]);
    expect(failed(inspectTogether([face(), older, diffuser()]))).toEqual(["backing.dxf revision"]);
  });

  test("must agree within 0.05", () => {
    const movedBy = (distance: number): WrittenFile =>
      backing(
        REAR_SHEET,
        handCuts("backing").map((shape) =>
          shape.id === "brake/clamp@backing"
            ? { ...shape, circle: [20 + distance, 40, 3.1] as const }
            : shape,
        ),
      );
    expect(failed(inspectTogether([face(), movedBy(0.049)]))).toEqual([]);
    const rows = inspectTogether([face(), diffuser(), movedBy(0.051)]);
    expect(failed(rows)).toEqual(["backing.dxf register"]);
    expect(rows[2]).toMatchObject({ measured: "0.0510 at most, at brake", difference: 0.051 });
  });

  test("are set on their round dowels: a whole layer that is moved still fits", () => {
    const moved = handCuts("backing").map(({ circle, runs, ...shape }) => ({
      ...shape,
      ...(circle === undefined ? {} : { circle: [circle[0] + 0.2, circle[1], circle[2]] as const }),
      runs: runs.map((run) => run.map(([x, y, bulge]) => [x + 0.2, y, bulge] as const)),
    }));
    expect(failed(inspectTogether([face(), backing(REAR_SHEET, moved)]))).toEqual([]);
  });

  test("of one sheet in two formats are no witness for each other", () => {
    const mirrored = { ...REAR_SHEET, mirrored: false };
    const asSvg: WrittenFile = {
      ...backing(),
      format: "svg",
      file: "backing.svg",
      text: handSvg(handCuts("backing"), mirrored),
    };
    expect(failed(inspectTogether([face(), diffuser(), backing(mirrored), asSvg]))).toEqual([
      "backing.dxf register",
      "backing.svg register",
    ]);
  });
});

test("the whole inspection gives each file's rows, then those of the layers together", () => {
  const rows = inspectFiles([face(), backing()]);
  expect(failed(rows)).toEqual([]);
  expect(rows.slice(-4)).toEqual(inspectTogether([face(), backing()]));
  expect(
    rows.filter(({ file, what }) => file === "backing.dxf" && what === "outline"),
  ).toHaveLength(8);
});
