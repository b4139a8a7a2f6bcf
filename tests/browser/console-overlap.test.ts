// What the room of a console says of two panels that want the same modules: one question with its focus, marks, a fit that
// does not call it nothing; and what is to be read in its picture: names, the ring of the focus, the key of the rings of reach.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type ConsoleRoom, OPENING, openConsoleRoom } from "../support/console-room.ts";

let room: ConsoleRoom;
let page: Page;

beforeAll(async () => {
  room = await openConsoleRoom();
  page = room.page;
}, OPENING);

afterAll(() => room?.stand.close());

test("names stand over the picture and a ring round it while keys work on it", async () => {
  await room.viewFrom("Above");
  await page.getByRole("button", { name: "Bay forward", exact: true }).focus();
  const box = await page.locator(".stage").boundingBox();
  if (box === null) throw new Error("there is no picture");
  const edge = { x: box.x, y: box.y + box.height - 40, width: 3, height: 30 };
  const without = await page.screenshot({ clip: edge });
  await page.keyboard.press("Tab");
  expect(await page.locator(".stage").evaluate((one) => one === document.activeElement)).toBe(true);
  expect((await page.screenshot({ clip: edge })).equals(without)).toBe(false);
  const onTop = await page.locator(".console-labels .panel").evaluateAll((all) => {
    const read = all.filter((one) => one.checkVisibility({ visibilityProperty: true }));
    // Names let the pointer through to the picture: asked which lies on top, they must not.
    return read.map((one) => {
      const { left, top, width, height } = one.getBoundingClientRect();
      if (one instanceof HTMLElement) one.style.pointerEvents = "auto";
      const there = document.elementFromPoint(left + width / 2, top + height / 2);
      if (one instanceof HTMLElement) one.style.pointerEvents = "";
      return there === one;
    });
  });
  expect(onTop).toHaveLength(13);
  expect(onTop).not.toContain(false);
});

test("the rings of reach are told apart by words while they are shown", async () => {
  const key = page.locator(".console-key");
  await page.locator(".console-fold summary").click();
  await page.getByRole("checkbox", { name: "Reach" }).check();
  await key.filter({ hasText: /Inner ring: .*without leaning.*mm/ }).waitFor();
  await key.filter({ hasText: /Outer ring: .*leaning forward.*mm/ }).waitFor();
  await page.getByRole("checkbox", { name: "Reach" }).uncheck();
  await key.waitFor({ state: "detached" });
  await page.getByRole("checkbox", { name: "Reach" }).check();
});

describe("a panel written where another stands", () => {
  const choice = () => page.getByRole("alertdialog");

  test("is asked about once, and the question has the focus and the only buttons", async () => {
    await room.viewFrom("Above");
    await page.getByRole("radio", { name: "Move panels" }).check();
    await room.panelRow("radio").click();
    await page.locator(".stage").focus();
    const height = (await page.locator(".stage").boundingBox())?.height;
    for (let step = 0; step < 3; step += 1) await page.keyboard.press("ArrowDown");
    await page.locator(".dragged").getByText("radio: moved from module 43 to module 40").waitFor();
    // However many lines it takes to say what is met, the picture stays as large as it was.
    await room.happened("clashes; ");
    expect((await page.locator(".stage").boundingBox())?.height).toBe(height);
    const said = await page.getByLabel("What happened").textContent();
    const count = Number(/(\d+) clashes/.exec(said ?? "")?.[1]);
    const listed = await page.locator(".dragged li.clash").count();
    await page
      .locator(".dragged li")
      .filter({ hasText: `${count - listed} more clashes` })
      .waitFor();
    await page.keyboard.press("Enter");
    await choice().waitFor();
    expect(await page.getByRole("button", { name: "Put it back" }).count()).toBe(1);
    expect(await page.getByRole("button", { name: "Write it" }).count()).toBe(0);
    const first = choice().getByRole("button", { name: "Set free at module 40" });
    await expect.poll(() => first.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.press("Enter");
    await room.panelRow("radio").filter({ hasText: "modules 40 to" }).waitFor();
    // The keys go on where they were.
    const stage = page.locator(".stage");
    await expect.poll(() => stage.evaluate((one) => one === document.activeElement)).toBe(true);
  });

  test("is marked with the other in the picture when its fault is chosen", async () => {
    await room.viewFrom("Whole");
    const canvas = page.locator(".stage canvas");
    const before = await canvas.getAttribute("data-view");
    await page.getByRole("button", { name: /are wanted by both/ }).click();
    await page.locator(".console-labels .note.clash").first().waitFor();
    // The view goes there.
    await expect.poll(() => canvas.getAttribute("data-view")).not.toBe(before);
    await page.getByRole("button", { name: /are wanted by both/ }).click();
    await expect.poll(() => page.locator(".console-labels .note").count()).toBe(0);
  });

  test("is no fit that has found nothing", async () => {
    await page.getByRole("button", { name: "Check the fit", exact: true }).click();
    await page.getByRole("button", { name: "Check the fit again" }).waitFor({ timeout: 100_000 });
    const words = /alarms and radio want the same modules: \d+ clashes between them/;
    expect(await page.locator(".console-fit").textContent()).toMatch(words);
    expect(await page.getByLabel("What happened").textContent()).toMatch(words);
    await page.getByRole("button", { name: "Undo" }).click();
    await room.panelRow("radio").filter({ hasText: "modules 43 to" }).waitFor();
    await room.happened("The design has changed since the fit was checked.");
  }, 120_000);
});

test(
  "the kernel that true shapes need is told of, and a console that waits for it is moved in once it is given up",
  async () => {
    let isAsked = (): void => undefined;
    const asked = new Promise<void>((done) => {
      isAsked = done;
    });
    // As on a line that gives nothing more: it is never answered.
    await page.context().route("**/*.wasm", () => isAsked());
    await page.locator(".console-fold summary").click();
    // The list stays open for the next time.
    await page.getByRole("button", { name: "True shapes of prints" }).click();
    await page
      .locator(".console-shaping")
      .filter({ hasText: "opening the solid kernel" })
      .waitFor();
    await page.getByRole("progressbar", { name: "Working out true shapes" }).waitFor();
    await asked;
    await page.getByRole("button", { name: "Give them up" }).click();
    await room.happened("The true shapes were given up");
    await page.getByRole("progressbar").waitFor({ state: "detached" });
    await page.context().unroute("**/*.wasm");
    await room.panelRow("radio").click();
    await room.hand("Move panels");
    await page.locator(".stage").focus();
    await page.keyboard.press("ArrowRight");
    await room.happened("module");
    await page.keyboard.press("Escape");
  },
  OPENING,
);

test(
  "true shapes of prints come with what is being made, and are drawn",
  async () => {
    const before = await room.still();
    await page.getByRole("button", { name: "True shapes of prints" }).click();
    await page.getByRole("progressbar", { name: "Working out true shapes" }).waitFor();
    await page.getByRole("progressbar").waitFor({ state: "detached" });
    await room.drawn(before);
  },
  OPENING,
);

test("nothing was complained about in all of this", () => {
  expect(room.complaints.filter((each) => !each.startsWith("failed: "))).toEqual([]);
});
