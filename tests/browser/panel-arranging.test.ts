// Several things on the sheet copied, lined up, spaced and set out by keys alone, in a real browser; the numbers of a row and its
// members' legends typed in the ticket. Held against the design's text; each deed is one step, and said under the sheet.

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { graveAxeFindings } from "../support/axe.ts";
import { type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, PANEL, textHas } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const PATIENCE = 120_000;

const window = (name: string, x: number, y: number): string =>
  `  - window: { name: ${name}, at: { x: ${x} mm, y: ${y} mm }, width: 8 mm, height: 6 mm, layers: [face] }\n`;

const WINDOWS = `${PANEL}markings:\n${window("p", 30, 20)}${window("q", 50, 24)}${window("r", 60, 22)}`;

describe("windows", () => {
  test(
    "are lined up, spaced and set out by keys, each as one step",
    async () => {
      const { page, complaints } = await benchWith(stand, WINDOWS);
      const said = page.locator(".said");
      const sheet = page.getByRole("application");
      await sheet.focus();
      await page.locator('.handle[data-owner="q"]').click();
      await page.locator('.handle[data-owner="p"]').click({ modifiers: ["Shift"] });
      await page.locator('.handle[data-owner="r"]').click({ modifiers: ["Shift"] });
      await page.keyboard.press("l");
      await textHas(page, /name: p, at: \{ x: 30 mm, y: 24 mm \}/);
      expect(await said.textContent()).toBe("Level with q, y 24 mm.");
      await page.keyboard.press("e");
      await textHas(page, "name: q, at: { x: 45 mm, y: 24 mm }");
      expect(await said.textContent()).toBe("Spaced evenly, 15 mm from centre to centre.");
      await page.keyboard.press("Home");
      await textHas(page, /name: r, at: \{ x: 30 mm/);
      await page.keyboard.press("Control+z");
      await textHas(page, /name: r, at: \{ x: 60 mm/);
      await page.keyboard.press("Control+z");
      await page.keyboard.press("Control+z");
      await textHas(page, WINDOWS);
      expect(complaints).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );

  test(
    "are copied to the nearest free place, the copy is picked, and after undo the first one again",
    async () => {
      const { page, complaints } = await benchWith(stand, WINDOWS);
      await page.locator('.handle[data-owner="r"]').click();
      await page.keyboard.press("c");
      // 6 mm high and two webs of 1.5 mm apart, below it where nothing stands.
      await textHas(page, "name: r-2, at: { x: 60 mm, y: 13 mm }, width: 8 mm, height: 6 mm");
      await page.locator(".ticket b").filter({ hasText: "r-2" }).waitFor();
      await page.getByRole("button", { name: /^Undo/ }).click();
      await textHas(page, WINDOWS);
      await page.locator(".ticket b").filter({ hasText: /^r$/ }).waitFor();
      expect(complaints).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );
});

test(
  "windows are made a row, which is one entry of the text, moved, counted and copied whole",
  async () => {
    const { page, complaints } = await benchWith(stand, WINDOWS);
    const said = page.locator(".said");
    for (const name of ["p", "q", "r"])
      await page.locator(`.handle[data-owner="${name}"]`).click({ modifiers: ["Shift"] });
    // 30 to 60 in two steps, at the mean height of 20, 24 and 22.
    await page.keyboard.press("r");
    await textHas(page, "row: { count: 3, pitch: 15 mm, x: 30 mm, y: 22 mm }");
    expect(await said.textContent()).toBe("Made a row of 3, pitch 15 mm.");
    await page.locator('.handle[data-owner="p.3"]').waitFor();
    await page.locator(".ticket b").filter({ hasText: /^p$/ }).waitFor();
    // One member is taken along by the other two.
    await page.keyboard.press("Escape");
    await page.locator('.handle[data-owner="p.2"]').click();
    await page.keyboard.press("ArrowUp");
    await textHas(page, /row: \{ count: 3, pitch: 15 mm, x: 30 mm, y: 22\.5 mm \}/);
    const pitch = page.getByLabel("pitch");
    await pitch.fill("12 mm");
    await pitch.press("Enter");
    await textHas(page, "row: { count: 3, pitch: 12 mm, x: 30 mm, y: 22.5 mm }");
    await page.locator('.handle[data-owner="p.2"]').click();
    await page.keyboard.press("c");
    await textHas(page, /name: p-2,[^\n]* row: \{ count: 3, pitch: 12 mm, x: /);
    for (const _step of ["copied", "pitch", "moved", "made"])
      await page.keyboard.press("Control+z");
    await textHas(page, WINDOWS);
    expect(complaints).toEqual([]);
    await page.close();
  },
  PATIENCE,
);

const FRAMED = `${PANEL}markings:
  - border: { name: frame, around: [main, aux], legend: BILGE }
  - legend: { name: word, text: SEA, at: { x: 60 mm, y: 16 mm } }
`;

test(
  "by the keyboard alone several are picked, a border is copied with what it goes round, a word is written and turned",
  async () => {
    const { page, complaints } = await benchWith(stand, FRAMED);
    const said = page.locator(".said");
    await page.getByRole("application").focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("a");
    await expect.poll(() => said.textContent()).toMatch(/^main stays picked: Tab goes on/);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.locator(".ticket b").filter({ hasText: "2 selected:" }).waitFor();
    await expect.poll(() => page.locator(".ticket").textContent()).toContain("main, frame");
    // Main alone is not all that the frame goes round.
    await page.keyboard.press("c");
    await page.getByRole("button", { name: "Copy aux too" }).click();
    expect(
      await textHas(page, "border: { name: frame-2, around: [main-2, aux-2], legend: BILGE }"),
    ).toContain("at: { right-of: main-2, centres: 40 mm }");
    await page.getByRole("application").focus();
    await page.keyboard.press("Control+z");
    await textHas(page, FRAMED);
    expect(await said.textContent()).toBe("Taken back: copy main, frame.");

    await page.locator('.handle[data-owner="word"]').click({ force: true });
    const words = page.getByLabel("words", { exact: true });
    await words.fill("SEA\nWATER");
    await words.press("Enter");
    await textHas(page, "text: [SEA, WATER]");
    const angle = page.locator(".ticket").getByLabel("turned", { exact: true });
    await angle.fill("30");
    await angle.press("Enter");
    await textHas(page, "turn: 30 deg");
    await page.locator(".ticket").getByLabel("turned", { exact: true }).fill("steep");
    await page.keyboard.press("Enter");
    await expect.poll(() => said.textContent()).toBe('"steep" is no angle; write 15 deg.');
    expect(complaints).toEqual([]);
    await page.close();
  },
  PATIENCE,
);

const ROW = PANEL.concat(
  "  warn: { row: { part: led-5-bezel, count: 3, pitch: 20 mm, x: 40 mm, y: 20 mm } }\n",
);

test(
  "a row's numbers and its members' legends are typed in the ticket, one behind the other",
  async () => {
    const { page, complaints } = await benchWith(stand, ROW);
    await page.locator('[data-component="warn.2"]').first().click();
    const ticket = page.locator(".ticket");
    await ticket.getByLabel("legend of warn.1").fill("OIL");
    await page.keyboard.press("Tab");
    await ticket.getByLabel("legend of warn.3").fill("NO");
    await page.keyboard.press("Enter");
    await textHas(page, 'legends: [OIL, "", "NO"]');
    await ticket.getByLabel("pitch", { exact: true }).fill("25 mm");
    await page.keyboard.press("Enter");
    await textHas(page, "pitch: 25 mm");
    await ticket.getByLabel("count", { exact: true }).fill("2");
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.locator(".said").textContent())
      .toBe('Not done: "NO" would go with the members: take these legends off first.');
    expect(await graveAxeFindings(page)).toEqual([]);
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await textHas(page, "pitch: 20 mm")).toContain('legends: [OIL, "", "NO"]');
    expect(complaints).toEqual([]);
    await page.close();
  },
  PATIENCE,
);
