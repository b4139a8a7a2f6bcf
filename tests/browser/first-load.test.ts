// The page's first load: what is fetched before the first panel is seen stays small enough for a slow line.

import { expect, test } from "vitest";
import { firstLoad, packedKilobytes } from "../support/first-load.ts";
import { standOf } from "../support/open-page.ts";

/** The project's own target for program, style, examples and catalogue together: all but fonts and wasm. */
const MOST_KILOBYTES = 450;

test("the first panel is seen after less than 450 kB of all but fonts and wasm, packed", async () => {
  const stand = await standOf("dist/viewer");
  const { code, data } = await firstLoad(stand, "dist/viewer");
  const kinds = new Set(code.map(({ path }) => path.split(".").at(-1)));
  expect(kinds).toEqual(new Set(["html", "css", "js", "json", "json without its fonts"]));
  expect(code.some(({ path }) => path.includes("core.worker"))).toBe(true);
  expect(data.map(({ path }) => path)).toEqual(["/library.json"]);
  expect(packedKilobytes(code)).toBeLessThan(MOST_KILOBYTES);
  await stand.close();
});
