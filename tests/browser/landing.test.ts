// A component that is dropped stays where it was dropped: on no frame between the drop and the findings is it seen elsewhere.

import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, restingBox, PANEL as TWO, textHas } from "../support/panel-bench.ts";

/** One of the two, by itself. */
const PANEL = TWO.replace(/ {2}aux:.*\n/, "");

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

test("nothing jumps while what was dropped is read", async () => {
  const { page, complaints } = await benchWith(stand, PANEL);
  const lever = page.locator('[data-component="main"]');
  const from = await restingBox(lever);
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 20, y, { steps: 3 });
  await page.mouse.move(x + 40, y, { steps: 3 });
  await page.evaluate(() => {
    const seen: number[] = [];
    const look = (): void => {
      const place = document.querySelector('[data-component="main"]')!.getBoundingClientRect().x;
      seen.push(Math.round(place));
      requestAnimationFrame(look);
    };
    look();
    Object.assign(window, { seen });
  });
  await page.mouse.up();
  await textHas(page, /main: \{ part: toggle-6, at: \{ x: (?!40 mm)/);
  const places = await page.evaluate(async () => {
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    return window.seen;
  });
  const dropped = places[0] ?? Number.NaN;
  expect(dropped - from.x).toBeGreaterThan(30);
  // A frame of the picture may be drawn to another part of a pixel.
  expect(places.filter((place) => Math.abs(place - dropped) > 1)).toEqual([]);
  expect(complaints).toEqual([]);
}, 60_000);

test("what can't be carried out is said, and the thing goes back to where it is", async () => {
  const { page } = await openPage(stand);
  await page.context().route("**/deeds-room-*.js", (route) => route.abort());
  await page.getByLabel("Open files").setInputFiles({
    name: "pumps.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(PANEL),
  });
  const lever = page.locator('[data-component="main"]');
  const from = await restingBox(lever);
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 40, y, { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => page.locator(".said").textContent()).toContain("could not be fetched");
  expect((await restingBox(lever)).x).toBeCloseTo(from.x, 0);
  await page.close();
}, 60_000);

test("a finding's mark goes along with what is dragged", async () => {
  const near = `${PANEL}  aux: { part: toggle-6, at: { x: 52 mm, y: 50 mm } }\n`;
  const { page } = await benchWith(stand, near);
  const lever = page.locator('[data-component="main"]');
  const mark = page.locator('.finding-marks [data-owner="main"]').first();
  const [from, markFrom] = [await restingBox(lever), await restingBox(mark)];
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 30, y, { steps: 4 });
  const [to, markTo] = [await restingBox(lever), await restingBox(mark)];
  await page.mouse.up();
  expect(to.x - from.x).toBeLessThan(-20);
  expect(markTo.x - markFrom.x).toBeCloseTo(to.x - from.x, 0);
  await page.close();
}, 60_000);

declare global {
  interface Window {
    readonly seen: readonly number[];
  }
}
