// One panel opened in the page's bench, and its text as the page shows it: what the tests of the panel view share.

import type { Locator, Page } from "playwright-core";
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

/** On a page at rest: does what ends in a reading and waits for it, where nothing that is seen would tell. */
export async function andRead(page: Page, act: () => Promise<void>): Promise<void> {
  const watch = await page.evaluateHandle(() => {
    const main = document.querySelector("main")!;
    let wasBusy = false;
    const turned = new Promise<void>((done) => {
      new MutationObserver(() => {
        const isBusy = main.ariaBusy === "true";
        if (wasBusy && !isBusy) done();
        wasBusy ||= isBusy;
      }).observe(main, { attributeFilter: ["aria-busy"] });
    });
    return { turned };
  });
  await act();
  await watch.evaluate(({ turned }) => turned);
  await watch.dispose();
}

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

/** Where a thing lies once the page round it no longer moves. */
export async function restingBox(
  thing: Locator,
): Promise<{ x: number; y: number; width: number; height: number }> {
  for (;;) {
    const before = (await thing.boundingBox())!;
    await thing.page().waitForTimeout(200);
    const after = (await thing.boundingBox())!;
    if (JSON.stringify(before) === JSON.stringify(after)) return after;
  }
}

/** For `page.evaluate`: whatever the page asks its workers from now on is asked a third of a second later, as on a busy machine. */
export function asksLate(): void {
  const { postMessage } = Worker.prototype;
  Worker.prototype.postMessage = function (message: unknown): void {
    setTimeout(() => postMessage.call(this, message), 300);
  };
}

/** Of the DevTools protocol, Input.dispatchKeyEvent. */
const MODIFIERS: Readonly<Record<string, number>> = { Control: 2, Shift: 8 };
/** Keys that are called by their place. */
const WRITES: Readonly<Record<string, string>> = { Comma: ",", Period: "." };

/**
 * Keys one behind the other as a hand strikes them that doesn't rest: no answer of the page is waited for between them, so that
 * a busy machine makes no pause of its own. Written as for `keyboard.press`; they are struck where the focus is, and type nothing.
 */
export async function strike(page: Page, keys: readonly string[]): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await Promise.all(
    keys.map((struck) => {
      const names = struck.split("+");
      const name = names.pop() ?? "";
      // As UI Events has it: what the key writes, and where it lies.
      const key = WRITES[name] ?? name;
      const code = name.length > 1 ? name : `Key${name.toUpperCase()}`;
      const modifiers = names.reduce((sum, each) => sum + (MODIFIERS[each] ?? 0), 0);
      return session.send("Input.dispatchKeyEvent", { type: "rawKeyDown", key, code, modifiers });
    }),
  );
  await session.detach();
}
