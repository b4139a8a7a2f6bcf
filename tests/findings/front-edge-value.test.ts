// The module that a control too far from the front edge is told: by hand, 647.7 - 635 = 12.7 mm are two modules of 9.525 mm,
// so 64 less 2. The design with it has no such finding, with the next one it has; where the rails are free it is an edit.

import { join } from "node:path";
import { expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { findingsOf, readExample } from "./example.ts";
import { remedied } from "./remedied.ts";

const texts = readExample(join(import.meta.dirname, "fit/front-edge.yaml"));

/** With the panel at a module, and as many closed before it. */
const told = (module: number, closed: number): readonly Finding[] => {
  const console = (texts.get("console.yaml") ?? "")
    .replace("blanking: 64 modules", `blanking: ${closed} modules`)
    .replace("bay: desk, module: 64", `bay: desk, module: ${module}`);
  return frontEdges(new Map([...texts, ["console.yaml", console]]));
};

const frontEdges = (of: typeof texts): readonly Finding[] =>
  findingsOf(of).filter(({ code }) => code === "fit/front-edge");

test("the first module within the bound is told, and is the first", () => {
  expect(told(64, 64)[0]?.message).toMatch(
    /12\.7 mm nearer does: module: 62 of bay desk, or less\.$/,
  );
  expect(told(63, 63)).toHaveLength(1);
  expect(told(62, 62)).toEqual([]);
});

test("where the rails are free the panel is moved by one edit", () => {
  const [found] = told(64, 60);
  const [remedy] = found?.remedies ?? [];
  expect(remedy?.title).toBe("module: 62 (back)");
  if (remedy === undefined) return;
  const open = (texts.get("console.yaml") ?? "").replace("blanking: 64", "blanking: 60");
  expect(frontEdges(remedied(new Map([...texts, ["console.yaml", open]]), remedy))).toEqual([]);
});
