// The figures that printed parts are held to, each with its target in its name: the time of a spacer with 36 cut-outs, its
// triangles against the fewest that the chord height allows, the kernel's memory over 200 rebuilds.

import { circle, point } from "../src/geometry/contour.ts";
import { extent } from "../src/geometry/extent.ts";
import { rectangle } from "../src/geometry/shapes.ts";
import type { Kernel } from "../src/geometry/solid/kernel.ts";
import { triangleCount } from "../src/geometry/solid/mesh.ts";
import { meshSolid } from "../src/geometry/solid/mesh-solid.ts";
import { prism, type Solid, solidRegion } from "../src/geometry/solid/solid.ts";
import { clearHeight } from "../src/geometry/solid/solid-tolerance.ts";
import { arcCosine } from "../src/geometry/trigonometry.ts";
import { compile, type Library } from "../src/project.ts";
import { openGaugedKernel } from "../tests/support/kernel.ts";
import { measured, type Row, rounded } from "./harness.ts";

export async function spacerRows(library: Library): Promise<readonly Row[]> {
  const { kernel, memorySize } = await openGaugedKernel();
  const solid = spacerSolid(library);
  return [meshTime(solid, kernel), fewest(kernel), rebuilds(solid, { kernel, memorySize })];
}

const COUNT = 36;

const PANEL = `consolewright: 1
kind: panel
name: grid
workshop: workshop.yaml
mount: console-rail
height: 24 modules
stack:
  - { layer: face, sheet: plate }
  - { layer: spacer, print: black-petg, depth: 14 mm }
fixings: { screws: m3, dowels: 3 mm }
components:
  a: { grid: { part: push-button-12, columns: 6, rows: 6, pitch: 18 mm, row-pitch: 30 mm }, at: centre }
`;

const WORKSHOP = `consolewright: 1
kind: workshop
name: bench
stock:
  plate: { material: aluminium, colour: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 }
  black-petg: { material: petg, colour: black, opaque-from: 1.35 mm }
`;

function spacerSolid(library: Library): Solid {
  const files = new Map([
    ["panel.yaml", PANEL],
    ["workshop.yaml", WORKSHOP],
  ]);
  const [panel] = compile({ entry: "panel.yaml", files }, library).panels;
  const spacer = panel?.printedParts.find(({ role }) => role === "spacer");
  const solid = spacer?.bodies[0]?.solid;
  const pockets = spacer?.facts.pockets.length ?? 0;
  if (solid === undefined || pockets !== COUNT)
    throw new Error(`the bench spacer has ${pockets} cut-outs, not ${COUNT}`);
  return solid;
}

const meshTime = (solid: Solid, kernel: Kernel): Row =>
  measured({
    name: `mesh a spacer with ${COUNT} cut-outs, warm (target: under 200 ms; yardstick: a plate with as many holes)`,
    run: () => meshSolid(solid, kernel),
    yardstick: () => meshSolid(plate(), kernel),
    warmUp: 5,
    rounds: 15,
  });

const RADIUS = 6;

const holes = Array.from({ length: COUNT }, (_, index) =>
  circle(point(12 + 18 * (index % 6), 12 + 18 * Math.floor(index / 6)), RADIUS),
);

const plate = (): Solid =>
  prism(
    0,
    3,
    solidRegion({ outline: rectangle(extent(0, 0, 114, 114)), holes }, { holes: "clear" }),
  );

/**
 * Round a circle of radius r that must be cleared, a corner lies at r / cos(pi / n), at most a clear height beyond it; a
 * polygon with n corners and h holes takes n + 2 h - 2 triangles, twice, and each corner's wall two.
 */
function fewest(kernel: Kernel): Row {
  const sides = Math.ceil(Math.PI / arcCosine(RADIUS / (RADIUS + clearHeight)));
  const corners = 4 + COUNT * sides;
  const least = 2 * (corners + 2 * COUNT - 2) + 2 * corners;
  const started = performance.now();
  const count = triangleCount(meshSolid(plate(), kernel));
  return once(
    `triangles of a plate with ${COUNT} holes, ${count} (target: ratio to the fewest that the clear height allows, ${least}, is 1)`,
    started,
    count / least,
  );
}

const REBUILDS = 200;

function rebuilds(
  solid: Solid,
  { kernel, memorySize }: { readonly kernel: Kernel; memorySize(): number },
): Row {
  for (let build = 0; build < 3; build += 1) meshSolid(solid, kernel);
  const before = memorySize();
  const started = performance.now();
  for (let build = 0; build < REBUILDS; build += 1) meshSolid(solid, kernel);
  return once(
    `kernel memory over ${REBUILDS} rebuilds of the spacer, ${before / 2 ** 20} MiB before (target: ratio after to before is 1)`,
    started,
    memorySize() / before,
  );
}

function once(name: string, started: number, ratio: number): Row {
  const ms = rounded(performance.now() - started);
  return { name, median_ms: ms, min_ms: ms, max_ms: ms, ratio: rounded(ratio) };
}
