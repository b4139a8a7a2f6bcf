// Limits of fit that no standard sets: a workshop's own number counts in place of the usual one, and the finding says whose it is.

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { limitInWords } from "../../src/diagnostics/limit-in-words.ts";
import { findingsOf, readExample } from "../findings/example.ts";

const found = (code: string, houseRules: string): Finding | undefined => {
  const texts = new Map(readExample(join(import.meta.dirname, "../findings/fit", `${code}.yaml`)));
  const shed = texts.get("shed.yaml") ?? "";
  texts.set("shed.yaml", `${shed}\nhouse-rules: { ${houseRules} }\n`);
  return findingsOf(texts).find((each) => each.code === `fit/${code}`);
};

const source = (of: Finding | undefined): string =>
  of?.source === undefined || of.source === null ? "" : limitInWords(of.source);

describe.each([
  // The case stands 1 mm off the shelf.
  { code: "too-near", key: "built-in-room", stricter: "1.5 mm", limit: 1.5, clears: "0.9 mm" },
  // 213.8 mm by hand over the edge (the example's 313.8 less 100 mm), and the slack.
  { code: "loop-too-short", key: "loop-slack", stricter: "80 mm", limit: 293.8, clears: "-" },
  { code: "driver-room", key: "driver-diameter", stricter: "9 mm", limit: null, clears: "1 mm" },
  { code: "cannot-lift-out", key: "lift-room", stricter: "120 mm", limit: null, clears: "0 mm" },
])("$key", ({ code, key, stricter, limit, clears }) => {
  test("is named by the finding as what overrides its limit", () => {
    const { source: whose } = found(code, "web: 1.5 mm") ?? {};
    expect(whose?.kind).toBe("house-rule");
    expect(whose?.kind === "house-rule" ? whose.key : "").toContain(key);
  });

  test("counts in place of the usual limit", () => {
    const other = found(code, `${key}: ${stricter}`);
    expect(source(other)).toContain(`your workshop, house-rules: ${key}`);
    if (limit !== null) expect(other?.limit?.value).toBeCloseTo(limit, 1);
    if (clears !== "-") expect(found(code, `${key}: ${clears}`)).toBeUndefined();
  });
});

test("a driver's length is a rule of its own", () => {
  // The knob's skirt begins above the nut; a blade that ends below it meets nothing.
  expect(found("driver-room", "driver-length: 160 mm")?.message).toContain("160 mm long");
  expect(found("driver-room", "driver-diameter: 4 mm, driver-length: 4 mm")).toBeUndefined();
});
