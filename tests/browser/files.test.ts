// The page with its server: edits, saves, changes outside, conflicts, files that can't be written, and what an
// accessibility checker of others finds in it.

import { chmodSync, rmSync, unlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { graveAxeFindings } from "../support/axe.ts";
import { launchBrowser } from "../support/browser.ts";
import {
  buildDeskPage,
  type DeskDesign,
  layDesign,
  replaceIn,
  textIn,
} from "../support/desk-page.ts";
import { faultyDesign, soundDesign } from "../support/page-designs.ts";
import { isRead } from "../support/panel-bench.ts";

const PANEL = "panels/bilge.yaml";
const SHED = "shed.yaml";
/** Words are matched without regard to capitals: "Not saved" must not do. */
const SAVED = /(^| )Saved: /;

let browser: Browser;
let built: string;

beforeAll(async () => {
  [browser, built] = await Promise.all([launchBrowser(), buildDeskPage()]);
});

afterAll(async () => {
  await browser?.close();
  rmSync(built, { recursive: true, force: true });
});

/** A disk that is full while `isFull` says so. */
const fillableDisk = (isFull: () => boolean): Disk => ({
  ...realDisk,
  write: (path, bytes, like) => {
    if (isFull()) throw Object.assign(new Error("no space"), { code: "ENOSPC" });
    realDisk.write(path, bytes, like);
  },
});

interface Opened extends DeskDesign {
  readonly page: Page;
  readonly address: string;
  readonly stop: () => Promise<void>;
}

const opened = async (
  before: (design: DeskDesign) => void = () => undefined,
  disk: Disk = realDisk,
): Promise<Opened> => {
  const design = layDesign(soundDesign);
  before(design);
  const server = await design.serve(built, { disk });
  const page = await openAt(server.address);
  onTestFinished(async () => {
    await page.context().close();
    await server.close();
    design.remove();
  });
  return { ...design, page, address: server.address, stop: server.close };
};

const openAt = async (address: string): Promise<Page> => {
  const context = await browser.newContext({ viewport: { width: 1200, height: 900 } });
  const page = await context.newPage();
  await goTo(page, address);
  return page;
};

const goTo = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
};

const news = (page: Page, words: string | RegExp): Promise<void> =>
  page.locator(".file-news").filter({ hasText: words }).waitFor();

const marked = (page: Page, words: string): Promise<void> =>
  page.locator(".file-bar").getByText(words, { exact: true }).waitFor();

const revise = (from: string, to: string) => ({
  file: PANEL,
  from: `revision: ${from}`,
  to: `revision: ${to}`,
});

describe("edits", () => {
  test("are saved by Ctrl+S, undone past the save and redone, from the keyboard", async () => {
    const { page, read } = await opened();
    const first = read(PANEL);
    await replaceIn(page, revise("A", "B"));
    await marked(page, `Not saved: ${PANEL}`);
    expect(await page.title()).toMatch(/^Bilge.* \(not saved\), Consolewright$/);
    await page.keyboard.press("Control+s");
    await news(page, SAVED);
    expect(await page.title()).toMatch(/^Bilge[^()]*, Consolewright$/);
    expect(read(PANEL)).toBe(first.replace("revision: A", "revision: B"));
    await replaceIn(page, revise("B", "C"));
    await page.keyboard.press("Control+z");
    await marked(page, "Nothing unsaved");
    await page.keyboard.press("Control+z");
    await marked(page, `Not saved: ${PANEL}`);
    await expect.poll(() => textIn(page, PANEL)).toBe(first);
    await page.keyboard.press("Control+s");
    await marked(page, "Nothing unsaved");
    expect(read(PANEL)).toBe(first);
    await page.keyboard.press("Control+Shift+z");
    await page.keyboard.press("Control+y");
    await expect.poll(() => textIn(page, PANEL)).toContain("revision: C");
  });

  test("are named on the buttons that take them back", async () => {
    const { page } = await opened();
    const undo = page.getByRole("button", { name: /^Undo/ });
    await expect.poll(() => undo.getAttribute("aria-disabled")).toBe("true");
    await replaceIn(page, revise("A", "B"));
    await page.getByRole("button", { name: "Undo: write revision: B" }).click();
    await page.getByRole("button", { name: "Redo: write revision: B" }).click();
    await expect.poll(() => textIn(page, PANEL)).toContain("revision: B");
  });

  test("of one drag are one step, and a change outside waits for its end", async () => {
    const { page, address, read, write } = await opened();
    const other = await page.context().newPage();
    await goTo(other, address);
    await page.evaluate(() => window.desk.begin("drag"));
    await replaceIn(page, revise("A", "B"));
    write(SHED, (before) => `${before}# dry\n`);
    // The server tells every window at once: the other one has it by now.
    await news(other, `Changed outside and taken over: ${SHED}`);
    expect(await textIn(page, SHED)).not.toContain("# dry");
    await replaceIn(page, revise("B", "C"));
    await page.evaluate(() => window.desk.commit());
    await news(page, `Changed outside and taken over: ${SHED}`);
    await page.getByRole("button", { name: `Undo: take over ${SHED}` }).click();
    await page.getByRole("button", { name: "Undo: drag" }).click();
    await expect.poll(() => textIn(page, PANEL)).toBe(read(PANEL));
  });
});

