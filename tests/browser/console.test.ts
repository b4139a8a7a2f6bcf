// The console's picture in a real browser, drawn by software: it opens, rests, moves a panel with its numbers and one edit,
// takes it back, goes to a finding, and can be worked by keys alone.

import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type ConsoleRoom, OPENING, openConsoleRoom } from "../support/console-room.ts";
import { type OpenPage, openPage } from "../support/open-page.ts";
import { SMALL_CONSOLE } from "../support/small-console.ts";

let room: ConsoleRoom;
let page: Page;

beforeAll(async () => {
  room = await openConsoleRoom();
  page = room.page;
}, OPENING);

afterAll(() => room?.stand.close());

const view = async (): Promise<string> =>
  (await page.locator(".stage canvas").getAttribute("data-view")) ?? "";

describe("the tug trainer's console", () => {
  test("is drawn", async () => {
    const shot = await page.locator(".stage").screenshot();
    await page.getByRole("heading", { name: "; fit not checked yet" }).waitFor();
    // A picture of one colour packs to far less: 400 by 300 of plain paper are under 2 kB.
    expect(shot.length).toBeGreaterThan(15_000);
  });

  test("is of what the page's one worker has compiled", () => {
    expect(page.workers().map((worker) => /[a-z]+\.worker/.exec(worker.url())?.[0])).toEqual([
      "core.worker",
    ]);
  });

  test("has the name of every panel where it can be read, at first sight", async () => {
    await page.setViewportSize({ width: 1280, height: 720 });
    await room.viewFrom("Whole");
    const names = page.locator(".console-labels .panel");
    const boxes = await names.evaluateAll((all) =>
      all
        .filter((one) => one.checkVisibility({ visibilityProperty: true }))
        .map((one) => one.getBoundingClientRect())
        .map(({ left, right, top, bottom }) => ({ left, right, top, bottom })),
    );
    expect(boxes).toHaveLength(13);
    for (const [index, one] of boxes.entries())
      for (const other of boxes.slice(index + 1))
        expect(
          one.right <= other.left ||
            other.right <= one.left ||
            one.bottom <= other.top ||
            other.bottom <= one.top,
        ).toBe(true);
    await page.setViewportSize({ width: 1200, height: 900 });
    await room.still();
  });

  test("draws nothing while nobody touches it", async () => {
    const before = await room.still();
    await page.waitForTimeout(1000);
    expect(await room.frames()).toBe(before);
    await page.locator(".stage").focus();
    await page.keyboard.press("ArrowLeft");
    await room.drawn(before);
    // One key, one frame.
    await room.still();
    expect(await room.frames()).toBe(before + 1);
  });

  test("goes to each place to stand", async () => {
    const seen = new Set<string>();
    for (const name of ["Whole", "From the seat", "Above", "Bay aft", "Bay forward"]) {
      await room.viewFrom(name);
      seen.add(await view());
    }
    expect(seen.size).toBe(5);
  });

  test("cuts, and the cut moves with its slider", async () => {
    const before = await room.still();
    await page.getByLabel("Where it is cut").selectOption("Bay aft: at a length");
    await room.drawn(before);
    const slider = page.getByRole("slider", { name: /Place of the cut/ });
    const then = await room.still();
    await slider.fill("230");
    await room.drawn(then);
    await page.getByLabel("Where it is cut").selectOption("Not cut");
    await room.still();
  });
});

