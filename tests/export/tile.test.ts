// Tiling: nothing of a drawing is lost between pages, and neighbours carry the same marks at the same places of the drawing.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { OVERLAP, PAGE_MARGINS, tiling } from "../../src/export/tile.ts";
import { extent, extentHeight, extentWidth } from "../../src/geometry/extent.ts";

describe("which pages", () => {
  test("paper sizes: ISO 216 A4 and ASME Y14.1 letter", () => {
    const small = extent(0, 0, 10, 10);
    expect([tiling(small, "A4").pageWidth, tiling(small, "A4").pageHeight]).toEqual([210, 297]);
    // 8.5 x 11 inches.
    const letter = tiling(small, "Letter");
    expect(letter.pageWidth).toBeCloseTo(8.5 * 25.4, 9);
    expect(letter.pageHeight).toBeCloseTo(11 * 25.4, 9);
  });

  test("a console panel of 146.05 x 152.4 fits one page of either paper, upright", () => {
    for (const paper of ["A4", "Letter"] as const) {
      const one = tiling(extent(0, 0, 146.05, 152.4), paper);
      expect(one.tiles).toHaveLength(1);
      expect(one.pageHeight).toBeGreaterThan(one.pageWidth);
    }
  });

  test("a 19-inch panel of three units takes two pages, turned", () => {
    const two = tiling(extent(0, 0, 482.6, 132.56), "A4");
    expect([two.columns, two.rows, two.pageWidth]).toEqual([2, 1, 297]);
  });

  test("what just fits takes one page, a hair more takes another", () => {
    const width = 210 - PAGE_MARGINS.left - PAGE_MARGINS.right;
    const height = 297 - PAGE_MARGINS.top - PAGE_MARGINS.bottom;
    expect(tiling(extent(0, 0, width, height), "A4").tiles).toHaveLength(1);
    expect(tiling(extent(0, 0, width, height + 0.01), "A4").tiles).toHaveLength(2);
  });
});

test("every place of a drawing lies on a page, in true size, and marks are shared by neighbours", () => {
  const side = fc.integer({ min: 10, max: 1500 });
  fc.assert(
    fc.property(
      side,
      side,
      fc.constantFrom("A4", "Letter"),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (width, height, paper, across, up) => {
        const tiled = tiling(extent(-30, 7, width - 30, height + 7), paper);
        const at = { x: -30 + across * width, y: 7 + up * height };
        const holders = tiled.tiles.filter(
          ({ window }) =>
            at.x >= window.minX - 1e-9 &&
            at.x <= window.maxX + 1e-9 &&
            at.y >= window.minY - 1e-9 &&
            at.y <= window.maxY + 1e-9,
        );
        expect(holders.length).toBeGreaterThan(0);
        expect(tiled.tiles).toHaveLength(tiled.columns * tiled.rows);
        for (const tile of tiled.tiles) {
          expect(extentWidth(tile.window)).toBeCloseTo(extentWidth(tile.onPage), 9);
          expect(extentHeight(tile.window)).toBeCloseTo(extentHeight(tile.onPage), 9);
          expect(tile.window.minX + tile.shift.x).toBeCloseTo(tile.onPage.minX, 9);
          for (const mark of tile.registration) {
            const sharers = tiled.tiles.filter(({ registration }) =>
              registration.some((other) => Math.hypot(other.x - mark.x, other.y - mark.y) < 1e-9),
            );
            expect(sharers.length).toBe(2);
          }
        }
      },
    ),
    { numRuns: 200 },
  );
});

test("neighbours overlap by the stated strip", () => {
  const tiled = tiling(extent(0, 0, 600, 600), "A4");
  const [first, second] = tiled.tiles;
  if (first === undefined || second === undefined) throw new Error("two pages at least");
  expect(first.window.maxX - second.window.minX).toBeCloseTo(OVERLAP, 9);
  expect(first.row).toBe(1);
  const last = tiled.tiles.at(-1);
  expect(first.window.minY).toBeGreaterThan(last?.window.minY ?? 0);
});
