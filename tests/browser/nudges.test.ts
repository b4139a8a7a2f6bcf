// Arrow keys on the sheet and the key that follows them before the hand has rested, in a real browser: a step that is not yet in
// the text belongs to what was picked, and undo takes it back before anything else.

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import {
  asksLate,
  type Bench,
  benchWith,
  PANEL,
  strike,
  textHas,
  textOf,
} from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const PATIENCE = 60_000;

/** Both stand by themselves, so that a step of the wrong one shows. */
const APART = PANEL.replace("{ right-of: main, centres: 40 mm }", "{ x: 80 mm, y: 50 mm }");

const mainAt = (x: string): string => `main: { part: toggle-6, at: { x: ${x} mm, y: 50 mm }`;
const auxAt = (x: string): string => `aux: { part: toggle-6, at: { x: ${x} mm, y: 50 mm }`;

/** The first component picked from the keyboard. */
async function picked(): Promise<Bench> {
  const bench = await benchWith(stand, APART);
  await bench.page.getByRole("application").focus();
  await bench.page.keyboard.press("Tab");
  await bench.page.locator(".deeds").waitFor();
  return bench;
}

const saidIn = ({ page }: Bench, words: string): Promise<void> =>
  expect.poll(() => page.locator(".said").textContent()).toBe(words);

const auxIsPicked = ({ page }: Bench): Promise<void> =>
  expect.poll(() => page.locator(".ticket").getByLabel("name").inputValue()).toBe("aux");

describe("before the hand has rested", () => {
  test(
    "Tab goes on, and the step is that of what was picked",
    async () => {
      const bench = await picked();
      await strike(bench.page, ["ArrowRight", "Tab"]);
      const text = await textHas(bench.page, mainAt("40.5"));
      expect(text).toContain(auxAt("80"));
      await auxIsPicked(bench);
      expect(bench.complaints).toEqual([]);
      await bench.page.close();
    },
    PATIENCE,
  );

  test(
    "undo takes back the step, not the one before it, and redo brings it back",
    async () => {
      const bench = await picked();
      const { page } = bench;
      await strike(page, ["Shift+ArrowRight"]);
      await textHas(page, mainAt("45"));
      await strike(page, ["ArrowRight", "Control+z"]);
      await saidIn(bench, "Taken back: move main.");
      expect(await textOf(page)).toContain(mainAt("45"));
      await strike(page, ["Control+y"]);
      await textHas(page, mainAt("45.5"));
      expect(bench.complaints).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );
});

describe("while the step before is still read", () => {
  test(
    "Tab goes on, and the step is that of what was picked",
    async () => {
      const bench = await picked();
      const { page } = bench;
      await page.evaluate(asksLate);
      await strike(page, ["t", "ArrowRight", "Tab"]);
      const text = await textHas(page, /x: \d+\.5 mm/);
      expect(text).toContain(mainAt("40.5"));
      expect(text).toContain(auxAt("80"));
      await auxIsPicked(bench);
      expect(bench.complaints).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );

  test(
    "undo takes back the step, not the one before it, and redo brings it back",
    async () => {
      const bench = await picked();
      const { page } = bench;
      await page.evaluate(asksLate);
      await strike(page, ["t", "ArrowRight", "Control+z"]);
      await saidIn(bench, "Taken back: move main.");
      const text = await textHas(page, /turn: /);
      expect(text).toContain(mainAt("40"));
      await strike(page, ["Control+y"]);
      await textHas(page, mainAt("40.5"));
      expect(bench.complaints).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );
});
