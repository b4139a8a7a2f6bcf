// Several things selected on the sheet, in a real browser: a click picks one of them, and an offer about them goes when the text
// that it was worked out from does.

import { afterAll, beforeAll, expect, test } from "vitest";
import { type PageStand, standOf } from "../support/open-page.ts";
import { benchWith, PANEL, textHas, textOf } from "../support/panel-bench.ts";

let stand: PageStand;

beforeAll(async () => {
  stand = await standOf("dist/viewer");
});

afterAll(() => stand?.close());

const PATIENCE = 120_000;

test(
  "a click on one of several selects that one, and a stale offer goes",
  async () => {
    const { page, complaints } = await benchWith(
      stand,
      `${PANEL}markings:\n  - { border: { around: [main] } }\n`,
    );
    const text = await textOf(page);
    const sheet = page.getByRole("application");
    const said = page.locator(".said");
    await sheet.focus();
    await page.keyboard.press("Control+a");
    const label = page.locator(".ticket b").filter({ hasText: / selected:/ });
    await label.waitFor();
    // The sheet's own words count as the ticket does.
    const count = /^\d+/.exec((await label.textContent()) ?? "")?.[0];
    await expect
      .poll(() => page.locator("#sheet-selected").textContent())
      .toContain(`${count} selected`);
    await page.locator('[data-component="main"] path').first().click({ force: true });
    await expect.poll(() => said.textContent()).toMatch(/^main, /);
    await page.keyboard.press("Delete");
    const offer = page.locator(".offer");
    await offer.waitFor();
    await offer.filter({ hasText: "the border round main goes with it" }).waitFor();
    // Another edit: what was offered was worked out from the text before it.
    await page.keyboard.press("t");
    await expect.poll(() => textOf(page)).not.toBe(text);
    await offer.waitFor({ state: "detached" });
    await page.keyboard.press("Control+z");
    await textHas(page, text);
    expect(complaints).toEqual([]);
    await page.close();
  },
  PATIENCE,
);
