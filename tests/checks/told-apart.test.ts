// Two lengths that a finding compares are told apart in its words, however little lies between them, and what is missing is
// never "0 mm". What the values are is closed form: places and sizes as they are written.

import { expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const said = (lines: string, code: string, own?: string): string => {
  const [found, ...others] = ofCode(checked(lines, own), code);
  expect([found?.code, others]).toEqual([code, []]);
  return found!.message;
};

const window = (left: string, width = "20 mm"): string =>
  `  - window: { at: { x: ${left}, y: 110 mm }, width: ${width}, height: 10 mm, layers: [face] }\n`;

test("a web that is short by 4 µm", () => {
  expect(said(`markings:\n${window("40 mm")}${window("61.496 mm")}`, "checks/web")).toContain(
    "1.496 mm of face is left; 1.500 mm is wanted, 0.004 mm more",
  );
});

test("a measured shaft as thick as its bush, but for 2 µm", () => {
  const pot = `components:
  a:
    part: pot-16
    at: centre
    measured: { hold.diameter: 6.998 mm, shaft.diameter: 7 mm, dated: 2026-01-31 }
`;
  expect(said(pot, "checks/measured-impossible")).toContain(
    "shaft.diameter of pot-16 is 7.000 mm as measured, and must be thinner than its bush of 6.998 mm",
  );
});

const toggles = (centres: string): string =>
  `components:\n  a: { part: toggle-6, at: { left: 40 mm, top: 30 mm } }\n  b: { part: toggle-6, at: { right-of: a, centres: ${centres} } }\n`;

/** Centres of two levers that are just far enough apart for a hand. */
const enough = (): number => {
  const [found] = ofCode(checked(toggles("18 mm")), "checks/hands");
  return 18 + found!.limit!.value - found!.measured!.value;
};

test("controls that are 3 µm too near for a hand", () => {
  const message = said(toggles(`${enough() - 0.003} mm`), "checks/hands");
  expect(message).toContain("18.997 mm between them");
  expect(message).toContain("wants 19.000 mm, 0.003 mm more");
});

test("controls that are 40 millionths of an inch too near, as the text counts", () => {
  // 19 mm are 0.748031 in.
  const message = said(toggles(`${(enough() - 0.001) / 25.4} in`), "checks/hands");
  expect(message).toContain("0.74799 in between them");
  expect(message).toContain("wants 0.74803 in, 0.00004 in more");
});

test("what two decimals tell apart keeps them", () => {
  expect(said(`markings:\n${window("40 mm")}${window("61.25 mm")}`, "checks/web")).toContain(
    "1.25 mm of face is left; 1.5 mm is wanted, 0.25 mm more",
  );
});
