// The room of the job pack in a real browser, behind the server of `view`: the files that leave it are byte for byte those of the
// command line, what holds a pack back is said, making can be given up, and the print of a template is in true size.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { type DeskDesign, layDesign } from "../support/desk-page.ts";
import { openPage } from "../support/open-page.ts";
import type { DesignInput } from "../support/pack-hashes.ts";
import { markupDesign } from "../support/page-designs.ts";
import { longLines } from "../support/printed-lines.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";
import { serveFolder } from "../support/static-server.ts";
import { zipEntries } from "../support/zip-reader.ts";

const root = resolve(import.meta.dirname, "../..");
/** Seconds on a quiet machine; a busy one takes ten times as long. */
const PATIENCE = 240_000;

let browser: Browser;

beforeAll(async () => {
  browser = await launchBrowser();
});

afterAll(() => browser?.close());

const exampleText = (name: string): string =>
  readFileSync(join(root, "examples/first-panel", name), "utf8");

const FIRST_PANEL: DesignInput = {
  entry: "panel.yaml",
  files: Object.fromEntries(
    ["panel.yaml", "workshop.yaml", "measured-parts.yaml"]
      .filter((name) => name !== "measured-parts.yaml" || exampleText("panel.yaml").includes(name))
      .map((name) => [name, exampleText(name)]),
  ),
};

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

interface Opened extends DeskDesign {
  readonly page: Page;
  readonly complaints: readonly string[];
}

/** `first`: carried out in the page before anything of it is loaded. */
const opened = async (input: DesignInput, first?: () => void): Promise<Opened> => {
  const design = layDesign(input);
  const server = await design.serve(join(root, "dist/viewer"));
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  context.setDefaultTimeout(PATIENCE);
  const page = await context.newPage();
  if (first !== undefined) await page.addInitScript(first);
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (reason) => complaints.push(reason.message));
  onTestFinished(async () => {
    await context.close();
    await server.close();
    design.remove();
  });
  await page.goto(server.address);
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
  return { ...design, page, complaints };
};

const enter = (page: Page): Promise<void> =>
  page.getByRole("button", { name: "Job pack", exact: true }).click();

const made = (page: Page): Promise<void> =>
  page.getByRole("status").filter({ hasText: "The pack is made" }).waitFor();

const saved = async (
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
const byCommand = (
  { folder }: DeskDesign,
  entry: string,
  form: "--zip" | "--one-zip",
): ((name: string) => Buffer) => {
  const out = mkdtempSync(join(tmpdir(), "consolewright-zips-"));
  onTestFinished(() => rmSync(out, { recursive: true, force: true }));
  execFileSync(
    process.execPath,
    [join(root, "dist/cli/main.js"), "make", entry, form, "--out", out],
    { cwd: folder, stdio: ["ignore", "ignore", "pipe"] },
  );
  return (name) => readFileSync(join(out, name));
};

const choose = (page: Page, pattern: RegExp): Promise<void> =>
  page.locator(".file-list button").filter({ hasText: pattern }).first().click();

test(
  "the first panel leaves as one file and as a zip, each byte as make --zip has it",
  async () => {
    const open = await opened(FIRST_PANEL);
    const { page, complaints } = open;
    await enter(page);
    await made(page);
    const zip = await saved(page, /^Save first-panel\.zip/);
    expect(zip.name).toBe("first-panel.zip");
    const wanted = byCommand(open, "panel.yaml", "--zip")("first-panel.zip");
    expect(zip.bytes.equals(wanted)).toBe(true);
    const entries = zipEntries(wanted);
    const listed = await page.locator(".file-list button").allTextContents();
    expect(listed.map((words) => `first-panel/${words.split(" ")[0]}`).sort()).toEqual(
      entries.map(({ name }) => name).sort(),
    );
    await choose(page, /^cut\/.*\.nominal\.dxf/);
    const file = await saved(page, /^Save this file/);
    const [inZip] = entries.filter(({ name }) => name.endsWith(`/${file.name}`));
    expect(inZip?.bytes.equals(file.bytes)).toBe(true);
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "the first panel shows each kind of file",
  async () => {
    const { page, complaints } = await opened(FIRST_PANEL);
    await enter(page);
    await made(page);
    for (const ending of [/\.nominal\.svg/, /\.nominal\.dxf/, /\.r12\.dxf/]) {
      await choose(page, ending);
      const drawing = page.getByRole("img", { name: /as it was read back: .*cut-outer 1/ });
      const data = (await drawing.locator(".cut-file").first().getAttribute("d")) ?? "";
      expect(data.length).toBeGreaterThan(200);
    }
    await choose(page, /-front\.svg/);
    const picture = page.locator("img.picture-preview");
    expect(
      await picture.evaluate((image: HTMLImageElement) =>
        image.decode().then(() => image.naturalWidth),
      ),
    ).toBeGreaterThan(100);
    await choose(page, /^template\/.*front\.pdf/);
    await page.getByRole("img", { name: /front\.pdf, page 1/ }).waitFor();
    await choose(page, /^parts-list\.csv/);
    await page.getByRole("cell", { name: "push-button-16" }).waitFor();
    await choose(page, /^README\.md/);
    const readme = page.locator("pre").filter({ hasText: "## Order of work" });
    // What is open is counted as the pack's own first page counts it.
    const [, open = ""] =
      /\*\*(HOLD: \d+ questions are open\.)\*\*/.exec((await readme.textContent()) ?? "") ?? [];
    await page.getByText(open, { exact: true }).waitFor();
    expect(open).not.toBe("");
    expect(complaints).toEqual([]);
  },
  PATIENCE,
);

test(
  "the first panel is worked by keys alone, and says when its pack is old",
  async () => {
    const { page, write } = await opened(FIRST_PANEL);
    await page.getByRole("button", { name: "Job pack", exact: true }).focus();
    await page.keyboard.press("Enter");
    await made(page);
    await page.locator(".file-list button").first().focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    const pressed = page.locator('.file-list button[aria-pressed="true"]');
    expect(await pressed.textContent()).toMatch(/\.dxf/);
    // From the list on by Tab to the button that saves the file.
    const all = await page.locator(".file-list button").count();
    const save = page.getByRole("button", { name: /^Save this file/ });
    for (let step = 0; step < all; step += 1) {
      await page.keyboard.press("Tab");
      if (await save.evaluate((button) => button === document.activeElement)) break;
    }
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.keyboard.press("Enter"),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.dxf$/);
    write("panel.yaml", (before) => before.replace("revision: A", "revision: B"));
    await page.getByRole("alert").filter({ hasText: "The design has changed" }).waitFor();
    expect(await save.getAttribute("aria-disabled")).toBe("true");
    await page.getByRole("button", { name: "Make it again" }).click();
    await page.getByRole("alert").waitFor({ state: "detached", timeout: PATIENCE });
    expect(await save.getAttribute("aria-disabled")).toBe("false");
  },
  PATIENCE,
);

test(
  "the first panel has its template printed in true size",
  async () => {
    // The print itself is the test's: the page would open a window that nobody answers.
    const { page } = await opened(FIRST_PANEL, () => {
      window.print = () => undefined;
    });
    await enter(page);
    await made(page);
    await choose(page, /^template\/.*front\.pdf/);
    await page.getByRole("button", { name: "Print in true size" }).click();
    await page.locator(".true-size-print svg").first().waitFor({ state: "attached" });
    const sheets = await page.locator(".sheet-of-paper").count();
    const printed = longLines(await page.pdf({ preferCSSPageSize: true }));
    expect(printed).toHaveLength(sheets);
    // A4 (ISO 216) in points of 1/72 in, as a browser rounds it to pixels of 1/96 in.
    for (const { width, height } of printed) {
      expect(Math.abs(width - (210 / 25.4) * 72)).toBeLessThan(0.8);
      expect(Math.abs(height - (297 / 25.4) * 72)).toBeLessThan(0.8);
    }
    // The two bars to lay a ruler on: one across, one up.
    const bars = (printed[0]?.lines ?? []).filter(({ length }) => Math.abs(length - 100) < 0.05);
    expect(new Set(bars.map(({ isAcross }) => isAcross))).toEqual(new Set([true, false]));
  },
  PATIENCE,
);

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
      // And the console's drawings are there to be looked at, its model in space too.
      await choose(page, /\.glb/);
      await page.locator("canvas[data-drawn]").waitFor();
      expect(complaints.filter((words) => !/GPU stall|swiftshader/i.test(words))).toEqual([]);
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
      expect(await held.textContent()).toContain("fit/clash");
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
    expect(await page.getByRole("alert").count()).toBe(0);
  },
  PATIENCE,
);

