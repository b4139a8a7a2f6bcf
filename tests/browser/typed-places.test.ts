// A thing's place typed over in the ticket: in fractions of an inch, finer than the text keeps, and off the panel.

import { afterAll, beforeAll, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, PANEL, textHas, textOf } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

test("the place from the lower left corner takes what the design's own number takes, and says what it can't", async () => {
  const { page, complaints } = await benchWith(
    stand,
    PANEL.replace("{ x: 40 mm, y: 50 mm }", "{ left: 40 mm, y: 50 mm }"),
  );
  await page.getByRole("application").focus();
  await page.keyboard.press("Tab");
  const across = page.locator(".ticket").getByLabel("x, from the left");
  const type = async (words: string): Promise<void> => {
    await across.fill(words);
    await across.press("Enter");
  };
  const said = (): Promise<string | null> => page.locator(".said").textContent();
  // One inch is 25.4 mm: one and a half are 38.1.
  await type("1 1/2 in");
  await textHas(page, "left: 38.1 mm");
  await type("33.333333 mm");
  await textHas(page, "left: 33.333 mm");
  await expect.poll(said).toContain("rounded from 33.333333 mm to 33.333 mm");
  const before = await textOf(page);
  await type("-5");
  await expect.poll(said).toMatch(/x -5 mm, off the panel, which reaches from 0 to [\d.]+ mm/);
  expect(await said()).toContain("x 33.333 mm");
  expect(await page.locator(".offer").count()).toBe(0);
  expect(await textOf(page)).toBe(before);
  expect(complaints).toEqual([]);
  await page.close();
}, 60_000);
