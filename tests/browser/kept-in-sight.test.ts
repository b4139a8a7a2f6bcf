// What must stay in sight while one works on a panel: what was found in a list, the drawing's size, where a thing goes that is
// dragged; and what must not: words about a design that was left.

import { afterAll, beforeAll, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, PANEL, restingBox, textHas } from "../support/panel-bench.ts";

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

test("the drawing keeps its size when something is picked, and tells in numbers where it goes while it is dragged", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  await page.setViewportSize({ width: 1280, height: 720 });
  const drawing = page.locator("svg.front");
  const before = await restingBox(drawing);
  const main = await restingBox(page.locator('.component[data-owner="main"]'));
  const from = { x: main.x + main.width / 2, y: main.y + main.height / 2 };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, from.y, { steps: 4 });
  await page.mouse.move(from.x + 40, from.y, { steps: 4 });
  expect(await restingBox(drawing)).toEqual(before);
  // It stands under the pointer, to what a grid and the lines of others may draw it: 3 mm.
  const scale = await page
    .locator(".panel-place")
    .evaluate((place: SVGGElement) => place.transform.baseVal.consolidate()?.matrix.a ?? 0);
  const moved = await restingBox(page.locator('.component[data-owner="main"]'));
  expect(Math.abs(moved.x - main.x - 40)).toBeLessThanOrEqual(3 * scale);
  // It began at x 40 mm.
  const words = (await page.locator(".under-way").textContent()) ?? "";
  const [, x = "", right = ""] =
    /^main to x ([\d.]+) mm, y 50 mm: ([\d.]+) mm to the right/.exec(words) ?? [];
  expect(Number(x)).toBeCloseTo(40 + Number(right), 6);
  expect(Math.abs(Number(right) - 40 / scale)).toBeLessThanOrEqual(3);
  await page.mouse.up();
  await textHas(page, `main: { part: toggle-6, at: { x: ${x} mm, y: 50 mm }`);
  await expect.poll(() => page.locator(".under-way").count()).toBe(0);
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

test("a text of 200,000 lines is refused for its size without its lines being numbered", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  const field = page.getByRole("textbox", { name: "Text of pumps.yaml" });
  const typed = `${PANEL}${"# a line\n".repeat(200_000)}`;
  await field.evaluate((area: HTMLTextAreaElement, text) => {
    area.value = text;
    area.dispatchEvent(new Event("input", { bubbles: true }));
  }, typed);
  await page
    .locator("p.too-large")
    .filter({ hasText: `${typed.length} characters` })
    .waitFor();
  expect(await page.locator(".gutter li").count()).toBe(0);
  // It stays, to be shortened.
  expect((await field.inputValue()).length).toBe(typed.length);
  await page.getByRole("button", { name: /^Undo: type in pumps.yaml/ }).click();
  await textHas(page, PANEL);
  await expect.poll(() => page.locator(".gutter li").count()).toBe(PANEL.split("\n").length);
  expect(complaints).toEqual([]);
  await page.close();
}, 60_000);

test("files without a panel leave what is open in its place, and it is said why", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  await page.getByLabel("Open files").setInputFiles({
    name: "shed.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from("consolewright: 1\nkind: workshop\nname: shed\n"),
  });
  await page
    .locator(".file-news")
    .filter({ hasText: "Not opened: shed.yaml is neither a panel nor a console" })
    .waitFor();
  await page.getByRole("application", { name: /^Pumps from the front/ }).waitFor();
  await textHas(page, PANEL);
  expect(complaints).toEqual([]);
  await page.close();
});
