// The page's memory over many edits: what an edit has replaced is let go.

import type { CDPSession } from "playwright-core";
import { expect, test } from "vitest";
import { panelDesign } from "../../bench/seeded-panel.ts";
import { openPage, standOf } from "../support/open-page.ts";
import { andRead } from "../support/panel-bench.ts";

const EDITS = 30;
/** Bytes: an edit that leaves its reading behind leaves 450 kB of this panel; what the browser itself keeps is far less. */
const MOST_LEFT = 3_000_000;

test("edits leave nothing behind", async () => {
  const stand = await standOf("dist/viewer");
  const { page } = await openPage(stand);
  const { files } = panelDesign(0, "b612");
  const design = [...files].map(([name, text]) => ({
    name,
    mimeType: "text/yaml",
    buffer: Buffer.from(text),
  }));
  await page.getByLabel("Open files").setInputFiles(design);
  await page.locator('[data-component="c1"]').waitFor({ state: "attached" });
  const field = page.getByRole("textbox", { name: "Text of panel.yaml" });
  const panel = files.get("panel.yaml") ?? "";
  const session = await page.context().newCDPSession(page);
  const edited = async (count: number): Promise<void> => {
    for (let edit = 0; edit < count; edit += 1) {
      const text = panel.replace(/( c1: .*? x: )[\d.]+/, `$1${33 + (edit % 7) / 4}`);
      await andRead(page, async () => {
        await field.fill(text);
        await field.blur();
      });
    }
  };
  await edited(EDITS);
  const before = await heapOf(session);
  await edited(EDITS);
  expect((await heapOf(session)) - before).toBeLessThan(MOST_LEFT);
  await stand.close();
}, 120_000);

/** Bytes in use once what nobody holds is gone. */
async function heapOf(session: CDPSession): Promise<number> {
  for (let turn = 0; turn < 3; turn += 1) await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  return usedSize;
}