describe("a panel moved into its neighbour by hand", () => {
  test("shows the clash with its number while it is held, and goes back with Escape", async () => {
    await room.viewFrom("Bay forward");
    await room.hand("Move panels");
    await room.panelRow("voyage-recorder").click();
    await page.locator(".stage").focus();
    await page.keyboard.press("ArrowDown");
    const list = page.locator(".dragged");
    await list.getByText("Clash").first().waitFor();
    // A module of 9.525 mm less the undersize of both panels.
    await expect
      .poll(() => list.textContent())
      .toMatch(/sheet of face on lighting.*: 9\.\d+ mm along the rail/);
    await page.locator(".console-labels .note.clash").first().waitFor();
    // Wherever the focus is.
    await page.getByRole("radio", { name: "Move panels" }).focus();
    await page.keyboard.press("Escape");
    await list.waitFor({ state: "detached" });
    await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
  });

  test("is written on release as one edit, and undo brings it back", async () => {
    await room.viewFrom("Bay aft");
    const at = await placeOf("generators");
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    const far = await placeOf("echo-sounder");
    await page.mouse.move((at.x + far.x) / 2, (at.y + far.y) / 2, { steps: 5 });
    await page.locator(".dragged").waitFor();
    const module = await page.locator(".dragged").getAttribute("data-module");
    expect(Number(module)).toBeGreaterThan(0);
    await page.mouse.up();
    await room
      .panelRow("generators")
      .filter({ hasText: `modules ${module} to` })
      .waitFor();
    await room.happened(`move generators to module ${module}`);
    await page.getByRole("button", { name: "Undo" }).click();
    await room.panelRow("generators").filter({ hasText: "modules 0 to 9" }).waitFor();
    await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
  });

  test("offers by name what the design's own words can't say", async () => {
    await room.panelRow("voyage-recorder").click();
    await room.panelRow("voyage-recorder").press("ArrowDown");
    await page.locator(".dragged").waitFor();
    await room.panelRow("voyage-recorder").press("Enter");
    const choice = page.getByRole("alertdialog");
    await choice.filter({ hasText: "written to stand behind lighting" }).waitFor();
    await choice.getByRole("button", { name: "Set free at module 36" }).click();
    await room.panelRow("voyage-recorder").filter({ hasText: "modules 36 to 39" }).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await room.panelRow("voyage-recorder").filter({ hasText: "modules 37 to 40" }).waitFor();
  });
});

describe("a panel that is held while another is chosen", () => {
  test("goes back, and Enter acts on the chosen one alone", async () => {
    await room.viewFrom("Above");
    await room.hand("Move panels");
    const at = await placeOf("fire-pumps");
    const far = await placeOf("radio");
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move((at.x + far.x) / 2, (at.y + far.y) / 2, { steps: 5 });
    await page.mouse.up();
    const choice = page.getByRole("alertdialog");
    await choice.filter({ hasText: "fire-pumps is written to stand behind" }).waitFor();
    await room.panelRow("voyage-recorder").click();
    await choice.waitFor({ state: "detached" });
    await room.happened("fire-pumps is put back. Chosen: ");
    await room.panelRow("voyage-recorder").press("Enter");
    await room.panelRow("voyage-recorder").press("ArrowDown");
    await page
      .locator(".dragged")
      .getByText("voyage-recorder: moved from module 37 to module 36")
      .waitFor();
    await page.keyboard.press("Escape");
    await page.locator(".dragged").waitFor({ state: "detached" });
    await expect.poll(() => page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);
  });
});

describe("a small console whose panel stands in a shelf", () => {
  let small: OpenPage;
  const loaded: string[] = [];

  beforeAll(async () => {
    small = await openPage(room.stand);
    small.page.on("request", (request) => loaded.push(request.url()));
    await small.page.goto(`${room.stand.server.address}?picture=plain`);
    await small.page.getByLabel("Open files").setInputFiles(
      Object.entries(SMALL_CONSOLE).map(([name, text]) => ({
        name,
        mimeType: "text/yaml",
        buffer: Buffer.from(text),
      })),
    );
    await small.page.getByRole("button", { name: "Console", exact: true }).waitFor();
  });

  afterAll(() => small?.page.close());

  test("has nothing of the picture loaded before its door is opened, and no kernel before the fit", async () => {
    const isBehindDoor = (address: string): boolean => /console[.-]|manifold/.test(address);
    // Not until the network is idle: what is fetched for the demo ends with its worker, and the browser may count it on.
    await small.page.getByRole("status").filter({ hasText: "Opened: " }).waitFor();
    expect(loaded.filter(isBehindDoor)).toEqual([]);
    await small.page.getByRole("button", { name: "Console", exact: true }).click();
    await small.page.getByRole("button", { name: /^two / }).waitFor();
    expect(loaded.filter(isBehindDoor).length).toBeGreaterThan(0);
    expect(loaded.filter((address) => address.endsWith(".wasm"))).toEqual([]);
  });

  test("has its fit worked out with progress, and choosing a finding moves the view and marks", async () => {
    await small.page.getByRole("button", { name: "Check the fit" }).click();
    await small.page.getByRole("progressbar", { name: "Working on the fit" }).waitFor();
    await small.page.getByRole("button", { name: "Check the fit again" }).waitFor();
    const canvas = small.page.locator(".stage canvas");
    const before = await canvas.getAttribute("data-view");
    const finding = small.page.getByRole("button", {
      name: /Fault The case of start on one and the shelf/,
    });
    await finding.click();
    await small.page.locator(".console-labels .note.finding").waitFor();
    await small.page.waitForFunction(
      (view) => document.querySelector<HTMLElement>(".stage canvas")?.dataset["view"] !== view,
      before,
    );
    await expect.poll(() => finding.getAttribute("aria-pressed")).toBe("true");
  });

  test("has a fit that can be given up at once", async () => {
    await small.page.getByRole("button", { name: "Check the fit again" }).click();
    await small.page.getByRole("button", { name: "Give it up" }).click();
    await small.page.getByRole("button", { name: "Check the fit", exact: true }).waitFor();
    expect(small.complaints.filter((each) => !each.startsWith("failed: "))).toEqual([]);
  });
});

