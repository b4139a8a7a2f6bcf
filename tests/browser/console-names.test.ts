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

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface LaidName {
  readonly key: string;
  readonly panels: readonly string[];
  readonly box: Box;
}

interface LaidLine {
  readonly key: string;
  /** Where it begins, the way along it in pixels, and how long it is. */
  readonly from: readonly [number, number];
  readonly along: readonly [number, number];
  readonly length: number;
}

/** As they are laid out: boxes by the browser, lines by points along them. */
async function readNames(): Promise<NamesRead> {
  const { names, lines } = await laidOut();
  const over = names.flatMap((one, index) =>
    names
      .slice(index + 1)
      .filter((other) => overlap(one.box, other.box))
      .map((other) => `${one.key} over ${other.key}`),
  );
  const through = lines.flatMap((line) =>
    names
      .filter(({ key, box }) => `${key} lead` !== line.key && runsThrough(line, box))
      .map(({ key }) => `${line.key} through ${key}`),
  );
  return { named: names.flatMap(({ panels }) => panels), met: [...over, ...through] };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** By every half pixel. */
const runsThrough = ({ from, along, length }: LaidLine, box: Box): boolean =>
  Array.from({ length: Math.ceil(2 * length) }, (_, step) => step / 2).some((at) => {
    const [x, y] = [from[0] + at * along[0], from[1] + at * along[1]];
    return x > box.left && x < box.right && y > box.top && y < box.bottom;
  });

const laidOut = (): Promise<{
  readonly names: readonly LaidName[];
  readonly lines: readonly LaidLine[];
}> =>
  room.page.evaluate(async () => {
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const shown = (look: string): HTMLElement[] =>
      [...document.querySelectorAll<HTMLElement>(`.console-labels ${look}`)].filter((one) =>
        one.checkVisibility({ visibilityProperty: true }),
      );
    const names = shown(":is(.panel, .bay)").map((one): LaidName => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      const words = (one.textContent ?? "").split("\n");
      const isRow = one.classList.contains("row");
      return {
        key: one.dataset["key"] ?? "",
        // The first line of a list is its bay.
        panels: isRow ? words.slice(1) : one.classList.contains("panel") ? words : [],
        box: { left, right, top, bottom },
      };
    });
    const lines = shown(".lead").map((line): LaidLine => {
      const { m11, m12, m41, m42 } = new DOMMatrix(getComputedStyle(line).transform);
      const stage = line.parentElement!.getBoundingClientRect();
      return {
        key: line.dataset["key"] ?? "",
        from: [stage.left + m41, stage.top + m42],
        along: [m11, m12],
        length: Number.parseFloat(line.style.width),
      };
    });
    return { names, lines };
  });