describe("a change outside", () => {
  test("before the page has begun to listen is taken over as soon as it does", async () => {
    const { page, address, write } = await opened();
    const other = await page.context().newPage();
    let listens: () => void = () => undefined;
    const held = new Promise<void>((done) => {
      listens = done;
    });
    await other.route("**/design/changes", async (route) => {
      await held;
      await route.continue();
    });
    await goTo(other, address);
    write(SHED, (before) => `${before}# dry\n`);
    await news(page, `Changed outside and taken over: ${SHED}`);
    expect(await textIn(other, SHED)).not.toContain("# dry");
    listens();
    await news(other, `Changed outside and taken over: ${SHED}`);
  });

  test("is taken over where nothing was edited, and read anew", async () => {
    const { page, write } = await opened();
    write(PANEL, (before) => before.replace("part: pot-9", "part: pot-no-such"));
    await page.locator(".findings").getByText("pot-no-such").first().waitFor();
    await marked(page, "Nothing unsaved");
  });

  test("of other lines is joined with what was edited here", async () => {
    const { page, read, write } = await opened();
    await replaceIn(page, revise("A", "B"));
    write(PANEL, (before) => before.replace("legend: FLOW", "legend: RATE"));
    await news(page, `Changed here and outside, joined: ${PANEL}`);
    await page.getByRole("button", { name: /^Save/ }).click();
    await news(page, SAVED);
    expect(read(PANEL)).toContain("revision: B");
    expect(read(PANEL)).toContain("legend: RATE");
  });
});

