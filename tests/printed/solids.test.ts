// Every printed solid of the examples and of 40 random panels, written as STL and read by a reader that shares no code with
// the product: closed, oriented, one shell a body, no flat triangle in float32, volume within a thousandth of the recipe's.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { printedPartsOf } from "../../src/parts/printed/printed-parts.ts";
import { compile } from "../../src/project.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { partFaults } from "./part-faults.ts";
import { partsOfRandomPanel } from "./random-panels.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

const root = join(import.meta.dirname, "../../examples");

const examplesUnder = (folder: string): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .map((path) => path.replaceAll("\\", "/"))
      .filter((path) => path.endsWith(".yaml"))
      .map((path) => [path, readFileSync(join(root, folder, path), "utf8")]),
  );

describe("the examples", () => {
  const panels = ["tug-trainer", "rack-panel", "first-panel"].flatMap((folder) =>
    [...examplesUnder(folder)]
      .filter(([, text]) => /^kind: panel$/m.test(text))
      .map(([path]) => [folder, path] as const),
  );

  test("have panels", () => expect(panels.length).toBeGreaterThanOrEqual(6));

  test.each(panels)("%s/%s print", (folder, entry) => {
    const project = compile({ entry, files: examplesUnder(folder) }, testLibrary());
    const parts = project.panels.flatMap(({ layout, workshop }) =>
      layout === null
        ? []
        : printedPartsOf(layout, {
            workshop,
            catalogue: project.catalogue,
            lettering: project.lettering,
          }).parts,
    );
    expect(parts.flatMap((part) => partFaults(part, kernel))).toEqual([]);
  });
});

/** The day of the first of them; PRINTED_SEED chooses other panels. */
const FIRST = Number(process.env["PRINTED_SEED"] ?? 20261125);

describe(`forty random panels from seed ${FIRST}`, () => {
  test.each(Array.from({ length: 40 }, (_, index) => FIRST + index))("panel %i prints", (seed) => {
    expect(partsOfRandomPanel(seed).flatMap((part) => partFaults(part, kernel))).toEqual([]);
  });
});
