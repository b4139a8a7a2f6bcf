// Which file's text stands beside the picture, in a real browser: the one of the panel that is seen, from the first moment on.

import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";
import { asksLate, benchWith, isRead, PANEL } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const file = (name: string, text: string) => ({
  name,
  mimeType: "text/yaml",
  buffer: Buffer.from(text),
});

/** Its name comes before the panels' in the alphabet. */
const PARTS = "consolewright: 1\nkind: parts\nname: bought\nparts: {}\n";

test("the text is that of the panel that is chosen, whatever was picked in the one before", async () => {
  const { page, complaints } = await openPage(stand);
  await page
    .getByLabel("Open files")
    .setInputFiles([
      file("pumps.yaml", PANEL),
      file("winch.yaml", PANEL.replace("name: pumps\ntitle: Pumps", "name: winch\ntitle: Winch")),
      file("bought.yaml", PARTS),
    ]);
  await page.getByRole("status").filter({ hasText: "Opened: 3 files" }).waitFor();
  const shown = page.locator(".file-name select");
  const choice = page.getByRole("combobox", { name: "Panel", exact: true });
  await choice.selectOption({ label: "Pumps" });
  await page.locator('[data-component="main"]').first().click();
  await expect.poll(() => shown.inputValue()).toBe("pumps.yaml");

  await choice.selectOption({ label: "Winch" });
  await page.getByRole("application", { name: "Winch from the front" }).waitFor();
  expect(await shown.inputValue()).toBe("winch.yaml");

  // A file that was asked for by name stays while its panel does.
  await shown.selectOption("bought.yaml");
  await page.locator(".board").click({ position: { x: 5, y: 5 } });
  await isRead(page);
  expect(await shown.inputValue()).toBe("bought.yaml");
  await choice.selectOption({ label: "Pumps" });
  await page.getByRole("application", { name: "Pumps from the front" }).waitFor();
  expect(await shown.inputValue()).toBe("pumps.yaml");
  expect(complaints).toEqual([]);
  await page.close();
});

test("while a design is read for the first time its panel's text is shown, not the first of the alphabet", async () => {
  const { page } = await openPage(stand);
  await page.evaluate(asksLate);
  await page
    .getByLabel("Open files")
    .setInputFiles([file("bought.yaml", PARTS), file("pumps.yaml", PANEL)]);
  await page.getByRole("status").filter({ hasText: "Reading 2 files" }).waitFor();
  expect(await page.locator(".file-name select").inputValue()).toBe("pumps.yaml");
  await page.close();
});

test("a line that many picked things stand in is marked once, and can be read", async () => {
  const { page } = await benchWith(
    stand,
    PANEL.replace("components:", "fixings: { screws: m3, dowels: 3 mm }\ncomponents:"),
  );
  await page.getByRole("application").focus();
  await page.keyboard.press("Control+a");
  await page.locator(".band-lines").first().waitFor();
  const tops = await page
    .locator(".band-lines")
    .evaluateAll((bands) => bands.map((band) => (band as HTMLElement).style.top));
  // The line of the fixings, and those of the two components.
  expect(tops.toSorted()).toEqual(["133px", "171px", "190px"]);
  await page.close();
});
