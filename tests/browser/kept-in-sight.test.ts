// What must stay in sight while one works on a panel: what was found in a list, the drawing's size, where a thing goes that is
// dragged; and what must not: words about a design that was left.

import { afterAll, beforeAll, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, PANEL } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

test("a line of a list that no part answers stays named beside the panel that was made of the others", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  await page.getByText("Open", { exact: true }).click();
  await page.getByRole("button", { name: "New panel from a list" }).click();
  await page
    .getByLabel("The list")
    .fill('part,quantity,legend\ntoggle-6,6,PUMP\npot-9,1,"A, B"\nfrobnicator,1,X');
  await page.getByLabel("Name of the panel").fill("bought");
  await page.getByRole("button", { name: "Arrange it" }).click();
  await page.getByRole("application", { name: /^bought from the front/ }).waitFor();
  const found = page.getByRole("region", { name: "What was found in the list" });
  await expect.poll(() => found.textContent()).toMatch(/line 4: .*frobnicator/);
  await found.getByRole("button", { name: "Put this away" }).click();
  await expect.poll(() => found.count()).toBe(0);
  expect(complaints).toEqual([]);
  await page.close();
});

test("what was said of one design is not said of the next", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  await page.getByRole("application").focus();
  await page.keyboard.press("Tab");
  await expect.poll(() => page.locator(".said").textContent()).not.toBe("");
  await page.getByLabel("Open files").setInputFiles({
    name: "others.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(PANEL.replace("title: Pumps", "title: Others")),
  });
  await page.getByRole("application", { name: /^Others from the front/ }).waitFor();
  expect(await page.locator(".said").textContent()).toBe("");
  expect(complaints).toEqual([]);
  await page.close();
});
