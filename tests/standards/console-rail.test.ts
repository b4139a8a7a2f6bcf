import { expect, test } from "vitest";
import { CONSOLE_RAIL, consolePanelHeight } from "../../src/standards/console-rail.ts";

// MS25212 and MIL-F-25173A give inches; all of them are whole numbers of 10 nm.
test("the inches of the standard", () => {
  expect(CONSOLE_RAIL.panelWidth).toBeCloseTo(5.75 * 25.4, 10);
  expect(CONSOLE_RAIL.module).toBeCloseTo((3 / 8) * 25.4, 10);
  expect(CONSOLE_RAIL.columnsApart).toBeCloseTo(5.375 * 25.4, 10);
  expect(CONSOLE_RAIL.pitchErrorPerFoot).toBeCloseTo(0.005 * 25.4, 10);
});

test("the columns stand in the middle of the width", () => {
  expect((CONSOLE_RAIL.panelWidth - CONSOLE_RAIL.columnsApart) / 2).toBeCloseTo(
    CONSOLE_RAIL.columnInset,
    10,
  );
  expect(CONSOLE_RAIL.firstRow).toBe(CONSOLE_RAIL.module / 2);
});

test("six modules are 57.15 mm: the hole of a 2 1/4 in instrument, so none fits in them", () => {
  expect(consolePanelHeight(6)).toBeCloseTo(57.15, 10);
  expect(2 * (CONSOLE_RAIL.panelWidth + consolePanelHeight(6))).toBeCloseTo(406.4, 10);
  // Seven leave webs of 4.76 above and below.
  expect((consolePanelHeight(7) - 57.15) / 2).toBeCloseTo(4.7625, 10);
});

test("a stud passes its hole, its head does not, and the web is 1.46", () => {
  expect(CONSOLE_RAIL.studBody).toBeLessThan(CONSOLE_RAIL.studHole);
  expect(CONSOLE_RAIL.studHead).toBeGreaterThan(CONSOLE_RAIL.studHoleInAcrylic);
  expect(CONSOLE_RAIL.columnInset - CONSOLE_RAIL.studHole / 2).toBeCloseTo(1.4625, 10);
});
