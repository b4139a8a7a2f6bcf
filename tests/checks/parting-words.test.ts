// What two openings lack between them, as a builder measures it: from centre to centre where both are round, else along the panel's
// edge that the numbers are taken along, which is said.

import { describe, expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const messages = (lines: string, code: string, own?: string): readonly string[] =>
  ofCode(checked(lines, own), code).map(({ message }) => message);

describe("two openings that run into each other", () => {
  // Holes of 5.2 for LEDs of 5: 3 across and 3 up are 4.243 from centre to centre; 5.2 and a web of 1.5 are 6.7.
  test("are told how far their centres lie apart, aslant too", () => {
    expect(
      messages(
        "components:\n  a: { part: led-5, at: { x: 100 mm, y: 100 mm } }\n  b: { part: led-5, at: { x: 103 mm, y: 103 mm } }\n",
        "checks/cut-outs-overlap",
      ),
    ).toEqual([
      "a and b run into each other in face: their centres are 4.24 mm apart; 6.7 mm would leave a web of 1.5 mm, 2.46 mm more.",
    ]);
  });

  // A window of 10 x 6 and the hole of 5.2: half of both and the web, 5 + 2.6 + 1.5 across.
  test("are told the way of the two numbers where one is not round", () => {
    expect(
      messages(
        "components:\n  a: { part: led-5, at: { x: 106 mm, y: 102 mm } }\nmarkings:\n  - window: { at: { x: 100 mm, y: 100 mm }, width: 10 mm, height: 6 mm, layers: [face] }\n",
        "checks/cut-outs-overlap",
      ),
    ).toEqual([
      "a and window-1 run into each other in face: their centres are 6 mm apart sideways; 9.1 mm would leave a web of 1.5 mm, 3.1 mm more.",
    ]);
  });
});

// 57.15 and a web of 1 on both sides in a lid of 50 by 55.
test("an instrument that is too high and too wide is told both, and the size that carries it", () => {
  const found = ofCode(
    checked(
      "components:\n  gauge: { part: gauge-57, at: { x: centre, y: centre } }\n",
      "mount: box-lid\nwidth: 50 mm\nheight: 55 mm\nstack:\n  - { layer: face, sheet: plate }\n",
    ),
    "checks/instrument-fit",
  );
  expect(found.map(({ message }) => message)).toEqual([
    expect.stringMatching(
      /^gauge needs an opening 57\.15 mm high and 57\.15 mm wide in face; with a web of 1 mm on both sides this panel takes 5[\d.]+ mm, [\d.]+ mm too little and 4[\d.]+ mm, [\d.]+ mm too little\. height: 60 mm with width: 60 mm would do\.$/,
    ),
  ]);
  expect(found[0]?.remedies.map(({ edits }) => edits.length)).toEqual([2]);
});
