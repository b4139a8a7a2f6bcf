// The rooms of the page for everybody: axe-core's rules where to begin, in a panel and in the console's room, Tab in the order
// of reading; and the console's room follows shapes that change on the disk.

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFindings } from "../support/axe.ts";
import { layDesign } from "../support/desk-page.ts";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import { faultyDesign } from "../support/page-designs.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

/** As files without a folder: they name each other by name alone. */
async function openLoose(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  const files = Object.entries(texts).map(([path, text]) => ({
    name: path.split("/").at(-1)!,
    mimeType: "text/yaml",
    buffer: Buffer.from(text.replace("../shed.yaml", "shed.yaml")),
  }));
  await page.getByLabel("Open files").setInputFiles(files);
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
}

/** The small console in its room, drawn once. */
async function consoleRoom(): Promise<Page> {
  const { page } = await openPage(stand);
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.goto(`${stand.server.address}?picture=plain`);
  await openLoose(page, SMALL_CONSOLE);
  await enterConsole(page);
  return page;
}

async function enterConsole(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Console", exact: true }).click();
  await page.getByRole("button", { name: /^one / }).waitFor();
  await page.waitForFunction(
    () => Number(document.querySelector<HTMLElement>(".stage canvas")?.dataset["frames"] ?? 0) > 0,
  );
}

describe.each(["light", "dark"] as const)("axe-core in %s", (scheme) => {
  test("finds nothing where to begin, in a panel and in the console's room", async () => {
    const { page: start } = await openPage(stand);
    await start.emulateMedia({ colorScheme: scheme });
    await start.locator(".guide").waitFor();
    expect(await axeFindings(start)).toEqual([]);
    await start.getByRole("button", { name: /^Examples, a list/ }).click();
    await start.locator(".tile img").first().waitFor();
    expect(await axeFindings(start)).toEqual([]);
    await start.close();

    const { page: panel } = await openPage(stand);
    await panel.emulateMedia({ colorScheme: scheme });
    await openLoose(panel, faultyDesign.files);
    await panel.locator('[data-component="full"]').first().click();
    await panel.locator(".deeds").waitFor();
    expect(await axeFindings(panel)).toEqual([]);
    await panel.close();

    const console = await consoleRoom();
    await console.emulateMedia({ colorScheme: scheme, reducedMotion: "reduce" });
    await console.getByRole("button", { name: "Check the fit" }).click();
    await console.getByRole("button", { name: "Check the fit again" }).waitFor();
    await console.getByRole("button", { name: /^one / }).click();
    expect(await axeFindings(console)).toEqual([]);
    // The measure itself can fail.
    await console.evaluate(() => {
      const button = document.createElement("button");
      document.querySelector("main")?.append(button);
    });
    expect((await axeFindings(console)).join()).toContain("button-name");
    await console.close();
  });
});

test("Tab goes through the console's room as it is read: above, picture, beside, and every control is met", async () => {
  const page = await consoleRoom();
  await page.evaluate(() => {
    const controls = document.querySelectorAll("button, input, select, summary, .stage");
    for (const control of controls)
      if (control instanceof HTMLElement && control.checkVisibility() && control.tabIndex >= 0)
        control.dataset["control"] = control.outerHTML.slice(0, 90);
  });
  const first = page.locator(".open-menu summary");
  await first.focus();
  const met = new Set([(await first.getAttribute("data-control")) ?? ""]);
  const regions = ["HEADER"];
  for (let step = 0; step < 80; step += 1) {
    await page.keyboard.press("Tab");
    const now = await page.evaluate(() => {
      const focused = document.activeElement;
      const region = focused?.closest("header, main, aside")?.tagName ?? "";
      return { region, control: focused instanceof HTMLElement ? focused.dataset["control"] : "" };
    });
    if (now.region === "" && met.size > 0) break;
    if (now.control) met.add(now.control);
    if (now.region !== regions.at(-1)) regions.push(now.region);
  }
  expect(regions.filter(Boolean)).toEqual(["HEADER", "MAIN", "ASIDE"]);
  const missed = await page.locator("[data-control]").evaluateAll(
    (all, found) =>
      all
        .filter((one) => !(one instanceof HTMLInputElement && one.type === "radio" && !one.checked))
        .map((one) => one.getAttribute("data-control"))
        .filter((control) => !found.includes(control ?? "")),
    [...met],
  );
  expect(missed).toEqual([]);
  await page.close();
});

