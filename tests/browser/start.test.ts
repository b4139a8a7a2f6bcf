// The first five minutes: a page without a design opens the demo, leads on to the examples, guides by doing, takes a list,
// gives the drawing the room, and can be used by finger.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { layDesign } from "../support/desk-page.ts";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import type { DesignInput } from "../support/pack-hashes.ts";
import { faultyDesign, soundDesign } from "../support/page-designs.ts";
import { isRead, strike } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const guideWords = (page: Page): Promise<string> =>
  page
    .locator(".guide [role=status]")
    .textContent()
    .then((words) => words ?? "");

const guideSays = (page: Page, words: string): Promise<void> =>
  expect.poll(() => guideWords(page), { timeout: 8000 }).toContain(words);

/** As files without a folder: they name each other by name alone. */
const looseFiles = ({ files }: DesignInput) =>
  Object.entries(files).map(([path, text]) => ({
    name: path.split("/").at(-1)!,
    mimeType: "text/yaml",
    buffer: Buffer.from(text.replace("../shed.yaml", "shed.yaml")),
  }));

describe("a page without a design", () => {
  test("opens the demo with the guide, and nothing of the examples' choice is loaded before it is asked for", async () => {
    const { page, complaints } = await openPage(stand);
    const loaded: string[] = [];
    page.on("request", (request) => loaded.push(request.url()));
    await page.reload();
    await page.getByRole("application", { name: /^Towing winch from the front/ }).waitFor();
    await guideSays(page, "Pick something");
    // The panel is shown before its console has been read.
    await page.getByRole("button", { name: "Console", exact: true }).waitFor();
    await page.getByRole("status").filter({ hasText: "Opened: tug-trainer" }).waitFor();
    const choice = page.getByRole("combobox", { name: "Panel", exact: true });
    await expect.poll(() => choice.locator("option").count()).toBe(13);
    await expect.poll(() => choice.inputValue()).toBe("winch");
    const ofLater = /start-room|pictures\/|console[.-]|pack[.-]|panel-answers|three|wasm/;
    expect(loaded.filter((address) => ofLater.test(address))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("gives the first reading up to the choice, and keeps a design that was opened meanwhile", async () => {
    const { page } = await openPage(stand);
    const held: (() => void)[] = [];
    await page.context().route("**/examples.json", async (route) => {
      await new Promise<void>((done) => held.push(done));
      await route.continue().catch(() => undefined);
    });
    await page.reload();
    await page.getByRole("button", { name: "Give it up" }).click();
    for (const done of held.splice(0)) done();
    await page.getByRole("button", { name: /^Harbour tug trainer/ }).waitFor();
    await page.reload();
    await page.getByLabel("Open files").setInputFiles(looseFiles(soundDesign));
    await page.getByRole("status").filter({ hasText: "Opened: 2 files" }).waitFor();
    for (const done of held) done();
    await page.getByLabel("Example").waitFor();
    await expect
      .poll(() => page.getByRole("application", { name: /^Bilge pumps/ }).count())
      .toBe(1);
    expect(await page.locator(".guide").count()).toBe(0);
    await page.close();
  });
});

describe("the demo", () => {
  test("leads on to the examples with pictures, and guides by doing, from the keyboard alone", async () => {
    const { page, complaints } = await openPage(stand);
    await page.emulateMedia({ reducedMotion: "reduce" });
    await page.getByRole("button", { name: /^Examples, a list/ }).press("Enter");
    const tile = page.getByRole("button", { name: /^A first panel/ });
    await tile.waitFor();
    const pictures = page.locator(".tile img");
    await expect.poll(() => pictures.count()).toBe(3);
    for (const picture of await pictures.all())
      await expect
        .poll(() => picture.evaluate((image: HTMLImageElement) => image.naturalWidth))
        .toBeGreaterThan(0);
    await tile.focus();
    await page.keyboard.press("Enter");
    await page.getByRole("application").waitFor();
    await guideSays(page, "Pick something");
    const sheet = page.getByRole("application");
    await expect.poll(() => sheet.getAttribute("data-guided")).toBe("");
    expect(await sheet.evaluate((board) => getComputedStyle(board).animationName)).toBe("none");
    await sheet.focus();
    await page.keyboard.press("Tab");
    await guideSays(page, "Move it");
    await page.keyboard.press("ArrowRight");
    await guideSays(page, "Take it back");
    await page.keyboard.press("Control+z");
    await guideSays(page, "See what is found");
    await isRead(page);
    await page.locator(".finding button").first().press("Enter");
    // One panel has no console to step into.
    await guideSays(page, "Begin your own");
    await page.locator(".open-menu summary").press("Enter");
    await page.locator(".guide").waitFor({ state: "detached" });
    await expect.poll(() => page.locator("[data-guided]").count()).toBe(0);

    // Remembered: another example is opened without it.
    await page.getByRole("button", { name: "Where to begin" }).click();
    await page.getByRole("button", { name: /^A rack panel/ }).click();
    await page.getByRole("status").filter({ hasText: "Opened: rack-panel" }).waitFor();
    await page.getByRole("application").waitFor();
    expect(await page.locator(".guide").count()).toBe(0);
    await page.getByRole("button", { name: "Show me round" }).click();
    await guideSays(page, "Pick something");
    await page.getByRole("button", { name: "Leave the guide" }).click();
    await page.locator(".guide").waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
    await page.close();
  });
});

describe("the guide of the demo, in which nothing is found", () => {
  test("has a fault made by hand, shown, and taken back", async () => {
    const { page, complaints } = await openPage(stand);
    page.setDefaultTimeout(60_000);
    await page.getByRole("status").filter({ hasText: "Opened: tug-trainer" }).waitFor();
    const says = (words: string): Promise<void> =>
      expect.poll(() => guideWords(page), { timeout: 60_000 }).toContain(words);
    await says("1 of 8: Pick something");
    await expect.poll(() => page.locator(".findings h2").textContent()).toContain("0 faults");
    await page.getByRole("application").focus();
    await page.keyboard.press("Tab");
    await says("Move it");
    await page.keyboard.press("ArrowRight");
    await says("Take it back");
    await page.keyboard.press("Control+z");
    await says("4 of 8: Do something wrong");
    // Onto its neighbour, wherever that is, or over the edge: one step, to be taken back as one.
    await isRead(page);
    await strike(
      page,
      Array.from({ length: 12 }, () => "Shift+ArrowRight"),
    );
    await says("5 of 8: See what is found");
    const finding = page.locator(".finding.fault button").first();
    await finding.press("Enter");
    await says("6 of 8: Put it right");
    await page.keyboard.press("Control+z");
    await says("7 of 8: Step into the console");
    await page.getByRole("button", { name: "Next", exact: true }).click();
    await says("8 of 8: Begin your own");
    expect(complaints).toEqual([]);
    await page.close();
  }, 200_000);
});

describe("a list", () => {
  test("that is pasted makes a panel on the mount that is chosen, which is kept to be saved", async () => {
    const { page, complaints } = await openPage(stand);
    await page.locator(".open-menu summary").click();
    await page.getByRole("button", { name: "Where to begin" }).click();
    await page.locator(".tile").first().waitFor();
    await page.evaluate(() => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", "part,quantity,legend\ntoggle-6,2,ONE; TWO\n");
      document.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true }));
    });
    await expect.poll(() => page.getByLabel("The list").inputValue()).toContain("ONE; TWO");
    // A box lid leaves the width to the design.
    await page.getByLabel("Mount").selectOption("box-lid");
    await page.getByLabel("Width in mm").fill("wide");
    await page.getByRole("button", { name: "Arrange it" }).click();
    await page.getByText('"wide" is no width').waitFor();
    await page.getByLabel("Width in mm").fill("152.4");
    await page.getByRole("button", { name: "Arrange it" }).click();
    await page.getByRole("application", { name: /from the front: 2 components/ }).waitFor();
    await page.getByText("Not saved: new-panel.yaml").waitFor();
    const text = page.getByLabel("Text of new-panel.yaml");
    await expect.poll(() => text.inputValue()).toContain("mount: box-lid");
    expect(await text.inputValue()).toContain("width: 152.4 mm");
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("a page that is served with a design opens it, with the guide at hand", async () => {
  const design = layDesign(soundDesign);
  const server = await design.serve("dist/viewer");
  const page = await stand.browser.newPage();
  await page.goto(server.address);
  await page.getByRole("application").waitFor();
  await isRead(page);
  expect(await page.locator(".start, .guide").count()).toBe(0);
  await page.getByRole("button", { name: "Show me round" }).click();
  await guideSays(page, "Pick something");
  await page.close();
  await server.close();
  design.remove();
});

async function openedAt(width: number, height: number): Promise<Page> {
  const { page } = await openPage(stand);
  await page.setViewportSize({ width, height });
  await page.getByLabel("Open files").setInputFiles(looseFiles(faultyDesign));
  await page.getByRole("application").waitFor();
  await isRead(page);
  return page;
}

test("at 1280 by 720 the controls above take one line and the drawing has its room", async () => {
  const page = await openedAt(1280, 720);
  const header = (await page.locator("header").boundingBox())!;
  // A line of controls of 24 px or more, with room above and below: two lines would be 60.
  expect(header.height).toBeLessThan(56);
  const board = (await page.getByRole("application").boundingBox())!;
  expect(board.height).toBeGreaterThan(720 / 2);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
  await page.close();
});

describe.each([
  [768, 1024],
  [1024, 768],
])("on a tablet of %i by %i", (width, height) => {
  test("every control is a target of 24 px, and nothing lies beside the page", async () => {
    const page = await openedAt(width, height);
    await page.locator('[data-component="full"]').first().click();
    await page.locator(".deeds").waitFor();
    await page.locator(".open-menu summary").click();
    expect(await page.evaluate(smallTargets)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
    // The measure itself can fail.
    await page.evaluate(() => {
      for (const button of document.querySelectorAll("button"))
        button.setAttribute("hidden", "hidden");
      const small = document.createElement("button");
      small.textContent = "x";
      document.body.append(small);
      small.style.minHeight = "0";
      small.style.height = "12px";
    });
    expect(await page.evaluate(smallTargets)).not.toEqual([]);
    await page.close();
  });

  test("drawer and section leave the sheet in sight", async () => {
    const page = await openedAt(width, height);
    await page.getByRole("button", { name: /Parts drawer/ }).click();
    await page.getByLabel("Section").check();
    await page.locator(".drawer li").first().waitFor();
    await page.locator(".section-pane svg").waitFor();
    const board = (await page.getByRole("application").boundingBox())!;
    expect(board.height).toBeGreaterThan(height / 4);
    expect(board.y + board.height).toBeLessThan(height);
    await page.close();
  });
});

/** Under 24 by 24 CSS pixels (WCAG 2.2, 2.5.8); numbers in the gutter have the same in the list, which the rule allows. */
function smallTargets(): readonly string[] {
  const targets = document.querySelectorAll("button, select, summary, input, textarea");
  return [...targets].flatMap((target) => {
    if (!target.checkVisibility() || target.closest(".gutter") !== null) return [];
    const label = target.closest("label");
    const boxes = [target, ...(label === null ? [] : [label])].map((one) =>
      one.getBoundingClientRect(),
    );
    const width = Math.max(...boxes.map((box) => box.width));
    const high = Math.max(...boxes.map((box) => box.height));
    return width >= 24 && high >= 23.5
      ? []
      : [`${target.outerHTML.slice(0, 80)} ${width} x ${high}`];
  });
}
