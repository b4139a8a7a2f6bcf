// Both DXF files, read by dxf-parser, which shares nothing with their writers, and measured against the bench's numbers.
// Group codes: DXF reference, sections HEADER and ENTITIES.

import dxfParser from "dxf-parser";
import { describe, expect, test } from "vitest";
import { dxfCutFile } from "../../src/export/dxf-cut-file.ts";
import { dxfR12CutFile } from "../../src/export/dxf-r12-cut-file.ts";
import { machinePaths } from "../../src/export/machine-paths.ts";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { contourArea } from "../../src/geometry/measure.ts";
import type { SetUp, SheetPart } from "../../src/parts/sheet-part.ts";
import { FRONT_UP, HOSTILE_NAMES, PLATE, plateNamed, REAR_UP } from "./bureau-plate.ts";
import { expectGolden } from "./golden.ts";

const OPTIONS = { colours: DEFAULT_COLOURS, title: "Plate: face" } as const;

const WRITERS = {
  "of 2007": (part: SheetPart, setUp: SetUp, title: string): string =>
    dxfCutFile(part, setUp, { ...OPTIONS, title }),
  R12: (part: SheetPart, setUp: SetUp, title: string): string =>
    dxfR12CutFile(part, setUp, { title }),
} as const;

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
}

interface ReadEntity {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly vertices?: readonly Corner[];
  readonly center?: Corner;
  readonly radius?: number;
}

interface ReadDxf {
  readonly header: Readonly<Record<string, unknown>>;
  readonly entities: readonly ReadEntity[];
  readonly layers: readonly string[];
}

/** What the package gives in Node is the class itself; its types describe the bundle for browsers. */
const Parser = dxfParser as unknown as new () => {
  readonly parseSync: (text: string) => {
    readonly header: Readonly<Record<string, unknown>>;
    readonly entities: readonly ReadEntity[];
    readonly tables: { readonly layer: { readonly layers: Readonly<Record<string, unknown>> } };
  } | null;
};

const read = (text: string): ReadDxf => {
  const parsed = new Parser().parseSync(text);
  if (parsed === null) throw new Error("dxf-parser reads nothing");
  const { header, entities, tables } = parsed;
  return { header, entities, layers: Object.keys(tables.layer.layers) };
};

/** Shoelace with the segments of its arcs: radius² (angle - sin angle) / 2, the angle 4 atan bulge. */
const areaOf = ({ vertices = [] }: ReadEntity): number => {
  let area = 0;
  for (const [index, from] of vertices.entries()) {
    const to = vertices[(index + 1) % vertices.length] ?? from;
    area += (from.x * to.y - to.x * from.y) / 2;
    const bulge = from.bulge ?? 0;
    if (bulge === 0) continue;
    const angle = 4 * Math.atan(bulge);
    const radius = Math.hypot(to.x - from.x, to.y - from.y) / 2 / Math.sin(angle / 2);
    area += (radius ** 2 * (angle - Math.sin(angle))) / 2;
  }
  return area;
};

const circlesOn = (file: ReadDxf, layer: string): readonly ReadEntity[] =>
  file.entities.filter((entity) => entity.type === "CIRCLE" && entity.layer === layer);

const plateText = {
  "of 2007": WRITERS["of 2007"](PLATE, FRONT_UP, OPTIONS.title),
  R12: WRITERS.R12(PLATE, FRONT_UP, OPTIONS.title),
} as const;

const VERSIONS = ["of 2007", "R12"] as const;

describe.each(VERSIONS)("DXF %s says what it is", (name) => {
  const write = WRITERS[name];
  const text = plateText[name];
  const file = read(text);

  test("millimetres, and nobody's name but ours", () => {
    expect(file.header["$INSUNITS"]).toBe(4);
    expect(file.header["$ACADVER"]).toBe(name === "R12" ? "AC1009" : "AC1021");
    expect(text).not.toMatch(/tarik|NaN|undefined|[\d.]e-\d/i);
  });

  test("the same bytes twice, also after another file was written, and as reviewed", () => {
    write(PLATE, REAR_UP, "another");
    expect(write(PLATE, { ...FRONT_UP }, OPTIONS.title)).toBe(text);
    expectGolden(name === "R12" ? "plate-face.r12.dxf" : "plate-face.dxf", text);
  });

  test("layers by process, in the order of work", () => {
    expect(file.layers.filter((layer) => layer !== "0")).toEqual([
      "witness",
      "engrave",
      "score",
      "drill",
      "cut-inner",
      "cut-outer",
    ]);
    const layers = file.entities.map((entity) => entity.layer);
    expect([...new Set(layers)]).toEqual(file.layers.filter((layer) => layer !== "0"));
  });

  test("it says part, face and kerf in comments", () => {
    const comments = [...text.matchAll(/^999\n(.*)$/gm)].map(([, words]) => words);
    expect(comments[0]).toBe("Plate: face");
    expect(comments.join("\n")).toContain("Face up: FRONT");
    expect(comments.join("\n")).toContain("Kerf: in this file, 0.2 mm full width, measured");
  });
});

