// The room of the job pack in a real browser, with consoles: a zip for each pack and one for all are byte for byte those of the
// command line, what holds a pack back is said, another console's packs are not shown, and making can be given up.

import { join, resolve } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { openPage } from "../support/open-page.ts";
import type { DesignInput } from "../support/pack-hashes.ts";
import {
  byCommand,
  choose,
  enter,
  FIRST_PANEL,
  made,
  type OpenedDesign,
  openedRoom,
  PATIENCE,
  saved,
} from "../support/pack-room.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";
import { serveFolder } from "../support/static-server.ts";
import { zipEntries } from "../support/zip-reader.ts";

const root = resolve(import.meta.dirname, "../..");

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser?.close());

const opened = (input: DesignInput): Promise<OpenedDesign> => openedRoom(browser, input);

const clashing: DesignInput = { entry: "console.yaml", files: SMALL_CONSOLE };

/** The same without the shelf that stands in the first panel's case. */
const sound: DesignInput = {
  entry: "console.yaml",
  files: {
    ...SMALL_CONSOLE,
    "console.yaml": (SMALL_CONSOLE["console.yaml"] ?? "").replace(/obstacles:[\s\S]*/, ""),
  },
};

/** And beside it a variant with panels of the same names. */
const TWO_CONSOLES: DesignInput["files"] = {
  ...sound.files,
  "variant.yaml": (sound.files["console.yaml"] ?? "")
    .replace("name: bench", "name: wide-bench")
    .replace("module: 12", "module: 14"),
};

/** The same panel many times: long enough in the making to be given up. */
const MANY: DesignInput = {
  entry: "console.yaml",
  files: {
    ...FIRST_PANEL.files,
    "console.yaml": `consolewright: 1
kind: console
name: many
workshop: workshop.yaml
panels:
${Array.from({ length: 3 }, (_, index) => `  - { file: panel.yaml, as: panel-${index + 1} }`).join("\n")}
`,
  },
};

describe("a small console", () => {
  test(
    "leaves as a zip for each pack and as one for all, each byte as the command line has it",
    async () => {
      const open = await opened(sound);
      const { page, complaints } = open;
      await enter(page);
      await made(page);
      const one = await saved(page, /^Save one\.zip/);
      const byPack = byCommand(open, "console.yaml", "--zip");
      expect(one.bytes.equals(byPack("one.zip"))).toBe(true);
      await page.getByLabel("Pack of").selectOption({ label: "The console itself" });
      const itself = page.getByRole("button", { name: /^Save console\.zip/ });
      await itself.waitFor();
      const own = await saved(page, /^Save console\.zip/);
      expect(own.bytes.equals(byPack("console.zip"))).toBe(true);
      await page.getByRole("button", { name: "Make all packs as one zip" }).click();
      await page.getByRole("button", { name: /^Save bench\.zip/ }).waitFor();
      const all = await saved(page, /^Save bench\.zip/);
      expect(all.bytes.equals(byCommand(open, "console.yaml", "--one-zip")("bench.zip"))).toBe(
        true,
      );
      // As many as the packs in it hold by themselves: no file of this console is read twice.
      const held = zipEntries(all.bytes)
        .filter(({ name }) => name.endsWith("/README.md"))
        .map(({ bytes }) => Number(/\*\*HOLD: (\d+) /.exec(bytes.toString("utf8"))?.[1] ?? 0))
        .reduce((sum, count) => sum + count, 0);
      expect(held).toBeGreaterThan(1);
      await page.getByText(`HOLD: ${held} questions are open in all packs.`).waitFor();
      // The report is read as it is meant to be, in both its forms; the one in HTML has its own style and picture.
      await choose(page, /^fit-report\.md/);
      await page.getByRole("article").getByRole("table").first().waitFor();
      await choose(page, /^fit-report\.html/);
      const report = page.frameLocator(".report-preview");
      await report.getByRole("table").first().waitFor();
      await expect.poll(() => report.locator("svg").count()).toBe(1);
      // #33506b, which the report's style gives to its headings of tables and nothing else has.
      const heading = report.getByRole("columnheader").first();
      expect(await heading.evaluate((cell) => getComputedStyle(cell).color)).toBe(
        "rgb(51, 80, 107)",
      );
      // And the console's drawings are there to be looked at, its model in space too.
      await choose(page, /\.glb/);
      await page.locator("canvas[data-drawn]").waitFor();
      expect(complaints).toEqual([]);
    },
    PATIENCE,
  );

  test(
    "says which pack a fault of the fit holds back, and why; the neighbour's is made",
    async () => {
      const { page } = await opened(clashing);
      await enter(page);
      const held = page.getByRole("region", { name: "Why one is not written" });
      await held.waitFor();
      await held.filter({ hasText: "want the same space" }).waitFor();
      expect(await page.getByRole("button", { name: /^Save / }).count()).toBe(0);
      await page.getByLabel("Pack of").selectOption("two");
      await page.getByRole("button", { name: /^Save two\.zip/ }).waitFor();
      await page.getByRole("button", { name: "Make all packs as one zip" }).click();
      await page.getByRole("region", { name: "Why bench is not written" }).waitFor();
      expect(await page.getByRole("button", { name: /^Save bench/ }).count()).toBe(0);
    },
    PATIENCE,
  );
});

