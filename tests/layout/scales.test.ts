// Scales against the way knobs and selectors turn. Clock angles: degrees clockwise from twelve, seen from the front.

import { describe, expect, test } from "vitest";
import { contourCentroid } from "../../src/geometry/measure.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { codes, layoutOf, panelOf } from "./bench-panel.ts";

const placed = (line: string): PanelLayout =>
  layoutOf({ height: "14 modules", components: [`a: { at: centre, ${line} }`] });

/** Clock angles of a marking's filled shapes as seen from the component's axis, 0 to 360, in the order of drawing. */
const angles = (layout: PanelLayout, id: string): readonly number[] => {
  const axis = layout.components[0]?.at ?? { x: 0, y: 0 };
  const marking = layout.markings.find((one) => one.id === id);
  return (marking?.fills ?? []).map(({ outline }) => {
    const at = contourCentroid(outline);
    const clock = (Math.atan2(at.x - axis.x, at.y - axis.y) * 180) / Math.PI;
    return (Math.round(clock * 1e6) / 1e6 + 360) % 360;
  });
};

const radii = (layout: PanelLayout, id: string): readonly number[] => {
  const axis = layout.components[0]?.at ?? { x: 0, y: 0 };
  const marking = layout.markings.find((one) => one.id === id);
  return (marking?.fills ?? []).flatMap(({ outline }) =>
    outline.kind === "circle"
      ? []
      : outline.vertices.map(({ x, y }) => Math.hypot(x - axis.x, y - axis.y)),
  );
};

const close = (list: readonly number[]): readonly unknown[] =>
  list.map((value) => expect.closeTo(value, 4));

describe("a potentiometer of 300 degrees", () => {
  // Its flat looks to one o'clock (30) at the first stop and the knob's pointer stands opposite the flat: seven o'clock, 210,
  // to five o'clock, 150: the travel of common 300 degree potentiometers, symmetrical about twelve.
  const pot = placed(
    "part: pot-16, knob: knob-22-skirt, scale: { from: 0, to: 10, major: 5, minor: 2.5 }",
  );

  test("runs from seven o'clock over twelve to five o'clock", () => {
    expect(angles(pot, "a/scale")).toEqual(close([210, 0, 150, 285, 75]));
  });

  test("its ticks begin outside the knob that is fitted, and outside the opening in the face", () => {
    expect(Math.min(...radii(pot, "a/scale"))).toBeGreaterThan(11);
    const bare = placed("part: pot-16, knob: knob-9, scale: { from: 0, to: 10, major: 5 }");
    // The face opens by 13.5 for the nut: more than the knob of 9.5.
    expect(Math.min(...radii(bare, "a/scale"))).toBeGreaterThan(13.5 / 2);
  });

  test("turned by 90 degrees counter-clockwise its scale turns along", () => {
    const turned = placed(
      "part: pot-16, knob: knob-22-skirt, turn: 90 deg, scale: { from: 0, to: 10, major: 5 }",
    );
    expect(angles(turned, "a/scale")).toEqual(close([120, 270, 60]));
  });

  test("a scale that counts down runs the same way round", () => {
    const down = placed("part: pot-16, scale: { from: 10, to: 0, major: 5 }");
    expect(angles(down, "a/scale")).toEqual(close([210, 0, 150]));
    expect(down.markings.find(({ id }) => id === "a/scale-figures")?.text).toBe("10 5 0");
  });

  test("what it measures is read beside it", () => {
    const named = placed(
      "part: pot-16, scale: { from: 0, to: 10, major: 5, legend: HAUL SPEED }, legend: WINCH",
    );
    const texts = named.markings.map(({ text }) => text);
    expect(texts).toContain("HAUL SPEED");
    expect(texts).toContain("WINCH");
    const [measured, name] = ["a/scale-legend", "a/legend"].map(
      (id) => named.markings.find((one) => one.id === id)?.box,
    );
    expect((name?.minY ?? 0) - (measured?.maxY ?? 0)).toBeGreaterThan(0);
  });
});

describe("a rotary switch of 30 degrees a step", () => {
  test("has a mark at each detent, whatever the figures are", () => {
    const marks = placed(
      'part: rotary-12, knob: knob-32-pointer, scale: { from: 1, to: 5, major: 1, labels: ["5", "10", "20", "50", "100"] }',
    );
    expect(angles(marks, "a/scale")).toEqual(close([195, 225, 255, 285, 315]));
    expect(marks.markings.find(({ id }) => id === "a/scale-figures")?.text).toBe("5 10 20 50 100");
  });

  test("words at numbered positions stand at their stops, each with its tick", () => {
    const words = placed("part: rotary-12, positions: { 1: OFF, 2: LOW, 12: HIGH }");
    expect(angles(words, "a/1-tick")).toEqual(close([195]));
    expect(angles(words, "a/2-tick")).toEqual(close([225]));
    // The twelfth stop: 195 + 11 x 30 = 525, five o'clock and a half.
    expect(angles(words, "a/12-tick")).toEqual(close([165]));
    expect(words.markings.find(({ id }) => id === "a/12")?.text).toBe("HIGH");
  });

  test.each(["13", "sideways", "0"])("has no position %s", (position) => {
    const panel = panelOf({
      components: [`a: { part: rotary-12, at: centre, positions: { ${position}: X } }`],
    });
    expect(codes(panel.findings)).toContain("layout/unknown-position");
  });

  test("labels that do not go up with the figures are told", () => {
    const panel = panelOf({
      components: [
        "a: { part: rotary-12, at: centre, scale: { from: 1, to: 4, major: 1, labels: [A, B, C] } }",
      ],
    });
    expect(codes(panel.findings)).toContain("layout/scale-labels");
  });
});

describe("a needle of 180 degrees, nine o'clock to three", () => {
  test("a dial of 120 lies evenly about twelve", () => {
    const dial = placed(
      "part: servo-9g-needle, dial: { sweep: 120 deg, from: 0, to: 80, major: 40, unit: kN }",
    );
    expect(angles(dial, "a/dial")).toEqual(close([300, 0, 60]));
    expect(dial.markings.find(({ id }) => id === "a/unit")?.text).toBe("kN");
  });
});

describe("a lever's words", () => {
  test("stand above and below, as seen, and the name beyond them", () => {
    const layout = placed("part: toggle-6, legend: PUMP, positions: { up: RUN, down: STOP }");
    const box = (id: string): { minY: number; maxY: number } =>
      layout.markings.find((one) => one.id === id)?.box ?? { minY: Number.NaN, maxY: Number.NaN };
    const axis = layout.components[0]?.at.y ?? 0;
    expect(box("a/down").maxY).toBeLessThan(axis);
    expect(box("a/up").minY).toBeGreaterThan(axis);
    expect(box("a/legend").minY).toBeGreaterThan(box("a/up").maxY);
  });
});