describe("a change outside that meets an edit", () => {
  test("of the same lines is asked about: see both, keep mine", async () => {
    const { page, read, write } = await opened();
    await replaceIn(page, revise("A", "B"));
    write(PANEL, (before) => before.replace("revision: A", "revision: Z"));
    const card = page.locator(".decision");
    await card.filter({ hasText: "in the same lines" }).waitFor();
    await page.keyboard.press("Control+s");
    await news(page, "Decide about it first");
    expect(read(PANEL)).toContain("revision: Z");
    await card.getByRole("button", { name: /^See both/ }).click();
    await expect
      .poll(() => card.locator("ins").allTextContents())
      .toEqual(["+ revision: B\n", "+ revision: Z\n"]);
    await card.getByRole("button", { name: /^Keep mine/ }).press("Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Undo");
    await page.keyboard.press("Control+s");
    await news(page, SAVED);
    expect(read(PANEL)).toContain("revision: B");
  });

  test("of the same lines can be taken, and undo brings one's own back", async () => {
    const { page, write } = await opened();
    await replaceIn(page, revise("A", "B"));
    write(PANEL, (before) => before.replace("revision: A", "revision: Z"));
    await page.getByRole("button", { name: /^Take theirs/ }).click();
    await marked(page, "Nothing unsaved");
    await expect.poll(() => textIn(page, PANEL)).toContain("revision: Z");
    await page.keyboard.press("Control+z");
    await expect.poll(() => textIn(page, PANEL)).toContain("revision: B");
  });

  test("that deletes an edited file is asked about, and the file can be written anew", async () => {
    const { page, folder, read } = await opened();
    await replaceIn(page, { file: SHED, from: "name: shed", to: "name: barn" });
    unlinkSync(join(folder, SHED));
    await page.locator(".decision").filter({ hasText: "deleted outside" }).waitFor();
    await page.getByRole("button", { name: /^Keep mine/ }).click();
    await page.getByRole("button", { name: /^Save/ }).click();
    await news(page, SAVED);
    expect(read(SHED)).toContain("name: barn");
  });

  test("by a second window is the same: joined, or asked about", async () => {
    const { page, address, read } = await opened();
    const other = await page.context().newPage();
    await goTo(other, address);
    await replaceIn(page, revise("A", "B"));
    await replaceIn(other, { file: PANEL, from: "legend: FLOW", to: "legend: RATE" });
    await other.keyboard.press("Control+s");
    await news(page, "joined");
    await page.keyboard.press("Control+s");
    await news(other, "taken over");
    expect(read(PANEL)).toMatch(/revision: B[\s\S]*legend: RATE/);
    await replaceIn(page, revise("B", "C"));
    await replaceIn(other, revise("B", "D"));
    await other.keyboard.press("Control+s");
    await page.locator(".decision").filter({ hasText: "in the same lines" }).waitFor();
    expect(read(PANEL)).toContain("revision: D");
    await expect.poll(() => textIn(page, PANEL)).toContain("revision: C");
  });
});

