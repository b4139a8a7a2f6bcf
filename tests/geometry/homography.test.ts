// Maps between planes: known figures, maps that are recovered from their own points, and what noise does to them.

import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import {
  composed,
  fitHomography,
  type Homography,
  inverted,
  isMirroring,
  mapped,
  stretchAt,
} from "../../src/geometry/homography.ts";
import type { PlanePoint, PointPair } from "../../src/geometry/homography-pair.ts";
import { leastEigenvector } from "../../src/geometry/least-eigenvector.ts";

const at = (x: number, y: number): PlanePoint => ({ x, y });

const paired = (from: readonly PlanePoint[], to: readonly PlanePoint[]): readonly PointPair[] =>
  from.map((each, index) => ({ from: each, to: to[index] ?? at(0, 0) }));

const SQUARE = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)];

const fitted = (pairs: readonly PointPair[]): Homography => {
  const fit = fitHomography(pairs);
  if (fit.kind !== "fit") throw new Error(fit.trouble.kind);
  return fit.map;
};

const troubleOf = (pairs: readonly PointPair[]): object | null => {
  const fit = fitHomography(pairs);
  return fit.kind === "degenerate" ? fit.trouble : null;
};

describe("a square seen aslant", () => {
  // Projective geometry: lines stay lines, so that the crossing of the diagonals stays the crossing of the diagonals. Those
  // of the trapezium (0 0) (2 0) (1.5 1) (0.5 1) are y = 2x/3 and y = (2 - x) 2/3, which meet at x = 1, y = 2/3.
  const map = fitted(paired(SQUARE, [at(0, 0), at(2, 0), at(1.5, 1), at(0.5, 1)]));

  it("puts its middle where the diagonals cross", () => {
    const middle = mapped(map, at(0.5, 0.5));
    expect(middle?.x).toBeCloseTo(1, 12);
    expect(middle?.y).toBeCloseTo(2 / 3, 12);
  });

  it("sees nothing beyond the horizon", () => {
    // The upright sides meet at (1, 2), which is the image of the point at infinity upward; the map of a point far below
    // the square would lie beyond it.
    const far = mapped(map, at(0.5, 1e9));
    expect(far?.x).toBeCloseTo(1, 6);
    expect(far?.y).toBeCloseTo(2, 6);
    expect(mapped(map, at(0.5, -3))).toBeNull();
  });

  it("keeps left and right, and a picture whose y goes down does not", () => {
    expect(isMirroring(map, at(0.5, 0.5))).toBe(false);
    const down = SQUARE.map(({ x, y }) => at(x, 1 - y));
    expect(isMirroring(fitted(paired(down, SQUARE)), at(0.5, 0.5))).toBe(true);
  });
});

test("a square twice as wide is stretched by two", () => {
  const map = fitted(
    paired(
      SQUARE,
      SQUARE.map(({ x, y }) => at(2 * x, y)),
    ),
  );
  expect(stretchAt(map, at(0.3, 0.4))).toBeCloseTo(2, 10);
});

describe("what says no map is given back", () => {
  test("three pairs", () => {
    expect(troubleOf(paired(SQUARE.slice(0, 3), SQUARE.slice(0, 3)))).toEqual({
      kind: "too-few",
      count: 3,
    });
  });

  test("three of four in a line, on either side", () => {
    const flat = [at(0, 0), at(1, 0), at(2, 0), at(0, 1)];
    expect(troubleOf(paired(flat, SQUARE))).toEqual({
      kind: "collinear",
      pairs: [0, 1, 2],
      side: "from",
    });
    expect(troubleOf(paired(SQUARE, flat))).toMatchObject({ kind: "collinear", side: "to" });
  });

  test("two points at one place, or all of them", () => {
    const twice = [at(0, 0), at(1, 0), at(1, 0), at(0, 1)];
    expect(troubleOf(paired(twice, SQUARE))).toEqual({
      kind: "coincident",
      pairs: [1, 2],
      side: "from",
    });
    const one = SQUARE.map(() => at(5, 5));
    expect(troubleOf(paired(SQUARE, one))).toMatchObject({ kind: "coincident", side: "to" });
  });

  test("two corners exchanged", () => {
    const crossed = [at(0, 0), at(1, 0), at(0, 1), at(1, 1)];
    expect(troubleOf(paired(SQUARE, crossed))).toEqual({ kind: "folded" });
  });

  test("a fifth point off the line of the other four makes no map of them", () => {
    const line = [at(0, 0), at(1, 0), at(2, 0), at(3, 0), at(1, 2)];
    expect(troubleOf(paired(line, line))).toMatchObject({ kind: "collinear" });
    const square = [...SQUARE, at(0.5, 0)];
    expect(fitHomography(paired(square, square)).kind).toBe("fit");
  });
});

/** As a camera makes it: turned, shifted, scaled, and slanted so that the unit square stays before the horizon. */
const anyMap = fc
  .record({
    turn: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
    scale: fc.double({ min: 0.01, max: 100, noNaN: true }),
    squeeze: fc.double({ min: 0.3, max: 1, noNaN: true }),
    x: fc.integer({ min: -30, max: 30 }),
    y: fc.integer({ min: -30, max: 30 }),
    g: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
    h: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
  })
  .map(({ turn, scale, squeeze, g, h, ...shift }): Homography => {
    const [c, s, x, y] = [
      scale * Math.cos(turn),
      scale * Math.sin(turn),
      scale * shift.x,
      scale * shift.y,
    ];
    return [c + x * g, -s * squeeze + x * h, x, s + y * g, c * squeeze + y * h, y, g, h, 1];
  });

