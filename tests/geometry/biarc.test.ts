// Arcs fitted to Bézier curves: near enough everywhere, both ways, and smooth where they join.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cubicArcs, quadraticArcs } from "../../src/geometry/biarc.ts";
import { type Path, type Point, path, point, vertex } from "../../src/geometry/contour.ts";
import { headingAt, pointAlong } from "../../src/geometry/edge.ts";
import { distanceToEdge } from "../../src/geometry/edge-distance.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import { curveFit } from "../../src/geometry/tolerance.ts";

/** The curve by de Casteljau's construction: repeated midpoints, not the polynomial that the fit uses. */
const onCurve = (controls: readonly Point[], t: number): Point => {
  if (controls.length === 1) return controls[0]!;
  const next = controls
    .slice(1)
    .map((to, index) =>
      point(controls[index]!.x * (1 - t) + to.x * t, controls[index]!.y * (1 - t) + to.y * t),
    );
  return onCurve(next, t);
};

const stray = (controls: readonly Point[], arcs: Path): number => {
  const edges = edgesOf(arcs);
  let worst = 0;
  for (let step = 0; step <= 400; step += 1) {
    const at = onCurve(controls, step / 400);
    worst = Math.max(worst, Math.min(...edges.map((edge) => distanceToEdge(edge, at.x, at.y))));
  }
  return worst;
};

/** How far the arcs lie from the curve, measured from the arcs. */
const strayOfArcs = (controls: readonly Point[], arcs: Path): number => {
  const curve = Array.from({ length: 4001 }, (_, step) => onCurve(controls, step / 4000));
  let worst = 0;
  for (const edge of edgesOf(arcs)) {
    for (const share of [0.25, 0.5, 0.75]) {
      const at = pointAlong(edge, share);
      worst = Math.max(worst, Math.min(...curve.map((to) => pointDistance(at, to))));
    }
  }
  return worst;
};

const place = fc
  .tuple(fc.integer({ min: -3000, max: 3000 }), fc.integer({ min: -3000, max: 3000 }))
  .map(([x, y]) => point(x / 1000, y / 1000));

describe("curves as arcs", () => {
  it("of any cubic stay within 2 µm", () => {
    fc.assert(
      fc.property(place, place, place, place, (a, b, c, d) => {
        const arcs = path([...cubicArcs(a, b, c, d, curveFit), vertex(d.x, d.y)]);
        expect(stray([a, b, c, d], arcs)).toBeLessThan(curveFit);
      }),
      { numRuns: 150 },
    );
  });

  it("of any quadratic stay within 2 µm, also seen from the arcs", () => {
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        const arcs = path([...quadraticArcs(a, b, c, curveFit), vertex(c.x, c.y)]);
        expect(stray([a, b, c], arcs)).toBeLessThan(curveFit);
        // The samples of the curve lie up to 2 µm apart, which adds to what is measured.
        expect(strayOfArcs([a, b, c], arcs)).toBeLessThan(curveFit + 0.002);
      }),
      { numRuns: 20 },
    );
  });

  it("run on smoothly through every joint", () => {
    const arcs = edgesOf(
      path([
        ...cubicArcs(point(0, 0), point(0, 3), point(5, 4), point(5, 0), curveFit),
        vertex(5, 0),
      ]),
    );
    expect(arcs.length).toBeGreaterThan(3);
    for (const [index, after] of arcs.slice(1).entries()) {
      const arriving = headingAt(arcs[index]!, "to");
      const leaving = headingAt(after, "from");
      expect(arriving.x * leaving.y - arriving.y * leaving.x).toBeCloseTo(0, 9);
    }
    expect(headingAt(arcs[0]!, "from").y).toBeCloseTo(1, 9);
  });

  it("of a straight curve are one straight edge", () => {
    expect(cubicArcs(point(0, 0), point(1, 1), point(2, 2), point(3, 3), curveFit)).toEqual([
      vertex(0, 0),
    ]);
    expect(quadraticArcs(point(0, 0), point(1, 0), point(4, 0), curveFit)).toEqual([vertex(0, 0)]);
  });

  it("of a curve without length are none", () => {
    const spot = point(1, 1);
    expect(cubicArcs(spot, spot, spot, spot, curveFit)).toEqual([]);
  });

  it("of a quarter circle's usual cubic (Riškus 2006: 0.5523 r, off by 0.027 %) are few", () => {
    const reach = 0.5522847498 * 2;
    const arcs = cubicArcs(point(2, 0), point(2, reach), point(reach, 2), point(0, 2), curveFit);
    expect(arcs.length).toBeLessThanOrEqual(4);
  });
});
