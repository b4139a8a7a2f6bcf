// One panel opened in the page's bench, and its text as the page shows it: what the tests of the panel view share.

import type { Page } from "playwright-core";
import { expect } from "vitest";
import { openPage, type PageStand } from "./open-page.ts";

export const PANEL = `consolewright: 1
kind: panel
name: pumps
title: Pumps
mount: console-rail
height: 10 modules
stack: [{ layer: face, sheet: aluminium-2 }]
components:
  main: { part: toggle-6, at: { x: 40 mm, y: 50 mm }, legend: MAIN }
  aux: { part: toggle-6, at: { right-of: main, centres: 40 mm }, legend: "<img src=x onerror=alert(1)>" }
`;

export interface Bench {
  readonly page: Page;
  readonly complaints: readonly string[];
}

export async function benchWith(stand: PageStand, text: string): Promise<Bench> {
  const { page, complaints } = await openPage(stand);
  await page.getByLabel("Open files").setInputFiles({
    name: "pumps.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(text),
  });
  await page.getByRole("status").filter({ hasText: "Opened: pumps.yaml" }).waitFor();
  await page.getByRole("application").waitFor();
  return { page, complaints };
}

/** Waits until what is seen is the reading of the newest text: keys that follow find the page at rest. */
export const isRead = (page: Page): Promise<void> =>
  page.locator('main[aria-busy="false"]').waitFor();

/** Of the design, once it has been read. */
export async function textOf(page: Page): Promise<string> {
  await isRead(page);
  return page.getByRole("textbox", { name: "Text of pumps.yaml" }).inputValue();
}

/** Waits until the text is as wanted and has been read; says what it is where it never gets there. */
export async function textHas(page: Page, wanted: string | RegExp): Promise<string> {
  await expect
    .poll(() => textOf(page), { timeout: 8000 })
    .toEqual(
      typeof wanted === "string" ? expect.stringContaining(wanted) : expect.stringMatching(wanted),
    );
  return textOf(page);
}
