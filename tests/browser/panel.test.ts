// Work on one panel in a real browser: place, move, mend, undo, by mouse, by keyboard alone, and in the text. What the page
// shows is held against the design's text and against plain arithmetic on it.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import {
  asksLate,
  type Bench,
  benchWith,
  PANEL,
  restingBox,
  strike,
  textHas,
  textOf,
} from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const benchOf = (text: string): Promise<Bench> => benchWith(stand, text);

/** The middle of a component in the picture, in panel millimetres, by the rulers' own figures. */
async function placeOf(
  page: Page,
  id: string,
): Promise<{ readonly x: number; readonly y: number }> {
  return page.locator(`[data-component="${id}"]`).evaluate((group: SVGGElement) => {
    const own = group.ownerSVGElement?.querySelector<SVGGElement>(".panel-place");
    const matrix = own?.getScreenCTM();
    const box = group.querySelector("path")?.getBoundingClientRect();
    if (matrix === null || matrix === undefined || box === undefined)
      return { x: Number.NaN, y: Number.NaN };
    const middle = new DOMPoint(box.x + box.width / 2, box.y + box.height / 2);
    const { x, y } = middle.matrixTransform(matrix.inverse());
    return { x, y: -y };
  });
}

async function pixelsAt(
  page: Page,
  id: string,
): Promise<{ readonly x: number; readonly y: number }> {
  const box = await restingBox(page.locator(`[data-component="${id}"]`));
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

const PATIENCE = 60_000;

describe("by keyboard alone", () => {
  test(
    "open, place from the drawer, move, mend, undo all, save",
    async () => {
      const { page, complaints } = await benchOf(PANEL);
      const sheet = page.getByRole("application");
      // By Tab, as someone without a mouse comes to it.
      for (let step = 0; step < 40; step += 1) {
        await page.keyboard.press("Tab");
        if (await sheet.evaluate((one) => one === document.activeElement)) break;
      }
      await page.keyboard.press("p");
      // Keys go where the page has put them: into the search, once the drawer is there.
      await page.locator("input[type=search]:focus").waitFor();
      await page.keyboard.type("toggle-6");
      await page.getByText(/^\d+ of \d+ parts/).waitFor();
      await page
        .getByRole("button", { name: /^toggle-6 / })
        .first()
        .waitFor();
      await page.keyboard.press("Enter");
      // From the middle of the panel, 73 mm and 48 mm, five to the right and half a millimetre up.
      await page.keyboard.press("Shift+ArrowRight");
      await page.keyboard.press("ArrowUp");
      await page.keyboard.press("Enter");
      const placed = await textHas(page, /\n {2}toggle: \{ part: toggle-6/);
      expect(placed).toMatch(
        /toggle: \{ part: toggle-6[\w-]*, at: \{ x: 78 mm, y: 48 mm \} \}|y: 48\.5 mm/,
      );

      // It stands on the other one: a fault with both numbers appears, in the list and at its line.
      const fault = page.locator(".finding.fault").first();
      await fault.waitFor();
      await expect.poll(() => fault.locator("dl").textContent()).toMatch(/is.*mm.*limit.*mm/);

      await sheet.focus();
      await strike(page, ["ArrowDown", "ArrowDown", "ArrowDown", "ArrowDown"]);
      await textHas(page, /x: 78 mm, y: 46(\.5)? mm/);

      // Its remedy is a button like any other.
      const remedy = page.locator(".finding.fault .remedy").first();
      await remedy.focus();
      const before = await textOf(page);
      await page.keyboard.press("Enter");
      await expect.poll(() => textOf(page)).not.toBe(before);

      // Loose files are saved by handing them over.
      const saved = page.waitForEvent("download");
      await page.keyboard.press("Control+s");
      expect((await saved).suggestedFilename()).toBe("pumps.yaml");

      await sheet.focus();
      for (let step = 0; step < 3; step += 1) await page.keyboard.press("Control+z");
      await expect.poll(() => textOf(page)).toBe(PANEL);
      expect(complaints).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );
});

describe("on the sheet by keyboard", () => {
  test("a step that begins while the one before it is still read is not lost", async () => {
    const { page } = await benchOf(PANEL);
    await page.evaluate(asksLate);
    await page.getByRole("application").focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Shift+ArrowLeft");
    const text = page.getByRole("textbox", { name: "Text of pumps.yaml" });
    await expect.poll(() => text.inputValue()).toContain("x: 35 mm");
    await page.keyboard.press("ArrowUp");
    await textHas(page, "main: { part: toggle-6, at: { x: 35 mm, y: 50.5 mm }");
    await page.close();
  });

  test("Tab goes through the components and leaves the sheet; arrows edit what the design says", async () => {
    const { page, complaints } = await benchOf(PANEL);
    const sheet = page.getByRole("application");
    await sheet.focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await expect.poll(() => page.locator(".said").textContent()).toContain("aux");
    await page.keyboard.press("Shift+ArrowLeft");
    await textHas(page, "right-of: main, centres: 35 mm");
    // Up is kept by its neighbour's line: a choice is held out, and taking it sets the one axis free.
    await page.keyboard.press("ArrowUp");
    const free = page.getByRole("button", { name: "Set aux free at y: 50.5 mm" });
    await free.waitFor();
    await free.press("Enter");
    await textHas(page, "right-of: main, centres: 35 mm, y: 50.5 mm");
    await sheet.focus();
    await page.keyboard.press("Escape");
    await page.keyboard.press("Tab");
    expect(await sheet.evaluate((one) => one === document.activeElement)).toBe(false);
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("a design in inches has its rulers and its steps in inches", async () => {
  const { page, complaints } = await benchOf(
    PANEL.replace("x: 40 mm, y: 50 mm", "x: 1 1/2 in, y: 2 in").replace("40 mm", "1.5 in"),
  );
  await page.locator(".rulers").getByText("in", { exact: true }).waitFor();
  await page.getByRole("application").focus();
  await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowRight");
  // A thirty-second of an inch to the right of one and a half.
  await textHas(page, "x: 1.53125 in, y: 2 in");
  expect(complaints).toEqual([]);
  await page.close();
});

test("one finger pans, two make it larger", async () => {
  const { page, complaints } = await benchOf(PANEL);
  const outline = page.locator(".front .outline");
  const before = await restingBox(outline);
  const session = await page.context().newCDPSession(page);
  const board = (await page.getByRole("application").boundingBox())!;
  const [x, y] = [board.x + board.width - 40, board.y + board.height - 40];
  const touch = (kind: "touchStart" | "touchMove" | "touchEnd", ...points: readonly number[][]) =>
    session.send("Input.dispatchTouchEvent", {
      type: kind,
      touchPoints: points.map(([at = 0, down = 0], id) => ({ x: at, y: down, id })),
    });
  await touch("touchStart", [x, y]);
  await touch("touchMove", [x - 30, y - 20]);
  await touch("touchEnd");
  await expect.poll(async () => (await outline.boundingBox())!.x - before.x).toBeCloseTo(-30, 0);
  await touch("touchStart", [x - 100, y]);
  await touch("touchStart", [x - 100, y], [x, y]);
  await touch("touchMove", [x - 200, y], [x, y]);
  await touch("touchEnd");
  await expect
    .poll(async () => (await outline.boundingBox())!.width / before.width)
    .toBeCloseTo(2, 1);
  expect(await textOf(page)).toBe(PANEL);
  expect(complaints).toEqual([]);
  await page.close();
});

describe("by mouse", () => {
  test("a drag moves only the picture until it is let go, and is one step", async () => {
    const { page, complaints } = await benchOf(PANEL);
    const from = await pixelsAt(page, "main");
    const before = await placeOf(page, "main");
    const other = await placeOf(page, "aux");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - 20, from.y + 24, { steps: 4 });
    expect(await textOf(page)).toBe(PANEL);
    const held = await placeOf(page, "main");
    expect(held.x).toBeLessThan(before.x - 1);
    // Who leans on it goes along.
    expect((await placeOf(page, "aux")).x - other.x).toBeCloseTo(held.x - before.x, 1);
    await page.mouse.up();
    const text = await textHas(page, /main: \{ part: toggle-6, at: \{ x: (?!40 mm)[\d.]+ mm/);
    const [, x = "", y = ""] = /x: ([\d.]+) mm, y: ([\d.]+) mm/.exec(text) ?? [];
    expect(Number(x) * 2).toBe(Math.round(Number(x) * 2));
    await expect
      .poll(async () => (await placeOf(page, "main")).x - before.x)
      .toBeCloseTo(Number(x) - 40, 1);
    expect((await placeOf(page, "main")).y - before.y).toBeCloseTo(Number(y) - 50, 1);
    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => textOf(page)).toBe(PANEL);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("the rubber band selects, a mark points at its finding, the wheel makes it larger", async () => {
    const { page } = await benchOf(PANEL);
    const box = await restingBox(page.locator(".front .outline"));
    await page.mouse.move(box.x + 4, box.y + 4);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width - 4, box.y + box.height - 4, { steps: 3 });
    await page.mouse.up();
    await expect.poll(() => page.locator(".front .selected").count()).toBe(2);
    await page.getByText("2 selected:").waitFor();
    await page.mouse.wheel(0, -200);
    await expect
      .poll(async () => (await page.locator(".front .outline").boundingBox())!.width)
      .toBeGreaterThan(box.width * 1.2);
    const mark = page.locator(".mark").first();
    const number = await mark.textContent();
    await mark.dispatchEvent("pointerdown");
    await page.locator(`#finding-${number} button[aria-pressed=true]`).waitFor();
    await page.close();
  });
});

describe("in the text", () => {
  test("an edit moves the picture, the caret selects, what is unreadable is told at its line", async () => {
    const { page, complaints } = await benchOf(PANEL);
    const before = await placeOf(page, "main");
    const field = page.getByRole("textbox", { name: "Text of pumps.yaml" });
    await field.fill(PANEL.replace("x: 40 mm", "x: 45 mm"));
    await expect.poll(async () => (await placeOf(page, "main")).x - before.x).toBeCloseTo(5, 1);
    await field.evaluate((area: HTMLTextAreaElement) => {
      const at = area.value.indexOf("right-of");
      area.setSelectionRange(at, at);
    });
    await field.press("ArrowRight");
    await expect.poll(() => page.locator(".ticket").getByLabel("name").inputValue()).toBe("aux");
    await field.fill(PANEL.replace("toggle-6, at: { x", "toggel-6, at: { x"));
    await page.getByRole("button", { name: /^Finding \d+ in line 9$/ }).waitFor();
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("undo in the text is that of the picture, and the caret stays in its words", async () => {
    const { page, complaints } = await benchOf(PANEL);
    await page.locator('[data-component="main"]').first().click();
    await page.keyboard.press("Shift+ArrowRight");
    await textHas(page, "x: 45 mm");
    const field = page.getByRole("textbox", { name: "Text of pumps.yaml" });
    const caretAt = (): Promise<string> =>
      field.evaluate((area: HTMLTextAreaElement) =>
        area.value.slice(area.selectionStart - 2, area.selectionStart + 2),
      );
    await field.focus();
    await field.evaluate((area: HTMLTextAreaElement) => {
      const at = area.value.indexOf("Pumps") + "Pumps".length;
      area.setSelectionRange(at, at);
    });
    // At once, as one edit: letters that a busy machine lets wait would be several.
    await page.keyboard.insertText(" aft");
    await page.keyboard.press("Control+z");
    // What was typed first, then what was done in the picture: one history.
    await expect.poll(() => textOf(page)).toContain("title: Pumps\n");
    expect(await textOf(page)).toContain("x: 45 mm");
    expect(await caretAt()).toBe("ps\nm");
    await page.keyboard.press("Control+z");
    await expect.poll(() => textOf(page)).toBe(PANEL);
    // At what has changed: 45 is 40 again.
    expect(await caretAt()).toBe("40 m");
    await page.keyboard.press("Control+Shift+z");
    await page.keyboard.press("Control+y");
    await textHas(page, "title: Pumps aft\n");
    expect(await textOf(page)).toContain("x: 45 mm");
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("a legend that wants to be markup stays a legend", async () => {
    const { page, complaints } = await benchOf(PANEL);
    await page.getByRole("application").focus();
    await page.keyboard.press("Control+a");
    await page.getByText("2 selected:").waitFor();
    expect(await page.locator("#page img").count()).toBe(0);
    expect(await textOf(page)).toContain("<img src=x onerror");
    expect(complaints).toEqual([]);
    await page.close();
  });
});

test("a list becomes a panel that is opened", async () => {
  const { page, complaints } = await benchOf(PANEL);
  await page.getByText("Open", { exact: true }).click();
  await page.getByRole("button", { name: "New panel from a list" }).click();
  await page
    .getByLabel("The list")
    .fill("part,quantity,legend\ntoggle-6,2,ONE; TWO\nled-5-bezel,1,ON");
  await page.getByLabel("Name of the panel").fill("from-list");
  await page.getByRole("button", { name: "Arrange it" }).click();
  await page
    .getByRole("application", { name: /^from-list from the front: 3 components/ })
    .waitFor();
  expect(complaints).toEqual([]);
  await page.close();
});

test("the section lies beside the sheet on demand", async () => {
  const { page, complaints } = await benchOf(PANEL);
  await page.getByLabel("Section").check();
  await page.getByRole("img", { name: "Pumps, section" }).waitFor();
  expect(complaints).toEqual([]);
  await page.close();
});
