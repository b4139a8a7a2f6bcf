// Pictures of the page for the README, by the browser that the tests use: the console's room and a panel's. Needs the build
// (`npm run build`). Run by `npm run screenshots`.

import { mkdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Page } from "playwright-core";
import { openPage, standOf } from "../tests/support/open-page.ts";

const folder = join(dirname(import.meta.dirname), "pictures");
/** A README is read over slow lines too. */
const LARGEST = 300_000;

const stand = await standOf("dist/viewer");
try {
  const { page } = await openPage(stand);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" });
  await page.goto(stand.server.address);
  // The page opens on the demo, and on its guide.
  await page.getByRole("button", { name: "Leave the guide" }).click();
  await page.getByRole("status").filter({ hasText: "Opened: tug-trainer" }).waitFor();
  await panelRoom(page);
  await consoleRoom(page);
} finally {
  await stand.close();
}

async function panelRoom(page: Page): Promise<void> {
  await page
    .getByRole("combobox", { name: "Panel", exact: true })
    .selectOption({ label: "Towing winch" });
  await page.waitForLoadState("networkidle");
  await shot(page, "page-panel.png");
}

/** A panel held over its neighbour: what it meets is marked, and numbered. */
async function consoleRoom(page: Page): Promise<void> {
  await page.setViewportSize({ width: 1200, height: 720 });
  await page.getByRole("button", { name: "Console", exact: true }).click();
  await page.getByRole("button", { name: /^Voyage recorder / }).waitFor();
  await page.getByRole("button", { name: "From the seat" }).click();
  await page.locator(".stage").focus();
  for (let step = 0; step < 4; step += 1) await page.keyboard.press("-");
  await page.getByRole("radio", { name: "Move panels" }).check();
  const row = page.getByRole("button", { name: /^Voyage recorder / });
  await row.click();
  await row.press("ArrowDown");
  await page.locator(".dragged").getByText("Clash").first().waitFor();
  await shot(page, "page-console.png");
}

async function shot(page: Page, name: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, name);
  await page.screenshot({ path });
  const { size } = statSync(path);
  if (size > LARGEST) throw new Error(`${name} has ${size} bytes, ${LARGEST} are the most`);
  console.log(`${name}: ${size} bytes`);
}
