// One thing is spoiled at a time, and the inspection must object on exactly the rows that it belongs to.

import { describe, expect, test } from "vitest";
import { inspectDxf } from "../../src/inspection/inspect-dxf.ts";
import { inspectSvg } from "../../src/inspection/inspect-svg.ts";
import type { InspectionRow } from "../../src/inspection/row.ts";
import {
  FRONT_SHEET,
  type HandShape,
  type HandSheet,
  handDxf,
  handR12,
  handSvg,
  REAR_SHEET,
  type Run,
} from "./hand-files.ts";
import {
  BACKING,
  BACKING_SET_UP,
  FACE,
  FACE_SET_UP,
  FACE_SHAPES,
  handCuts,
  handMarks,
} from "./hand-plate.ts";

const face = { part: FACE, setUp: FACE_SET_UP, file: "face" };
const backing = { part: BACKING, setUp: BACKING_SET_UP, file: "backing" };

const failedRows = (rows: readonly InspectionRow[]): readonly string[] =>
  rows.filter(({ passed }) => !passed).map(({ feature, what }) => `${feature} ${what}`);

/** What fails in each of the three formats. */
const inAllFormats = (
  shapes: readonly HandShape[],
  sheet: HandSheet = FRONT_SHEET,
): readonly (readonly string[])[] => {
  const of = sheet.faceUp === "front" ? face : backing;
  return [
    failedRows(inspectSvg(handSvg(shapes, sheet), of)),
    failedRows(inspectDxf(handDxf(shapes, sheet), of)),
    failedRows(inspectDxf(handR12(shapes, sheet), of)),
  ];
};

const thrice = (...rows: readonly string[]): readonly (readonly string[])[] => [rows, rows, rows];

const change = (id: string, by: (shape: HandShape) => HandShape): readonly HandShape[] =>
  FACE_SHAPES.map((shape) => (shape.id === id ? by(shape) : shape));

describe("one cut that is wrong, in every format", () => {
  test("a hole that is moved by 0.002", () => {
    const right = change("brake/clamp@face", (hole) => ({ ...hole, circle: [20.002, 40, 3.1] }));
    const up = change("brake/clamp@face", (hole) => ({ ...hole, circle: [20, 40.002, 3.1] }));
    expect(inAllFormats(right)).toEqual(thrice("brake/clamp@face x"));
    expect(inAllFormats(up)).toEqual(thrice("brake/clamp@face y"));
  });

  test("a hole that is 0.002 too large", () => {
    const shapes = change("brake/clamp@face", (hole) => ({ ...hole, circle: [20, 40, 3.101] }));
    expect(inAllFormats(shapes)).toEqual(thrice("brake/clamp@face size", "brake/clamp@face area"));
  });

  test("one corner radius of the outline, 2.1 for 2.12", () => {
    const shapes = change("outline@face", (outline) => ({
      ...outline,
      runs: [
        outline.runs[0]!.map(([x, y, bulge], index) =>
          index === 1 ? [x, y, bulge * 0.985] : [x, y, bulge],
        ),
      ],
    }));
    expect(inAllFormats(shapes)).toEqual(thrice("outline@face outline"));
  });

  test("the flat of a D hole that faces down", () => {
    const shapes = change("speed/clamp@face", (hole) => ({
      ...hole,
      runs: [hole.runs[0]!.map(([x, y, bulge]) => [x, 40 - y, -bulge])],
    }));
    // Its box lies 0.9 lower (half of 5.9 less 4.9 twice), and its form is another.
    expect(inAllFormats(shapes)).toEqual(thrice("speed/clamp@face y", "speed/clamp@face outline"));
  });

  test("a path that is dropped", () => {
    const shapes = FACE_SHAPES.filter(({ id }) => id !== "meter/window@face");
    expect(inAllFormats(shapes)).toEqual(thrice("cut-inner count", "meter/window@face outline"));
  });

  test("a line that nobody asked for", () => {
    const stray: HandShape = {
      process: "cut-inner",
      id: "stray",
      circle: [60, 30, 1],
      runs: [],
      closed: true,
    };
    const [inSvg, inDxf] = inAllFormats([...handMarks(), stray, ...handCuts("face")]);
    expect(inSvg).toEqual(["cut-inner count", "stray count"]);
    expect(inDxf).toEqual(["cut-inner count", "cut-inner at 59.0000, 29.0000 count"]);
  });

  test("a hole among the engravings", () => {
    const [hole] = FACE_SHAPES.filter(({ id }) => id === "brake/clamp@face");
    const others = FACE_SHAPES.filter(({ id }) => id !== "brake/clamp@face");
    const shapes = [{ ...hole!, process: "engrave" }, ...others];
    expect(inAllFormats(shapes)).toEqual(thrice("cut-inner count", "brake/clamp@face process"));
  });

  test("a hole cut with the outline", () => {
    const shapes = change("meter/window@face", (hole) => ({ ...hole, process: "cut-outer" }));
    expect(inAllFormats(shapes)).toEqual(
      thrice("cut-inner count", "cut-outer count", "meter/window@face process"),
    );
  });

  test("an outline that is open", () => {
    const shapes = change("outline@face", (outline) => ({ ...outline, closed: false }));
    expect(inAllFormats(shapes)).toEqual(thrice("outline@face outline"));
  });
});

