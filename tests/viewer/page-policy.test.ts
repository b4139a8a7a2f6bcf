// The page's content policy (W3C Content Security Policy Level 3), as a static page and behind `view`: of what stands inline it lets
// in the one style of our report, by its hash, and no script.

import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { reportHtml } from "../../src/export/report-html.ts";

const root = join(import.meta.dirname, "../..");
const report = reportHtml({ title: "a report", facts: [], sections: [] }, null);
const [, style = ""] = /<style>(.*?)<\/style>/s.exec(report) ?? [];
const hash = `'sha256-${createHash("sha256").update(style).digest("base64")}'`;

test.each(["viewer/index.html", "src/cli/view/design-server.ts"])("of %s", (file) => {
  const text = readFileSync(join(root, file), "utf8");
  const directive = (name: string): string =>
    new RegExp(`[";] ?${name} ([^;"]*)`).exec(text)?.[1]?.trim() ?? "";
  expect(style.length).toBeGreaterThan(100);
  expect(directive("style-src")).toBe(`'self' ${hash}`);
  expect(directive("script-src")).toBe("'self' 'wasm-unsafe-eval'");
  expect(directive("default-src")).toBe("'none'");
  expect(text).not.toContain("unsafe-inline");
});
