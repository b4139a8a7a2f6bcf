// The rows of fit: a verdict over the example console and over long rails, and one step of a drag. Bodies and their shapes are
// made before; the yardstick is the sweep over the same bodies' boxes, which every verdict needs.

import { join } from "node:path";
import Module from "manifold-3d";
import { exampleFiles } from "../scripts/example-files.ts";
import { consoleBodies } from "../src/fit/bodies/console-bodies.ts";
import { dragStep } from "../src/fit/drag-step.ts";
import { searchLength } from "../src/fit/fit-tolerance.ts";
import { nearPairs } from "../src/fit/near-pairs.ts";
import { railScene } from "../src/fit/rail-scene.ts";
import { type PreparedBodies, prepareBodies, verdict } from "../src/fit/verdict.ts";
import type { Kernel } from "../src/geometry/solid/kernel.ts";
import type { ConsoleLayout } from "../src/layout/console/console-layout.ts";
import { compile, type Library } from "../src/project.ts";
import { growthExponent, measured, type Row } from "./harness.ts";
import type { BenchDesign } from "./seeded-panel.ts";
import { RAIL_COMPONENTS, railDesign } from "./seeded-rail.ts";

/** Panels of the longest rail. */
const MOST = 60;

const root = join(import.meta.dirname, "..");

export async function fitRows(library: Library): Promise<readonly Row[]> {
  const kernel = await Module();
  kernel.setup();
  const files = new Map(Object.entries(exampleFiles(root)["tug-trainer"] ?? {}));
  const trainer = opened({ entry: "console.yaml", files }, library, kernel);
  const longest = opened(railDesign(MOST), library, kernel);
  const rails = [MOST / 4, MOST / 2, MOST].map((count) => ({ count, rail: cut(longest, count) }));
  const verdicts = rails.map(({ count, rail }) => ({
    size: count,
    row: verdictRow(`verdict of ${count} panels with ${count * RAIL_COMPONENTS} components`, rail),
  }));
  const points = verdicts.map(({ size, row }) => ({ size, ms: row.median_ms }));
  const last = verdicts.at(-1)!.row;
  const rows = [
    verdictRow(`verdict of the trainer's ${trainer.layout.panels.length} panels`, trainer),
    ...verdicts.map(({ row }) => row),
    {
      ...last,
      name: "growth of a verdict along a rail, 15 to 60 panels (ratio: the exponent)",
      ratio: growthExponent(points),
    },
    dragRow("one step of a drag among 60 panels", longest),
    dragRow("one step of a drag in the trainer", trainer),
  ];
  for (const { prepared } of [trainer, longest]) prepared.delete();
  return rows;
}

interface Opened {
  readonly layout: ConsoleLayout;
  readonly prepared: PreparedBodies;
}

function opened(design: BenchDesign, library: Library, kernel: Kernel): Opened {
  const project = compile(design, library);
  if (project.console === null) throw new Error("the console of the bench can't be read");
  const { layout, frame } = project.console;
  const printedParts = new Map(project.panels.map((panel) => [panel.name, panel.printedParts]));
  const bodies = consoleBodies({ layout, printedParts, frame });
  if (layout.panels.length < 12) throw new Error("the panels of the bench stand nowhere");
  return { layout, prepared: prepareBodies(bodies, kernel) };
}

/** The first of its panels, with the shapes of the whole. */
function cut({ layout, prepared }: Opened, count: number): Opened {
  const panels = layout.panels.slice(0, count);
  const kept = new Set<string | null>([null, ...panels.map(({ name }) => name)]);
  const bodies = prepared.bodies.filter(({ panel }) => kept.has(panel));
  return {
    layout: { ...layout, panels },
    prepared: prepareBodies(bodies, prepared.shapes.kernel, prepared),
  };
}

const verdictRow = (name: string, { layout, prepared }: Opened): Row =>
  measured({
    name: `${name}, ${prepared.bodies.length} bodies (yardstick: their boxes swept)`,
    run: () => verdict(prepared, layout),
    yardstick: () => nearPairs(prepared.groups, searchLength),
    warmUp: 3,
    rounds: 9,
  });

/** To and fro by up to 5 mm along the bay, as a hand drags: the panel meets one neighbour, then the other. */
function dragRow(name: string, { layout, prepared }: Opened): Row {
  const panel = layout.panels[Math.floor(layout.panels.length / 2)]!;
  const rail = railScene(prepared.groups, panel.frame);
  return measured({
    name: `${name}, ${prepared.bodies.length} bodies (yardstick: their boxes swept)`,
    run: (round) => dragStep(rail, { panel: panel.name, by: ((round * 7) % 11) - 5 }),
    yardstick: () => nearPairs(prepared.groups, searchLength),
    warmUp: 20,
    rounds: 40,
  });
}
