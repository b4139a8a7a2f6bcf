// How the panel's room shares a small screen: the sheet first, what can be done always in sight, the caret's line too.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, PANEL, restingBox } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const LAPTOP = { width: 1280, height: 720 };
const TABLET = { width: 1024, height: 768 };

const pick = (page: Page, index: number): Promise<void> =>
  page.getByRole("application").locator("[data-component]").nth(index).click();

test("with nothing picked the ticket is one line; with drawer and section open the sheet has half of its room and more", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  await page.setViewportSize(LAPTOP);
  // A line of the page's letters is 24 pixels; two would be 48.
  expect((await restingBox(page.locator(".ticket"))).height).toBeLessThan(36);
  await page.getByRole("button", { name: "Parts drawer" }).click();
  await page.getByLabel("Section").check();
  const section = await restingBox(page.locator(".section-pane"));
  const board = await restingBox(page.locator(".board"));
  const drawer = await restingBox(page.locator(".drawer"));
  expect(board.height).toBeGreaterThan(section.height);
  expect(board.width).toBeGreaterThan(drawer.width);
  // Several parts are seen in the drawer at once.
  const third = await restingBox(page.locator(".drawer li").nth(2));
  expect(third.y + third.height).toBeLessThan(drawer.y + drawer.height);
  expect(complaints).toEqual([]);
  await page.close();
}, 60_000);

test.each([LAPTOP, TABLET])(
  "what can be done with a picked part is in sight at $width by $height, and hides no part of the panel",
  async (size) => {
    const { page, complaints } = await benchWith(stand, PANEL);
    await page.setViewportSize(size);
    await restingBox(page.locator(".board"));
    await pick(page, 0);
    const ticket = await restingBox(page.locator(".ticket"));
    for (const name of ["Turn a quarter", "Copy", "Take off"]) {
      const deed = await restingBox(page.locator(".deeds").getByRole("button", { name }));
      expect(deed.y).toBeGreaterThanOrEqual(ticket.y);
      expect(deed.y + deed.height).toBeLessThanOrEqual(size.height);
    }
    const outline = await restingBox(page.locator(".front .outline"));
    expect(outline.y + outline.height).toBeLessThanOrEqual(ticket.y);
    expect(complaints).toEqual([]);
    await page.close();
  },
  60_000,
);

test("on a tablet no field of a new list runs out of its door", async () => {
  const { page } = await openPage(stand);
  await page.setViewportSize(TABLET);
  await page.getByText("Open", { exact: true }).click();
  await page.getByRole("button", { name: "New panel from a list" }).click();
  const door = await restingBox(page.locator(".list-door"));
  const mount = await restingBox(page.getByLabel("Mount"));
  expect(mount.x + mount.width).toBeLessThanOrEqual(door.x + door.width);
  await page.close();
});

test("the caret's line stays in sight when what is found takes room from the text", async () => {
  const text = `${PANEL}${"# more of it\n".repeat(60)}`;
  const { page } = await benchWith(stand, text);
  await page.setViewportSize(LAPTOP);
  const field = page.getByRole("textbox", { name: "Text of pumps.yaml" });
  await field.focus();
  await page.keyboard.press("Control+End");
  await page.keyboard.type("nothing: [");
  await page.locator(".finding.fault").first().waitFor();
  const scroller = page.locator(".text-scroller");
  await restingBox(scroller);
  const { top, low, high } = await scroller.evaluate((view) => {
    const area = view.querySelector("textarea")!;
    const line = area.value.slice(0, area.selectionEnd).split("\n").length;
    const number = view.querySelectorAll(".gutter li")[line - 1]!.getBoundingClientRect();
    const { top: upper, bottom } = view.getBoundingClientRect();
    return { top: upper, low: number.top, high: bottom - number.bottom };
  });
  expect(low).toBeGreaterThanOrEqual(top);
  expect(high).toBeGreaterThanOrEqual(0);
  await page.close();
}, 60_000);

test("the number of a line with a finding stands level with its neighbours' numbers", async () => {
  const { page } = await benchWith(stand, PANEL);
  await page.locator(".gutter .line-mark").first().waitFor();
  const tops = await page.locator(".gutter li").evaluateAll((lines) =>
    lines.map((line) => {
      const range = document.createRange();
      range.selectNodeContents(line.lastChild!);
      return range.getBoundingClientRect().top - line.parentElement!.getBoundingClientRect().top;
    }),
  );
  // Lines are 19 pixels high.
  for (const [index, top] of tops.entries())
    expect(Math.abs(top - tops[0]! - 19 * index)).toBeLessThan(1);
  await page.close();
});
