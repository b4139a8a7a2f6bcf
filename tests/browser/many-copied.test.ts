// Many things copied at once, in a real browser: while a free place is looked for it is said, it can be given up, and what is found
// is one step of the history.

import { afterAll, beforeAll, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, textHas, textOf } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const PATIENCE = 120_000;

const LAMPS = `consolewright: 1
kind: panel
name: board
mount: box-lid
width: 900 mm
height: 500 mm
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  lamps: { part: led-5-bezel, grid: { rows: 9, columns: 16, pitch: 22 mm, row-pitch: 22 mm, left: 30 mm, top: 30 mm } }
`;

test(
  "a copy of 144 lamps waits for its place, can be given up, and is one step",
  async () => {
    const { page, complaints } = await benchWith(stand, LAMPS);
    const text = await textOf(page);
    const sheet = page.getByRole("application");
    const said = page.locator(".said");
    await page.route("**/free-place.worker*", () => {});
    await page.locator('[data-component="lamps.1"]').first().click({ force: true });
    await page.getByRole("button", { name: /^Copy/ }).waitFor();
    await sheet.focus();
    await page.keyboard.press("c");
    await page.getByRole("status").filter({ hasText: "Looking for a free place" }).waitFor();
    await page.keyboard.press("c");
    await said.filter({ hasText: "Still looking for a free place" }).waitFor();
    await page.getByRole("button", { name: "Give it up" }).click();
    await said.filter({ hasText: "looking for a free place was given up" }).waitFor();
    await page.locator(".searching").waitFor({ state: "detached" });
    expect(await textOf(page)).toBe(text);

    // The keys go on at the sheet.
    await page.unroute("**/free-place.worker*");
    await page.keyboard.press("c");
    await page.locator('[data-component="lamps-2.1"]').waitFor({ state: "attached" });
    expect(await textOf(page)).toContain("  lamps-2: ");
    await said.filter({ hasText: "Copied as lamps-2" }).waitFor();
    await page.keyboard.press("Control+z");
    await textHas(page, text);
    expect(complaints).toEqual([]);
    await page.close();
  },
  PATIENCE,
);
