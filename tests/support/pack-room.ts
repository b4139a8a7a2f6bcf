// The room of the job pack as a test works it: a design behind the server of `view`, its pack made, its files saved, and what
// the built command line makes of the same design.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { onTestFinished } from "vitest";
import { complaintsOf } from "./complaints.ts";
import { type DeskDesign, layDesign } from "./desk-page.ts";
import type { DesignInput } from "./pack-hashes.ts";

const root = resolve(import.meta.dirname, "../..");
/** Milliseconds: seconds on a quiet machine; a busy one takes ten times as long. */
export const PATIENCE = 240_000;

const exampleText = (name: string): string =>
  readFileSync(join(root, "examples/first-panel", name), "utf8");

export const FIRST_PANEL: DesignInput = {
  entry: "panel.yaml",
  files: Object.fromEntries(
    ["panel.yaml", "workshop.yaml", "measured-parts.yaml"]
      .filter((name) => name !== "measured-parts.yaml" || exampleText("panel.yaml").includes(name))
      .map((name) => [name, exampleText(name)]),
  ),
};

export interface OpenedDesign extends DeskDesign {
  readonly page: Page;
  readonly complaints: readonly string[];
}

/** `first`: carried out in the page before anything of it is loaded. */
export const openedRoom = async (
  browser: Browser,
  input: DesignInput,
  first?: () => void,
): Promise<OpenedDesign> => {
  const design = layDesign(input);
  const server = await design.serve(join(root, "dist/viewer"));
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  context.setDefaultTimeout(PATIENCE);
  const page = await context.newPage();
  if (first !== undefined) await page.addInitScript(first);
  const complaints = complaintsOf(page);
  onTestFinished(async () => {
    await context.close();
    await server.close();
    design.remove();
  });
  await page.goto(server.address);
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
  return { ...design, page, complaints };
};

export const enter = (page: Page): Promise<void> =>
  page.getByRole("button", { name: "Job pack", exact: true }).click();

export const made = (page: Page): Promise<void> =>
  page.getByRole("status").filter({ hasText: "The pack is made" }).waitFor();

export const saved = async (
  page: Page,
  name: string | RegExp,
): Promise<{ name: string; bytes: Buffer }> => {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
};

/** What the built command line writes for the same design. */
export const byCommand = (
  { folder }: DeskDesign,
  entry: string,
  form: "--zip" | "--one-zip",
  kinds: readonly string[] = [],
): ((name: string) => Buffer) => {
  const out = mkdtempSync(join(tmpdir(), "consolewright-zips-"));
  onTestFinished(() => rmSync(out, { recursive: true, force: true }));
  execFileSync(
    process.execPath,
    [join(root, "dist/cli/main.js"), "make", entry, form, ...kinds, "--out", out],
    { cwd: folder, stdio: ["ignore", "ignore", "pipe"] },
  );
  return (name) => readFileSync(join(out, name));
};

export const choose = (page: Page, pattern: RegExp): Promise<void> =>
  page.locator(".file-list button").filter({ hasText: pattern }).first().click();
