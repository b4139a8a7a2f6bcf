// A list of 200,000 lines pasted into the list's door, in a real browser: the page stays at hand, and no line is lost.

import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openPage, type PageStand, standOf } from "../support/open-page.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const LINES = 200_000;

test("200,000 lines that are pasted leave 2000 in the field, and the others can be saved and let go", async () => {
  const { page, complaints } = await openPage(stand);
  await page.getByText("Open", { exact: true }).click();
  await page.getByRole("button", { name: "New panel from a list" }).click();
  const field = page.getByLabel("The list");
  await field.waitFor();
  const milliseconds = await field.evaluate((area, lines) => {
    const data = new DataTransfer();
    data.setData("text/plain", `part,quantity\n${"toggle-6,1\n".repeat(lines)}`);
    const started = performance.now();
    const event = { clipboardData: data, bubbles: true, cancelable: true };
    area.dispatchEvent(new ClipboardEvent("paste", event));
    return new Promise<number>((done) =>
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - started))),
    );
  }, LINES);
  // Of this machine, loaded as it may be; the field with all of the lines took several seconds.
  expect(milliseconds).toBeLessThan(2000);
  await page
    .getByText("2000 of 200001 lines are in the field")
    .filter({ hasText: "The other 198001 are kept here." })
    .waitFor();
  expect((await field.inputValue()).split("\n")).toHaveLength(2001);

  const [given] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the other 198001" }).click(),
  ]);
  const saved = readFileSync(await given.path(), "utf8");
  expect(saved).toBe("toggle-6,1\n".repeat(LINES - 1999));

  await field.fill("part,quantity\n");
  await page.getByRole("button", { name: "Fill the field up with them" }).click();
  await page.getByText("The other 196002 are kept here.").waitFor();
  await page.getByRole("button", { name: "Let the other 196002 go" }).click();
  await page.getByRole("button", { name: "Arrange it" }).click();
  await page.getByText("a panel takes 400 at most").waitFor();
  expect(complaints).toEqual([]);
  await page.close();
}, 120_000);
