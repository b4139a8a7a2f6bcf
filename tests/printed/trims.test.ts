// Trims of displays: volumes by hand, lips over what leaks, fits by class, the fascia's opening, filters, and a move.

import { beforeAll, describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { containsContour } from "../../src/geometry/containment.ts";
import { contourDistance } from "../../src/geometry/distance.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { recipeExtent } from "../../src/geometry/solid/recipe-extent.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { trimsWithFilters } from "../../src/parts/printed/trims.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { laidPanel, printedFindings } from "./fitted-panel.ts";
import { printed, rounded } from "./trim-solid-check.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

interface Asked {
  readonly part?: string;
  readonly x?: string;
  readonly keys?: Readonly<Record<string, string>>;
  readonly workshop?: string;
}

const trimmed = (trim: string, { part, x, keys, workshop }: Asked = {}) => {
  const laid = laidPanel(
    {
      ...keys,
      components: `\n  d: { part: ${part ?? "seven-segment-4-056"}, at: { x: ${x ?? "60 mm"}, y: centre }, trim: ${trim} }`,
    },
    workshop,
  );
  return { ...laid, ...trimsWithFilters(laid.layout, laid.context) };
};

const judged = (trim: string, asked: Asked = {}): readonly Finding[] => {
  const made = trimmed(trim, asked);
  expect(made.parts).toHaveLength(1);
  return printedFindings(made, made.parts);
};

const codes = (findings: readonly { readonly code: string }[]): readonly string[] =>
  findings.map(({ code }) => code);

/** Integrals over one millimetre of a bevel of 45 degrees: a round-cornered rectangle that shrinks or grows by its height. */
const bevelled = (width: number, height: number, corner: number, side: 1 | -1): number =>
  width * height +
  side * (width + height) +
  4 / 3 -
  (4 - Math.PI) * (corner * corner + side * corner + 1 / 3);

describe("a trim's volume", () => {
  // Display 50.3 x 19 with 0.4 round it, or window 48.5 x 16.5 with a ledge of 1.5: seat 51.5 x 19.8. Opening 2.5 wider
  // a side: 56.5 x 24.8, corner 1. Flange 2 wider a side: 60.5 x 28.8, corner 3. Glued: 0.2 a side. 3 mm of fascia.
  test("of a glued ring without a filter is that of its four steps, by hand", () => {
    const { parts } = trimmed("{ fixing: glue }");
    const window = rounded(48.5, 16.5, 0.5);
    const body = 3 * (rounded(56.1, 24.4, 0.8) - window);
    const flange = 0.6 * (rounded(60.5, 28.8, 3) - window);
    const bevel = bevelled(60.5, 28.8, 3, -1) - bevelled(48.5, 16.5, 0.5, 1);
    expect(recipeVolume(parts[0]!.bodies[0]!.solid)).toBeCloseTo(body + flange + bevel, 6);
  });

  // Wall 5 lines of 0.45 in 2.5 - 0.2: 0.05 a side is left, so that the room is 51.6 x 19.9; 2 mm deep for the sheet.
  test("with a filter is less by the filter's room", () => {
    const without = recipeVolume(trimmed("{ fixing: glue }").parts[0]!.bodies[0]!.solid);
    const within = recipeVolume(
      trimmed("{ fixing: glue, filter: smoke-2 }").parts[0]!.bodies[0]!.solid,
    );
    const room = 2 * (rounded(51.6, 19.9, 0.5) - rounded(48.5, 16.5, 0.5));
    expect(without - within).toBeCloseTo(room, 6);
  });

  // Six ribs of radius 1 stand 0.25 out of a body with 0.15 fit; each adds a circular segment of height 0.25.
  test("snapped is more by six ribs", () => {
    const snug = recipeVolume(trimmed("{}").parts[0]!.bodies[0]!.solid);
    const angle = Math.acos(1 - 0.25);
    const segment = angle - (1 - 0.25) * Math.sin(angle);
    const window = rounded(48.5, 16.5, 0.5);
    const ring =
      3 * (rounded(56.2, 24.5, 0.85) + 6 * segment - window) +
      0.6 * (rounded(60.5, 28.8, 3) - window) +
      bevelled(60.5, 28.8, 3, -1) -
      bevelled(48.5, 16.5, 0.5, 1);
    expect(snug).toBeCloseTo(ring, 5);
  });
});

describe("every display of the catalogue", () => {
  const displays = [...testLibrary().catalogue.parts.values()]
    // Its dots come within 0.27 of its edge, less than its play: no lip can cover it.
    .filter(({ display, id }) => display !== null && id !== "dot-matrix-5x7-07")
    .map(({ id }) => id);
  const WIDE = { mount: "rack-19", height: "4 U" };

  test.each(displays)("%s: its trim is one closed solid, and the lip covers its leak", (part) => {
    const { parts, sheets, findings, layout } = trimmed("{ filter: smoke-2 }", {
      part,
      x: "centre",
      keys: WIDE,
    });
    expect(findings).toEqual([]);
    const trim = parts[0]!;
    const mesh = printed(trim, kernel);
    expect(mesh).toMatchObject({ faults: [], shells: 1, recipe: [] });
    expect(mesh.strays).toBeLessThan(1e-3);

    const { lip, fit, seat } = trim.trim;
    expect(containsContour(fit.body, lip.leak)).toBe(true);
    if (!lip.isGlassBehind) expect(lip.overlap).toBeGreaterThan(lip.play);
    // At most three layers of 0.2 mm make up an opaque floor's 1.4.
    expect(lip.thickness).toBeGreaterThanOrEqual(1.4 - 1e-9);
    expect(trim.facts.walls[0]!.lines).toBeGreaterThanOrEqual(3);

    const { display } = layout.components[0]!.part;
    const { width, height, at } = display!.active;
    const centre = layout.components[0]!.at;
    const inner = contourExtent(lip.inner);
    expect(inner.minX).toBeLessThanOrEqual(centre.x + at.x - width / 2 + 1e-9);
    expect(inner.maxX).toBeGreaterThanOrEqual(centre.x + at.x + width / 2 - 1e-9);
    expect(inner.minY).toBeLessThanOrEqual(centre.y + at.y - height / 2 + 1e-9);
    expect(inner.maxY).toBeGreaterThanOrEqual(centre.y + at.y + height / 2 - 1e-9);

    // The filter lies in its seat with the sliding clearance all round, on a ledge.
    expect(contourDistance(seat!.room, seat!.sheet!).gap).toBeCloseTo(0.2, 6);
    expect(seat!.ledge).toBeGreaterThanOrEqual(1.3);
    expect(sheets[0]!.setUps[0]!.operations).toMatchObject([{ contour: seat!.sheet }]);
  });
});

describe("the fascia", () => {
  test("opens by the trim's opening, in every sheet in front, and the trim clears it by its fit", () => {
    const { layout, parts } = trimmed("{}");
    const { opening, body, clearance, fit } = parts[0]!.trim.fit;
    const cut = layout.layers[0]!.cutOuts.find(({ owner }) => owner === "d");
    expect(cut).toMatchObject({ purpose: "window", contour: opening });
    expect(layout.layers[1]!.cutOuts.filter(({ owner }) => owner === "d")).toMatchObject([
      { purpose: "clamp" },
    ]);
    expect(fit).toBe("snug");
    expect(clearance).toBe(0.15);
    expect(contourDistance(opening, body).gap).toBeCloseTo(0.15, 6);
  });

  test("is opened even where it is clear", () => {
    const { layout } = trimmed("{ fixing: glue }", {
      keys: { stack: "[{ layer: face, sheet: smoke-2 }, { layer: backing, sheet: metal-2 }]" },
    });
    expect(layout.layers[0]!.cutOuts).toMatchObject([{ owner: "d", purpose: "window" }]);
  });

  test("shows the trim's flange on the face, and legends stand clear of it", () => {
    const { layout, parts } = trimmed("{}", { x: "centre" });
    const flange = contourExtent(layout.components[0]!.face[0]!);
    const { plan } = parts[0]!.facts.box;
    for (const side of ["minX", "minY", "maxX", "maxY"] as const)
      expect(flange[side]).toBeCloseTo(plan[side], 9);
  });

  test("a screwed trim has its clearance holes in the clamped sheet, where it has its own holes", () => {
    const { layout, parts } = trimmed("{ fixing: screw }");
    const holes = layout.layers[1]!.cutOuts.filter(({ purpose }) => purpose === "screw");
    const { screws, screwDepth, fit } = parts[0]!.trim.fit;
    expect(holes.map(({ centre }) => centre)).toEqual(screws);
    // ISO 273, medium: 2.4 for M2.
    for (const { contour } of holes) expect(contour).toMatchObject({ radius: 1.2 });
    expect(fit).toBe("loose");
    // 3 mm of fascia and 1.6 of flange less an opaque cover of 1.4.
    expect(screwDepth).toBeCloseTo(3.2, 9);
    expect(parts[0]!.facts.bosses).toMatchObject([
      { kind: "thread-forming", depth: 3.2, below: 1.4 },
      { kind: "thread-forming", depth: 3.2, below: 1.4 },
    ]);
    for (const { wall } of parts[0]!.facts.bosses) expect(wall).toBeGreaterThan(1.35);
    expect(printed(parts[0]!, kernel)).toMatchObject({ faults: [], shells: 1, recipe: [] });
  });
});

test("clearances are the workshop's own where its printer was measured", () => {
  const printer = `machines: { printer: { type: printer, bed: [220, 220, 250], line: 0.45 mm, layer: 0.2 mm, clearances: { press: 0.02, snug: 0.11, sliding: 0.24, loose: 0.45 } } }`;
  const { parts } = trimmed("{ filter: smoke-2 }", { workshop: printer });
  const { fit, seat } = parts[0]!.trim;
  expect(fit.clearance).toBe(0.11);
  expect(contourDistance(fit.opening, fit.body).gap).toBeCloseTo(0.11, 6);
  expect(contourDistance(seat!.room, seat!.sheet!).gap).toBeCloseTo(0.24, 6);
});

test("a display that moves by 3 mm takes opening, ring, lip, seat and filter with it", () => {
  const [before, after] = ["60 mm", "63 mm"].map((x) => trimmed("{ filter: smoke-2 }", { x }));
  const boxes = (made: typeof before): readonly Extent[] => {
    const trim = made!.parts[0]!;
    const { lip, fit, seat } = trim.trim;
    const { minX, minY, maxX, maxY } = recipeExtent(trim.bodies[0]!.solid);
    const cut = made!.layout.layers[0]!.cutOuts.find(({ owner }) => owner === "d")!.contour;
    const sheet = made!.sheets[0]!.setUps[0]!.operations.flatMap((operation) =>
      operation.kind === "cut" ? [operation.contour] : [],
    );
    const contours = [lip.inner, lip.leak, fit.opening, fit.body, seat!.room, cut, ...sheet];
    return [{ minX, minY, maxX, maxY }, ...contours.map(contourExtent)];
  };
  const [from, to] = [boxes(before), boxes(after)];
  expect(from).toHaveLength(8);
  for (const [index, box] of from.entries()) {
    expect(to[index]!.minX - box.minX).toBeCloseTo(3, 9);
    expect(to[index]!.maxX - box.maxX).toBeCloseTo(3, 9);
    expect(to[index]!.minY).toBeCloseTo(box.minY, 9);
    expect(to[index]!.maxY).toBeCloseTo(box.maxY, 9);
  }
});

describe("a lip that the display's play uncovers is asked about", () => {
  // The hole is 0.6 wider than the display: it can lie 0.3 aside; a printed edge strays by 0.2 (common practice).
  test("where a wider one would cover it", () => {
    const asked = judged("{ lip: 0.3 mm }");
    expect(asked).toMatchObject([{ code: "checks/trim-leaks", severity: "query" }]);
    expect(asked[0]!.message).toContain("lip: 0.5 mm");
    expect(judged("{ lip: 0.49 mm }")).toHaveLength(1);
    expect(judged("{ lip: 0.5 mm }")).toEqual([]);
  });

  test("where none can", () => {
    const asked = judged("{}", { part: "dot-matrix-5x7-07" });
    expect(codes(asked)).toEqual(["checks/trim-leaks"]);
    expect(asked[0]!.message).toContain("shim");
  });
});

// 50.3 less 46.5 is 1.9 a side, 19 less 14.2 is 2.4: the lesser holds.
test("a lip that hides what is read is a fault", () => {
  const found = judged("{ lip: 2 mm }");
  expect(found).toMatchObject([{ code: "checks/trim-hides-display", severity: "fault" }]);
  expect(found[0]).toMatchObject({ measured: { value: 2 }, limit: { value: 1.9 } });
  expect(found[0]!.message).toContain("lip: 1.9 mm");
  expect(judged("{ lip: 1.9 mm }")).toEqual([]);
});

describe("is not made, and says why,", () => {
  test("where it can't be held", () => {
    const keys = { stack: "[{ layer: face, sheet: metal-2 }]" };
    expect(codes(trimmed("{}", { keys }).findings)).toEqual(["parts/trim-loose"]);
    const { parts, findings } = trimmed("{ fixing: glue }", { keys });
    expect(findings).toEqual([]);
    expect(printed(parts[0]!, kernel)).toMatchObject({ faults: [], shells: 1 });
  });

  test("where a stock that it names is unknown", () => {
    const { parts, findings } = trimmed("{ print: pale, filter: smok-2 }");
    expect(parts).toEqual([]);
    expect(codes(findings)).toEqual(["parts/unknown-fitted-stock", "parts/unknown-fitted-stock"]);
    expect(findings[1]!.message).toContain("smoke-2");
  });

  // 2.5 less 0.15 takes 5 lines of 0.45; the stock wants 2.6, which is 6.
  test("where its wall lets light through", () => {
    const workshop = "  pale-petg: { material: petg, colour: yellow, opaque-from: 2.6 mm }";
    const { parts, findings } = trimmed("{ print: pale-petg }", { workshop });
    expect(parts).toEqual([]);
    expect(codes(findings)).toEqual(["parts/no-opaque-wall"]);
    expect(findings[0]).toMatchObject({ measured: { value: 2.25 } });
    expect(findings[0]!.limit!.value).toBeCloseTo(2.7, 9);
  });
});
