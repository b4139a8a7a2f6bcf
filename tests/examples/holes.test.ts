// Every opening of every cut file of the examples, read by readers that neither the writers nor the inspection use, against
// what it must be: the finished opening of the layout, with paint and kerf by hand arithmetic. And the openings of one
// panel against numbers worked out from its text and the parts' records alone.
// Allowed: 0.001 mm in place and in size.

import dxfParser from "dxf-parser";
import { describe, expect, test } from "vitest";
import { contourExtent } from "../../src/geometry/measure.ts";
import type { LayerLayout } from "../../src/layout/panel-layout.ts";
import type { SetUp, SheetPart } from "../../src/parts/sheet-part.ts";
import { readSvgFile, runBox } from "../support/svg-reader.ts";
import {
  EXAMPLE_NAMES,
  type ExamplePack,
  exampleProject,
  packsOf,
  textOf,
} from "./example-projects.ts";

const ALLOWED = 0.001;
/** Waste round a part on its sheet: an opening at x in the panel lies that much further right in the file. */
const WASTE = 10;

/** Centre and size over all, in the file's own place with y up. */
interface Opening {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const opening = (box: {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}): Opening => ({
  x: (box.minX + box.maxX) / 2,
  y: (box.minY + box.maxY) / 2,
  width: box.maxX - box.minX,
  height: box.maxY - box.minY,
});

/** Paint narrows an opening on both sides, and the beam widens it by its kerf. */
const allowance = (layer: LayerLayout, { kerf }: SetUp): number =>
  2 * layer.holePaint.nominal - (kerf.kind === "in-file" ? kerf.kerf : 0);

const expectedOpenings = (layer: LayerLayout, setUp: SetUp): readonly Opening[] => {
  const sheet = contourExtent(layer.outline);
  return layer.cutOuts.map((cutOut) => {
    const { x, y, width, height } = opening(contourExtent(cutOut.contour));
    const more = cutOut.asCut
      ? allowance(layer, setUp) - 2 * layer.holePaint.nominal
      : allowance(layer, setUp);
    const fromLeft = setUp.faceUp === "front" ? x - sheet.minX : sheet.maxX - x;
    return {
      x: fromLeft + WASTE,
      y: y - sheet.minY + WASTE,
      width: width + more,
      height: height + more,
    };
  });
};

const svgOpenings = (text: string): readonly Opening[] => {
  const file = readSvgFile(text);
  const height = Number(file.root.get("height")?.replace("mm", ""));
  return file.paths
    .filter(({ group }) => group === "cut-inner" || group === "drill")
    .flatMap(({ runs }) => runs.map(runBox))
    .map((box) => opening({ ...box, minY: height - box.maxY, maxY: height - box.minY }));
};

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
}

interface Entity {
  readonly layer: string;
  readonly vertices?: readonly Corner[];
  readonly center?: Corner;
  readonly radius?: number;
}

/** What the package gives in Node is the class itself; its types describe the bundle for browsers. */
const Parser = dxfParser as unknown as new () => {
  readonly parseSync: (text: string) => { readonly entities: readonly Entity[] } | null;
};

const dxfOpenings = (text: string): readonly Opening[] => {
  const entities = new Parser().parseSync(text)?.entities ?? [];
  return entities
    .filter(({ layer }) => layer === "cut-inner" || layer === "drill")
    .map(({ center, radius, vertices = [] }) => {
      if (center !== undefined && radius !== undefined)
        return { x: center.x, y: center.y, width: 2 * radius, height: 2 * radius };
      const places = vertices.flatMap((from, index) =>
        alongBulge(from, vertices[(index + 1) % vertices.length] ?? from),
      );
      return opening({
        minX: Math.min(...places.map(({ x }) => x)),
        minY: Math.min(...places.map(({ y }) => y)),
        maxX: Math.max(...places.map(({ x }) => x)),
        maxY: Math.max(...places.map(({ y }) => y)),
      });
    });
};

/**
 * Corners of an edge and the quarter points of its arc. DXF reference, LWPOLYLINE, group 42: the bulge is the tangent of a
 * quarter of the included angle, positive counter-clockwise.
 */
const alongBulge = (from: Corner, to: Corner): readonly Corner[] => {
  const bulge = from.bulge ?? 0;
  if (bulge === 0) return [from, to];
  const across = { x: to.x - from.x, y: to.y - from.y };
  const toCentre = (1 - bulge ** 2) / (4 * bulge);
  const centre = {
    x: (from.x + to.x) / 2 - toCentre * across.y,
    y: (from.y + to.y) / 2 + toCentre * across.x,
  };
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const turn = 4 * Math.atan(bulge);
  const quarters = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((quarter) => (quarter * Math.PI) / 2);
  const passed = quarters.filter(
    (angle) => (angle - start) / turn > 0 && (angle - start) / turn < 1,
  );
  const places = passed.map((angle) => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  }));
  return [from, to, ...places];
};