describe("what can't be written", () => {
  test("a read-only file is named, and an edit of it is refused in words", async () => {
    const { page, folder } = await opened(({ folder }) => chmodSync(join(folder, PANEL), 0o444));
    await page.getByText(`${PANEL} is read-only on the disk: it can't be edited.`).waitFor();
    expect(await replaceIn(page, revise("A", "B"))).toEqual({
      kind: "refused",
      why: `${PANEL} is read-only on the disk`,
    });
    chmodSync(join(folder, PANEL), 0o644);
    await page.getByText("can't be edited").waitFor({ state: "detached" });
    expect((await replaceIn(page, revise("A", "B"))).kind).toBe("done");
  });

  test("a full disk is told of, nothing is lost, and there is another try", async () => {
    let isFull = true;
    const { page, read } = await opened(
      undefined,
      fillableDisk(() => isFull),
    );
    await replaceIn(page, revise("A", "B"));
    await page.keyboard.press("Control+s");
    await news(page, "Not saved: the disk is full. Nothing is lost");
    expect(read(PANEL)).toContain("revision: A");
    isFull = false;
    await page.keyboard.press("Control+s");
    await news(page, SAVED);
    expect(read(PANEL)).toContain("revision: B");
  });

  test("a server that has ended is told of, the edits stay, and its next run is found", async () => {
    const { page, stop, serve, read, address } = await opened();
    await replaceIn(page, revise("A", "B"));
    await stop();
    await news(page, "The server does not answer");
    await page.keyboard.press("Control+s");
    await news(page, "Not saved: the server does not answer");
    const told = (await page.locator(".file-news").textContent()) ?? "";
    // Once, in whole sentences.
    expect(told.match(/server does not answer/g)).toHaveLength(1);
    expect(told).not.toMatch(/\.\.|`/);
    await marked(page, `Not saved: ${PANEL}`);
    const next = await serve(built, { port: Number(new URL(address).port) });
    onTestFinished(next.close);
    await news(page, "open the address that the program has printed");
    // As when the new address is opened in the same window: only what follows # differs, nothing is loaded anew.
    await page.evaluate((hash) => {
      location.hash = hash;
    }, new URL(next.address).hash);
    await page
      .locator(".file-news")
      .filter({ hasText: "open the address" })
      .waitFor({ state: "detached" });
    await page.keyboard.press("Control+s");
    await marked(page, "Nothing unsaved");
    expect(read(PANEL)).toContain("revision: B");
  });

  test("an address without the key says where the right one is", async () => {
    const { page, address } = await opened();
    const other = await page.context().newPage();
    await other.goto(address.replace(/#.*/, ""));
    await other.getByText("open the address that the program has printed").waitFor();
  });
});

test("a snapshot is kept, compared, brought back as one step, and removed", async () => {
  const { page } = await opened();
  await page.getByRole("button", { name: "Snapshots (0)" }).click();
  await page.getByRole("textbox", { name: "Name" }).fill("before the wheelhouse");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "Snapshots (1)" }).waitFor();
  await replaceIn(page, revise("A", "B"));
  await page.getByRole("button", { name: "Compare: before the wheelhouse" }).click();
  await expect.poll(() => page.locator(".snapshots ins").textContent()).toBe("+ revision: B\n");
  await page.getByRole("button", { name: "Bring back: before the wheelhouse" }).click();
  await marked(page, "Nothing unsaved");
  await page.getByRole("button", { name: /^Undo: bring back/ }).click();
  await expect.poll(() => textIn(page, PANEL)).toContain("revision: B");
  await page.getByRole("button", { name: "Remove: before the wheelhouse" }).click();
  await page.getByRole("button", { name: "Snapshots (0)" }).waitFor();
});

describe("axe-core", () => {
  test.each(["light", "dark"] as const)("finds nothing grave on the page in %s", async (scheme) => {
    const { page, write } = await opened((design) =>
      design.write(PANEL, () => faultyDesign.files[PANEL] ?? ""),
    );
    await page.emulateMedia({ colorScheme: scheme });
    await page.getByRole("button", { name: /^Snapshots/ }).click();
    await replaceIn(page, revise("A", "B"));
    write(PANEL, (before) => before.replace("revision: A", "revision: Z"));
    await page.getByRole("button", { name: /^See both/ }).click();
    await page.locator(".decision ins").first().waitFor();
    expect(await graveAxeFindings(page)).toEqual([]);
    // And it can find something.
    await page.evaluate(() => {
      for (const button of document.querySelectorAll(".decision button")) {
        button.removeAttribute("aria-label");
        button.textContent = "";
      }
    });
    expect((await graveAxeFindings(page)).some((each) => each.startsWith("button-name"))).toBe(
      true,
    );
  });
});

test("a file that is deleted outside is named, comes back by undo, and is saved anew", async () => {
  const { page, folder, read } = await opened();
  const first = read(PANEL);
  unlinkSync(join(folder, PANEL));
  await news(page, `Deleted outside: ${PANEL}`);
  await marked(page, `Deleted outside: ${PANEL}`);
  // The workshop is still there, and nothing is said of faults where nothing was judged.
  await page.getByRole("textbox", { name: `Text of ${SHED}` }).waitFor();
  await isRead(page);
  expect(await page.getByText("0 faults").count()).toBe(0);
  await page.getByRole("button", { name: /^Undo/ }).click();
  await marked(page, `Not saved: ${PANEL}`);
  await page.keyboard.press("Control+s");
  await news(page, SAVED);
  expect(read(PANEL)).toBe(first);
});

test("a file that is deleted outside and comes back leaves no step that would take it away again", async () => {
  const { page, folder, read } = await opened();
  await replaceIn(page, revise("A", "B"));
  await page.keyboard.press("Control+s");
  await news(page, SAVED);
  const before = read(PANEL);
  unlinkSync(join(folder, PANEL));
  await page.getByRole("button", { name: `Undo: take away ${PANEL}, deleted outside` }).waitFor();
  writeFileSync(join(folder, PANEL), before);
  await news(page, `There again: ${PANEL}`);
  await page.getByRole("button", { name: "Undo: write revision: B" }).click();
  await expect.poll(() => textIn(page, PANEL)).toContain("revision: A");
});