describe.each(VERSIONS)("DXF %s holds what the bench needs", (name) => {
  const file = read(plateText[name]);

  test("four stud holes of 6.4 at the panel's places, ring and pilot as circles", () => {
    const studs = circlesOn(file, "cut-inner");
    expect(studs.map((hole) => hole.radius)).toEqual([3.2, 3.2, 3.2, 3.2]);
    expect(studs.map((hole) => [hole.center?.x, hole.center?.y])).toEqual([
      [14.7625, 14.7625],
      [151.2875, 14.7625],
      [14.7625, 62.3875],
      [151.2875, 62.3875],
    ]);
    expect(circlesOn(file, "drill").map((hole) => hole.radius)).toEqual([1.25]);
    expect(circlesOn(file, "engrave")).toHaveLength(2);
  });

  test("every other opening is one closed line of bulges with the area of what was asked", () => {
    const paths = machinePaths(FRONT_UP);
    if (paths.kind === "refused") throw new Error("refused");
    for (const process of ["cut-inner", "cut-outer"] as const) {
      const asked = (paths.groups.find((group) => group.process === process)?.shapes ?? []).flatMap(
        (shape) =>
          shape.kind === "cut" && shape.contour.kind === "loop" ? [contourArea(shape.contour)] : [],
      );
      const lines = file.entities.filter(
        (entity) => entity.layer === process && entity.type !== "CIRCLE",
      );
      expect(lines.map((line) => line.shape)).toEqual(lines.map(() => true));
      expect(lines.map(areaOf)).toHaveLength(asked.length);
      for (const [index, line] of lines.entries())
        expect(Math.abs(areaOf(line) - (asked[index] ?? 0))).toBeLessThan(1e-4);
    }
    // By hand: 146.25 x 57.35 between the line's middles.
    expect(areaOf(file.entities.at(-1) ?? { type: "", layer: "" })).toBeCloseTo(146.25 * 57.35, 4);
  });

  test("strokes stay open", () => {
    for (const layer of ["score", "witness"]) {
      const strokes = file.entities.filter((entity) => entity.layer === layer);
      expect(strokes).toHaveLength(1);
      expect(strokes[0]?.shape ?? false).toBe(false);
    }
  });

  test("rear up: mirrored exactly once about the sheet's vertical centre line", () => {
    const behind = read(WRITERS[name](PLATE, REAR_UP, OPTIONS.title));
    const places = (read: ReadDxf, mirrored: boolean): readonly string[] =>
      circlesOn(read, "cut-inner")
        .concat(circlesOn(read, "drill"))
        .map(({ center }) => {
          const x = mirrored ? 166.05 - (center?.x ?? 0) : (center?.x ?? 0);
          return `${x.toFixed(4)} ${(center?.y ?? 0).toFixed(4)}`;
        })
        .toSorted();
    expect(places(behind, true)).toEqual(places(file, false));
    expect(circlesOn(behind, "drill")[0]?.center?.x).toBeCloseTo(166.05 - 130, 6);
  });
});

describe.each(VERSIONS)("DXF %s and a design's words", (name) => {
  const text = plateText[name];
  const write = WRITERS[name];

  test.each(HOSTILE_NAMES.map((hostile) => [JSON.stringify(hostile.slice(0, 40)), hostile]))(
    "a name adds no group and no entity: %s",
    (_shown, hostile) => {
      const { part, setUp } = plateNamed(hostile);
      const named = write(part, setUp, hostile);
      expect(named.split("\n").length).toBe(text.split("\n").length);
      expect(read(named).entities).toHaveLength(read(text).entities.length);
      if (name === "R12") expect(named).toMatch(/^[\n\x20-\x7e]*$/);
    },
  );
});
