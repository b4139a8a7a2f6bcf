// The tests' browser starts every time, not most times.

import { expect, test } from "vitest";
import { launchBrowser } from "../support/browser.ts";

test("the browser starts twenty times out of twenty", async () => {
  const read: (string | null)[] = [];
  for (let start = 0; start < 20; start += 1) {
    const browser = await launchBrowser();
    const page = await browser.newPage();
    await page.setContent("<p>here</p>");
    read.push(await page.textContent("p"));
    await browser.close();
  }
  expect(read).toEqual(Array(20).fill("here"));
});
