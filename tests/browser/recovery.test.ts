// Browser and server are killed in the middle of a drag, behind edits without a pause (SIGKILL: neither can put anything in
// order), and started anew: less than five seconds of edits are lost, and undo still steps past the last save.

import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished, test } from "vitest";
import { browserCommand } from "../support/browser.ts";
import {
  buildDeskPage,
  type DeskDesign,
  layDesign,
  replaceIn,
  textIn,
} from "../support/desk-page.ts";
import { soundDesign } from "../support/page-designs.ts";

const PANEL = "panels/bilge.yaml";
/** Words are matched without regard to capitals: "Not saved" must not do. */
const SAVED = /(^| )Saved: /;
const server = resolve(import.meta.dirname, "../support/desk-server.ts");

let built: string;

beforeAll(async () => {
  built = await buildDeskPage();
});

afterAll(() => rmSync(built, { recursive: true, force: true }));

/** A process of this test's own in a group of its own, so that killing it takes whatever it started. */
interface Killable {
  readonly child: ChildProcess;
  readonly kill: () => Promise<void>;
}

const killable = (child: ChildProcess): Killable => {
  const kill = async (): Promise<void> => {
    if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((done) => child.on("exit", done));
    process.kill(-child.pid, "SIGKILL");
    await ended;
  };
  onTestFinished(kill);
  return { child, kill };
};

interface RunningServer extends Killable {
  readonly address: string;
}

const startServing = async ({ folder }: DeskDesign, port: number): Promise<RunningServer> => {
  const args = ["--import", "tsx", server, folder, soundDesign.entry, built, `${port}`];
  const started = killable(spawn(process.execPath, args, { detached: true }));
  const address = await new Promise<string>((done, failed) => {
    let said = "";
    started.child.stderr?.on("data", (piece) => {
      said += piece;
    });
    started.child.stdout?.on("data", (piece) => done(`${piece}`.trim()));
    started.child.on("exit", () => failed(new Error(said)));
  });
  return { ...started, address };
};

interface RunningBrowser extends Killable {
  readonly browser: Browser;
  readonly page: Page;
}

/** Started by hand, because a browser that is closed in order would have time to write. */
const startBrowser = async (profile: string, address: string): Promise<RunningBrowser> => {
  const { executablePath, args, env } = browserCommand();
  const told = join(profile, "DevToolsActivePort");
  rmSync(told, { force: true });
  const started = killable(
    spawn(
      executablePath,
      [...args, "--headless=new", "--remote-debugging-port=0", `--user-data-dir=${profile}`],
      { env, detached: true, stdio: "ignore" },
    ),
  );
  await expect
    .poll(() => existsSync(told) && readFileSync(told, "utf8"), { timeout: 20_000 })
    .toMatch(/\d+\n/);
  const port = readFileSync(told, "utf8").split("\n")[0];
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const context = browser.contexts()[0] ?? (await browser.newContext());
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
  return { ...started, browser, page };
};

const revise = (page: Page, from: string, to: string): Promise<{ kind: string }> =>
  replaceIn(page, { file: PANEL, from: `revision: ${from}`, to: `revision: ${to}` });

const MINUTE = 60_000;

interface Revised {
  readonly revision: string;
  /** When the page had it, ms. */
  readonly at: number;
  /** How old the oldest edit was then that no copy held, ms. */
  readonly unkept: number;
}

/** Edits without a pause worth the name, up to the last moment: a copy that waited for quiet would never be kept. */
const reviseFor = async (page: Page, from: string, milliseconds: number): Promise<Revised[]> => {
  const begun = Date.now();
  const revised: Revised[] = [];
  for (let last = from; Date.now() - begun < milliseconds; ) {
    const revision = `R${revised.length + 1}`;
    await revise(page, last, revision);
    const made = { revision, at: Date.now() };
    const kept = await keptRevision(page);
    const all = [...revised, made];
    const oldest = all[all.findIndex((each) => each.revision === kept) + 1];
    revised.push({ ...made, unkept: oldest === undefined ? 0 : Date.now() - oldest.at });
    last = revision;
    await pause(BETWEEN_MS);
  }
  return revised;
};

