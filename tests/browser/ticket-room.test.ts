// The ticket of what is picked covers nothing of a panel that is seen whole, on a small screen and on a tablet; and neither picking
// nor letting go moves the drawing. Boxes are the browser's own.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { OPENING } from "../support/console-room.ts";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";

let stand: PageStand;
let page: Page;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
  ({ page } = await openPage(stand));
  await page.getByLabel("Example").selectOption("tug-trainer");
  await page
    .getByRole("status")
    .filter({ hasText: "Opened: tug-trainer" })
    .waitFor({ timeout: OPENING });
  await page.getByRole("combobox", { name: "Panel", exact: true }).selectOption("winch");
  await page.getByRole("application", { name: /^Towing winch from the front/ }).waitFor();
}, OPENING);

afterAll(() => stand?.close());

test.each([
  [1280, 720],
  [1024, 768],
  [768, 1024],
])("at %d x %d it lies under the panel, which stays where it is", async (width, height) => {
  await page.setViewportSize({ width, height });
  await page.getByRole("application").focus();
  const before = await boxOf("svg.front .panel-place");
  // A lever, a knob, a dial, and a lamp of a grid, which has the most to be told.
  for (const owner of ["brake", "speed", "tension", "warn.4"]) {
    await page.locator(`svg.front .component[data-owner="${owner}"]`).click();
    await page.locator(".ticket.picked").filter({ hasText: "Take off" }).waitFor();
    await expect
      .poll(() => page.getByLabel("name", { exact: true }).inputValue())
      .toBe(owner.split(".")[0]);
    const ticket = await boxOf(".ticket");
    const panel = await boxOf("svg.front .panel-place");
    expect(panel.bottom).toBeLessThanOrEqual(ticket.top);
    expect(panel).toEqual(before);
    // What can be done with it is in sight, whatever of the fields must be scrolled to.
    const deeds = await boxOf(".ticket .deeds");
    expect(deeds.bottom).toBeLessThanOrEqual(ticket.bottom);
    expect(ticket.bottom).toBeLessThanOrEqual(height);
  }
  await page.getByRole("application").focus();
  await page.keyboard.press("Escape");
  await page.locator(".ticket:not(.picked)").waitFor();
  expect(await boxOf("svg.front .panel-place")).toEqual(before);
});

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Once two pictures in a row have it in one place. */
function boxOf(selector: string): Promise<Box> {
  return page.locator(selector).evaluate(async (element) => {
    for (let before = ""; ; ) {
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const now = JSON.stringify([left, right, top, bottom]);
      if (now === before) return { left, right, top, bottom };
      before = now;
    }
  });
}
