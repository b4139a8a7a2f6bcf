// What a person who works on is spared: unsaved work that goes without a question, menus that stay open, a legend that
// only the text can give.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";

let stand: PageStand;
let page: Page;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
  page = (await openPage(stand)).page;
  // A busy machine reads the demo ten times as long as a quiet one.
  page.setDefaultTimeout(100_000);
  // The browser's own private folder (WHATWG File System) in place of one that is chosen.
  await page.addInitScript(() => {
    const chosen = async (): Promise<FileSystemDirectoryHandle> =>
      (await navigator.storage.getDirectory()).getDirectoryHandle("desk-folder", { create: true });
    Object.assign(window, { showDirectoryPicker: chosen });
  });
  await page.reload();
  await page.getByRole("status").filter({ hasText: "Opened: tug-trainer" }).waitFor();
}, 200_000);

afterAll(() => stand?.close());

test("Escape closes the menu wherever the focus is", async () => {
  await page.locator(".open-menu summary").click();
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  });
  await page.keyboard.press("Escape");
  await expect.poll(() => page.locator(".open-menu").getAttribute("open")).toBeNull();
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
  await question.filter({ hasText: "Not saved: new-panel.yaml" }).waitFor();
  await question.getByRole("button", { name: "Stay with it" }).click();
  await question.waitFor({ state: "detached" });
  await expect.poll(() => page.locator("[data-component]").count()).toBe(2);
  await page.getByRole("button", { name: "Close", exact: true }).click();
});

test("a legend is written in the ticket, as one step", async () => {
  await page.locator(".board").focus();
  await page.keyboard.press("Tab");
  const field = page.locator(".legend-field textarea");
  await field.fill("NO");
  await field.press("Enter");
  await page.locator(".said").filter({ hasText: "legend “NO”" }).waitFor();
  await page.getByRole("button", { name: /^Undo: .*legend “NO”/ }).click();
});

describe("an unsaved panel is asked about", () => {
  const loose = {
    name: "other.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from("consolewright: 1\nkind: panel\nname: other\n"),
  };

  const fromMenu = async (words: string): Promise<void> => {
    await page.locator(".open-menu summary").click();
    await page.getByRole("button", { name: words }).click();
  };

  const drop = (): Promise<void> =>
    page.evaluate((text) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([text], "other.yaml", { type: "text/yaml" }));
      document.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true }));
    }, loose.buffer.toString());

  const tile = async (name: RegExp): Promise<void> => {
    await fromMenu("Where to begin");
    await page.getByRole("button", { name }).click();
  };

  /** What is opened, by every way there is, and how the question calls it. */
  const WAYS: readonly (readonly [string, string, () => Promise<unknown>])[] = [
    ["a tile of an example", "first-panel", () => tile(/^A first panel/)],
    ["the tile of the demo", "tug-trainer", () => tile(/^Harbour tug trainer/)],
    [
      "the choice of examples",
      "rack-panel",
      () => page.getByLabel("Example").selectOption("rack-panel"),
    ],
    [
      "files that are chosen",
      "other.yaml",
      () => page.getByLabel("Open files").setInputFiles(loose),
    ],
    ["a file that is dropped", "other.yaml", drop],
    ["a folder to work in", "desk-folder", () => fromMenu("Open a folder and save into it")],
  ];

  test.each(WAYS)("before %s takes its place, and Escape stays with it", async (_way, next, go) => {
    await page.getByText("Not saved: new-panel.yaml").waitFor();
    await go();
    const question = page.getByRole("alertdialog");
    await question
      .filter({ hasText: `Not saved: new-panel.yaml. Open ${next} in its place all the same?` })
      .waitFor();
    const stay = question.getByRole("button", { name: "Stay with it" });
    await expect
      .poll(() => stay.evaluate((button) => button === document.activeElement))
      .toBe(true);
    await page.keyboard.press("Escape");
    await question.waitFor({ state: "detached" });
    const back = page.getByRole("button", { name: "Back to new-panel.yaml" });
    if ((await back.count()) > 0) await back.click();
    await page.getByText("Not saved: new-panel.yaml").waitFor();
    await expect.poll(() => page.locator("[data-component]").count()).toBe(2);
  });

  test("and goes where the person says so", async () => {
    await tile(/^A first panel/);
    await page
      .getByRole("alertdialog")
      .getByRole("button", { name: "Open first-panel", exact: true })
      .press("Enter");
    await page.getByRole("status").filter({ hasText: "Opened: first-panel" }).waitFor();
    await page.getByText("Nothing unsaved").waitFor();
  });
});

test("edits of an example that is left are kept, and said to be", async () => {
  await page.locator(".board").focus();
  await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowRight");
  await page.getByText(/^Not saved: /).waitFor();
  await page.locator(".open-menu summary").click();
  await page.getByRole("button", { name: "Where to begin" }).click();
  await page.getByRole("button", { name: /^A rack panel/ }).click();
  await page.getByRole("status").filter({ hasText: "Opened: rack-panel" }).waitFor();
  await page.getByText(/Your edits of .* of first-panel are kept in this browser/).waitFor();
  expect(await page.getByRole("alertdialog").count()).toBe(0);
});
