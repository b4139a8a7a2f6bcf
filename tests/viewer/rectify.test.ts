// A panel photographed aslant comes out straight: its holes lie where the panel has them, measured as the middles of what is
// dark. The photograph is a pinhole camera's, ray by ray (tests/support/panel-photograph.ts).

import { describe, expect, test } from "vitest";
import type { PhotoPoint } from "../../src/design/photo-design.ts";
import { photoPlane } from "../../src/design/photo-plane.ts";
import { extent, extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { type Homography, inverted } from "../../src/geometry/homography.ts";
import { type Pixels, pixelsAMillimetre, rectified } from "../../viewer/photo/rectify.ts";
import { darkMiddle, type Panel, panelPhotograph } from "../support/panel-photograph.ts";

const PANEL: Panel = {
  width: 146.05,
  height: 95.25,
  holes: [
    { x: 20, y: 20, radius: 6 },
    { x: 126.5, y: 18, radius: 3 },
    { x: 73, y: 47.6, radius: 8 },
    { x: 18.5, y: 78, radius: 3 },
    { x: 128, y: 80, radius: 6 },
  ],
};

/** 25 degrees aslant, half a metre away: what is near is a sixth larger than what is far. */
const CAMERA = { slant: 25, distance: 500, roll: 4, focal: 2.8, width: 1200, height: 900 };

const photograph = panelPhotograph(PANEL, CAMERA);

const CORNERS = [
  [0, 0],
  [PANEL.width, 0],
  [PANEL.width, PANEL.height],
  [0, PANEL.height],
] as const;

/** As a hand sets them: to a tenth of a pixel, as the text keeps them. */
const marked = (off: number): readonly PhotoPoint[] =>
  CORNERS.map(([x, y], index) => {
    const seen = photograph.seen(x, y);
    const tenth = (value: number): number => Math.round(value * 10) / 10;
    const sign = index % 2 === 0 ? 1 : -1;
    return {
      inPicture: { x: tenth(seen.x + sign * off), y: tenth(seen.y - sign * off) },
      onPanel: { x, y },
      written: { span: { file: "", start: 0, end: 0 }, keys: {} },
    };
  });

const mapOf = (points: readonly PhotoPoint[]): Homography => {
  const plane = photoPlane({ kind: "points", points });
  if (plane.kind !== "plane") throw new Error(plane.trouble.kind);
  return plane.map;
};

const BOX = extent(-10, -10, PANEL.width + 10, PANEL.height + 10);

/** How far the middle of each hole lies from where the panel has it, mm. */
function errors(straight: Pixels): readonly number[] {
  const across = straight.width / extentWidth(BOX);
  const down = straight.height / extentHeight(BOX);
  return PANEL.holes.map(({ x, y, radius }) => {
    const about = { x: (x - BOX.minX) * across, y: (BOX.maxY - y) * down };
    const found = darkMiddle(straight, about, (radius + 2) * across);
    return Math.hypot((found.x - about.x) / across, (found.y - about.y) / down);
  });
}

const straightOf = (map: Homography, perMm: number): Pixels =>
  rectified(photograph, { toPicture: inverted(map), box: BOX, perMm });

describe("a panel at 25 degrees", () => {
  test("the camera really sees it aslant", () => {
    const [low, right, high] = CORNERS.map(([x, y]) => photograph.seen(x, y));
    // Straight on, a parallelogram would close where the fourth corner is.
    const fourth = photograph.seen(0, PANEL.height);
    const closed = { x: low!.x + high!.x - right!.x, y: low!.y + high!.y - right!.y };
    expect(Math.hypot(closed.x - fourth.x, closed.y - fourth.y)).toBeGreaterThan(20);
  });

  test.each([2, 8, 16])(
    "has its holes within half a millimetre at %i pixels a millimetre",
    (perMm) => {
      const found = errors(straightOf(mapOf(marked(0)), perMm));
      expect(Math.max(...found)).toBeLessThan(0.5);
      // What is left is the tenth of a pixel that the text keeps, and the pixels themselves.
      expect(Math.max(...found)).toBeLessThan(0.05);
    },
  );

  test("marked two pixels beside its corners it is off by two pixels on the panel, and no more", () => {
    const points = marked(1.4);
    const found = errors(straightOf(mapOf(points), 8));
    const plane = photoPlane({ kind: "points", points });
    const pixel = plane.kind === "plane" ? plane.pixel : 0;
    expect(Math.max(...found)).toBeGreaterThan(0.5 * pixel);
    expect(Math.max(...found)).toBeLessThan(2.2 * pixel);
    expect(Math.max(...found)).toBeLessThan(0.5);
  });

  test("an affine map, which three corners would give, is not enough: the measure can fail", () => {
    const [low, right, , high] = marked(0).map(({ inPicture }) => inPicture);
    const affine: Homography = [
      (right!.x - low!.x) / PANEL.width,
      (high!.x - low!.x) / PANEL.height,
      low!.x,
      (right!.y - low!.y) / PANEL.width,
      (high!.y - low!.y) / PANEL.height,
      low!.y,
      0,
      0,
      1,
    ];
    const straight = rectified(photograph, { toPicture: affine, box: BOX, perMm: 8 });
    expect(Math.max(...errors(straight))).toBeGreaterThan(1);
  });

  test("is drawn as finely as it was photographed, within a bound", () => {
    const map = inverted(mapOf(marked(0)));
    // 2.8 x 1200 pixels of focal length at 500 mm are 6.7 pixels a millimetre; the nearest corner has more.
    const perMm = pixelsAMillimetre(map, BOX);
    expect(perMm).toBeGreaterThan(6.7);
    expect(perMm).toBeLessThan(9);
    const wide = extent(0, 0, 4000, 3000);
    expect(pixelsAMillimetre(map, wide) ** 2 * 4000 * 3000).toBeLessThanOrEqual(6_000_001);
  });
});

test("beyond the picture's edge nothing is drawn, and within it nothing is lost", () => {
  const grey: Pixels = {
    width: 40,
    height: 30,
    data: new Uint8ClampedArray(40 * 30 * 4).fill(200),
  };
  // One pixel a millimetre, y turned over: the picture lies on 0..40 by 0..30 mm.
  const toPicture: Homography = [1, 0, 0, 0, -1, 30, 0, 0, 1];
  const { data, width } = rectified(grey, { toPicture, box: extent(-10, -10, 50, 40), perMm: 1 });
  const alphaAt = (x: number, y: number): number => data[((39 - y) * width + x + 10) * 4 + 3]!;
  expect(alphaAt(20, 15)).toBe(200);
  expect(alphaAt(-5, 15)).toBe(0);
  expect(alphaAt(45, 15)).toBe(0);
  expect(alphaAt(20, -5)).toBe(0);
  expect(alphaAt(20, 35)).toBe(0);
});