/** A tetrahedron with three edges of this length at right angles, as an STL file of letters. */
const tetrahedron = (edge: number): string => {
  const [o, x, y, z] = [
    [0, 0, 0],
    [edge, 0, 0],
    [0, edge, 0],
    [0, 0, edge],
  ].map((corner) => corner.join(" "));
  const facets = [
    [o, y, x],
    [o, x, z],
    [o, z, y],
    [x, y, z],
  ];
  const facet = (corners: readonly (string | undefined)[]): string =>
    `facet normal 0 0 0\nouter loop\n${corners.map((corner) => `vertex ${corner}\n`).join("")}endloop\nendfacet\n`;
  return `solid t\n${facets.map(facet).join("")}endsolid t\n`;
};

test("a shape that changes on the disk is drawn anew in the console's room, one that does not is left alone", async () => {
  const files = {
    ...SMALL_CONSOLE,
    "console.yaml": (SMALL_CONSOLE["console.yaml"] ?? "").concat(
      "  - { name: seat, stl: seat.stl, at: [300, -300, 0] }\n",
    ),
  };
  const design = layDesign({ entry: "console.yaml", files });
  const shape = join(design.folder, "seat.stl");
  writeFileSync(shape, tetrahedron(100));
  const server = await design.serve("dist/viewer");
  const page = await stand.browser.newPage();
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.goto(server.address.replace("#", "?picture=plain#"));
  await page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
  await enterConsole(page);
  const frames = async (): Promise<number> =>
    Number(await page.locator(".stage canvas").getAttribute("data-frames"));
  const resting = async (): Promise<number> => {
    for (let before = -1; ; ) {
      const now = await frames();
      if (now === before) return now;
      before = now;
      await page.waitForTimeout(1500);
    }
  };
  const first = await resting();
  // The page is told, and fetches the shape again.
  const fetched = page.waitForResponse((answer) => answer.url().includes("/design/shapes/"));
  writeFileSync(shape, tetrahedron(100));
  await (await fetched).finished();
  expect(await resting()).toBe(first);
  writeFileSync(shape, tetrahedron(400));
  await expect.poll(frames, { timeout: 10_000 }).toBeGreaterThan(first);
  await page.close();
  await server.close();
  design.remove();
});

test("a reading that takes longer than half a second shows that it goes on, and can be given up", async () => {
  const { page } = await openPage(stand);
  let isHeld = true;
  const held: (() => void)[] = [];
  await page.context().route("**/library.json", async (route) => {
    if (isHeld) await new Promise<void>((done) => held.push(done));
    await route.continue().catch(() => undefined);
  });
  await page.reload();
  await page.getByLabel("Open files").setInputFiles({
    name: "one.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from((SMALL_CONSOLE["one.yaml"] ?? "").replace("workshop: shed.yaml\n", "")),
  });
  await page.getByRole("progressbar", { name: "Reading the design" }).waitFor();
  isHeld = false;
  await page.getByRole("button", { name: "Give it up" }).click();
  await page.getByRole("status").filter({ hasText: "was given up" }).waitFor();
  await expect.poll(() => page.getByRole("progressbar").count()).toBe(0);
  for (const done of held) done();
  const open = page.getByLabel("Open files");
  await open.setInputFiles([]);
  await openLoose(page, SMALL_CONSOLE);
  await page.getByRole("application").waitFor();
  await page.close();
});

test("the building of a console's picture can be given up, and begun again", async () => {
  const { page } = await openPage(stand);
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.goto(`${stand.server.address}?picture=plain`);
  await openLoose(page, SMALL_CONSOLE);
  let isHeld = true;
  await page.context().route("**/console-answers-*.js", async (route) => {
    if (!isHeld) await route.continue();
  });
  await page.getByRole("button", { name: "Console", exact: true }).click();
  await page.getByText("Building the console").waitFor();
  await page.getByRole("button", { name: "Give it up" }).click();
  await page.getByText("The console was not built").waitFor();
  isHeld = false;
  await page.getByRole("button", { name: "Build it" }).click();
  await page.getByRole("button", { name: /^one / }).waitFor();
  await page.close();
});
