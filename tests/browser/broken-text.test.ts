// A text that can't be read for the moment, in a real browser: the hand types on in the same file, and the last good drawing
// stays, dimmed and told of, until the text can be read again.

import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import { andRead, benchWith, PANEL, restingBox, textHas, textOf } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const PATIENCE = 120_000;

const TUG = resolve(import.meta.dirname, "../../examples/tug-trainer");

async function caretAfterWords(page: Page, words: string): Promise<void> {
  await page.locator("textarea").evaluate((field: HTMLTextAreaElement, after) => {
    const at = field.value.indexOf(after) + after.length;
    field.focus();
    field.setSelectionRange(at, at);
  }, words);
}

const why = (page: Page) => page.locator(".why-unread");

test(
  "what is typed goes on into the same file, however broken it is, and the panel stays chosen",
  async () => {
    const { page } = await openPage(stand);
    await page
      .getByRole("status")
      .filter({ hasText: "Opened: tug-trainer" })
      .waitFor({ timeout: 90_000 });
    await page.locator(".panel-choice select").selectOption({ label: "Towing winch" });
    const field = page.getByRole("textbox", { name: "Text of panels/winch.yaml" });
    await field.waitFor();
    const before = readFileSync(join(TUG, "panels/winch.yaml"), "utf8");
    await expect.poll(() => field.inputValue()).toBe(before);
    await caretAfterWords(page, "mount: console-rail");
    await page.keyboard.type(":");
    await why(page).waitFor();
    // The reading of it as well.
    await andRead(page, () => page.keyboard.type(" x"));
    expect(await field.inputValue()).toBe(
      before.replace("mount: console-rail", "mount: console-rail: x"),
    );
    expect(await field.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(
      await page
        .locator(".panel-choice select")
        .evaluate((one: HTMLSelectElement) => one.selectedOptions[0]?.text),
    ).toBe("Towing winch");
    for (let letter = 0; letter < 3; letter += 1) await page.keyboard.press("Backspace");
    await why(page).waitFor({ state: "detached" });
    expect(await field.inputValue()).toBe(before);
    await page.close();
  },
  PATIENCE,
);

test.each([
  ["a word on a line of its own", "title: Pumps", "\ntitle2", /: .*, line 5\./],
  ["a value half typed", "height:", "", /, line 6\./],
])(
  "%s leaves the last good drawing, which can't be dragged",
  async (_, after, typed, line) => {
    const { page, complaints } = await benchWith(stand, PANEL);
    const drawn = page.locator('[data-component="main"]');
    await caretAfterWords(page, after);
    if (typed === "") {
      await page.keyboard.press("Shift+End");
      await page.keyboard.press("Delete");
    } else await page.keyboard.insertText(typed);
    await why(page).filter({ hasText: "The text can't be read: " }).waitFor();
    await expect.poll(() => why(page).textContent()).toMatch(line);
    const broken = await textOf(page);
    await drawn.waitFor();
    await page.getByRole("button", { name: "Job pack" }).waitFor();
    const box = await restingBox(drawn);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + 80, box.y + 40, { steps: 5 });
    await page.mouse.up();
    await page.keyboard.press("ArrowRight");
    expect(await textOf(page)).toBe(broken);
    // Nothing came of them: one step back, before which whatever is in hand is made one, is that of the typing.
    await page.keyboard.press("Control+z");
    await textHas(page, PANEL);
    await why(page).waitFor({ state: "detached" });
    await drawn.waitFor();
    expect(complaints).toEqual([]);
    await page.close();
  },
  PATIENCE,
);