/** Of the copy that lies in the browser's keep; null: there is none. */
const keptRevision = async (page: Page): Promise<string | null> => {
  const text = await page.evaluate(
    (file) =>
      new Promise<string>((done, failed) => {
        const opening = indexedDB.open("consolewright");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction("recovery").objectStore("recovery").getAll();
          asked.onsuccess = () => {
            opening.result.close();
            done(asked.result[0]?.texts.get(file) ?? "");
          };
        };
      }),
    PANEL,
  );
  return /revision: (R\d+)/.exec(text)?.[1] ?? null;
};

/** A component held and moved, and not let go: no edit as yet, and nothing of it may be in what comes back. */
const takeInHand = async (page: Page): Promise<void> => {
  const component = page.locator("[data-component] path").first();
  const box = (await component.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 12, y + 6, { steps: 3 });
  await page.locator(".under-way").waitFor();
};

const BETWEEN_MS = 300;
/** What may be lost at most. */
const MOST_LOST_MS = 5000;
/** Whenever the first copy comes, there is time for the next one to be too late. */
const TWO_TERMS_MS = 2 * MOST_LOST_MS + 500;

test(
  "of edits up to a drag that is never let go less than five seconds are lost, and what is left has its history",
  async () => {
    const design = layDesign(soundDesign);
    const profile = mkdtempSync(join(tmpdir(), "consolewright-profile-"));
    onTestFinished(() => {
      design.remove();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    });
    const first = await startServing(design, 0);
    const port = Number(new URL(first.address).port);
    const before = await startBrowser(profile, first.address);
    await revise(before.page, "A", "B");
    await before.page.keyboard.press("Control+s");
    await before.page.locator(".file-news").filter({ hasText: SAVED }).waitFor();
    const revised = await reviseFor(before.page, "B", TWO_TERMS_MS);
    await takeInHand(before.page);
    const killed = Date.now();
    await Promise.all([first.kill(), before.kill()]);
    expect(design.read(PANEL)).toContain("revision: B");
    // Some were made in the last seconds: else the bound would not be touched.
    expect(revised.filter(({ at }) => killed - at < MOST_LOST_MS / 2).length).toBeGreaterThan(2);

    expect(Math.max(...revised.map(({ unkept }) => unkept))).toBeLessThan(MOST_LOST_MS);

    const second = await startServing(design, port);
    const { page } = await startBrowser(profile, second.address);
    const card = page.locator(".decision").filter({ hasText: "were not saved" });
    await expect.poll(() => card.textContent()).toMatch(/Edits of \d{4}-\d\d-\d\d \d\d:\d\d were/);
    await card.getByRole("button", { name: /^See what differs/ }).click();
    await expect.poll(() => card.locator("del").textContent()).toBe("− revision: B\n");
    await card.getByRole("button", { name: /^Restore/ }).click();
    await page.locator(".file-bar").getByText(`Not saved: ${PANEL}`).waitFor();
    const restored = /revision: (R\d+)/.exec((await textIn(page, PANEL)) ?? "")?.[1];
    const lost = revised.slice(revised.findIndex(({ revision }) => revision === restored) + 1);
    expect(lost.length).toBeLessThan(revised.length);
    expect(Math.max(0, ...lost.map(({ at }) => killed - at))).toBeLessThan(MOST_LOST_MS);

    while (!(await textIn(page, PANEL))?.includes("revision: A"))
      await page.getByRole("button", { name: /^Undo: write/ }).click();
    await page.keyboard.press("Control+s");
    await page.locator(".file-news").filter({ hasText: SAVED }).waitFor();
    expect(design.read(PANEL)).toContain("revision: A");
    await card.waitFor({ state: "detached" });
  },
  2 * MINUTE,
);
