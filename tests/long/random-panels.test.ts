// Printed solids of 500 random panels; the gate does 40. Each run takes new ones: PROPERTY_SEED=<seed> takes the same again.

import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { partFaults } from "../printed/part-faults.ts";
import { partsOfRandomPanel } from "../printed/random-panels.ts";
import { openKernel } from "../support/kernel.ts";

const COUNT = 500;
const first = fc.readConfigureGlobal().seed ?? 1;

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
  process.stdout.write(`${COUNT} random panels from seed ${first}\n`);
});

describe("solids of random panels are sound", () => {
  test.each(Array.from({ length: COUNT }, (_, index) => first + index))("panel %i", (seed) => {
    const parts = partsOfRandomPanel(seed);
    expect(parts.flatMap((part) => partFaults(part, kernel))).toEqual([]);
  });
});
