import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { GOLDEN_FOLDER, GOLDENS } from "./golden.ts";

test("no golden is missing and none is an orphan", () => {
  expect(readdirSync(GOLDEN_FOLDER).toSorted()).toEqual([...GOLDENS].toSorted());
});
