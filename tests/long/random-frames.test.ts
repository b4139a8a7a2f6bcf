// Frames of 60 random consoles, and 40 pairs of rows; the gate does 5 and 2. Each run takes new ones: PROPERTY_SEED=<seed> takes
// the same again.

import { test } from "vitest";
import { randomBaysGoTogether, randomRowsStandFree } from "../frame/random-frames.ts";
import { openKernel } from "../support/kernel.ts";

const kernel = await openKernel();

test("frames of random bays go together", () => {
  randomBaysGoTogether(kernel, 60);
});

test("two rows anywhere stand free of one another, or where they are told to", () => {
  randomRowsStandFree(kernel, 40);
});
