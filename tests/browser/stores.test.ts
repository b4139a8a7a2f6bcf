// The page on a static host, with no server behind it: a folder that it works in, and files that it gives back as downloads.
// The folder is the browser's own private one (WHATWG File System), which has the same handles as a chosen one.

import { readFileSync, rmSync } from "node:fs";
import { unzipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { buildDeskPage, replaceIn, textIn } from "../support/desk-page.ts";
import { soundDesign } from "../support/page-designs.ts";
import { andRead } from "../support/panel-bench.ts";
import { type StaticServer, serveFolder } from "../support/static-server.ts";

const PANEL = "panels/bilge.yaml";
const SHED = "shed.yaml";

let browser: Browser;
let built: string;
let host: StaticServer;

beforeAll(async () => {
  [browser, built] = await Promise.all([launchBrowser(), buildDeskPage()]);
  host = await serveFolder(built);
});

afterAll(async () => {
  await browser?.close();
  await host?.close();
  rmSync(built, { recursive: true, force: true });
});

const openHost = async (prepare: (page: Page) => Promise<unknown>): Promise<Page> => {
  const context = await browser.newContext({ acceptDownloads: true });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  await prepare(page);
  await page.goto(host.address);
  await page.locator(".open-menu").waitFor();
  return page;
};

const writeInFolder = (page: Page, path: string, text: string): Promise<void> =>
  page.evaluate(
    async ({ names, content }) => {
      let folder = await navigator.storage.getDirectory();
      for (const name of names.slice(0, -1))
        folder = await folder.getDirectoryHandle(name, { create: true });
      const file = await folder.getFileHandle(names.at(-1) ?? "", { create: true });
      const writing = await file.createWritable();
      await writing.write(content);
      await writing.close();
    },
    { names: path.split("/"), content: text },
  );

const readInFolder = (page: Page, path: string): Promise<string> =>
  page.evaluate(async (names) => {
    let folder = await navigator.storage.getDirectory();
    for (const name of names.slice(0, -1)) folder = await folder.getDirectoryHandle(name);
    return (await (await folder.getFileHandle(names.at(-1) ?? "")).getFile()).text();
  }, path.split("/"));

const withPicker = (page: Page) =>
  page.addInitScript(() => {
    Object.assign(window, { showDirectoryPicker: () => navigator.storage.getDirectory() });
  });

const inFolder = async (): Promise<Page> => {
  const page = await openHost(withPicker);
  for (const [path, text] of Object.entries(soundDesign.files))
    await writeInFolder(page, path, text);
  await page.locator(".open-menu summary").click();
  await page.getByRole("button", { name: "Open a folder and save into it" }).click();
  await expect.poll(() => textIn(page, PANEL), { timeout: 10_000 }).toBeDefined();
  return page;
};

test("a folder is read, saved into, and followed", async () => {
  const page = await inFolder();
  const first = soundDesign.files[PANEL] ?? "";
  await replaceIn(page, { file: PANEL, from: "revision: A", to: "revision: B" });
  await page.keyboard.press("Control+s");
  await page.locator(".file-bar").getByText("Nothing unsaved").waitFor();
  expect(await readInFolder(page, PANEL)).toBe(first.replace("revision: A", "revision: B"));
  await replaceIn(page, { file: PANEL, from: "revision: B", to: "revision: C" });
  const outside = (await readInFolder(page, PANEL)).replace("legend: FLOW", "legend: RATE");
  await writeInFolder(page, PANEL, outside);
  await page.keyboard.press("Control+s");
  await page.locator(".file-bar").getByText("Nothing unsaved").waitFor();
  expect(await readInFolder(page, PANEL)).toBe(outside.replace("revision: B", "revision: C"));
  await followsShed(page);
});

test("what changes in a folder before it is looked at for the first time is taken over", async () => {
  await followsShed(await inFolder());
});

async function followsShed(page: Page): Promise<void> {
  const shed = `${soundDesign.files[SHED]}# dry\n`;
  await writeInFolder(page, SHED, shed);
  await page
    .locator(".file-news")
    .filter({ hasText: `taken over: ${SHED}` })
    .waitFor();
  expect(await textIn(page, SHED)).toBe(shed);
}

test("a folder whose text meets an edit is not written over", async () => {
  const page = await inFolder();
  await replaceIn(page, { file: PANEL, from: "revision: A", to: "revision: B" });
  const outside = (soundDesign.files[PANEL] ?? "").replace("revision: A", "revision: Z");
  await writeInFolder(page, PANEL, outside);
  await page.keyboard.press("Control+s");
  await page.locator(".decision").filter({ hasText: "in the same lines" }).waitFor();
  expect(await readInFolder(page, PANEL)).toBe(outside);
});

test("a folder's text that was saved in another encoding stays as it last was, and is not written over", async () => {
  const page = await inFolder();
  const [above, name] = PANEL.split("/");
  // ISO 8859-1: é is one byte, which begins no character of UTF-8.
  const latin = [...Buffer.from("# caf"), 0xe9, 0x0a];
  await page.evaluate(
    async ({ folder, file, bytes }) => {
      const root = await navigator.storage.getDirectory();
      const handle = await (await root.getDirectoryHandle(folder)).getFileHandle(file);
      const writing = await handle.createWritable();
      await writing.write(new Uint8Array(bytes));
      await writing.close();
    },
    { folder: above ?? "", file: name ?? "", bytes: latin },
  );
  await replaceIn(page, { file: PANEL, from: "revision: A", to: "revision: B" });
  await page.keyboard.press("Control+s");
  await page
    .locator(".file-news")
    .filter({ hasText: `Not saved: ${PANEL} is not UTF-8 text` })
    .waitFor();
  await page.getByText(`${PANEL} can't be read now`).waitFor();
  expect(await textIn(page, PANEL)).toContain("revision: B");
  expect(Buffer.from(await readInFolder(page, PANEL)).toString()).toContain("# caf\ufffd");
  expect(await page.getByRole("button", { name: /^Keep mine/ }).count()).toBe(0);
});

const chooseFiles = async (page: Page): Promise<void> => {
  const files = Object.entries(soundDesign.files).map(([path, text]) => ({
    // Loose files have no folder: the panel names its workshop one folder up, which is the same place here.
    name: path.split("/").at(-1) ?? path,
    mimeType: "text/yaml",
    buffer: Buffer.from(text.replace("../shed.yaml", "shed.yaml")),
  }));
  const choose = (): Promise<void> => page.getByLabel("Open files").setInputFiles(files);
  const opened = page.getByRole("status").filter({ hasText: "Opened: 2 files" });
  // Where the same files are open already the words do not tell that they have been read anew.
  if ((await opened.count()) > 0) await andRead(page, choose);
  else await choose();
  await opened.waitFor();
};

test("files that were chosen come back as a download, several as one archive", async () => {
  const page = await openHost(async () => undefined);
  await chooseFiles(page);
  const download = async (): Promise<{ readonly name: string; readonly bytes: Uint8Array }> => {
    const coming = page.waitForEvent("download");
    await page.getByRole("button", { name: /^Download/ }).click();
    const got = await coming;
    return { name: got.suggestedFilename(), bytes: readFileSync(await got.path()) };
  };
  await replaceIn(page, { file: "bilge.yaml", from: "revision: A", to: "revision: B" });
  const one = await download();
  expect(one.name).toBe("bilge.yaml");
  expect(new TextDecoder().decode(one.bytes)).toBe(await textIn(page, "bilge.yaml"));
  await page.locator(".file-bar").getByText("Nothing unsaved").waitFor();
  await replaceIn(page, { file: "bilge.yaml", from: "revision: B", to: "revision: C" });
  await replaceIn(page, { file: SHED, from: "name: shed", to: "name: barn" });
  const two = await download();
  const files = unzipSync(two.bytes);
  expect(Object.keys(files).toSorted()).toEqual(["bilge.yaml", SHED]);
  expect(new TextDecoder().decode(files[SHED])).toContain("name: barn");
});

test("edits of loose files are offered when the page is opened again, and when the same files are", async () => {
  const page = await openHost(async () => undefined);
  await chooseFiles(page);
  await replaceIn(page, { file: "bilge.yaml", from: "revision: A", to: "revision: B" });
  await isKept(page, "revision: B");
  const again = await page.context().newPage();
  await page.close();
  await again.goto(host.address);
  // Before the demo: as they were stored, with what was not saved on offer.
  await again.getByRole("status").filter({ hasText: "Opened: 2 files" }).waitFor();
  await again.getByRole("button", { name: /^See what differs/ }).click();
  await expect.poll(() => again.locator(".decision del").textContent()).toContain("revision: A");
  await chooseFiles(again);
  await again.getByRole("button", { name: /^Restore/ }).click();
  await expect.poll(() => textIn(again, "bilge.yaml")).toContain("revision: B");
});

test("edits in a folder are told of where to begin, because only the person can open it again", async () => {
  const page = await inFolder();
  await replaceIn(page, { file: PANEL, from: "revision: A", to: "revision: B" });
  await isKept(page, "revision: B");
  const again = await page.context().newPage();
  await page.close();
  await withPicker(again);
  await again.goto(host.address);
  await again.getByText("were not saved: open it again").waitFor();
  await again.getByRole("button", { name: "Open a folder and save into it" }).click();
  await again.getByRole("button", { name: /^Restore/ }).click();
  await expect.poll(() => textIn(again, PANEL)).toContain("revision: B");
});

/** Until the recovery copy of the page has these words. */
const isKept = (page: Page, words: string): Promise<void> =>
  expect
    .poll(() =>
      page.evaluate(async () => {
        const answer = <Result>(request: IDBRequest<Result>): Promise<Result> =>
          new Promise((done, failed) => {
            request.onsuccess = () => done(request.result);
            request.onerror = () => failed(request.error);
          });
        const names = (await indexedDB.databases()).map(({ name }) => name);
        // Opened before the page has made it, it would be another one.
        if (!names.includes("consolewright")) return "";
        const base = await answer(indexedDB.open("consolewright"));
        try {
          const copies = await answer(
            base.transaction("recovery").objectStore("recovery").getAll(),
          );
          return copies.flatMap(({ texts }) => [...texts.values()]).join("\n");
        } finally {
          base.close();
        }
      }),
    )
    .toContain(words);

const bytesIn = (page: Page, file: string): Promise<string | undefined> =>
  page.evaluate((path) => window.desk.bytes(path), file);

test("a picture that was added to loose files goes with their recovery copy", async () => {
  const page = await openHost(async () => undefined);
  await chooseFiles(page);
  await page.evaluate(() => window.desk.add("front.png", [137, 80, 78, 71]));
  await replaceIn(page, { file: "bilge.yaml", from: "revision: A", to: "revision: B" });
  await isKept(page, "revision: B");
  const again = await page.context().newPage();
  await page.close();
  await again.goto(host.address);
  await again.getByRole("status").filter({ hasText: "Opened: 2 files" }).waitFor();
  await expect.poll(() => bytesIn(again, "front.png")).toBe("137 80 78 71");
  // And where the same files are opened without it.
  await chooseFiles(again);
  await expect.poll(() => bytesIn(again, "front.png")).toBeUndefined();
  await again
    .getByRole("button", { name: /^Restore/ })
    .first()
    .click();
  await expect.poll(() => textIn(again, "bilge.yaml")).toContain("revision: B");
  await expect.poll(() => bytesIn(again, "front.png")).toBe("137 80 78 71");
});

test("a picture that is too large for the recovery copy is named, and the texts are kept all the same", async () => {
  const page = await openHost(async () => undefined);
  await chooseFiles(page);
  await page.evaluate(() => {
    window.desk.add("small.png", [1]);
    // More than a copy holds.
    window.desk.add("large.png", 100_000_001);
  });
  await replaceIn(page, { file: "bilge.yaml", from: "revision: A", to: "revision: B" });
  await page.getByText("Not in the recovery copy: large.png. It holds 100 MB").waitFor();
  const again = await page.context().newPage();
  await page.close();
  await again.goto(host.address);
  await again.getByText("large.png was not kept").waitFor();
  await again.getByText("Not kept with them: large.png").waitFor();
  await expect.poll(() => bytesIn(again, "small.png")).toBe("1");
});

describe("pictures in a folder", () => {
  const PICTURE = "panels/front.png";

  const keepPicture = (page: Page, bytes: readonly number[]) =>
    page.evaluate(({ path, wanted }) => window.desk.keepPicture(path, wanted), {
      path: PICTURE,
      wanted: bytes,
    });

  test("are read where a text names them, and left alone where none does", async () => {
    const page = await openHost(withPicker);
    const named = `${soundDesign.files[PANEL]}photo: { file: front.png }\n`;
    await writeInFolder(page, PANEL, named);
    await writeInFolder(page, SHED, soundDesign.files[SHED] ?? "");
    await writeInFolder(page, PICTURE, "abc");
    await writeInFolder(page, "panels/holiday.png", "sea");
    await page.locator(".open-menu summary").click();
    await page.getByRole("button", { name: "Open a folder and save into it" }).click();
    await expect.poll(() => bytesIn(page, PICTURE), { timeout: 10_000 }).toBe("97 98 99");
    expect(await bytesIn(page, "panels/holiday.png")).toBeUndefined();
  });

  test("are put beside the texts at once, and never over another one", async () => {
    const page = await inFolder();
    expect(await keepPicture(page, [97, 98])).toEqual({ kind: "kept" });
    expect(await readInFolder(page, PICTURE)).toBe("ab");
    // The same one again is no other one.
    expect(await keepPicture(page, [97, 98])).toEqual({ kind: "kept" });
    const other = await keepPicture(page, [120]);
    expect(other.kind).toBe("refused");
    expect(other.why).toContain(`another picture is called ${PICTURE}`);
    expect(await readInFolder(page, PICTURE)).toBe("ab");
  });

  test.each([
    ["NotAllowedError", "the browser does not allow it"],
    ["QuotaExceededError", "no room"],
  ])(
    "that a folder refuses with a %s are told of, and nothing of them stays",
    async (name, why) => {
      const page = await inFolder();
      // As WHATWG File System has it: the stream refuses, and what was written so far is dropped.
      await page.evaluate((kind) => {
        FileSystemFileHandle.prototype.createWritable = async () => {
          throw new DOMException("there is no room", kind);
        };
      }, name);
      const refused = await keepPicture(page, [97]);
      expect(refused.kind).toBe("refused");
      expect(refused.why).toContain("can't be written");
      expect(refused.why).toContain(why);
      expect(await readInFolder(page, PICTURE).catch(() => null)).toBe(null);
    },
  );
});
