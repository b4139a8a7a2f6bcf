// The whole `make` of the example console: from a cold start as a user waits for it, and where its time goes in one process,
// stage by stage (ratio: the stage's share of them all).

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Module from "manifold-3d";
import { exampleFiles } from "../scripts/example-files.ts";
import type { Kernel } from "../src/geometry/solid/kernel.ts";
import {
  type ConsoleFit,
  type ConsoleProject,
  compile,
  fitOfProject,
  type Library,
  type Project,
  packOfConsoleProject,
  packOfProject,
} from "../src/project.ts";
import { commandRow } from "./command-rows.ts";
import { type Row, rounded } from "./harness.ts";

const root = join(import.meta.dirname, "..");
const ROUNDS = 3;

export async function consoleRows(library: Library): Promise<readonly Row[]> {
  return [coldRow(), ...(await stageRows(library))];
}

function coldRow(): Row {
  const folder = mkdtempSync(join(tmpdir(), "consolewright-bench-"));
  const design = join(root, "examples/tug-trainer/console.yaml");
  try {
    return commandRow(
      {
        name: "make of the trainer's console from a cold start (yardstick: node alone)",
        rounds: ROUNDS,
      },
      ["make", design, "--out", join(folder, "out")],
      folder,
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

interface Stage {
  readonly name: string;
  readonly run: () => void;
}

/** Every round begins from the texts, so that nothing is kept from the round before but the engine's own warmth. */
async function stageRows(library: Library): Promise<readonly Row[]> {
  const kernel = await Module();
  kernel.setup();
  const times = new Map<string, number[]>();
  for (let round = 0; round < ROUNDS; round += 1)
    for (const { name, run } of stagesOf(library, kernel)) {
      const started = performance.now();
      run();
      times.set(name, [...(times.get(name) ?? []), performance.now() - started]);
    }
  const middle = (all: readonly number[]): number =>
    all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? 0;
  const whole = [...times.values()].reduce((sum, all) => sum + middle(all), 0);
  return [...times].map(([name, all]) => ({
    name: `of it, ${name} (ratio: share of all stages)`,
    median_ms: rounded(middle(all)),
    min_ms: rounded(Math.min(...all)),
    max_ms: rounded(Math.max(...all)),
    ratio: rounded(middle(all) / whole),
  }));
}

function stagesOf(library: Library, kernel: Kernel): readonly Stage[] {
  const files = new Map(Object.entries(exampleFiles(root)["tug-trainer"] ?? {}));
  const made: { project: Project | null; console: ConsoleProject | null; fit: ConsoleFit | null } =
    {
      project: null,
      console: null,
      fit: null,
    };
  const held = (): { readonly project: Project; readonly console: ConsoleProject } => {
    const { project, console } = made;
    if (project === null || console === null) throw new Error("the trainer has a console");
    return { project, console };
  };
  const options = { only: "everything", card: false, kernel } as const;
  return [
    {
      name: "reading, laying out and judging",
      run: () => {
        made.project = compile({ entry: "console.yaml", files }, library);
        made.console = made.project.console;
      },
    },
    {
      name: "fitting",
      run: () => {
        const { project, console } = held();
        made.fit = fitOfProject(project, console, kernel);
      },
    },
    {
      name: "the packs of its panels",
      run: () => {
        const { project } = held();
        for (const panel of project.panels) packOfProject(project, panel, options);
      },
    },
    {
      name: "the pack of the console itself",
      run: () => {
        const { project, console } = held();
        if (made.fit === null) throw new Error("the trainer is fitted");
        packOfConsoleProject(project, { console, fit: made.fit }, options);
      },
    },
  ];
}
