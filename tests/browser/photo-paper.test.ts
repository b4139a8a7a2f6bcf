// The sheet of paper that lay on a photographed panel, moved and turned on the panel in a real browser, by keys and by pointer.
// It lay as the camera saw it (tests/support/panel-photograph.ts): once it is back there, the holes must lie on their places.

import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { graveAxeFindings } from "../support/axe.ts";
import { restingBox, strike } from "../support/panel-bench.ts";
import {
  openDrawer,
  PHOTOGRAPH,
  photoBenches,
  TEXT,
  textOf,
  worstError,
} from "../support/photo-bench.ts";

const bench = photoBenches();

const PATIENCE = 120_000;

// A6, 105 by 148 mm (ISO 216), on its side: its lower left corner at 144, -7 of the panel, turned by 90 degrees.
const CORNERS = [
  [144, -7],
  [144, 98],
  [-4, 98],
  [-4, -7],
] as const;

const seen = CORNERS.map(([x, y]) => PHOTOGRAPH.seen(x, y));

const paperAt = (at: string, turn: string): string => `${TEXT}photo:
  file: old.png
  sheet:
    size: a6
    corners: [${seen.map(({ x, y }) => `[${x.toFixed(1)}, ${y.toFixed(1)}]`).join(", ")}]
    at: ${at}   # as far as I remember
    turn: ${turn}
`;

/** Where a hole is not even near its place there is no number for it. */
const areOnPlace = async (page: Page): Promise<boolean> => (await worstError(page)) < 0.5;

const benchWith = async (text: string) => {
  const opened = await bench(text);
  await openDrawer(opened.page);
  return opened;
};

test(
  "by keys, as one step, until the holes lie on their places",
  async () => {
    const before = paperAt("[150 mm, -12 mm]", "85 deg");
    const { page, complaints } = await benchWith(before);
    expect(await areOnPlace(page)).toBe(false);
    await page.getByRole("button", { name: "Move it on the panel" }).press("Enter");
    // The panel has the keys now.
    await page.locator(".board:focus").waitFor();
    await strike(page, [
      "Shift+PageUp",
      "ArrowLeft",
      "ArrowLeft",
      "Shift+ArrowLeft",
      "Shift+ArrowUp",
    ]);
    await expect.poll(() => textOf(page)).toContain("at: [144 mm, -7 mm]   # as far as I remember");
    expect(await textOf(page)).toContain("turn: 90 deg");
    await expect.poll(() => worstError(page)).toBeLessThan(0.05);
    const said = page.locator(".said");
    await expect
      .poll(() => said.textContent())
      .toBe("Move the sheet of paper: its lower left corner at 144 mm, -7 mm, turned 90°.");
    expect(await graveAxeFindings(page)).toEqual([]);
    await page.keyboard.press("Control+z");
    await expect.poll(() => textOf(page)).toBe(before);
    await page.keyboard.press("Escape");
    await page.getByText("The sheet of paper is put down.").waitFor();
    // Put down, the arrow keys are the panel's again.
    await page.keyboard.press("ArrowLeft");
    // What is in hand is made a step before one is taken back: there is none, so nothing was in hand.
    await page.keyboard.press("Control+z");
    await expect.poll(() => said.textContent()).toBe("There is nothing to take back.");
    expect(await textOf(page)).toBe(before);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "by the pointer, the picture going along; locked, not at all",
  async () => {
    const { page, complaints } = await benchWith(paperAt("[144 mm, -7 mm]", "90 deg"));
    await page.getByRole("button", { name: "Move it on the panel" }).click();
    // The panel's own keys stay: smaller, so that all of the paper is seen.
    for (let step = 0; step < 3; step += 1) await page.keyboard.press("-");
    const panelBox = await restingBox(page.locator(".outline"));
    const scale = panelBox.width / 140;
    const middle = {
      x: panelBox.x + panelBox.width / 2,
      y: panelBox.y + panelBox.height / 2,
    };
    await page.mouse.move(middle.x, middle.y);
    await page.mouse.down();
    await page.mouse.move(middle.x + 10 * scale, middle.y - 6 * scale, { steps: 4 });
    await expect
      .poll(() => page.locator(".photo-under").getAttribute("transform"))
      .toMatch(/^translate\(10/);
    await page.mouse.up();
    await expect.poll(() => textOf(page)).toContain("at: [154 mm, -1 mm]");
    await expect.poll(() => page.locator(".photo-under").getAttribute("transform")).toBeNull();
    // The holes are where the paper has taken them: 10 and 6 away.
    await expect.poll(() => areOnPlace(page)).toBe(false);
    // By its grip, a sixth of a turn about the corner.
    const grip = await restingBox(page.locator(".paper-target"));
    const from = { x: grip.x + grip.width / 2, y: grip.y + grip.height / 2 };
    const pivot = { x: panelBox.x + 154 * scale, y: panelBox.y + panelBox.height + scale };
    const arm = pivot.y - from.y;
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(pivot.x - arm * Math.sin(Math.PI / 3), pivot.y - arm / 2, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => textOf(page)).toMatch(/turn: 150(\.5)? deg|turn: 149\.5 deg/);
    const turned = await textOf(page);
    await page.getByLabel("Lock the marks").check();
    await expect.poll(() => page.locator(".paper-outline").count()).toBe(0);
    await page.getByRole("button", { name: "Move it on the panel" }).click();
    await page.getByText("The marks are locked.").waitFor();
    expect(await textOf(page)).toBe(turned);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);
