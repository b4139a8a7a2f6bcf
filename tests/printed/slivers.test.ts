// Slivers: areas that stand alone in a layer and are thinner than a printed line. Strips and segments of circles by hand, and a
// panel whose pocket cuts one off its spacer.

import { beforeAll, describe, expect, test } from "vitest";
import { arcBulge } from "../../src/geometry/arc.ts";
import { type Contour, loop, point, type Region, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { layered, solidLayer, solidRegion } from "../../src/geometry/solid/solid.ts";
import { loosePiecesOf } from "../../src/parts/printed/loose-pieces.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { withoutSlivers } from "../../src/parts/printed/slivers.ts";
import { openKernel } from "../support/kernel.ts";
import { partFaults } from "./part-faults.ts";
import { layeredBody, printed, regionsOf, soundPart } from "./printed-panel.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const printerWith = (line: number): string =>
  `machines:\n  p: { type: printer, bed: [242, 242, 200], line: ${line} mm, layer: 0.2 mm }\n`;

/** A switch beside a fastener of a rail: its pocket takes all but the tip of the tongue between them. */
const cutTongue = (workshop: string) =>
  printed(
    {
      mount: "console-rail",
      height: "17 modules",
      stack: `
  - { layer: face, sheet: opal-3 }
  - { layer: backing, sheet: metal-2 }
  - { layer: spacer, print: black-petg, depth: 10 mm }`,
      fixings: "{ screws: m3, dowels: 3 mm }",
      components: "\n  a: { part: toggle-12, at: { left: 125.56 mm, bottom: 14.35 mm } }",
    },
    workshop,
  );

test("a tip of 0.003 mm that a pocket cuts off a spacer is in none of its layers, and is told", () => {
  const { spacer, findings } = cutTongue(printerWith(0.6));
  const part = soundPart(spacer);
  expect(layeredBody(part).layers.map(({ regions }) => regions.length)).toEqual([1, 1, 1, 1]);
  expect(partFaults(part, kernel)).toEqual([]);
  const [found, ...others] = findings;
  expect(others).toEqual([]);
  expect(found?.code).toBe("parts/sliver-left-out");
  expect(found?.subjects).toEqual(["spacer"]);
  expect(found?.measured?.value).toBe(0.003);
  expect(found?.limit?.value).toBe(0.6);
  expect(found?.source).toEqual({ kind: "machine", name: "p" });
});

test("without a printer a line is what a usual nozzle lays, by practice", () => {
  const [found] = cutTongue("").findings;
  expect(found?.limit?.value).toBe(0.45);
  expect(found?.source?.kind).toBe("practice");
});

const LINE = 0.6;
const BLOCK = rectangle(extent(0, 0, 40, 30));
const DEPTH = 7;

const strip = (width: number): Contour => rectangle(extent(50, 0, 50 + width, 20));

/** What a chord cuts off a circle of 3 mm, by its height. */
const segment = (height: number): { readonly contour: Contour; readonly area: number } => {
  const radius = 3;
  const half = Math.sqrt(2 * radius * height - height * height);
  const centre = point(60 - radius + height, 0);
  const [from, to] = [vertex(60, -half), vertex(60, half)];
  const bulge = arcBulge(centre, from, to, true);
  const angle = Math.acos(1 - height / radius);
  return {
    contour: loop([vertex(60, -half, bulge), vertex(60, half)]),
    area: radius * radius * angle - (radius - height) * half,
  };
};

/** A block, and something that stands beside it, in two layers. */
const partWith = (...others: readonly (Contour | Region)[]): PrintedPart => {
  const { spacer } = cutTongue(printerWith(LINE));
  const regions = [BLOCK, ...others].map((one) =>
    solidRegion("outline" in one ? one : { outline: one, holes: [] }),
  );
  const solid = layered([solidLayer(0, 2, regions), solidLayer(2, DEPTH, regions)]);
  const bodies = [{ name: "spacer", colour: "black", solid }];
  return { ...soundPart(spacer), bodies, pieces: [{ number: 1, bodies }] };
};

const sweptOf = (part: PrintedPart) => {
  const { parts, findings } = withoutSlivers(part);
  const [swept] = parts;
  if (swept === undefined) throw new Error("no part");
  return { swept, findings, solid: layeredBody(swept) };
};

describe("by hand", () => {
  test.each([
    [0.59, 1],
    [0.61, 2],
  ])("a strip of %s mm beside lines of 0.6 leaves %s pieces", (width, pieces) => {
    const { solid, findings } = sweptOf(partWith(strip(width)));
    expect(loosePiecesOf(solid)).toBe(pieces);
    expect(findings).toHaveLength(2 - pieces);
    const rest = pieces === 1 ? 0 : width * 20;
    expect(recipeVolume(solid)).toBeCloseTo((40 * 30 + rest) * DEPTH, 9);
  });

  test.each([0.0028, 0.05, 0.5])(
    "a segment %s mm high is told with its width and volume",
    (high) => {
      const { contour, area } = segment(high);
      const { solid, findings } = sweptOf(partWith(contour));
      expect(recipeVolume(solid)).toBeCloseTo(40 * 30 * DEPTH, 9);
      const [found] = findings;
      // As wide as the largest circle in it, which stands on the middle of its chord; both up to the next step.
      expect(found?.measured?.value).toBeGreaterThanOrEqual(high - 1e-6);
      expect(found?.measured?.value).toBeLessThan(high + 0.002);
      const told = Number(/([0-9.]+) mm³/.exec(found?.message ?? "")?.[1]);
      expect(told).toBeGreaterThanOrEqual(area * DEPTH - 1e-9);
      expect(told).toBeLessThan(area * DEPTH + 0.0002);
    },
  );

  test("a ring thinner than a line goes, and a block with a thin wall stays whole", () => {
    const ring = {
      outline: rectangle(extent(50, 0, 70, 20)),
      holes: [rectangle(extent(50.5, 0.5, 69.5, 19.5))],
    };
    expect(sweptOf(partWith(ring)).findings).toHaveLength(1);
    const walled = {
      outline: rectangle(extent(50, 0, 70, 20)),
      holes: [rectangle(extent(50.5, 2, 68, 18))],
    };
    const { solid, findings } = sweptOf(partWith(walled));
    expect(findings).toEqual([]);
    expect(regionsOf(solid.layers[0]!)).toHaveLength(2);
  });

  test("several are one finding, of the widest", () => {
    const { findings } = sweptOf(partWith(strip(0.3), segment(0.05).contour));
    const [found, ...others] = findings;
    expect(others).toEqual([]);
    expect(found?.measured?.value).toBeCloseTo(0.3, 2);
  });

  test("pieces that the bed asks for lose theirs as the whole does", () => {
    const part = partWith(strip(0.3));
    const [piece] = part.pieces;
    const cut = { ...part, pieces: [piece!, { number: 2, bodies: [...piece!.bodies] }] };
    const { swept } = sweptOf(cut);
    for (const { bodies } of swept.pieces)
      expect(bodies.map(({ solid }) => loosePiecesOf(solid))).toEqual([1]);
  });
});
