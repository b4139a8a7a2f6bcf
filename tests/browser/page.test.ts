// The built page in a real browser: it shows layers and findings, opens files, stays within its content policy, can be
// used from the keyboard and read in light and dark.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type OpenPage, openPage, type PageStand, standOf } from "../support/open-page.ts";
import type { DesignInput } from "../support/pack-hashes.ts";
import { faultyDesign, markupDesign, soundDesign } from "../support/page-designs.ts";
import { isRead } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

/** Drops a folder's files the way a folder chosen whole arrives: with their paths. */
async function openDesign(page: Page, { files }: DesignInput): Promise<void> {
  await page.evaluate((texts) => {
    const transfer = new DataTransfer();
    for (const [path, text] of Object.entries(texts)) {
      const file = new File([text], path.split("/").at(-1)!);
      Object.defineProperty(file, "webkitRelativePath", { value: `design/${path}` });
      transfer.items.add(file);
    }
    const input = document.querySelector<HTMLInputElement>("input[webkitdirectory]")!;
    input.files = transfer.files;
    for (const file of input.files) {
      const path = Object.keys(texts).find((each) => each.endsWith(file.name));
      Object.defineProperty(file, "webkitRelativePath", { value: `design/${path}` });
    }
    input.dispatchEvent(new Event("change", { bubbles: true }));
  }, files);
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
  // What is drawn anew takes marks and focus with it.
  await isRead(page);
}

async function opened(design: DesignInput): Promise<OpenPage> {
  const open = await openPage(stand);
  await openDesign(open.page, design);
  return open;
}

test("the page starts and complains about nothing", async () => {
  const { page, complaints } = await openPage(stand);
  await page.getByRole("heading", { name: "Consolewright" }).waitFor();
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
  expect(complaints).toEqual([]);
  expect(stand.server.missing).toEqual([]);
  await page.close();
});

