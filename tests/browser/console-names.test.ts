// Names over the console's picture as the browser lays them out: from wherever one looks, none lies over another, and no line to
// a panel runs through the name of another.

import { afterAll, beforeAll, expect, test } from "vitest";
import { type ConsoleRoom, OPENING, openConsoleRoom } from "../support/console-room.ts";

let room: ConsoleRoom;

beforeAll(async () => {
  room = await openConsoleRoom();
  await room.page.setViewportSize({ width: 1280, height: 720 });
  await room.still();
}, OPENING);

afterAll(() => room?.stand.close());

test.each([
  ["Whole", 13],
  ["From the seat", 9],
  ["Above", 13],
  // In its list from the side, from which the row forward is seen nearly end on.
  ["Left side", 13],
  ["Right side", 13],
  ["Behind", 13],
])("from where one stands: %s", async (view, count) => {
  await room.viewFrom(view);
  const { named, met } = await readNames();
  expect(met).toEqual([]);
  expect(named).toHaveLength(count);
});

test("seen end on or from behind, a bay's panels are one list with their count, the nearest first", async () => {
  await room.viewFrom("Behind");
  const lists = await room.page.locator(".console-labels .row").allTextContents();
  expect(lists.map((list) => list.split("\n").slice(0, 3))).toEqual([
    ["bay aft: 6 panels", "Generators", "Echo sounder"],
    ["bay forward: 6 panels", "Route terminal", "Rudder trim"],
  ]);
});

test("the panel that is chosen keeps its own name", async () => {
  await room.panelRow("radio").click();
  await room.viewFrom("Behind");
  expect(await room.page.locator(".console-labels .panel.chosen").allTextContents()).toEqual([
    "Radio",
  ]);
  const list = room.page.locator(".console-labels .row").filter({ hasText: "bay aft: 5 panels" });
  expect(await list.count()).toBe(1);
  expect((await readNames()).met).toEqual([]);
  await room.page.locator(".stage").focus();
});

test("on a way round by 24 directions", async () => {
  await room.viewFrom("Behind");
  await room.page.locator(".stage").focus();
  const met: string[] = [];
  for (const rise of [2, 22]) {
    for (let side = 0; side < 360; side += 30) {
      const from = await readNames();
      met.push(...from.met.map((each) => `${side}, ${rise}: ${each}`));
      expect(from.named).toHaveLength(13);
      await turned("ArrowRight", 3);
    }
    await turned("ArrowUp", 2);
  }
  expect(met).toEqual([]);
}, 60_000);

async function turned(key: string, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) {
    const before = await room.frames();
    await room.page.keyboard.press(key);
    await room.drawn(before);
  }
}

interface NamesRead {
  /** Of panels, by themselves and in lists. */
  readonly named: readonly string[];
  /** What lies over what, in words. */
  readonly met: readonly string[];
}

/** As they are laid out: boxes by the browser, lines by points along them. */
function readNames(): Promise<NamesRead> {
  return room.page.evaluate(async () => {
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const shown = (look: string): HTMLElement[] =>
      [...document.querySelectorAll<HTMLElement>(`.console-labels ${look}`)].filter((one) =>
        one.checkVisibility({ visibilityProperty: true }),
      );
    const names = shown(":is(.panel, .bay)").map((one) => ({
      key: one.dataset["key"] ?? "",
      lines: (one.textContent ?? "").split("\n"),
      box: one.getBoundingClientRect(),
      isRow: one.classList.contains("row"),
      isPanel: one.classList.contains("panel"),
    }));
    const met: string[] = [];
    for (const [index, { key, box }] of names.entries())
      for (const other of names.slice(index + 1))
        if (
          box.left < other.box.right &&
          other.box.left < box.right &&
          box.top < other.box.bottom &&
          other.box.top < box.bottom
        )
          met.push(`${key} over ${other.key}`);
    for (const line of shown(".lead")) {
      const { m11, m12, m41, m42 } = new DOMMatrix(getComputedStyle(line).transform);
      const stage = line.parentElement!.getBoundingClientRect();
      const long = Number.parseFloat(line.style.width);
      for (const { key, box } of names) {
        if (`${key} lead` === line.dataset["key"]) continue;
        const isThrough = Array.from({ length: Math.ceil(2 * long) }, (_, at) => at / 2).some(
          (along) => {
            const [x, y] = [stage.left + m41 + along * m11, stage.top + m42 + along * m12];
            return x > box.left && x < box.right && y > box.top && y < box.bottom;
          },
        );
        if (isThrough) met.push(`${line.dataset["key"]} through ${key}`);
      }
    }
    const named = names.flatMap(({ lines, isRow, isPanel }) =>
      isRow ? lines.slice(1) : isPanel ? lines : [],
    );
    return { named, met };
  });
}
