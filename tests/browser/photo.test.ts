// A photograph laid under a panel in a real browser, behind the server of `view`: chosen, marked, drawn straight, taken from.
// The photograph is a pinhole camera's at 25 degrees (tests/support/panel-photograph.ts); what is seen under the drawing is
// measured in the page and held against the panel's own numbers.

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { graveAxeFindings } from "../support/axe.ts";
import { restingBox, strike } from "../support/panel-bench.ts";
import {
  choosePicture,
  fill,
  MARKED,
  markCorners,
  OLD,
  openDrawer,
  PHOTOGRAPH,
  PNG,
  photoBenches,
  pictureOf,
  sheetOf,
  TEXT,
  textOf,
  typeMark,
  worstError,
} from "../support/photo-bench.ts";

const benchWith = photoBenches();

describe("a photograph at 25 degrees", () => {
  test("lies under the panel with its holes within half a millimetre, and in the design's folder", async () => {
    const { page, design, complaints } = await benchWith(TEXT);
    await choosePicture(page);
    await expect.poll(() => textOf(page)).toContain("photo:\n  file: old panel.png");
    expect(readFileSync(join(design.folder, "old panel.png")).equals(PNG)).toBe(true);
    await markCorners(page);
    // Half a millimetre is wanted; what is left is the tenth of a pixel that the text keeps.
    await expect.poll(() => worstError(page)).toBeLessThan(0.05);
    await page.getByText(/[Ff]our marks always fit/).waitFor();
    // Saved, it is there for the next who opens the design.
    await page.keyboard.press("Control+s");
    await expect.poll(() => design.read("panel.yaml")).toContain("in-picture:");
    await page.getByText(/(^| )Saved: panel\.yaml/).waitFor();
    await page.reload();
    await expect.poll(() => page.locator(".photo-under").count()).toBe(1);
    await expect.poll(() => worstError(page)).toBeLessThan(0.05);
    expect(complaints).toEqual([]);
  });

  test("a fifth mark shows whether they agree, a sixth which is wrong", async () => {
    const { page, complaints } = await benchWith(MARKED);
    await openDrawer(page);
    const add = async (index: number, hole: number): Promise<void> => {
      await page.getByRole("button", { name: "Add a point" }).click();
      const { x, y } = OLD.holes[hole]!;
      const seen = PHOTOGRAPH.seen(x, y);
      await typeMark(page, index, seen.x, seen.y);
      await fill(page, `Point ${index + 1}, on the panel across`, `${x} mm`);
      await fill(page, `Point ${index + 1}, on the panel up`, `${y} mm`);
    };
    const verdict = page.locator(".mark-verdict");
    await expect.poll(() => verdict.textContent()).toMatch(/nothing checks them; it is assumed/);
    await add(4, 4);
    await expect.poll(() => verdict.textContent()).toMatch(/the others alone: 0(\.\d+)? mm off/);
    // Three millimetres beside it: the corners alone put it where it is.
    await fill(page, "Point 5, on the panel across", "121 mm");
    await expect.poll(() => verdict.textContent()).toMatch(/sixth mark would show which is wrong/);
    await page
      .getByText(/its 5 marks disagree by .* Five do not tell which is wrong/)
      .first()
      .waitFor();
    await add(5, 1);
    await page
      .getByText(/point 5 is 3(\.0\d)? mm off where the others put it/)
      .first()
      .waitFor();
    await page.getByRole("button", { name: "Take off point 6" }).click();
    // Taken off again it is four marks, and undo brings it back.
    await page.getByRole("button", { name: "Take off point 5" }).click();
    await page.getByText(/[Ff]our marks always fit/).waitFor();
    await sheetOf(page).focus();
    await page.keyboard.press("Control+z");
    await expect.poll(() => verdict.textContent()).toMatch(/sixth mark would show/);
    expect(complaints).toEqual([]);
  });
});

