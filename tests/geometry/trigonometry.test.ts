// Own trigonometry against the engine's, against closed forms, and for the exactness that hole patterns need.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees, radians } from "../../src/geometry/quantity.ts";
import {
  arcCosine,
  arcSine,
  arcTangent,
  arcTangent2,
  clockDirection,
  cosine,
  direction,
  sine,
  tangent,
  toDegrees,
  toRadians,
} from "../../src/geometry/trigonometry.ts";

const bits = new DataView(new ArrayBuffer(8));

const ordinal = (value: number): bigint => {
  bits.setFloat64(0, value);
  const raw = bits.getBigInt64(0);
  return raw < 0n ? -(raw & 0x7fffffffffffffffn) : raw;
};

/** Doubles from one value to the other. */
const stepsApart = (a: number, b: number): number => {
  const steps = ordinal(a) - ordinal(b);
  return Number(steps < 0n ? -steps : steps);
};

const ratio = fc.double({ min: -1, max: 1, noNaN: true });
const angle = fc.double({ min: -2000, max: 2000, noNaN: true });
const length = fc.double({ min: -3000, max: 3000, noNaN: true });

describe("own trigonometry", () => {
  // The engine's own functions are within 1 step of the true value themselves (V8: a port of fdlibm).
  it("agrees with the engine to two steps of a double", () => {
    fc.assert(
      fc.property(angle, (turn) => {
        expect(stepsApart(sine(radians(turn)), Math.sin(turn))).toBeLessThanOrEqual(2);
        expect(stepsApart(cosine(radians(turn)), Math.cos(turn))).toBeLessThanOrEqual(2);
        expect(stepsApart(tangent(radians(turn)), Math.tan(turn))).toBeLessThanOrEqual(4);
        expect(stepsApart(arcTangent(turn), Math.atan(turn))).toBeLessThanOrEqual(2);
      }),
      { numRuns: 5000 },
    );
  });

  it("agrees with the engine for arc sine, arc cosine and the arc tangent of two lengths", () => {
    fc.assert(
      fc.property(ratio, length, length, (value, x, y) => {
        expect(stepsApart(arcSine(value), Math.asin(value))).toBeLessThanOrEqual(4);
        expect(stepsApart(arcCosine(value), Math.acos(value))).toBeLessThanOrEqual(4);
        // Adding 0 turns -0, which is no direction of its own here, into 0.
        const [right, up] = [x + 0, y + 0];
        expect(stepsApart(arcTangent2(up, right), Math.atan2(up, right))).toBeLessThanOrEqual(3);
      }),
      { numRuns: 5000 },
    );
  });

  it("knows the quadrants", () => {
    expect(arcTangent2(1, 0)).toBe(Math.PI / 2);
    expect(arcTangent2(0, -1)).toBe(Math.PI);
    expect(arcTangent2(-1, -1)).toBeCloseTo(-2.356194490192345, 15);
    expect(arcTangent2(0, 0)).toBe(0);
    expect(toDegrees(toRadians(degrees(57)))).toBeCloseTo(57, 13);
  });

  it("is exact at whole quarters and in the half of 30 and 60 degrees", () => {
    expect(direction(degrees(0))).toEqual({ x: 1, y: 0 });
    expect(direction(degrees(90))).toEqual({ x: 0, y: 1 });
    expect(direction(degrees(180))).toEqual({ x: -1, y: 0 });
    expect(direction(degrees(-90))).toEqual({ x: 0, y: -1 });
    expect(direction(degrees(3690))).toEqual({ x: 0, y: 1 });
    for (const turn of [30, 150, -210]) expect(Math.abs(direction(degrees(turn)).y)).toBe(0.5);
    for (const turn of [60, 120, 300]) expect(Math.abs(direction(degrees(turn)).x)).toBe(0.5);
    const diagonal = direction(degrees(135));
    expect(-diagonal.x).toBe(diagonal.y);
    expect(diagonal.y).toBe(Math.sqrt(0.5));
  });

  it("turns clock angles from twelve, clockwise", () => {
    expect(clockDirection(degrees(0))).toEqual({ x: 0, y: 1 });
    expect(clockDirection(degrees(90))).toEqual({ x: 1, y: 0 });
    expect(clockDirection(degrees(270))).toEqual({ x: -1, y: 0 });
  });

  it("gives unit vectors", () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (turn) => {
        const { x, y } = direction(degrees(turn));
        expect(Math.abs(x * x + y * y - 1)).toBeLessThan(1e-15);
      }),
    );
  });

  // Inscribed polygon: a round peg of N facets measures cos(pi / N) of its diameter across the flats (plane geometry).
  it("gives the width of a faceted circle across its flats", () => {
    for (const facets of [6, 8, 24, 48]) {
      const a = direction(degrees(180 / facets));
      const b = direction(degrees(-180 / facets));
      const middle = (a.x + b.x) / 2;
      expect(middle).toBeCloseTo(Math.cos(Math.PI / facets), 15);
      expect(cosine(radians(Math.PI / facets))).toBeCloseTo(Math.cos(Math.PI / facets), 15);
    }
  });
});
