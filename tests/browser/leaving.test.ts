// What a person who works on is spared: unsaved work that goes without a question, menus that stay open, a legend that
// only the text can give.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";

let stand: PageStand;
let page: Page;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
  page = (await openPage(stand)).page;
  await page.getByRole("status").filter({ hasText: "Opened: tug-trainer" }).waitFor();
}, 60_000);

afterAll(() => stand?.close());

test("Escape closes the menu wherever the focus is", async () => {
  await page.locator(".open-menu summary").click();
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  });
  await page.keyboard.press("Escape");
  expect(await page.locator(".open-menu").getAttribute("open")).toBeNull();
});

test("a new panel from a list takes no unsaved panel's place without a question", async () => {
  const arrange = async (line: string): Promise<void> => {
    await page.locator(".open-menu summary").click();
    await page.getByRole("button", { name: "New panel from a list" }).click();
    await page.getByLabel("The list").fill(`part,quantity,legend\n${line}`);
    await page.getByRole("button", { name: "Arrange it" }).click();
  };
  await arrange("toggle-6,2,MAIN; AUX");
  const text = page.getByRole("status").filter({ hasText: "Opened: new-panel.yaml" });
  await text.waitFor();
  await page.locator('[data-component^="toggle"], [data-component="main"]').first().waitFor();
  await arrange("led-5-bezel,1,ON");
  const question = page.getByRole("alertdialog");
  expect(await question.textContent()).toContain("Not saved: new-panel.yaml");
  await question.getByRole("button", { name: "Stay with it" }).click();
  await question.waitFor({ state: "detached" });
  expect(await page.locator("[data-component]").count()).toBe(2);
  await page.getByRole("button", { name: "Close", exact: true }).click();
}, 30_000);

test("a legend is written in the ticket, as one step", async () => {
  await page.locator(".board").focus();
  await page.keyboard.press("Tab");
  const field = page.locator(".legend-field textarea");
  await field.fill("NO");
  await field.press("Enter");
  await page.locator(".said").filter({ hasText: "legend “NO”" }).waitFor();
  await page.getByRole("button", { name: /^Undo: .*legend “NO”/ }).click();
}, 30_000);
