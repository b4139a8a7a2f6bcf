// Checks against figures from outside: viewing angles, sheet tolerances, paint on the wall of a hole, an instrument in a
// rail panel.

import { describe, expect, test } from "vitest";
import { contourDistance } from "../../src/geometry/distance.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { testLibrary } from "../support/test-library.ts";
import { type Checked, checked, ofCode } from "./panel.ts";

describe("a legend at 700 mm, where 16 minutes of arc are 2 x 700 x tan(8') = 3.258 mm (NUREG-0700 Rev 2, 1.3.1-4)", () => {
  const lettered = (height: string, alert = "none"): Checked =>
    checked(
      `viewing-distance: 700 mm\ncomponents:\n  a: { part: led-5, at: { x: 60 mm, y: 60 mm }, legend: { text: PUMP, height: ${height}, alert: ${alert} } }\n`,
    );

  test("3.25 is queried, 3.26 is not", () => {
    const [found] = ofCode(lettered("3.25 mm"), "checks/legend-too-small");
    expect(found?.limit?.value).toBeCloseTo(3.258, 3);
    expect(found?.severity).toBe("query");
    expect(ofCode(lettered("3.26 mm"), "checks/legend-too-small")).toEqual([]);
  });

  test("what alerts wants 20 minutes, 4.072 mm (MIL-STD-411F, 5.2.9)", () => {
    const [found] = ofCode(lettered("4.07 mm", "warning"), "checks/legend-too-small");
    expect(found?.limit?.value).toBeCloseTo(4.072, 3);
    expect(ofCode(lettered("4.08 mm", "warning"), "checks/legend-too-small")).toEqual([]);
  });
});

describe("a single line of 0.15 mm is one part in 27 of a 4.1 mm capital; DOD-HDBK-791 asks for 1/7 to 1/8", () => {
  const lettered = (font: string): Checked =>
    checked(
      `lettering: { font: ${font}, height: 4.1 mm }\ncomponents:\n  a: { part: led-5, at: { x: 60 mm, y: 60 mm }, legend: PUMP }\n`,
    );

  test("it is queried", () => {
    const [found] = ofCode(lettered("single-line"), "checks/stroke-too-thin");
    expect(found?.message).toContain("one part in 27");
  });

  test.each(["b612", "b612-bold", "overpass", "overpass-semibold", "barlow-condensed"])(
    "%s is not",
    (font) => {
      expect(ofCode(lettered(font), "checks/stroke-too-thin")).toEqual([]);
    },
  );
});

// ISO 7823-1: cast sheet is nominal ± (0.4 + 0.1 t), so that 3 mm may be 3.7.
describe("bushes through cast acrylic of 3 mm by name, 3.7 mm at worst (ISO 7823-1)", () => {
  const { parts, hardware } = testLibrary().catalogue;
  const bushes = [...parts.values()].flatMap((part) =>
    part.hold.kind === "bush" && !part.emergencyLook ? [{ id: part.id, hold: part.hold }] : [],
  );

  /** What is left of the thread behind `sheets` sheets and the washers, against the nut: a builder's sum. */
  const isTooShort = (
    hold: (typeof bushes)[number]["hold"],
    sheets: number,
    each: number,
  ): boolean => {
    const washers = hold.washers.map((id): number => {
      const washer = hardware.get(id);
      return washer?.kind === "washer" ? washer.thickness : 0;
    });
    const nut = hardware.get(hold.nut);
    const left = hold.length - sheets * each - washers.reduce((sum, one) => sum + one, 0);
    return nut?.kind === "nut" && left < nut.thickness - 1e-9;
  };

  const stacked = (part: string, sheets: number, measured: string): Checked =>
    checked(
      `components:\n  a: { part: ${part}, clamps: [${["face", "backing"].slice(0, sheets).join(", ")}], at: { x: 110 mm, y: 110 mm } }\n`,
      `mount: corner-screws
width: 220 mm
height: 220 mm
fixings: { screws: m3, dowels: 3 mm }
stack:
  - { layer: face, sheet: ${measured} }
  - { layer: backing, sheet: ${measured} }
`,
    );

  test.each([1, 2])("%s sheets: exactly the bushes that are too short are named", (sheets) => {
    const named = bushes
      .filter(({ id }) => {
        const found = ofCode(stacked(id, sheets, "black-acrylic-3"), "checks/thread-too-short");
        return found.length > 0;
      })
      .map(({ id }) => id);
    const expected = bushes.filter(({ hold }) => isTooShort(hold, sheets, 3.7)).map(({ id }) => id);
    expect(named).toEqual(expected);
    if (sheets === 2) expect(expected.length).toBeGreaterThan(3);
    expect(expected.length).toBeLessThan(bushes.length);
  });

  test("a sheet that was measured at 2.9 lets more of them through", () => {
    const named = bushes
      .filter(({ id }) => ofCode(stacked(id, 2, "black"), "checks/thread-too-short").length > 0)
      .map(({ id }) => id);
    expect(named).toEqual(
      bushes.filter(({ hold }) => isTooShort(hold, 2, 2.9)).map(({ id }) => id),
    );
  });
});

describe("a bush of 6.35 mm (1/4-40) in a hole cut at 6.4 and painted 0.08 a side: 6.4 - 2 x 0.08 = 6.24", () => {
  const holed = (finish: string, hole: string): Checked =>
    checked(
      `components:\n  a: { part: toggle-6, ${hole} at: { x: 60 mm, y: 60 mm } }\n`,
      `mount: corner-screws\nwidth: 120 mm\nheight: 120 mm\nstack:\n  - { layer: face, sheet: black${finish} }\n`,
    );

  test("it does not go in", () => {
    const [found] = ofCode(holed(", finish: painted", "hole: 6.4 mm,"), "checks/hole-too-small");
    expect(found?.measured?.value).toBeCloseTo(6.24, 9);
    expect(found?.limit?.value).toBe(6.35);
  });

  test("bare it goes in, and so it does where the program sets the size", () => {
    expect(ofCode(holed("", "hole: 6.4 mm,"), "checks/hole-too-small")).toEqual([]);
    expect(ofCode(holed(", finish: painted", ""), "checks/hole-too-small")).toEqual([]);
  });
});

describe("an instrument of 57.15 mm on a console rail (MS25212: modules of 9.525)", () => {
  const railed = (modules: number): Checked =>
    checked(
      "components:\n  gauge: { part: gauge-57, at: { x: centre, y: centre } }\n",
      `mount: console-rail\nheight: ${modules} modules\nstack:\n  - { layer: face, sheet: plate }\n`,
    );

  test("6 modules are 57.15 high: refused, with the height that would do", () => {
    const [found] = ofCode(railed(6), "checks/instrument-fit");
    expect(found?.severity).toBe("fault");
    expect(found?.remedies[0]?.title).toBe("height: 7 modules");
  });

  test("7 modules are 66.675 and leave (66.675 - 57.15) / 2 = 4.76 above and below: accepted", () => {
    const seven = railed(7);
    expect(seven.findings.filter(({ severity }) => severity === "fault")).toEqual([]);
    const hole = seven.layout.layers[0]?.cutOuts.find(({ id }) => id === "gauge/clamp@face");
    const web =
      hole === undefined ? 0 : contourDistance(rectangle(seven.layout.nominal), hole.contour).gap;
    expect(web).toBeCloseTo(4.7625, 9);
  });
});
