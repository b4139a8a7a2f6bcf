// What is no component, and what stands in more places than one, worked on in a real browser: markings, windows, names that
// others say, a file that stands twice in a console. Held against the design's text.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import {
  type Bench,
  benchWith,
  PANEL,
  restingBox,
  textHas,
  textOf,
} from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const benchOf = (text: string): Promise<Bench> => benchWith(stand, text);

const MARKED = PANEL.concat(`markings:
  - legend: { name: word, text: BILGE, at: { x: 100 mm, top: 15 mm } }
  - border: { name: frame, around: [main, aux] }
  - window: { name: slot, at: { x: 120 mm, y: 50 mm }, width: 20 mm, height: 10 mm, layers: [face] }
`);

describe("markings and windows", () => {
  test("are taken hold of and moved like components; what goes round them offers to move them", async () => {
    const { page, complaints } = await benchOf(MARKED);
    const slot = await restingBox(page.locator('.handle[data-owner="slot"]'));
    const scale = slot.width / 20;
    await page.mouse.move(slot.x + slot.width / 2, slot.y + slot.height / 2);
    await page.mouse.down();
    // Alt: by just as much as the hand has gone.
    await page.keyboard.down("Alt");
    await page.mouse.move(slot.x + slot.width / 2 - 5 * scale, slot.y + slot.height / 2, {
      steps: 3,
    });
    await page.mouse.up();
    await page.keyboard.up("Alt");
    await textHas(page, /at: \{ x: 11[45](\.\d+)? mm, y: (50|49\.\d+) mm \}, width/);

    await page.getByRole("application").focus();
    await page.keyboard.press("Escape");
    await page.locator('.handle[data-owner="word"]').click();
    await page.keyboard.press("Shift+ArrowLeft");
    // Ten steps of half a millimetre.
    await textHas(page, "text: BILGE, at: { x: 95 mm, top: 15 mm }");

    await page.keyboard.press("Escape");
    await page.locator('.handle[data-owner="frame"]').click({ position: { x: 2, y: 1 } });
    await page.keyboard.press("Shift+ArrowUp");
    await page.getByRole("button", { name: "Move main and aux" }).click();
    await textHas(page, "main: { part: toggle-6, at: { x: 40 mm, y: 55 mm }");
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("a component that is named elsewhere goes only with the person's word, and is renamed everywhere", async () => {
    const { page, complaints } = await benchOf(MARKED);
    await page.locator('[data-component="main"]').first().click();
    const name = page.locator(".ticket").getByLabel("name");
    await name.fill("lead");
    await name.press("Enter");
    await textHas(page, "around: [lead, aux]");
    expect(await textOf(page)).toContain("right-of: lead");
    await page.getByRole("application").focus();
    await page.keyboard.press("Delete");
    await page
      .getByText(/frame no longer goes round lead/)
      .first()
      .waitFor();
    expect(await textOf(page)).toContain("lead:");
    await page.getByRole("button", { name: "Take off lead all the same" }).click();
    await textHas(page, "around: [aux]");
    await page.getByRole("button", { name: /^Undo/ }).click();
    await textHas(page, "around: [lead, aux]");
    expect(complaints).toEqual([]);
    await page.close();
  });
});

const TWICE = `consolewright: 1
kind: console
name: desk
bays:
  aft: { mount: console-rail, at: [0, 0, 700], along: [1, 0, 0], slope: 0, cant: 0 deg, length: 40 modules, depth: 180 mm }
panels:
  - { file: pumps.yaml, as: port, bay: aft, module: 0 }
  - { file: pumps.yaml, as: starboard, bay: aft, after: port }
`;

describe("a file that stands twice", () => {
  async function twice(): Promise<Bench> {
    const open = await openPage(stand);
    const file = (name: string, text: string) => ({
      name,
      mimeType: "text/yaml",
      buffer: Buffer.from(text),
    });
    await open.page
      .getByLabel("Open files")
      .setInputFiles([file("console.yaml", TWICE), file("pumps.yaml", PANEL)]);
    await open.page.getByRole("status").filter({ hasText: "Opened: 2 files" }).waitFor();
    await open.page.locator('[data-component="main"]').first().click();
    await open.page.keyboard.press("Shift+ArrowRight");
    await asked(open.page);
    return open;
  }

  /** Keys go to the question once it has the keyboard. */
  const asked = (page: Page): Promise<void> =>
    page.locator('[role="alertdialog"] button:focus').waitFor();

  test("asks before the first edit, and changes nothing where it is left", async () => {
    const { page, complaints } = await twice();
    const question = page.getByRole("alertdialog");
    expect(await question.textContent()).toContain(
      "pumps.yaml stands 2 times: as port and as starboard",
    );
    expect(await textOf(page)).toBe(PANEL);
    await page.keyboard.press("Escape");
    await question.waitFor({ state: "detached" });
    expect(await textOf(page)).toBe(PANEL);

    await page.keyboard.press("Shift+ArrowRight");
    await asked(page);
    // The first of the choices has the keyboard.
    await page.keyboard.press("Enter");
    await textHas(page, "x: 45 mm, y: 50 mm");
    await page.keyboard.press("Shift+ArrowRight");
    await textHas(page, "x: 50 mm, y: 50 mm");
    expect(await question.count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("makes a file of its own for the one, as one step", async () => {
    const { page, complaints } = await twice();
    await page.getByRole("button", { name: "Make an own copy for port" }).click();
    const field = page.getByRole("textbox", { name: "Text of port.yaml" });
    await expect.poll(() => field.inputValue()).toContain("x: 45 mm, y: 50 mm");
    await page.getByRole("button", { name: /^Undo/ }).click();
    await textHas(page, "x: 40 mm, y: 50 mm");
    expect(complaints).toEqual([]);
    await page.close();
  });
});