describe("a sound panel", () => {
  test("is drawn layer by layer, and each layer can be put away", async () => {
    const { page, complaints } = await opened(soundDesign);
    const sheet = /^Bilge pumps from the front: 3 components/;
    const drawing = page.getByRole("application", { name: sheet });
    await drawing.waitFor();
    await page.getByText("Show", { exact: true }).click();
    for (const layer of ["face", "backing"]) {
      const group = drawing.locator(`[data-layer=${layer}]`);
      const openings = (await group.locator("path").getAttribute("d")) ?? "";
      expect(openings.split("M").length - 1).toBeGreaterThan(5);
      await page.getByRole("checkbox", { name: layer }).uncheck();
      await group.waitFor({ state: "detached" });
    }
    await page.getByRole("checkbox", { name: "face" }).check();
    await drawing.locator("[data-layer=face]").waitFor();
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("is drawn to scale: the outline is the panel's, in millimetres, and is as large as its rulers say", async () => {
    const { page } = await opened(soundDesign);
    const outline = page.locator("svg.front .outline");
    const { width, height, scale, left } = await outline.evaluate((path: SVGPathElement) => {
      const box = path.getBBox();
      const screen = path.getBoundingClientRect();
      return { width: box.width, height: box.height, scale: screen.width, left: screen.left };
    });
    // MS25212: 5.750 in wide, 8 modules of 3/8 in high; the undersize a side is the mount's.
    expect(width).toBeGreaterThan(146.05 - 1);
    expect(width).toBeLessThanOrEqual(146.05);
    expect(height).toBeGreaterThan(76.2 - 1);
    expect(height).toBeLessThanOrEqual(76.2);
    const figureAt = async (words: string): Promise<number> => {
      const box = await page
        .locator(".rulers text")
        .filter({ hasText: new RegExp(`^${words}$`) })
        .first()
        .boundingBox();
      return (box?.x ?? 0) + (box?.width ?? 0) / 2;
    };
    const [zero, hundred] = [await figureAt("0"), await figureAt("100")];
    const pixels = (hundred - zero) / 100;
    expect(scale / width / pixels).toBeCloseTo(1, 1);
    expect(Math.abs(left - zero)).toBeLessThan(3);
    await page.close();
  });
});

describe("a panel with faults", () => {
  test("lists them in words, with place and numbers, gravest first", async () => {
    const { page, complaints } = await opened(faultyDesign);
    const items = page.locator(".findings .finding");
    await items.first().waitFor();
    const words = await items.locator("b").allTextContents();
    expect(new Set(words).has("Fault")).toBe(true);
    const ranks = words.map((word) => ["Fault", "Query", "Note"].indexOf(word));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    const unknown = items.filter({ hasText: "no-such-part" }).first();
    expect(await unknown.textContent()).toContain("panels/bilge.yaml, line 17");
    expect(await page.locator(".findings dl").first().textContent()).toMatch(/is.*mm.*limit.*mm/);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("marks in the drawing what a finding speaks of, from the keyboard", async () => {
    const { page } = await opened(faultyDesign);
    const about = page.getByRole("button", { name: /pump and full/ }).first();
    await about.focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => about.getAttribute("aria-pressed")).toBe("true");
    await expect.poll(() => page.locator(".pointer rect").count()).toBe(2);
    await page.close();
  });
});

test("what a design says cannot become part of the page", async () => {
  const { page, complaints } = await opened(markupDesign);
  await page.getByRole("application", { name: /onerror/ }).waitFor();
  expect(
    await page
      .locator("#page img, #page script, #page b:not(.finding b, .ticket b, .guide b)")
      .count(),
  ).toBe(0);
  expect(await page.title()).toMatch(/Consolewright$/);
  expect(complaints).toEqual([]);
  await page.close();
});

test("the content policy refuses scripts that were not built in", async () => {
  const { page, complaints } = await openPage(stand);
  await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "document.title = 'taken'";
    document.head.append(script);
  });
  expect(await page.title()).toMatch(/Consolewright$/);
  expect(complaints.join()).toContain("Content Security Policy");
  await page.close();
});

test("an example of several panels is opened, and each panel can be looked at", async () => {
  const { page, complaints } = await openPage(stand);
  await page.getByLabel("Example").selectOption("tug-trainer");
  await page.getByRole("status").filter({ hasText: "Opened: tug-trainer" }).waitFor();
  const choice = page.getByRole("combobox", { name: "Panel", exact: true });
  const titles = await choice.locator("option").allTextContents();
  expect(titles.length).toBeGreaterThanOrEqual(4);
  for (const title of titles) {
    await choice.selectOption({ label: title });
    await page.getByRole("application", { name: `${title} from the front` }).waitFor();
  }
  expect(complaints).toEqual([]);
  await page.close();
});

test("files that are no design are refused in words", async () => {
  const { page } = await openPage(stand);
  const input = page.getByLabel("Open files");
  await input.setInputFiles({
    name: "notes.txt",
    mimeType: "text/plain",
    buffer: Buffer.from("?"),
  });
  await page.getByRole("status").filter({ hasText: "None of these is a design file" }).waitFor();
  await page.close();
});

test("every control has a name and can be reached with the tab key", async () => {
  const { page } = await opened(faultyDesign);
  await page.getByText("Show", { exact: true }).click();
  await page.evaluate(() => {
    const controls = document.querySelectorAll(
      "button, input, select, textarea, [role=application]",
    );
    for (const [index, control] of [...controls].entries())
      if (control instanceof HTMLElement && control.checkVisibility() && control.tabIndex >= 0)
        control.dataset["control"] = `${index}`;
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  });
  const controls = await page.locator("[data-control]").count();
  expect(controls).toBeGreaterThan(15);
  const reached = new Map<string, string>();
  // The sheet takes a Tab for each of its two components.
  for (let step = 0; step < 2 * controls + 8 && reached.size < controls; step += 1) {
    await page.keyboard.press("Tab");
    const { control, name } = await page.evaluate(() => {
      const focused = document.activeElement;
      const labels = focused !== null && "labels" in focused ? focused.labels : null;
      const label = labels instanceof NodeList ? labels[0]?.textContent : null;
      const named = focused?.getAttribute("aria-label") ?? label ?? focused?.textContent ?? "";
      const own = focused instanceof HTMLElement ? focused.dataset["control"] : undefined;
      return { control: own ?? "", name: named.trim() };
    });
    if (control !== "") reached.set(control, name);
  }
  const missed = await page.locator("[data-control]").evaluateAll(
    (all, found) => {
      const names = all.map((one) => [
        one.getAttribute("data-control"),
        one.outerHTML.slice(0, 90),
      ]);
      return names.filter(([control]) => !found.includes(control ?? ""));
    },
    [...reached.keys()],
  );
  expect(missed).toEqual([]);
  expect([...reached.values()].filter((name) => name === "")).toEqual([]);
  await page.close();
});

describe.each(["light", "dark"] as const)("in %s", (scheme) => {
  test("every text stands out from its ground", async () => {
    const { page } = await opened(faultyDesign);
    await page.emulateMedia({ colorScheme: scheme });
    expect(await page.evaluate(weakTexts)).toEqual([]);
    // The measure itself can fail: texts in a middle grey are found in both.
    await page.evaluate(() => document.documentElement.style.setProperty("--quiet", "#888"));
    expect(await page.evaluate(weakTexts)).not.toEqual([]);
    await page.close();
  });
});

/** Texts under the ratio of WCAG 2.2, 1.4.3 (4.5 to 1), computed as its "relative luminance" says. */
function weakTexts(): readonly string[] {
  const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const luminance = (colour: string): number => {
    const [red = 0, green = 0, blue = 0] = channels(colour).map((value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const ground = (element: Element): string => {
    const own = getComputedStyle(element).backgroundColor;
    if (channels(own)[3] !== 0) return own;
    return element.parentElement === null ? "rgb(255, 255, 255)" : ground(element.parentElement);
  };
  return [...document.querySelectorAll("body *")]
    .filter((each) => [...each.childNodes].some((child) => child.nodeType === 3))
    .flatMap((each) => {
      const [low, high] = [getComputedStyle(each).color, ground(each)]
        .map(luminance)
        .sort((a, b) => a - b);
      const ratio = ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05);
      return ratio < 4.5 ? [`${each.tagName} ${each.textContent?.slice(0, 30)} ${ratio}`] : [];
    });
}
