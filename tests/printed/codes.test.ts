// Every code of printed layers is given by a panel that deserves it, with both numbers where there are two.

import { expect, test } from "vitest";
import { printedPartsOf } from "../../src/parts/printed/printed-parts.ts";
import { laidPanel } from "./laid-panel.ts";
import { printed, stackOf } from "./printed-panel.ts";

const codesOf = (made: ReturnType<typeof printed>): readonly string[] =>
  made.findings.map(({ code }) => code);

test("a spacer too shallow for its floor, lamps and foam says what it needs", () => {
  const made = printed({ stack: stackOf("strip-60-5v", "", 3) });
  expect(codesOf(made)).toEqual(["parts/spacer-too-shallow"]);
  expect(made.parts).toEqual([]);
  // Floor 1.4, channel 0.6, seat 1, and 2 for the light.
  expect(made.findings[0]?.limit?.value).toBeCloseTo(5, 9);
  expect(made.findings[0]?.measured?.value).toBeCloseTo(3, 9);
});

test("a spacer between fasteners that leave nothing is not made", () => {
  const made = printed({ mount: "corner-screws", width: "20 mm", height: "20 mm" });
  expect(codesOf(made)).toEqual(["parts/no-spacer-room"]);
});

test("a thread without an insert is told of, and its bosses are bored through", () => {
  const made = printed({ height: "14 modules", fixings: "{ screws: m8, dowels: 3 mm }" });
  expect(codesOf(made)).toEqual(["parts/no-insert"]);
  const kinds = new Set(made.spacer?.facts.bosses.map(({ kind }) => kind));
  expect([...kinds].toSorted()).toEqual(["clearance", "dowel"]);
});

test("an area round a stranger is told of by its name", () => {
  const made = printed({
    stack: stackOf("").replace(
      "14 mm }",
      "14 mm, lighting: { strip: strip-60-5v, circuit: night, apart: [{ circuit: day, around: [stranger] }] } }",
    ),
  });
  expect(codesOf(made)).toContain("parts/unknown-area");
  expect(made.findings.find(({ code }) => code === "parts/unknown-area")?.subjects).toEqual([
    "stranger",
  ]);
});

test("a tray and a washer with nothing to print them from are told of", () => {
  const { layout, context } = laidPanel({
    stack: `
  - { layer: face, sheet: opal-3 }
  - { layer: backing, sheet: metal-2 }
  - { layer: tray, behind: 30 mm }`,
    components: "\n  a: { part: toggle-12, at: centre, washer: light-tight }",
  });
  const bare = {
    ...context,
    workshop: null,
    catalogue: { ...context.catalogue, stock: new Map() },
  };
  const { findings } = printedPartsOf(layout, bare);
  expect(findings.map(({ code }) => code)).toEqual([
    "parts/no-printed-stock",
    "parts/no-printed-stock",
  ]);
});
