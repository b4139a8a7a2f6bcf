// The room of the job pack in a real browser, behind the server of `view`, with one panel: the files that leave it are byte for
// byte those of the command line, each kind of file is shown, and the print of a template is in true size.

import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { graveAxeFindings } from "../support/axe.ts";
import { launchBrowser } from "../support/browser.ts";
import type { DesignInput } from "../support/pack-hashes.ts";
import {
  byCommand,
  choose,
  enter,
  FIRST_PANEL,
  made,
  type OpenedDesign,
  openedRoom,
  PATIENCE,
  saved,
} from "../support/pack-room.ts";
import { markupDesign } from "../support/page-designs.ts";
import { longLines } from "../support/printed-lines.ts";
import { zipEntries } from "../support/zip-reader.ts";

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser?.close());

const opened = (input: DesignInput, first?: () => void): Promise<OpenedDesign> =>
  openedRoom(browser, input, first);

test(
  "the first panel leaves as one file and as a zip, each byte as make --zip has it",
  async () => {
    const open = await opened(FIRST_PANEL);
    const { page, complaints } = open;
    await enter(page);
    await made(page);
    const zip = await saved(page, /^Save first-panel\.zip/);
    expect(zip.name).toBe("first-panel.zip");
    const wanted = byCommand(open, "panel.yaml", "--zip")("first-panel.zip");
    expect(zip.bytes.equals(wanted)).toBe(true);
    const entries = zipEntries(wanted);
    const listed = await page.locator(".file-list button").allTextContents();
    expect(listed.map((words) => `first-panel/${words.split(" ")[0]}`).sort()).toEqual(
      entries.map(({ name }) => name).sort(),
    );
    await choose(page, /^cut\/.*\.nominal\.dxf/);
    const file = await saved(page, /^Save this file/);
    const [inZip] = entries.filter(({ name }) => name.endsWith(`/${file.name}`));
    expect(inZip?.bytes.equals(file.bytes)).toBe(true);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "the kinds of files that make chooses between leave with the same bytes",
  async () => {
    const open = await opened(FIRST_PANEL);
    const { page, complaints } = open;
    await enter(page);
    await made(page);
    const zipNow = async (kinds: readonly string[]): Promise<readonly string[]> => {
      await expect.poll(() => page.locator(".making").count(), { timeout: PATIENCE }).toBe(0);
      const zip = await saved(page, /^Save first-panel\.zip/);
      const wanted = byCommand(open, "panel.yaml", "--zip", kinds)("first-panel.zip");
      expect(zip.bytes.equals(wanted)).toBe(true);
      return zipEntries(wanted).map(({ name }) => name);
    };
    await page.getByLabel("with a mock-up on card").check();
    await page.getByRole("heading", { name: /^Card for a first fitting: / }).waitFor();
    expect((await zipNow(["--card"])).join()).toContain("first-panel/card/");
    await page.getByRole("combobox", { name: "Files", exact: true }).selectOption("fascia");
    await page.getByRole("heading", { name: "Papers" }).waitFor();
    await page.getByRole("button", { name: /^README/ }).waitFor({ state: "detached" });
    expect((await zipNow(["--card", "--only", "fascia"])).join()).not.toContain("README");
    await page.getByLabel("with a mock-up on card").uncheck();
    await page.getByRole("heading", { name: /^Card/ }).first().waitFor({ state: "detached" });
    expect((await zipNow(["--only", "fascia"])).join()).not.toContain("/card/");
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test.each([
  [1280, 720],
  [768, 1024],
])(
  "at %i by %i the files have the room, and one act brings the text back",
  async (width, height) => {
    const { page } = await opened(FIRST_PANEL);
    await page.setViewportSize({ width, height });
    await enter(page);
    await made(page);
    const files = (await page.locator(".pack-files").boundingBox())!;
    expect(files.width).toBeGreaterThan(0.95 * width);
    const preview = (await page.locator(".file-preview").boundingBox())!;
    expect(preview.width).toBeGreaterThan(0.6 * width);
    // The file is seen beside its list, without going down the page first.
    expect(preview.y).toBeLessThan(height / 3);
    const text = page.getByRole("textbox", { name: /^Text of / });
    await expect.poll(() => text.count()).toBe(0);
    const beside = page.getByRole("button", { name: "Text and findings" });
    await expect.poll(() => beside.getAttribute("aria-expanded")).toBe("false");
    await beside.press("Enter");
    await text.waitFor();
    await expect.poll(() => page.locator("aside").evaluate(isInSight)).toBe(true);
    await beside.press("Enter");
    await text.waitFor({ state: "detached" });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
  },
  PATIENCE,
);

const isInSight = (element: Element): boolean => {
  const { top, bottom } = element.getBoundingClientRect();
  return top < innerHeight && bottom > 0;
};

/** A long table is laid out by five hundred rows, and each of its rows can be come to once. */
async function pagesOfRows(page: Page): Promise<void> {
  const rows = page.locator(".table-preview tbody tr");
  const told = page.getByRole("status").filter({ hasText: /^Rows \d+ to \d+ of \d+$/ });
  const range = async (): Promise<readonly number[]> =>
    ((await told.textContent()) ?? "").match(/\d+/g)?.map(Number) ?? [];
  const [, , all = 0] = await range();
  expect(all).toBeGreaterThan(500);
  expect(await range()).toEqual([1, 500, all]);
  expect(await rows.count()).toBe(500);
  const last = await rows.last().textContent();
  await page.getByRole("button", { name: "Later rows" }).click();
  await expect.poll(range).toEqual([501, all, all]);
  expect(await rows.count()).toBe(all - 500);
  expect(await rows.first().textContent()).not.toBe(last);
  await expect.poll(() => page.getByRole("button", { name: "Later rows" }).isDisabled()).toBe(true);
  await page.getByRole("button", { name: "Earlier rows" }).click();
  await expect.poll(range).toEqual([1, 500, all]);
}

test(
  "the first panel shows each kind of file",
  async () => {
    const { page, complaints } = await opened(FIRST_PANEL);
    await enter(page);
    await made(page);
    for (const ending of [/\.nominal\.svg/, /\.nominal\.dxf/, /\.r12\.dxf/]) {
      await choose(page, ending);
      const drawing = page.getByRole("img", { name: /as it was read back: .*cut-outer 1/ });
      const data = (await drawing.locator(".cut-file").first().getAttribute("d")) ?? "";
      expect(data.length).toBeGreaterThan(200);
    }
    await choose(page, /^inspection\.csv/);
    await pagesOfRows(page);
    await choose(page, /-front\.svg/);
    const picture = page.locator("img.picture-preview");
    expect(
      await picture.evaluate((image: HTMLImageElement) =>
        image.decode().then(() => image.naturalWidth),
      ),
    ).toBeGreaterThan(100);
    await choose(page, /^template\/.*front\.pdf/);
    await page.getByRole("img", { name: /front\.pdf, page 1/ }).waitFor();
    await choose(page, /^parts-list\.csv/);
    await page.getByRole("cell", { name: "push-button-16" }).waitFor();
    await choose(page, /^README\.md/);
    const readme = page.getByRole("article", { name: "README.md" });
    await readme.getByRole("heading", { name: "Order of work" }).waitFor();
    await readme.getByRole("row", { name: /^parts-list\.csv what to buy/ }).waitFor();
    const front = readme.getByRole("img", { name: "front of the panel" });
    expect(
      await front.evaluate((image: HTMLImageElement) =>
        image.decode().then(() => image.naturalWidth),
      ),
    ).toBeGreaterThan(100);
    // What is open is counted as the pack's own first page counts it.
    const [, open = ""] =
      /(HOLD: \d+ questions are open\.)/.exec((await readme.textContent()) ?? "") ?? [];
    await page.locator(".pack-standing").getByText(open, { exact: true }).waitFor();
    expect(open).not.toBe("");
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "the first panel is worked by keys alone, and says when its pack is old",
  async () => {
    const { page, write } = await opened(FIRST_PANEL);
    await page.getByRole("button", { name: "Job pack", exact: true }).focus();
    await page.keyboard.press("Enter");
    await made(page);
    await page.locator(".file-list button").first().focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    const pressed = page.locator('.file-list button[aria-pressed="true"]');
    await expect.poll(() => pressed.textContent()).toMatch(/\.dxf/);
    // From the list on by Tab to the button that saves the file.
    const all = await page.locator(".file-list button").count();
    const save = page.getByRole("button", { name: /^Save this file/ });
    for (let step = 0; step < all; step += 1) {
      await page.keyboard.press("Tab");
      if (await save.evaluate((button) => button === document.activeElement)) break;
    }
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.keyboard.press("Enter"),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.dxf$/);
    write("panel.yaml", (before) => before.replace("revision: A", "revision: B"));
    await page.getByRole("alert").filter({ hasText: "The design has changed" }).waitFor();
    await expect.poll(() => save.getAttribute("aria-disabled")).toBe("true");
    await page.getByRole("button", { name: "Make it again" }).click();
    await page.getByRole("alert").waitFor({ state: "detached", timeout: PATIENCE });
    await expect.poll(() => save.getAttribute("aria-disabled")).toBe("false");
  },
  PATIENCE,
);

test(
  "the first panel has its template printed in true size",
  async () => {
    // The print itself is the test's: the page would open a window that nobody answers.
    const { page } = await opened(FIRST_PANEL, () => {
      window.print = () => undefined;
    });
    await enter(page);
    await made(page);
    await choose(page, /^template\/.*front\.pdf/);
    await page.getByRole("button", { name: "Print in true size" }).click();
    await page.locator(".true-size-print svg").first().waitFor({ state: "attached" });
    const sheets = await page.locator(".sheet-of-paper").count();
    const printed = longLines(await page.pdf({ preferCSSPageSize: true }));
    expect(printed).toHaveLength(sheets);
    // A4 (ISO 216) in points of 1/72 in, as a browser rounds it to pixels of 1/96 in.
    for (const { width, height } of printed) {
      expect(Math.abs(width - (210 / 25.4) * 72)).toBeLessThan(0.8);
      expect(Math.abs(height - (297 / 25.4) * 72)).toBeLessThan(0.8);
    }
    // The two bars to lay a ruler on: one across, one up.
    const bars = (printed[0]?.lines ?? []).filter(({ length }) => Math.abs(length - 100) < 0.05);
    expect(new Set(bars.map(({ isAcross }) => isAcross))).toEqual(new Set([true, false]));
  },
  PATIENCE,
);

test(
  "a library that was out of reach is fetched again",
  async () => {
    const { page } = await opened(FIRST_PANEL);
    await page.context().route("**/library.json", (route) => route.abort());
    await enter(page);
    await page.getByRole("alert").filter({ hasText: "has failed" }).waitFor();
    await page.context().unroute("**/library.json");
    await page.getByRole("button", { name: "Make the pack" }).click();
    await made(page);
  },
  PATIENCE,
);

test(
  "what a design says is no markup in any preview",
  async () => {
    const { page, complaints } = await opened(markupDesign);
    await enter(page);
    await made(page);
    const buttons = page.locator(".file-list button");
    for (const button of await buttons.all()) {
      await button.click();
      const [path = ""] = ((await button.textContent()) ?? "").split(" ");
      await page.locator(".preview-bar b").getByText(path, { exact: true }).waitFor();
      const foreign = ".job-pack :is(script, b:has(> b), iframe, object)";
      expect(await page.locator(foreign).count()).toBe(0);
      expect(await page.locator(".file-preview img:not(.picture-preview)").count()).toBe(0);
      expect(await page.locator(".paper-preview :is(b, script)").count()).toBe(0);
    }
    expect(await page.title()).toMatch(/Consolewright$/);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "axe-core finds nothing grave in the room, in light and dark",
  async () => {
    const { page } = await opened(FIRST_PANEL);
    await enter(page);
    await made(page);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      for (const pattern of [/\.nominal\.svg/, /^template/, /\.csv/, /-front\.svg/]) {
        await choose(page, pattern);
        expect(await graveAxeFindings(page)).toEqual([]);
      }
    }
    // And it can find something.
    await page.evaluate(() => {
      for (const button of document.querySelectorAll(".pack-bar button")) button.textContent = "";
    });
    expect((await graveAxeFindings(page)).some((each) => each.startsWith("button-name"))).toBe(
      true,
    );
  },
  PATIENCE,
);
