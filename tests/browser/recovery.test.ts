// Browser and server are killed in the middle of editing (SIGKILL: neither can put anything in order), and started anew:
// less than five seconds of edits are lost, and undo still steps past the last save.

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

test(
  "what was edited five seconds before the end is offered again, with its history",
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
    await revise(before.page, "B", "C");
    await pause(5000);
    await revise(before.page, "C", "D");
    await Promise.all([first.kill(), before.kill()]);
    expect(design.read(PANEL)).toContain("revision: B");

    const second = await startServing(design, port);
    const { page } = await startBrowser(profile, second.address);
    const card = page.locator(".decision").filter({ hasText: "were not saved" });
    await card.getByRole("button", { name: /^See what differs/ }).click();
    await expect.poll(() => card.locator("del").textContent()).toBe("− revision: B\n");
    await card.getByRole("button", { name: /^Restore/ }).click();
    await page.locator(".file-bar").getByText(`Not saved: ${PANEL}`).waitFor();
    // The last edit was younger than two seconds: it may be there or not.
    await expect.poll(() => textIn(page, PANEL)).toMatch(/revision: [CD]/);
    while (!(await textIn(page, PANEL))?.includes("revision: A"))
      await page.getByRole("button", { name: /^Undo: write/ }).click();
    await page.keyboard.press("Control+s");
    await page.locator(".file-news").filter({ hasText: SAVED }).waitFor();
    expect(design.read(PANEL)).toContain("revision: A");
    await card.waitFor({ state: "detached" });
  },
  2 * MINUTE,
);
