// Snapshots in a real browser's own keep: a photograph outlives the page with its snapshot, byte for byte, and is saved from it.

import { readFileSync, rmSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished, test } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { buildDeskPage, layDesign } from "../support/desk-page.ts";
import { soundDesign } from "../support/page-designs.ts";

let browser: Browser;
let built: string;

beforeAll(async () => {
  [browser, built] = await Promise.all([launchBrowser(), buildDeskPage()]);
});

afterAll(async () => {
  await browser?.close();
  rmSync(built, { recursive: true, force: true });
});

test("a photograph outlives the page with its snapshot, and goes with it", async () => {
  const design = layDesign(soundDesign);
  const server = await design.serve(built);
  const context = await browser.newContext({ viewport: { width: 1200, height: 900 } });
  onTestFinished(async () => {
    await context.close();
    await server.close();
    design.remove();
  });
  const page = await context.newPage();
  await page.goto(server.address);
  await page.getByRole("button", { name: "Snapshots (0)" }).click();
  await page.evaluate(() => window.desk.add("bench.jpg", [255, 216, 255, 7]));
  await page.getByRole("textbox", { name: "Name" }).fill("with its photograph");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Snapshots (1)" }).waitFor();
  await page.reload();
  await page.getByRole("button", { name: "Snapshots (1)" }).click();
  await page.locator(".snapshots li").filter({ hasText: "with one shape or photograph" }).waitFor();
  const bytes = (): Promise<string | undefined> =>
    page.evaluate(() => window.desk.bytes("bench.jpg"));
  expect(await bytes()).toBeUndefined();
  await page.getByRole("button", { name: "Bring back: with its photograph" }).click();
  await expect.poll(bytes).toBe("255 216 255 7");
  await page.getByRole("button", { name: "Compare: with its photograph" }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save bench.jpg of the snapshot" }).click(),
  ]);
  expect([...readFileSync(await download.path())]).toEqual([255, 216, 255, 7]);
  const keptContents = (): Promise<number> =>
    page.evaluate(
      () =>
        new Promise<number>((done) => {
          const opening = indexedDB.open("consolewright");
          opening.addEventListener("success", () => {
            const base = opening.result;
            const count = base.transaction("snapshot-bytes").objectStore("snapshot-bytes").count();
            count.addEventListener("success", () => {
              base.close();
              done(count.result);
            });
          });
        }),
    );
  expect(await keptContents()).toBe(1);
  await page.getByRole("button", { name: "Remove: with its photograph" }).click();
  await page.getByRole("button", { name: "Snapshots (0)" }).waitFor();
  expect(await keptContents()).toBe(0);
});