describe("a whole file that is wrong, in every format", () => {
  test("kerf applied twice, not at all, or the wrong way round", () => {
    for (const kerf of [0.4, 0, -0.2]) {
      const shapes = [...handMarks(), ...handCuts("face", kerf)];
      expect(inAllFormats(shapes)).toEqual(thrice("sheet kerf"));
    }
  });

  test("kerf right in the lines and wrong in the words", () => {
    const sheet = { ...FRONT_SHEET, kerf: "left to the cutter" };
    expect(inAllFormats(FACE_SHAPES, sheet)).toEqual(thrice("words kerf"));
  });

  test("a mirror too many, or too few", () => {
    const face = { ...FRONT_SHEET, mirrored: true };
    const rear = { ...REAR_SHEET, mirrored: false };
    expect(inAllFormats(FACE_SHAPES, face)).toEqual(thrice("sheet mirror"));
    expect(inAllFormats(handCuts("backing"), rear)).toEqual(thrice("sheet mirror"));
  });

  test("words that say the other side, another part or an older revision", () => {
    expect(inAllFormats(FACE_SHAPES, { ...FRONT_SHEET, revision: "A" })).toEqual(
      thrice("sheet revision"),
    );
    expect(inAllFormats(FACE_SHAPES, { ...FRONT_SHEET, part: "plate-backing" })).toEqual(
      thrice("sheet part"),
    );
    const said = failedRows(
      inspectSvg(handSvg(FACE_SHAPES).replace("up: front", "up: rear"), face),
    );
    expect(said).toEqual(["sheet side"]);
  });

  test("the outline before its holes, a large hole before a small one", () => {
    const outlineFirst = [...handMarks(), ...handCuts("face").toReversed()];
    expect(inAllFormats(outlineFirst)).toEqual(thrice("sheet order"));
    const [small, ...others] = handCuts("face");
    const largeFirst = [...handMarks(), ...others.slice(0, -1), small!, ...others.slice(-1)];
    expect(inAllFormats(largeFirst)).toEqual(thrice("sheet order"));
  });
});

describe("markings that are wrong, in every format", () => {
  test("letters that are not drawn in by half the spot", () => {
    const shapes = [...handMarks(0), ...handCuts("face")];
    expect(inAllFormats(shapes)).toEqual(
      thrice("brake/legend size", "brake/legend area", "brake/legend outline"),
    );
  });

  test("a letter of a legend that is lost or moved", () => {
    const lost = FACE_SHAPES.filter(({ id }) => id !== "brake/legend.2");
    expect(inAllFormats(lost)).toEqual(thrice("brake/legend size", "brake/legend area"));
    const moved = change("brake/legend.2", ({ runs, ...bar }) => ({
      ...bar,
      runs: runs.map((run) => run.map(([x, y, bulge]) => [x, y + 0.02, bulge])),
    }));
    expect(inAllFormats(moved)).toEqual(thrice("brake/legend outline"));
  });

  test("a legend that is moved as a whole, by 0.004 or by 0.2", () => {
    for (const by of [0.004, 0.2]) {
      const up = ([x, y, bulge]: Run[number]): Run[number] => [x, y + by, bulge];
      const shapes = FACE_SHAPES.map((shape) =>
        shape.id.startsWith("brake/legend")
          ? {
              ...shape,
              runs: shape.runs.map((run) => run.map(up)),
              ...(shape.holes === undefined
                ? {}
                : { holes: shape.holes.map((run) => run.map(up)) }),
            }
          : shape,
      );
      expect(inAllFormats(shapes)).toEqual(thrice("brake/legend y"));
    }
  });

  test("a stroke that is short", () => {
    const short = change("frame", ({ runs, ...frame }) => ({
      ...frame,
      runs: runs.map((run) => run.map(([x, y, bulge]) => [x === 80 ? 79 : x, y, bulge])),
    }));
    expect(inAllFormats(short)).toEqual(thrice("frame x", "frame size", "frame length"));
  });
});

