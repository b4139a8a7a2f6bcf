// Words that make a dummy an emergency stop: ISO 13850 (emergency stop), IEC 60204-1 (emergency switching off).

import { expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const found = (part: string, legend: string): number =>
  ofCode(
    checked(`components:\n  a: { part: ${part}, at: centre, legend: ${JSON.stringify(legend)} }\n`),
    "checks/emergency-look",
  ).length;

test.each(["EMERGENCY STOP", "E-STOP", "E STOP", "ESTOP", "E.STOP", "EMERGENCY OFF"])(
  "%s on an ordinary button is refused",
  (words) => {
    expect(found("push-button-16", words)).toBe(1);
  },
);

test.each(["STOP", "EMERGENCY LIGHT", "FREESTOP", "ENGINE STOP", "TIME STOP"])(
  "%s is not",
  (words) => {
    expect(found("push-button-16", words)).toBe(0);
  },
);

test("a lamp may tell of one that stands elsewhere, a word on the face may not be one", () => {
  expect(found("lamp-8", "E-STOP")).toBe(0);
  const free = checked(
    "markings:\n  - legend: { text: EMERGENCY STOP, at: { x: 60 mm, y: 40 mm } }\n",
  );
  expect(ofCode(free, "checks/emergency-look")).toHaveLength(1);
});
