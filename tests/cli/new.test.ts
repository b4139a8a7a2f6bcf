// What `new` takes for a title goes into a design of its own making, which must then be one without a fault.

import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";

test.each([["two\nlines"], ["a\u202eb"], [" "], ["x".repeat(201)]])(
  "a title that a design refuses is refused before anything is written: %j",
  async (title) => {
    const folder = temporaryFolder();
    const { code, stdout, stderr } = await runIn(folder, ["new", "winch", "--title", title]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("--title");
    expect(existsSync(join(folder, "winch"))).toBe(false);
  },
);

test("any other title makes a design without a fault", async () => {
  const folder = temporaryFolder();
  const title = "</svg>\"x': #{ [é";
  expect((await runIn(folder, ["new", "winch", "--title", title])).code).toBe(0);
  const checked = await runIn(folder, ["check", "winch"], { library: testLibrary });
  expect(checked.code).toBe(0);
});
