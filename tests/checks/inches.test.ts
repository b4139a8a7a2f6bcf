// Who writes inches reads inches: numbers of a finding and of its remedy are in the unit of the number that places the thing.

import { expect, test } from "vitest";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { checked, ofCode } from "./panel.ts";

const two = (centres: string): string =>
  `components:\n  a: { part: toggle-6, at: { x: 4 in, y: 4 in } }\n  b: { part: toggle-6, at: { right-of: a, centres: ${centres} } }\n`;

test("hands in inches: levers of 3 mm, 3/4 in apart, leave 16.05 mm of the 19 that are wanted", () => {
  const panel = checked(two("3/4 in"));
  const [found] = ofCode(panel, "checks/hands");
  expect(found?.message).toContain("leave 0.6319 in between them");
  expect(found?.message).toContain("wants 0.748 in");
  const edit = found?.remedies[0]?.edits[0];
  // (19 + 3) / 25.4 = 0.866, and the next thirty-second is 0.875.
  expect(edit?.text).toBe("0.875 in");
  const text = panel.texts.get("panel.yaml") ?? "";
  const result = applyEdits(text, edit === undefined ? [] : [edit]);
  expect(result.kind === "edited" && result.text).toBe(text.replace("3/4 in", "0.875 in"));
});

test("millimetres stay millimetres", () => {
  const [found] = ofCode(checked(two("19.05 mm")), "checks/hands");
  expect(found?.message).toContain("leave 16.05 mm between them");
  expect(found?.remedies[0]?.edits[0]?.text).toBe("22 mm");
});

test.each(['"PUMP 2"', "'GAUGE 3\"'", '"STOP"'])(
  "the quotes of a legend are no inches: %s",
  (legend) => {
    const text = `markings:\n  - legend: { text: ${legend}, at: { x: 30 mm, y: 40 mm } }\n  - window: { at: { x: 30 mm, y: 40 mm }, width: 30 mm, height: 10 mm, layers: [face] }\n`;
    const alone = `${text}components:\n  a: { part: toggle-6, at: { x: 60 mm, y: 40 mm }, legend: ${legend} }\n  b: { part: toggle-6, at: { x: 62 mm, y: 40 mm } }\n`;
    const panel = checked(alone);
    expect(panel.findings.length).toBeGreaterThan(0);
    for (const { message, remedies } of panel.findings)
      expect([message, ...remedies.map(({ title }) => title)].join(" ")).not.toMatch(
        /\d in(?! face)\b/,
      );
  },
);