const inSquare = fc.record({
  x: fc.integer({ min: 0, max: 1000 }).map((value) => value / 1000),
  y: fc.integer({ min: 0, max: 1000 }).map((value) => value / 1000),
});

const sizeOf = (points: readonly PlanePoint[]): number =>
  Math.max(...points.flatMap((a) => points.map((b) => Math.hypot(a.x - b.x, a.y - b.y))));

describe("any map", () => {
  it("is recovered from its four corners and from more", () => {
    fc.assert(
      fc.property(anyMap, fc.array(inSquare, { maxLength: 5 }), inSquare, (map, more, probe) => {
        const from = [...SQUARE, ...more];
        const to = from.map((each) => mapped(map, each)!);
        const fit = fitHomography(paired(from, to));
        if (fit.kind !== "fit") throw new Error(fit.trouble.kind);
        const size = sizeOf(to);
        expect(fit.rms / size).toBeLessThan(1e-9);
        const [found, wanted] = [mapped(fit.map, probe)!, mapped(map, probe)!];
        expect(Math.hypot(found.x - wanted.x, found.y - wanted.y) / size).toBeLessThan(1e-9);
      }),
    );
  });

  it("with its way back leaves every place where it was", () => {
    fc.assert(
      fc.property(anyMap, inSquare, (map, probe) => {
        const there = mapped(map, probe)!;
        const back = mapped(inverted(map), there)!;
        expect(Math.hypot(back.x - probe.x, back.y - probe.y)).toBeLessThan(1e-8);
        const both = mapped(composed(inverted(map), map), probe)!;
        expect(Math.hypot(both.x - probe.x, both.y - probe.y)).toBeLessThan(1e-8);
      }),
    );
  });

  it("says the same of a picture that is turned, scaled and shifted", () => {
    fc.assert(
      fc.property(anyMap, anyMap, inSquare, (map, other, probe) => {
        const turned = ({ x, y }: PlanePoint): PlanePoint =>
          at(other[0] * x - other[3] * y + other[2], other[3] * x + other[0] * y + other[5]);
        const picture = SQUARE.map((each) => mapped(map, each)!);
        const plain = mapped(fitted(paired(picture, SQUARE)), mapped(map, probe)!)!;
        const again = mapped(
          fitted(paired(picture.map(turned), SQUARE)),
          turned(mapped(map, probe)!),
        )!;
        expect(Math.hypot(plain.x - again.x, plain.y - again.y)).toBeLessThan(1e-6);
      }),
    );
  });
});

test("marks that are off by a known spread leave a residual of the size that least squares predicts", () => {
  // n points give 2n readings and the map takes 8 of them: the squares of what is left sum to (2n - 8) s² on average
  // (Hartley and Zisserman, 5.1.3, result 5.1: residual error s (1 - d/N)^½, d = 8, N = 2n). Here n = 24, s = 0.5.
  const [n, s] = [24, 0.5];
  const from = Array.from({ length: n }, (_, i) => at(400 + 120 * (i % 6), 300 + 150 * (i >> 2)));
  const next = gaussian();
  const squares: number[] = [];
  for (let trial = 0; trial < 200; trial += 1) {
    const to = from.map(({ x, y }) => at(x / 8 + s * next(), -y / 8 + s * next()));
    const fit = fitHomography(paired(from, to));
    if (fit.kind === "fit") squares.push(2 * fit.rms * fit.rms * (n / 2));
  }
  expect(squares).toHaveLength(200);
  const average = squares.reduce((sum, each) => sum + each, 0) / squares.length;
  const expected = (2 * n - 8) * s * s;
  // 200 sums of 40 squares have a standard error of sqrt(2 / 8000) = 1.6 %; five of them.
  expect(average / expected).toBeGreaterThan(0.92);
  expect(average / expected).toBeLessThan(1.08);
});

/** Normal deviates (Box and Muller, 1958) of a small linear congruential generator: the same at every run. */
function gaussian(): () => number {
  let state = 12345;
  const uniform = (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return (state + 1) / 2147483649;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

test("the least eigenvector of a matrix known in closed form", () => {
  // The second difference matrix (2 on, -1 beside the diagonal) of order n has eigenvalues 2 - 2 cos(k pi / (n + 1)) and
  // vectors sin(i k pi / (n + 1)) (Golub and Van Loan, 4.8.6): the least is k = 1.
  const n = 9;
  const rows = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_row, j) => (i === j ? 2 : Math.abs(i - j) === 1 ? -1 : 0)),
  );
  const found = leastEigenvector(rows);
  const sign = Math.sign(found[0] ?? 1);
  for (const [i, value] of found.entries())
    expect(sign * value).toBeCloseTo(
      Math.sqrt(2 / (n + 1)) * Math.sin(((i + 1) * Math.PI) / (n + 1)),
      12,
    );
});
