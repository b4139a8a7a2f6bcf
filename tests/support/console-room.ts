// The room of the tug trainer's console as a test works it: its picture drawn once, without motion of the camera or smoothing,
// one pixel a pixel (it is drawn by software); what it says, and the rows of its panels.

import type { Locator, Page } from "playwright-core";
import { openPage, type PageStand, standOf } from "./open-page.ts";

export interface ConsoleRoom {
  readonly stand: PageStand;
  readonly page: Page;
  readonly complaints: readonly string[];
  /** How many pictures have been drawn. */
  readonly frames: () => Promise<number>;
  /** Until more have been drawn than there were. */
  readonly drawn: (before: number) => Promise<void>;
  /** Until nothing has been drawn for as long as several motions of the camera take, and what was asked for has been. */
  readonly still: () => Promise<number>;
  readonly viewFrom: (name: string) => Promise<void>;
  readonly hand: (name: string) => Promise<void>;
  readonly happened: (words: string) => Promise<void>;
  readonly panelRow: (name: string) => Locator;
}

/** Milliseconds: thirteen panels are read and drawn, on a machine that may be busy. */
export const OPENING = 150_000;

export async function openConsoleRoom(): Promise<ConsoleRoom> {
  const stand = await standOf("dist/viewer");
  const { page, complaints } = await openPage(stand);
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.goto(`${stand.server.address}?picture=plain`);
  await page.getByLabel("Example").selectOption("tug-trainer");
  await page
    .getByRole("status")
    .filter({ hasText: "Opened: tug-trainer" })
    .waitFor({ timeout: OPENING });
  await page.getByRole("button", { name: "Console", exact: true }).click();
  const room = roomOn(page);
  await room.panelRow("voyage-recorder").waitFor();
  await room.drawn(0);
  return { ...room, stand, page, complaints };
}

function roomOn(page: Page): Omit<ConsoleRoom, "stand" | "page" | "complaints"> {
  const frames = async (): Promise<number> =>
    Number(await page.locator(".stage canvas").getAttribute("data-frames"));
  const drawn = async (before: number): Promise<void> => {
    await page.waitForFunction(
      (count) =>
        Number(document.querySelector<HTMLElement>(".stage canvas")?.dataset["frames"] ?? 0) >
        count,
      before,
    );
  };
  const still = async (): Promise<number> => {
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    for (let before = -1; ; ) {
      const now = await frames();
      if (now === before) return now;
      before = now;
      await page.waitForTimeout(400);
    }
  };
  return {
    frames,
    drawn,
    still,
    viewFrom: async (name) => {
      await page.getByRole("button", { name, exact: true }).click();
      await still();
    },
    hand: (name) => page.getByRole("radio", { name }).check(),
    happened: (words) => page.getByLabel("What happened").filter({ hasText: words }).waitFor(),
    // By the key that stands beside its title.
    panelRow: (name) =>
      page.locator(".console-panels li").getByRole("button", { name: `(${name}) ` }),
  };
}