describe("the units of a file", () => {
  const svg = handSvg(FACE_SHAPES);

  test("lines at 72/96 of their size", () => {
    const scaled = FACE_SHAPES.map((shape) => scaledShape(shape, 72 / 96));
    expect(inAllFormats(scaled)).toEqual(thrice("sheet units"));
    const [row] = inspectSvg(handSvg(scaled), face).filter(({ passed }) => !passed);
    expect(row?.measured).toContain("points taken for pixels (72/96)");
  });

  test.each([
    ["a width in points", svg.replace(`width="120mm"`, `width="340.157pt"`)],
    ["no unit at all", svg.replace(`width="120mm" height="80mm"`, `width="120" height="80"`)],
    ["a width of 72/96", svg.replace(`"120mm" height="80mm"`, `"90mm" height="60mm"`)],
    ["a height alone", svg.replace(`height="80mm"`, `height="80.01mm"`)],
    ["a larger sheet", svg.replaceAll("120mm", "121mm").replace("0 0 120 80", "0 0 121 80")],
  ])("SVG: %s", (_, text) => {
    expect(text).not.toBe(svg);
    expect(failedRows(inspectSvg(text, face))).toEqual(["sheet units"]);
  });

  test.each([
    ["no unit", "0"],
    ["inches", "1"],
    ["centimetres", "5"],
  ])("DXF: %s", (_, unit) => {
    const text = handDxf(FACE_SHAPES).replace("$INSUNITS\n70\n4", `$INSUNITS\n70\n${unit}`);
    expect(failedRows(inspectDxf(text, face))).toEqual(["sheet units"]);
  });
});

describe("what has no place in a cut file", () => {
  const svg = handSvg(FACE_SHAPES);

  test.each([
    ["a transform", svg.replace(`<g id="cut-inner">`, `<g id="cut-inner" transform="scale(1)">`)],
    ["text", svg.replace("</svg>", `<text x="1" y="1">FRONT</text></svg>`)],
    ["a style sheet", svg.replace("<title>", "<style>path { fill: red }</style><title>")],
  ])("SVG: %s", (_, text) => {
    expect(failedRows(inspectSvg(text, face))).toEqual(["sheet content"]);
  });

  test("DXF: an entity that cutters approximate", () => {
    const text = handDxf(FACE_SHAPES).replace(
      "0\nENDSEC\n0\nEOF",
      "0\nSPLINE\n8\ncut-inner\n0\nENDSEC\n0\nEOF",
    );
    expect(failedRows(inspectDxf(text, face))).toEqual(["sheet content"]);
  });

  test("a cut that is filled, an engraved area that is outlined", () => {
    const hole = svg.replace(
      `id="brake/clamp@face" fill="none"`,
      `id="brake/clamp@face" fill="red"`,
    );
    expect(failedRows(inspectSvg(hole, face))).toEqual(["brake/clamp@face process"]);
    const area = svg.replace(
      `id="brake/legend" fill="#000" stroke="none"`,
      `id="brake/legend" fill="#000" stroke="#00f"`,
    );
    expect(failedRows(inspectSvg(area, face))).toEqual(["brake/legend process"]);
  });
});

describe("a file that is no cut file", () => {
  test.each(["", "<svg", "not a file", "<svg></svg>", '<svg width="1mm"><path d="M0"/></svg>'])(
    "SVG %j fails in every cut and does not throw",
    (text) => {
      const failed = failedRows(inspectSvg(text, face));
      expect(failed).toContain("sheet units");
      expect(failed.filter((row) => row.endsWith("@face outline"))).toHaveLength(8);
    },
  );

  test.each(["", "0\nSECTION", "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\ncut-inner\n0\nEOF"])(
    "DXF %j fails in every cut and does not throw",
    (text) => {
      const failed = failedRows(inspectDxf(text, face));
      expect(failed).toContain("sheet units");
      expect(failed.filter((row) => row.endsWith("@face outline"))).toHaveLength(8);
    },
  );
});

/** About the sheet's corner at (-10, -10). */
const scaledShape = (shape: HandShape, ratio: number): HandShape => {
  const scaled = (value: number): number => (value + 10) * ratio - 10;
  const scaledRun = (run: HandShape["runs"][number]): HandShape["runs"][number] =>
    run.map(([x, y, bulge]) => [scaled(x), scaled(y), bulge]);
  const { circle, holes } = shape;
  return {
    ...shape,
    ...(circle === undefined
      ? {}
      : { circle: [scaled(circle[0]), scaled(circle[1]), circle[2] * ratio] as const }),
    ...(holes === undefined ? {} : { holes: holes.map(scaledRun) }),
    runs: shape.runs.map(scaledRun),
  };
};
