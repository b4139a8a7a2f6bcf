// Limits of fit that no standard sets: a workshop's own number counts in place of the usual one, and the finding says whose it is.

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { searchedWithin } from "../../src/checks/fit/near-limits.ts";
import { driverSource } from "../../src/checks/fit/service-limits.ts";
import { readDesign } from "../../src/design/read-design.ts";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { limitInWords } from "../../src/diagnostics/limit-in-words.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { findingsOf, readExample } from "../findings/example.ts";
import { consoleOf } from "./console-of.ts";

const example = (code: string): Map<string, string> =>
  new Map(readExample(join(import.meta.dirname, "../findings/fit", `${code}.yaml`)));

const found = (
  code: string,
  houseRules: string,
  texts: Map<string, string> = example(code),
): Finding | undefined => {
  const shed = texts.get("shed.yaml") ?? "";
  const own = new Map([...texts, ["shed.yaml", `${shed}\nhouse-rules: { ${houseRules} }\n`]]);
  return findingsOf(own).find((each) => each.code === `fit/${code}`);
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
    expect(source(other)).toContain("your workshop");
    expect(source(other)).toContain(`house-rules: ${key}`);
    if (limit !== null) expect(other?.limit?.value).toBeCloseTo(limit, 1);
    if (clears !== "-") expect(found(code, `${key}: ${clears}`)).toBeUndefined();
  });
});

// The knob's skirt stands beside the stud's axis, so that a narrower driver comes past it; the shelf stands over it.
test("a driver is held against the figure that fails, and its key alone is named", () => {
  const beside = found("driver-room", "web: 1.5 mm");
  expect(beside?.source).toMatchObject({ kind: "house-rule", key: "driver-diameter" });
  expect(beside?.limit?.value).toBe(8);
  const texts = example("driver-room");
  const console = texts.get("console.yaml") ?? "";
  const shelf = "\nobstacles:\n  - { name: shelf, box: [400, 400, 5], at: [0, -420, 680] }\n";
  texts.set("console.yaml", `${console}${shelf}`);
  const over = findingsOf(texts).filter(({ code }) => code === "fit/driver-room");
  expect(over.map(({ source: whose, limit }) => [whose, limit?.value])).toContainEqual([
    expect.objectContaining({ kind: "house-rule", key: "driver-length" }),
    150,
  ]);
});

test("a driver's length is a rule of its own", () => {
  const { design } = readDesign(
    "shed.yaml",
    "consolewright: 1\nkind: workshop\nname: shed\nhouse-rules: { driver-diameter: 9 mm }\n",
  );
  const both = driverSource({ workshop: design?.kind === "workshop" ? design : null });
  expect(limitInWords(both)).toContain("150 mm long (common practice, driver-length sets it)");
  // The knob's skirt begins above the nut; a blade that ends below it meets nothing.
  expect(found("driver-room", "driver-length: 160 mm")?.message).toContain("160 mm long");
  expect(found("driver-room", "driver-diameter: 4 mm, driver-length: 4 mm")).toBeUndefined();
});

// The case is 1 mm off the shelf in the example; 7 mm farther away it is 8 mm off.
test("a room wider than the usual search is judged all the same", () => {
  const texts = example("too-near");
  const console = texts.get("console.yaml") ?? "";
  texts.set("console.yaml", console.replace("[28.575, 59, 560]", "[28.575, 66, 560]"));
  expect(found("too-near", "built-in-room: 7.9 mm", texts)).toBeUndefined();
  const near = found("too-near", "built-in-room: 12 mm", texts);
  expect([near?.measured?.value, near?.limit?.value]).toEqual([expect.closeTo(8, 2), 12]);
});

test("panels that are cut far under nominal are searched for as far as both leave", () => {
  const { layout } = consoleOf(
    `bays:
  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 40 modules, depth: 60 mm }
panels:
  - { file: a.yaml, as: a, bay: aft, module: 0 }
  - { file: b.yaml, as: b, bay: aft, module: 10 }
`,
    { a: "", b: "" },
  );
  const panels = layout.panels.map((panel) => ({
    ...panel,
    layout: { ...panel.layout, mount: { ...panel.layout.mount, undersize: mm(4) } },
  }));
  expect(searchedWithin({ layout, workshop: null })).toBe(5);
  expect(searchedWithin({ layout: { ...layout, panels }, workshop: null })).toBe(8);
});