test(
  "a library that was out of reach is fetched again",
  async () => {
    const { page } = await opened(FIRST_PANEL);
    await page.context().route("**/library.json", (route) => route.abort());
    await enter(page);
    await page.getByRole("alert").filter({ hasText: "has failed" }).waitFor();
    await page.context().unroute("**/library.json");
    await page.getByRole("button", { name: "Make the pack" }).click();
    await made(page);
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

test(
  "what a design says is no markup in any preview",
  async () => {
    const { page, complaints } = await opened(markupDesign);
    await enter(page);
    await made(page);
    const buttons = page.locator(".file-list button");
    for (const button of await buttons.all()) {
      await button.click();
      expect(await page.locator(".job-pack :is(script, b:has(> b), iframe, object)").count()).toBe(
        0,
      );
      expect(await page.locator(".file-preview img:not(.picture-preview)").count()).toBe(0);
    }
    expect(await page.title()).toBe("Consolewright");
    expect(complaints.filter((words) => !/GPU stall|swiftshader/i.test(words))).toEqual([]);
  },
  PATIENCE,
);

describe("axe-core", () => {
  const source = readFileSync(fileURLToPath(import.meta.resolve("axe-core/axe.min.js")), "utf8");

  const grave = async (page: Page): Promise<readonly string[]> => {
    await page.evaluate(source);
    const found: unknown = await page.evaluate(
      `axe.run().then(({ violations }) => violations
        .filter(({ impact }) => impact === "serious" || impact === "critical")
        .flatMap(({ id, nodes }) => nodes.map(({ html }) => id + " " + html.slice(0, 120))))`,
    );
    return Array.isArray(found) ? found : ["no answer"];
  };

  test.each(["light", "dark"] as const)(
    "finds nothing grave in the room in %s",
    async (scheme) => {
      const { page } = await opened(FIRST_PANEL);
      await page.emulateMedia({ colorScheme: scheme });
      await enter(page);
      await made(page);
      for (const pattern of [/\.nominal\.svg/, /^template/, /\.csv/, /-front\.svg/]) {
        await choose(page, pattern);
        expect(await grave(page)).toEqual([]);
      }
      // And it can find something.
      await page.evaluate(() => {
        for (const button of document.querySelectorAll(".pack-bar button")) button.textContent = "";
      });
      expect((await grave(page)).some((each) => each.startsWith("button-name"))).toBe(true);
    },
    PATIENCE,
  );
});
