import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hatchLines } from "../../src/drawings/hatch.ts";
import { spread } from "../../src/drawings/spread.ts";
import { extent, joinedExtent } from "../../src/geometry/extent.ts";
import { pathExtent } from "../../src/geometry/measure.ts";

const places = fc
  .array(fc.double({ min: -500, max: 500, noNaN: true }), { maxLength: 80 })
  .map((values) => values.toSorted((a, b) => a - b));

describe("spread labels", () => {
  it("keep the pitch and the order", () => {
    fc.assert(
      fc.property(places, fc.double({ min: 0.1, max: 10, noNaN: true }), (wanted, pitch) => {
        const set = spread(wanted, pitch);
        expect(set).toHaveLength(wanted.length);
        for (const [index, value] of set.slice(1).entries())
          expect(value - set[index]!).toBeGreaterThanOrEqual(pitch - 1e-9);
      }),
    );
  });

  it("stay at their places where there is room", () => {
    expect(spread([0, 5, 12], 2)).toEqual([0, 5, 12]);
  });

  it("share their shift about the mean of a crowd", () => {
    // Least squares under an order (isotonic regression): three at one place stand round it.
    expect(spread([10, 10, 10], 2)).toEqual([8, 10, 12]);
    expect(spread([], 2)).toEqual([]);
  });
});

describe("hatching", () => {
  const box = extent(3, -7, 9, 40);

  it.each(["rising", "falling"] as const)("stays in its box at 45 degrees, %s", (lean) => {
    const lines = hatchLines(box, { pitch: 1.4, lean });
    const slopes = lines.map(({ vertices: [from, to] }) => (to!.y - from!.y) / (to!.x - from!.x));
    for (const slope of slopes) expect(slope).toBeCloseTo(lean === "rising" ? 1 : -1, 6);
    const drawn = lines.map(pathExtent).reduce(joinedExtent);
    expect(drawn.minX).toBeCloseTo(box.minX, 9);
    expect(drawn.maxX).toBeCloseTo(box.maxX, 9);
    expect(drawn.minY).toBeGreaterThanOrEqual(box.minY - 1e-9);
    expect(drawn.maxY).toBeLessThanOrEqual(box.maxY + 1e-9);
  });

  it("fills the box from corner to corner a pitch apart", () => {
    // Lines at 45 degrees cover a length of (width + height) / sqrt 2 across themselves.
    const count = hatchLines(box, { pitch: 1.4, lean: "rising" }).length;
    expect(Math.abs(count - (6 + 47) / Math.SQRT2 / 1.4)).toBeLessThanOrEqual(1);
  });

  it("continues in a neighbouring box", () => {
    const starts = (lines: ReturnType<typeof hatchLines>) =>
      lines.map(({ vertices }) => (vertices[0]!.y - vertices[0]!.x) / Math.SQRT2 / 2);
    for (const start of [
      ...starts(hatchLines(box, { pitch: 2, lean: "rising" })),
      ...starts(hatchLines(extent(9, -7, 15, 40), { pitch: 2, lean: "rising" })),
    ])
      expect(start - Math.round(start)).toBeCloseTo(0, 6);
  });
});