interface CutText {
  readonly path: string;
  readonly text: string;
  readonly layer: LayerLayout;
  readonly part: SheetPart;
  readonly setUp: SetUp;
}

/** Of the layers, and of the set-ups that cut: an engraving has no opening, nor have the filters and diffusers of prints. */
const cutTexts = ({ panel, pack }: ExamplePack): readonly CutText[] =>
  pack.files
    .filter(({ kind }) => kind.startsWith("cut-"))
    .filter(({ part }) => !/-(?:filter|diffusers)$/.test(part ?? ""))
    .flatMap(({ path, part: id, bytes }): readonly CutText[] => {
      const part = panel.sheetParts.find((each) => each.id === id);
      const layer = panel.layout?.layers.find((each) => each.id === part?.layer);
      const setUp = part?.setUps.find((each) => path.includes(`-${each.id}.`));
      if (part === undefined || layer === undefined || setUp === undefined)
        throw new Error(`${path} belongs to no set-up`);
      const cuts = setUp.operations.some(({ kind }) => kind === "cut");
      return cuts ? [{ path, text: textOf(bytes), layer, part, setUp }] : [];
    });

const openingsOf = ({ path, text }: CutText): readonly Opening[] =>
  path.endsWith(".svg") ? svgOpenings(text) : dxfOpenings(text);

const isAmong = (one: Opening, others: readonly Opening[]): boolean =>
  others.some(
    (other) =>
      Math.abs(one.x - other.x) <= ALLOWED &&
      Math.abs(one.y - other.y) <= ALLOWED &&
      Math.abs(one.width - other.width) <= ALLOWED &&
      Math.abs(one.height - other.height) <= ALLOWED,
  );

describe.each(EXAMPLE_NAMES)("%s", (name) => {
  const files = packsOf(exampleProject(name), "fascia").flatMap(cutTexts);

  test("has an SVG and two DXF files of each set-up that cuts", () => {
    expect(files.length).toBeGreaterThan(0);
    expect(files.length % 3).toBe(0);
  });

  test.each(files.map((file) => [file.path, file] as const))("%s", (_, file) => {
    const wanted = expectedOpenings(file.layer, file.setUp);
    const found = openingsOf(file);
    expect(found).toHaveLength(wanted.length);
    expect(wanted.filter((each) => !isAmong(each, found))).toEqual([]);
    expect(found.filter((each) => !isAmong(each, wanted))).toEqual([]);
  });
});

/**
 * By hand: places from the text (13 modules of 9.525 are 123.825 high), sizes from the parts' records, M3 at 3.4 (ISO 273,
 * medium), studs 6.6 at 4.7625 from the nominal edges (MIL-F-25173A); the outline is 0.175 smaller on every side and lies
 * 10 from the sheet's corner. Aluminium is not painted here and the router is compensated where its paths are made.
 */
const WINCH_BACKING: readonly (readonly [what: string, x: number, y: number, diameter: number])[] =
  [
    ["brake", 38, 86.825, 12.2],
    ["ring of brake, with the play of aluminium", 38, 86.825 - 11.1, 3.3 + 0.05],
    ["speed", 38 + 64, 86.825, 7.2],
    ["warn.1", 88, 22 + 22, 8.1],
    ["warn.2", 88 + 28, 22 + 22, 8.1],
    ["warn.3", 88, 22, 8.1],
    ["warn.4", 88 + 28, 22, 8.1],
    ["screw below", 146.05 / 2, 5, 3.4],
    ["screw to the left", 15, 123.825 / 2, 3.4],
    ["screw to the upper right", 146.05 - 17, 123.825 - 5, 3.4],
    ["round dowel and its running fit", 28, 5, 3 + 0.1],
    ["stud, lower left", 4.7625, 4.7625, 6.6],
    ["stud, upper right", 146.05 - 4.7625, 123.825 - 4.7625, 6.6],
  ];

test("the winch's backing has the openings that were worked out by hand", () => {
  const winch = packsOf(exampleProject("tug-trainer"), "fascia").find(
    ({ panel }) => panel.name === "winch",
  );
  const files = winch === undefined ? [] : cutTexts(winch);
  const backing = files.filter(({ layer }) => layer.id === "backing");
  expect(backing).toHaveLength(3);
  for (const file of backing) {
    const found = openingsOf(file);
    const missed = WINCH_BACKING.filter(([, x, y, diameter]) => {
      const place = { x: x - 0.175 + WASTE, y: y - 0.175 + WASTE };
      return !isAmong({ ...place, width: diameter, height: diameter }, found);
    });
    expect(missed, file.path).toEqual([]);
  }
});

test("a hole a hundredth too large or too far would be seen", () => {
  const one = { x: 10, y: 20, width: 12.2, height: 12.2 };
  expect(isAmong(one, [{ ...one, width: 12.21, height: 12.21 }])).toBe(false);
  expect(isAmong(one, [{ ...one, x: 10.01 }])).toBe(false);
  expect(isAmong(one, [{ ...one, y: 20.0009 }])).toBe(true);
});