test("two places are measured by keys alone", async () => {
  await room.viewFrom("Bay aft");
  await room.hand("Measure");
  await page.locator(".stage").focus();
  await page.keyboard.press("Enter");
  await page.getByLabel("What happened").getByText("Choose the second place").waitFor();
  await page.keyboard.press("Shift+ArrowRight");
  await room.still();
  await page.keyboard.press("Enter");
  await expect
    .poll(() => page.locator(".measured").textContent())
    .toMatch(/^[\d.]+ mm: .* up; from (an?|the) .*” to (an?|the) .*”/);
});

test("the camera moves by itself, and not for those who ask for stillness", async () => {
  const before = await room.still();
  await page.getByRole("button", { name: "Whole", exact: true }).click();
  await room.drawn(before);
  expect(await room.still()).toBe(before + 1);
  await page.emulateMedia({ reducedMotion: "no-preference" });
  await page.getByRole("button", { name: "Above", exact: true }).click();
  await room.drawn(before + 1);
  expect(await room.still()).toBeGreaterThan(before + 2);
  await page.emulateMedia({ reducedMotion: "reduce" });
});

test("two fingers bring it nearer", async () => {
  const before = (await view()).split(" ").map(Number);
  await page.locator(".stage canvas").evaluate((canvas) => {
    const box = canvas.getBoundingClientRect();
    const send = (kind: string, id: number, x: number): void => {
      const at = { clientX: box.left + x, clientY: box.top + 100 };
      // A made-up pointer can't be captured; the canvas hears it all the same.
      canvas.setPointerCapture = () => undefined;
      canvas.dispatchEvent(
        new PointerEvent(kind, { pointerId: id, pointerType: "touch", bubbles: true, ...at }),
      );
    };
    send("pointerdown", 11, 150);
    send("pointerdown", 12, 200);
    send("pointermove", 12, 250);
    send("pointerup", 11, 150);
    send("pointerup", 12, 250);
  });
  await room.still();
  const after = (await view()).split(" ").map(Number);
  // Twice as far apart, half as far away.
  expect(after[3]).toBeCloseTo((before[3] ?? 0) / 2, 0);
});

test("the chosen panel is opened in the panel's room", async () => {
  await room.panelRow("winch").click();
  await page.getByRole("button", { name: "Open the panel" }).click();
  await page.getByRole("combobox", { name: "Panel", exact: true }).waitFor();
  await expect.poll(() => page.locator(".stage").count()).toBe(0);
  await expect
    .poll(() => page.getByRole("combobox", { name: "Panel", exact: true }).inputValue())
    .toBe("winch");
});

test("nothing was complained about in all of this", () => {
  // The page is opened twice at the beginning: what the first was loading is broken off.
  expect(room.complaints.filter((each) => !each.startsWith("failed: "))).toEqual([]);
  expect(room.stand.server.missing).toEqual([]);
});

interface Place {
  readonly x: number;
  readonly y: number;
}

/** The middle of a panel's face, to which its name is led, from the upper left of the window. */
async function placeOf(name: string): Promise<Place> {
  const label = page.locator(`.console-labels [data-key="panel ${name}"]`);
  const [x = Number.NaN, y = Number.NaN] = ((await label.getAttribute("data-names")) ?? "")
    .split(" ")
    .map(Number);
  const stage = await page.locator(".stage").boundingBox();
  if (stage === null) throw new Error("there is no picture");
  return { x: stage.x + x, y: stage.y + y };
}
