// The pictures in the examples' folders are what the program draws today. `npm run pictures` makes them anew.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { committedPictures, examplePictures } from "../../scripts/example-pictures.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { inRoot, ROOT } from "./example-projects.ts";

/** A page loads a dozen of them. */
const LARGEST = 200 * 1024;
/** One that shows a whole console. */
const LARGEST_CONSOLE = 350 * 1024;

/** A shaded picture of a printed part. */
const LARGEST_PRINT = 60 * 1024;

const kernel = await openKernel();
const pictures = examplePictures(ROOT, { library: testLibrary(), kernel });

const largest = (path: string): number => {
  if (path.endsWith(".png")) return LARGEST_PRINT;
  return path.endsWith("/console.svg") ? LARGEST_CONSOLE : LARGEST;
};

test("every picture is there and none is left over: else npm run pictures", () => {
  expect(committedPictures(ROOT).toSorted()).toEqual([...pictures.keys()].toSorted());
});

test.each([...pictures])("%s is as the program draws it: else npm run pictures", (path, bytes) => {
  expect(readFileSync(inRoot(path)).equals(bytes)).toBe(true);
  expect(bytes.length).toBeLessThan(largest(path));
});
