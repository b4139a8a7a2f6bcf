// Depth at both ends of every thickness, against sums done by hand, and the range of sheet that nobody has measured.

import { describe, expect, test } from "vitest";
import type { PlacedComponent } from "../../src/layout/panel-layout.ts";
import { layerNamed, layoutOf } from "./bench-panel.ts";

const component = (stack: readonly string[], line: string): PlacedComponent => {
  const [found] = layoutOf({ height: "14 modules", stack, components: [line] }).components;
  if (found === undefined) throw new Error("the component was not placed");
  return found;
};

describe("sheet that nobody has measured", () => {
  // ISO 7823-1: cast acrylic, tolerance of thickness +/-(0.4 + 0.1 t): "3 mm" may be 2.3 to 3.7.
  test("cast acrylic of 3 mm is 2.3 to 3.7", () => {
    const layout = layoutOf({ stack: ["{ layer: face, sheet: raw-opal }"], fixings: "" });
    const { thickness } = layerNamed(layout, "face");
    expect(thickness.low).toBeCloseTo(2.3, 9);
    expect(thickness.nominal).toBe(3);
    expect(thickness.high).toBeCloseTo(3.7, 9);
    expect(thickness.known).toBe(false);
  });

  test("measured sheet is what was measured", () => {
    const layout = layoutOf({ stack: ["{ layer: face, sheet: opal }"], fixings: "" });
    expect(layerNamed(layout, "face").thickness).toEqual({
      low: 2.9,
      nominal: 2.9,
      high: 2.9,
      known: true,
    });
  });
});

describe("a toggle clamped to 2 mm of metal behind a painted face", () => {
  // toggle-6: seat behind, thread 8.3 from the seat, one washer of 0.5 with the nut (its record); lever to 19.2.
  const toggle = component(
    ["{ layer: face, sheet: raw-opal, finish: sprayed }", "{ layer: metal, sheet: metal }"],
    "a: { part: toggle-6, at: centre }",
  );
  const { hold, lever } = toggle.part;
  const length = hold.kind === "bush" ? hold.length : Number.NaN;

  test("grips the metal alone", () => {
    expect(toggle.depth.gripped).toEqual({ low: 2, nominal: 2, high: 2, known: true });
  });

  test("its thread is what is left of the bush beyond metal and washer", () => {
    const washer = length - 2 - (toggle.depth.threadLeft?.nominal ?? Number.NaN);
    expect(washer).toBeGreaterThan(0.2);
    expect(washer).toBeLessThan(1);
  });

  test("stands proud by lever less face, paint and metal: worst cases added", () => {
    // Face 2.3 to 3.7 (ISO 7823-1) with 0.05 to 0.15 of paint on its front (common practice); metal 2.
    const end = lever?.length ?? Number.NaN;
    expect(toggle.depth.protrusion?.low).toBeCloseTo(end - (3.7 + 0.15 + 2), 9);
    expect(toggle.depth.protrusion?.high).toBeCloseTo(end - (2.3 + 0.05 + 2), 9);
  });

  test("reaches behind the face by face, paint, metal and its rearmost body", () => {
    const rear = Math.min(...toggle.part.bodies.map(({ from }) => from));
    expect(toggle.depth.total.low).toBeCloseTo(2.3 + 0.05 + 2 - rear, 9);
    expect(toggle.depth.total.high).toBeCloseTo(3.7 + 0.15 + 2 - rear, 9);
  });
});

describe("a flange in front", () => {
  test("its seat is the front of what it clamps; what lies before it is taken off what stands proud", () => {
    const behindFace = component(
      ["{ layer: face, sheet: opal }", "{ layer: metal, sheet: metal }"],
      "a: { part: push-button-16, at: centre }",
    );
    const onFace = component(
      ["{ layer: face, sheet: opal }"],
      "a: { part: push-button-16, at: centre }",
    );
    expect(behindFace.part.hold.seat).toBe("front");
    const proud = (one: PlacedComponent): number => one.depth.protrusion?.nominal ?? Number.NaN;
    expect(proud(onFace) - proud(behindFace)).toBeCloseTo(2.9, 9);
    expect(onFace.seat).toBe(0);
    expect(behindFace.seat).toBeCloseTo(-2.9, 9);
  });
});

describe("two layers clamped together", () => {
  test("both are gripped, the paint of each with it", () => {
    const pair = component(
      [
        "{ layer: face, sheet: opal, finish: painted }",
        "{ layer: backing, sheet: black, finish: painted }",
      ],
      "a: { part: led-5-bezel, clamps: [face, backing], at: centre }",
    );
    // Opal is painted in front only, so that light leaves its rear; black on both faces.
    expect(pair.depth.gripped.nominal).toBeCloseTo(2.9 + 0.08 + 3.1 + 2 * 0.08, 9);
  });
});
