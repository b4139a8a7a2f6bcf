// Drawings as SVG and PDF: the SVG read by our tests' own reader, the PDF by one written from ISO 32000-1.

import { expect, test } from "vitest";
import type { DrawingItem } from "../../src/drawings/drawing.ts";
import { pdfPages } from "../../src/export/pdf.ts";
import { svgDrawing } from "../../src/export/svg-drawing.ts";
import { circle, loop, point, type Region, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { placedRegion, placement } from "../../src/geometry/transform.ts";
import { placeOnPiece, readPdf } from "../support/pdf-reader.ts";
import { readSvgFile, runBox } from "../support/svg-reader.ts";
import { HOSTILE_NAMES } from "./bureau-plate.ts";
import { CROSSING } from "./crossing.ts";
import { expectGolden } from "./golden.ts";

const svg = svgDrawing(CROSSING);
const page = {
  width: mm(210),
  height: mm(297),
  sheets: [
    { items: CROSSING.items, shift: { x: 40, y: 30 }, clip: extent(17, 17, 199, 277) },
    { items: [], shift: { x: 0, y: 0 }, clip: null },
  ],
} as const;
const pdf = pdfPages([page, page], { title: CROSSING.title });

test("svg: true size in mm, arcs as arcs, a paper behind, no text and no transform", () => {
  const file = readSvgFile(svg);
  expect(file.root.get("width")).toBe("120mm");
  expect(file.root.get("viewBox")).toBe("0 0 120 70");
  expect(file.title).toBe("Crossing <1>");
  expect(svg).not.toMatch(/transform|<text|NaN/);
  const circle = file.paths
    .flatMap((path) => path.runs)
    .map(runBox)
    .find((box) => Math.abs(box.minX - 65) < 1e-9);
  expect(circle).toEqual({ minX: 65, maxX: 115, minY: 5, maxY: 55 });
  const paper = file.paths[0]?.runs[0];
  expect(paper === undefined ? null : runBox(paper)).toEqual({
    minX: 0,
    minY: 0,
    maxX: 120,
    maxY: 70,
  });
  expectGolden("crossing.svg", svg);
});

test("svg: two filled regions that overlap are two paths, so that even-odd opens no hole", () => {
  const filled = readSvgFile(svg).paths.filter((path) => path.runs.length === 2);
  expect(filled[0]?.runs).toHaveLength(2);
  expect(
    svg.match(/<g fill="#3a3d42" fill-rule="evenodd" stroke="none"><path [^>]*\/><path /),
  ).not.toBeNull();
});

test("pdf: a page of A4 in points, read back whole, the same bytes twice", () => {
  const file = readPdf(pdf);
  expect(file.pages).toHaveLength(2);
  // 210 x 297 mm at 72 points an inch.
  expect(file.pages[0]?.width).toBeCloseTo((210 / 25.4) * 72, 5);
  expect(file.pages[0]?.height).toBeCloseTo((297 / 25.4) * 72, 5);
  expect(Buffer.compare(pdfPages([page, page], { title: CROSSING.title }), pdf)).toBe(0);
  const forms = Array.from(file.forms, ([name, stream]) => `${name}:\n${stream}`);
  expectGolden(
    "crossing.pdf.txt",
    [...file.pages.map(({ content }) => content), ...forms].join("\n"),
  );
});

test("pdf: what lies on two pages is written once, and both pages show the whole of it in their own places", () => {
  const shown = { x: 40, y: 30 };
  const alone = readPdf(pdfPages([page], { title: "t" })).pages[0]?.runs ?? [];
  const moved = {
    ...page,
    sheets: [{ items: CROSSING.items, shift: { x: 12.5, y: -7 }, clip: null }],
  };
  const file = readPdf(pdfPages([page, moved], { title: "t" }));
  expect([...file.forms.keys()]).toContain("S1");
  expect(file.pages[0]?.content.length).toBeLessThan(200);
  expect(file.pages[0]?.runs).toEqual(alone);
  const painted = alone.filter(({ painted: by }) => by !== "n");
  const second = file.pages[1]?.runs ?? [];
  expect(second).toHaveLength(painted.length);
  for (const [index, run] of painted.entries()) {
    const start = run.pieces[0]?.from;
    const other = second[index]?.pieces[0]?.from;
    expect(other?.x).toBeCloseTo((start?.x ?? Number.NaN) - shown.x + 12.5, 9);
    expect(other?.y).toBeCloseTo((start?.y ?? Number.NaN) - shown.y - 7, 9);
  }
});

test("pdf: viewers are told not to scale, lines end square, and nothing tells the time", () => {
  const file = readPdf(pdf);
  expect(file.catalogue).toContain("/ViewerPreferences << /PrintScaling /None");
  for (const read of file.pages) expect(read.content).toMatch(/^[\d. ]+ cm\n0 J /);
  const dictionaries = Buffer.from(pdf)
    .toString("latin1")
    .replaceAll(/stream\n.*?\nendstream/gs, "");
  expect(dictionaries).not.toMatch(/Date|\/ID|\/Font/);
  for (const { content } of file.pages) expect(content).not.toMatch(/\bTj\b|NaN|[\d.]e-\d/);
});

test("pdf: every curve lies within 0.001 mm of its arc", () => {
  const runs = readPdf(pdf).pages[0]?.runs ?? [];
  /** Centres on the page (drawing + 40, + 30) and radii of everything round in the drawing. */
  const rounds: readonly (readonly [number, number, number])[] = [
    [60, 50, 15],
    [60, 50, 10],
    [70, 50, 15],
    [110, 60, 25],
    // Chord 90, bulge -0.05: radius c (1 + b²) / 4b, centre below the chord by (1/b - b) c / 4.
    [85, 80 - (90 * (1 / 0.05 - 0.05)) / 4, (90 * (1 + 0.05 ** 2)) / (4 * 0.05)],
    // Chord 20, bulge 1.5, more than half a turn.
    [90, 35 + (20 * (1 / 1.5 - 1.5)) / 4, (20 * (1 + 1.5 ** 2)) / (4 * 1.5)],
  ];
  const curves = runs.flatMap((run) => run.pieces).filter((piece) => piece.kind === "curve");
  expect(curves.length).toBeGreaterThan(20);
  const met = new Set<number>();
  for (const curve of curves) {
    const errors = rounds.map(([x, y, radius]) =>
      Math.max(
        ...Array.from({ length: 33 }, (_, index) => {
          const at = placeOnPiece(curve, index / 32);
          return Math.abs(Math.hypot(at.x - x, at.y - y) - radius);
        }),
      ),
    );
    const best = Math.min(...errors);
    met.add(errors.indexOf(best));
    expect(best).toBeLessThan(0.001);
  }
  expect(met.size).toBe(rounds.length);
});

test("the tests' reader objects to one changed byte of a page and to one lost byte of the file", () => {
  const text = Buffer.from(pdf).toString("latin1");
  const at = text.indexOf("stream\n") + 40;
  const changed = Buffer.from(pdf);
  changed[at] = (changed[at] ?? 0) ^ 0x55;
  expect(() => readPdf(changed)).toThrow();
  expect(() => readPdf(Buffer.from(text.replace("/Count 2", "/Count"), "latin1"))).toThrow();
});

/** A ring with a spine, as letters have, at three places. */
const LETTER: Region = {
  outline: loop([vertex(0, 0), vertex(2, 0, 0.6), vertex(2, 3, 0.2), vertex(0, 3)]),
  holes: [circle(point(1.2, 1.5), 0.4)],
};
const PLACES = [0, 10.00004, 33.3] as const;
const THRICE: DrawingItem = {
  kind: "fill",
  ink: "line",
  regions: PLACES.map((x) => placedRegion(LETTER, placement(x, 2 * x))),
};

test("svg: a letter that stands three times is written once and placed three times", () => {
  const text = svgDrawing({ ...CROSSING, box: extent(0, 0, 100, 100), items: [THRICE] });
  const file = readSvgFile(text);
  const defined = file.paths.filter((path) => path.attributes.get("id") === "s1");
  expect(defined).toHaveLength(1);
  const uses = [...text.matchAll(/<use href="#s1" x="([\d.]+)" y="([\d.]+)"\/>/g)];
  expect(uses.map(([, x]) => Number(x))).toEqual([0, 10, 33.3]);
  expect(uses.map(([, , y]) => Number(y))).toEqual([100, 79.9999, 33.4]);
  // About its own first corner, y down: 3 high, and the top's bow of 0.2 x 2 / 2 above that.
  const run = defined[0]?.runs[0];
  const box = run === undefined ? null : runBox(run);
  expect(box?.minY).toBeCloseTo(-3.2, 9);
  expect([box?.minX, box?.maxY]).toEqual([0, 0]);
});

test("pdf: a letter that stands three times is written once and lands where it belongs", () => {
  const sheets = [{ items: [THRICE], shift: { x: 5, y: 5 }, clip: null }];
  const page = { width: mm(210), height: mm(297), sheets };
  const read = readPdf(pdfPages([page], { title: "t" })).pages[0];
  expect(read?.content.match(/\/F1 Do/g)).toHaveLength(3);
  const corners = (read?.runs ?? []).map((run) => run.pieces[0]?.from);
  expect(corners).toHaveLength(6);
  for (const [index, x] of PLACES.entries()) {
    expect(corners[2 * index]?.x).toBeCloseTo(5 + x, 3);
    expect(corners[2 * index]?.y).toBeCloseTo(5 + 2 * x, 3);
    expect(corners[2 * index + 1]?.x).toBeCloseTo(5 + x + 0.8, 3);
  }
});

test.each(HOSTILE_NAMES.map((name) => [JSON.stringify(name.slice(0, 40)), name]))(
  "a title stays a title: %s",
  (_shown, name) => {
    const file = readSvgFile(svgDrawing({ ...CROSSING, title: name }));
    expect(file.elements).toEqual(readSvgFile(svg).elements);
    const read = readPdf(pdfPages([page], { title: name }));
    const digits = /\/Title <FEFF([0-9A-F]*)> \/Producer/.exec(read.information)?.[1];
    expect(digits).toBeDefined();
    const title = (digits?.match(/.{4}/g) ?? []).map((unit) =>
      String.fromCharCode(Number.parseInt(unit, 16)),
    );
    expect(title.join("")).toBe(file.title);
  },
);