/** Carried out in the page: models and PDFs are read as on a machine that takes its time, without an end. */
function readsForEver(): void {
  const { postMessage } = Worker.prototype;
  Worker.prototype.postMessage = function (message: { readonly kind?: string }): void {
    const isFile = message instanceof Uint8Array || message.kind === "console-model";
    if (!isFile || document.title === "Quick") postMessage.call(this, message);
  };
}

test(
  "the reading of a model and of a PDF says what it does, and is given up by its button and by another file",
  async () => {
    const { page, complaints } = await openedRoom(browser, sound, readsForEver);
    const readers = (): number =>
      page.workers().filter((each) => /(solid|pdf)\.worker/.test(each.url())).length;
    await enter(page);
    await made(page);
    await page.getByLabel("Pack of").selectOption({ label: "The console itself" });
    await page.getByRole("button", { name: /^Save console\.zip/ }).waitFor();
    const reading = page.getByRole("status").filter({ hasText: /^Reading .*\.glb …$/ });
    await choose(page, /\.glb/);
    await reading.waitFor();
    await page.getByRole("progressbar", { name: "Working on the file" }).waitFor();
    expect(readers()).toBe(1);
    await page.getByRole("button", { name: "Give it up" }).click();
    await page.getByText(/\.glb was not read\./).waitFor();
    await expect.poll(readers).toBe(0);
    await page.getByRole("button", { name: "Read it" }).click();
    await reading.waitFor();
    await choose(page, /^fit-report\.md/);
    await page.getByRole("article").getByRole("table").first().waitFor();
    await expect.poll(readers).toBe(0);
    await choose(page, /^mock-up.*\.pdf/);
    await page
      .getByRole("status")
      .filter({ hasText: /^Reading .*\.pdf …$/ })
      .waitFor();
    expect(readers()).toBe(1);
    await page.getByRole("button", { name: "Give it up" }).click();
    await page.getByText(/\.pdf was not read\./).waitFor();
    await expect.poll(readers).toBe(0);
    await page.evaluate(() => {
      document.title = "Quick";
    });
    await page.getByRole("button", { name: "Read it" }).click();
    await page.getByRole("img", { name: /\.pdf, page 1$/ }).waitFor();
    await page.getByRole("button", { name: "Print in true size" }).waitFor();
    await expect.poll(readers).toBe(0);
    await choose(page, /\.glb/);
    await page.locator("canvas[data-drawn]").waitFor();
    await page.getByText(/solid pieces, .* mm\./).waitFor();
    expect(await page.getByRole("progressbar").count()).toBe(0);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

const MARKUP = "</h1><script>top.document.title='taken'</script><img src=x onerror=alert(1)>";

test(
  "a console that wants to be markup is words in its report, in a frame that may do nothing",
  async () => {
    const words = JSON.stringify(MARKUP);
    const hostile = (text: string): string =>
      text
        .replace(/^kind: (console|panel)$/m, `kind: $1\ntitle: ${words}`)
        .replace("at: centre }", 'at: centre, legend: "<b>S</b>" }');
    const { page, complaints } = await opened({
      entry: "console.yaml",
      files: Object.fromEntries(
        Object.entries(sound.files).map(([path, text]) => [path, hostile(text)]),
      ),
    });
    await enter(page);
    await made(page);
    await page.getByLabel("Pack of").selectOption({ label: "The console itself" });
    await page.getByRole("button", { name: /^Save console\.zip/ }).waitFor();
    for (const paper of [/^README\.md/, /^fit-report\.md/]) {
      await choose(page, paper);
      await page.getByRole("article").getByText("</h1><script>").first().waitFor();
    }
    await choose(page, /^fit-report\.html/);
    const frame = page.locator("iframe");
    expect(await frame.getAttribute("sandbox")).toBe("");
    const report = page.frameLocator("iframe");
    await report.getByRole("heading", { level: 1 }).filter({ hasText: MARKUP }).waitFor();
    // Of the whole report, not of its beginning.
    await expect
      .poll(() => report.locator(":root").evaluate(() => document.readyState))
      .toBe("complete");
    expect(await report.locator("script, img").count()).toBe(0);
    expect(await page.locator(".job-pack script").count()).toBe(0);
    expect(await page.title()).toMatch(/Consolewright$/);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "another console's packs are neither shown nor saved",
  async () => {
    // Loose files: behind `view` a design has one console.
    const server = await serveFolder(join(root, "dist/viewer"));
    const { page } = await openPage({ browser, server, close: server.close });
    onTestFinished(async () => {
      await page.close();
      await server.close();
    });
    await page.getByLabel("Open files").setInputFiles(
      Object.entries(TWO_CONSOLES).map(([name, text]) => ({
        name,
        mimeType: "text/yaml",
        buffer: Buffer.from(text),
      })),
    );
    await page.getByRole("status").filter({ hasText: "Opened: 5 files" }).waitFor();
    await enter(page);
    await made(page);
    await page.getByRole("button", { name: /^Save one\.zip/ }).waitFor();
    await page.getByRole("button", { name: "Make all packs as one zip" }).click();
    await page.getByRole("button", { name: /^Save bench\.zip/ }).waitFor();
    await page.locator(".console-choice select").selectOption("variant.yaml");
    const save = page.getByRole("button", { name: /^Save / });
    await expect.poll(() => save.count()).toBe(0);
    await page.getByRole("button", { name: "Make all packs as one zip" }).click();
    await page.getByRole("button", { name: /^Save wide-bench\.zip/ }).waitFor();
    await page.locator(".console-choice select").selectOption("console.yaml");
    await page.getByRole("button", { name: /^Save bench\.zip/ }).waitFor();
    await expect.poll(() => page.getByRole("alert").count()).toBe(0);
  },
  PATIENCE,
);

test(
  "making is given up at once, and the worker with it",
  async () => {
    const { page } = await opened(MANY);
    const workers = (): number =>
      page.workers().filter((each) => each.url().includes("pack.worker")).length;
    await enter(page);
    // What was begun on entering makes way for it.
    await page.getByRole("button", { name: "Make all packs as one zip" }).click();
    const giveUp = page.getByRole("button", { name: "Give up" });
    // In the midst of it: the worker is busy and reads no messages.
    await page
      .getByRole("status")
      .filter({ hasText: /making .*, [2-9] of/ })
      .waitFor();
    expect(workers()).toBe(1);
    await giveUp.click();
    await page.getByRole("status").filter({ hasText: "Given up" }).waitFor();
    await expect.poll(workers, { timeout: 20_000 }).toBe(0);
    expect(await page.getByRole("button", { name: /^Save many/ }).count()).toBe(0);
    await page.getByRole("button", { name: "Make the pack" }).click();
    await made(page);
  },
  PATIENCE,
);