describe("a mark", () => {
  test("is drawn by the pointer, nudged by keys, and still where it is locked", async () => {
    const { page, complaints } = await benchWith(TEXT);
    await choosePicture(page);
    const before = await textOf(page);
    const mark = page.locator('[data-mark="1"] .over');
    const middle = async () => {
      const box = await restingBox(mark);
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    };
    const pull = async () => {
      const from = await middle();
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(from.x + 20, from.y + 10, { steps: 4 });
      await page.mouse.up();
    };
    await pull();
    await expect.poll(() => textOf(page)).not.toBe(before);
    const spot = /in-picture: \[([\d.]+), ([\d.]+)\]/;
    const read = async () => (await textOf(page)).match(spot)!.slice(1).map(Number);
    const [x = 0, y = 0] = await read();
    expect([x > 240, y > 720]).toEqual([true, true]);
    await pictureOf(page).focus();
    await page.keyboard.press("1");
    await strike(page, ["ArrowLeft", "Shift+ArrowUp"]);
    await expect.poll(read).toEqual([x - 1, y - 10].map((value) => Math.round(value * 10) / 10));
    // The two steps of the keys are one of the history, the pull another.
    await sheetOf(page).focus();
    await page.keyboard.press("Control+z");
    await expect.poll(read).toEqual([x, y]);
    await page.keyboard.press("Control+z");
    await expect.poll(() => textOf(page)).toBe(before);
    await page.getByLabel("Lock the marks").check();
    await pull();
    await pictureOf(page).focus();
    await page.keyboard.press("ArrowLeft");
    await page.getByText("The marks are locked.").waitFor();
    expect(await textOf(page)).toBe(before);
    expect(complaints).toEqual([]);
  });

  test("set in another order than on the panel is told of in words", async () => {
    const { page } = await benchWith(TEXT);
    await choosePicture(page);
    await typeMark(page, 0, 960, 720);
    await typeMark(page, 1, 240, 720);
    await expect
      .poll(() => page.locator(".mark-verdict").textContent())
      .toMatch(/can't be laid under.*exchanged/);
    await expect.poll(() => page.locator(".photo-under").count()).toBe(0);
  });
});

test("a component that is placed by the photograph says so, and is asked to be measured", async () => {
  const { page, complaints } = await benchWith(MARKED);
  await openDrawer(page);
  await page.locator(".photo-under").waitFor({ state: "attached" });
  // Without the tick a move says that it is not marked.
  await sheetOf(page).focus();
  await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowRight");
  await expect
    .poll(() => page.locator(".said").textContent())
    .toContain("not marked as from the photograph");
  expect(await textOf(page)).toContain("x: 100.5 mm, y: 30 mm }");
  await page.keyboard.press("Control+z");
  await expect.poll(() => textOf(page)).toContain("at: { x: 100 mm, y: 30 mm } }");
  await page.getByLabel("What I place and move is from the photograph").check();
  await sheetOf(page).focus();
  await page.keyboard.press("ArrowLeft");
  await expect.poll(() => textOf(page)).toMatch(/x: 99\.5 mm, y: 30 mm, residual: 0\.\d mm/);
  await page
    .getByText(/1 place is from a photograph: main ± 0\.\d mm/)
    .first()
    .waitFor();
  // Place and word are one step.
  await page.keyboard.press("Control+z");
  await expect.poll(() => textOf(page)).toContain("at: { x: 100 mm, y: 30 mm } }");
  await page.getByRole("button", { name: "Selected: taken from the photograph" }).click();
  await expect.poll(() => textOf(page)).toMatch(/x: 100 mm, y: 30 mm, residual: 0\.\d mm/);
  // Hidden, the drawing is whole again.
  await page.getByLabel("Show", { exact: true }).uncheck();
  await expect.poll(() => page.locator(".photo-under").count()).toBe(0);
  expect(complaints).toEqual([]);
});

test("a sheet of paper gives scale and slant; where it lay is said in numbers", async () => {
  const { page, complaints } = await benchWith(TEXT);
  await choosePicture(page);
  await page.getByRole("button", { name: "Corners of a sheet of paper" }).click();
  await expect.poll(() => textOf(page)).toContain("size: a4");
  // A6, 105 by 148 mm (ISO 216), lay on its side: its lower left corner at the panel's lower right, 4 mm beside it and 7 below.
  await page.getByLabel("Size of the paper").selectOption("a6");
  await expect.poll(() => textOf(page)).toContain("size: a6");
  const sheet = [
    [144, -7],
    [144, 98],
    [-4, 98],
    [-4, -7],
  ] as const;
  const names = ["lower left", "lower right", "upper right", "upper left"];
  for (const [index, [x, y]] of sheet.entries()) {
    const seen = PHOTOGRAPH.seen(x, y);
    await fill(page, `The sheet's ${names[index]} corner, pixels across`, seen.x.toFixed(1));
    await fill(page, `The sheet's ${names[index]} corner, pixels down`, seen.y.toFixed(1));
  }
  await fill(page, "The sheet's lower left corner on the panel, across", "144 mm");
  await fill(page, "The sheet's lower left corner on the panel, up", "-7 mm");
  await fill(page, "The sheet turned, counter-clockwise", "90 deg");
  await expect.poll(() => textOf(page)).toContain("at: [144 mm, -7 mm]");
  await expect.poll(() => worstError(page)).toBeLessThan(0.05);
  expect(complaints).toEqual([]);
});

test("what is no picture is not kept, and a name that wants to be markup is text", async () => {
  const { page, design, complaints } = await benchWith(TEXT);
  await page.getByRole("button", { name: "Photograph", exact: true }).click();
  const choice = page.getByLabel("Choose a picture");
  const buffer = Buffer.from("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>");
  await choice.setInputFiles({ name: "old.png", mimeType: "image/png", buffer });
  await page.getByText("old.png can't be shown: it is no picture, or a damaged one.").waitFor();
  expect(existsSync(join(design.folder, "old.png"))).toBe(false);
  await choice.setInputFiles({ name: "<b>old.png", mimeType: "image/png", buffer: PNG });
  await page.getByText("<b>old.png can't be used").waitFor();
  expect(await textOf(page)).toBe(TEXT);
  expect(complaints).toEqual([]);
});

describe("axe-core", () => {
  test.each(["light", "dark"] as const)(
    "finds nothing serious in the drawer, %s",
    async (scheme) => {
      const { page } = await benchWith(MARKED);
      await page.emulateMedia({ colorScheme: scheme });
      await openDrawer(page);
      await page.getByRole("button", { name: "Add a point" }).click();
      await page.getByLabel("Point 5, pixels across").waitFor();
      expect(await graveAxeFindings(page)).toEqual([]);
    },
  );
});

test("files that are opened together bring their photograph along", async () => {
  const { page, complaints } = await benchWith(TEXT);
  await page.locator('input[type="file"][accept^=".yaml"]').setInputFiles([
    { name: "panel.yaml", mimeType: "text/yaml", buffer: Buffer.from(MARKED) },
    { name: "old.png", mimeType: "image/png", buffer: PNG },
  ]);
  await expect.poll(() => page.locator(".photo-under").count()).toBe(1);
  await expect.poll(() => worstError(page)).toBeLessThan(0.05);
  expect(complaints).toEqual([]);
});
