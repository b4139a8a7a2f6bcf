// What axe-core holds against a page as it stands: its rules for WCAG 2.2 A and AA among them, each with the places that break it.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";

const source = readFileSync(fileURLToPath(import.meta.resolve("axe-core/axe.min.js")), "utf8");

export const axeFindings = (page: Page): Promise<readonly string[]> => findingsOf(page, "true");

/** Those that axe-core itself calls serious or critical. */
export const graveAxeFindings = (page: Page): Promise<readonly string[]> =>
  findingsOf(page, `impact === "serious" || impact === "critical"`);

const findingsOf = async (page: Page, wanted: string): Promise<readonly string[]> => {
  await page.evaluate(source);
  const found: unknown = await page.evaluate(
    `axe.run().then(({ violations }) => violations
      .filter(({ impact }) => ${wanted})
      .flatMap(({ id, nodes }) => nodes.map(({ target, html }) =>
        id + ": " + target.join(" ") + " " + html.slice(0, 120))))`,
  );
  return Array.isArray(found) ? found : ["no answer"];
};
