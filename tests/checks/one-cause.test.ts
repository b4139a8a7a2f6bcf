// One cause, one finding: followers are held back and counted, a graver finding is never hidden behind a lighter one, and a
// row is spoken of once.

import { describe, expect, test } from "vitest";
import { oneCauseOneFinding } from "../../src/checks/one-cause.ts";
import { type Finding, finding, type Severity } from "../../src/diagnostics/finding.ts";
import { checked, ofCode } from "./panel.ts";

const span = { file: "panel.yaml", start: 0, end: 1 };

const made = (code: string, severity: Severity, subjects: readonly string[]): Finding =>
  finding({ code, severity, title: "", why: "", example: "" }, { message: code, span, subjects });

const told = (found: readonly Finding[]): readonly string[] =>
  oneCauseOneFinding(found).map(({ code, suppressed }) => `${code} +${suppressed}`);

describe("followers", () => {
  const overlap = made("checks/cut-outs-overlap", "fault", ["b", "a"]);

  test("of the same two things are counted with their cause", () => {
    const bodies = made("checks/bodies-collide", "fault", ["b", "a"]);
    const hidden = made("checks/marking-covered", "query", ["a", "b"]);
    expect(told([hidden, overlap, bodies])).toEqual(["checks/cut-outs-overlap +2"]);
  });

  test("of other things stay", () => {
    const bodies = made("checks/bodies-collide", "fault", ["c", "a"]);
    expect(told([overlap, bodies])).toEqual([
      "checks/cut-outs-overlap +0",
      "checks/bodies-collide +0",
    ]);
  });

  test("bring what they had counted themselves", () => {
    const row = { ...made("checks/hands", "query", ["b.2", "b.1"]), suppressed: 3 };
    const both = made("checks/bodies-collide", "fault", ["b.2", "b.1"]);
    expect(told([row, both])).toEqual(["checks/bodies-collide +4"]);
  });

  test("are kept where the cause is the lighter of the two", () => {
    const thread = made("checks/thread-too-short", "query", ["a"]);
    const grip = made("checks/grip", "fault", ["a"]);
    expect(told([thread, grip])).toEqual(["checks/thread-too-short +0", "checks/grip +0"]);
  });
});

test("a row with too small a pitch is one finding with the count of its gaps, and the pitch that works", () => {
  const row = checked(
    "components:\n  keys:\n    row: { part: tactile-12-cap, count: 5, pitch: 20 mm, left: 60 mm, top: 60 mm }\n",
  );
  const [found, ...others] = ofCode(row, "checks/hands");
  expect(others).toEqual([]);
  // NUREG-0700 Rev 3 Table 11.5: 13 mm between push buttons; caps of 10 mm at 20 mm leave 10.
  expect(found?.measured?.value).toBeCloseTo(10, 9);
  expect(found?.suppressed).toBe(3);
  expect(found?.remedies[0]?.title).toBe("pitch: 23 mm (keys)");
});

test("a lamp beyond the edge is not told again for the rail, the rim and its legend", () => {
  const away = checked(
    "components:\n  a: { part: led-5, at: { left: 145 mm, top: 40 mm }, legend: PUMP }\n",
    "mount: console-rail\nheight: 10 modules\nstack:\n  - { layer: face, sheet: plate }\n",
  );
  const codes = away.findings.filter(({ severity }) => severity !== "note").map(({ code }) => code);
  expect(codes).toEqual(["checks/off-panel"]);
  expect(ofCode(away, "checks/off-panel")[0]?.suppressed).toBeGreaterThan(1);
});

test("a remedy is a place where nothing else is in the way: it passes over a neighbour", () => {
  const crowded = checked(
    `components:
  a: { part: led-5, at: { x: 100 mm, y: 100 mm } }
  b: { part: led-5, at: { x: 104 mm, y: 100 mm } }
  c: { part: led-5, at: { x: 113 mm, y: 100 mm } }
`,
  );
  const [found] = ofCode(crowded, "checks/cut-outs-overlap");
  // Boards of 8 mm side by side: b has no room between a and c, so that it goes past c, 8 mm from its axis.
  expect(found?.remedies[0]?.title).toBe("x: 121 mm (b)");
});
