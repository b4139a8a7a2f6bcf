// The finishing bench itself, on files written by hand: numbers that a builder can check with a pencil.

import { describe, expect, test } from "vitest";
import {
  type BenchGauge,
  type Finishing,
  finishSheet,
  tryFrame,
  tryGauge,
  tryGauges,
  tryThread,
} from "../support/finishing-bench.ts";

/** A sheet of 60 x 40 with lines as given; y is written downward, as SVG has it. */
const sheet = (paths: readonly string[], face = "FRONT"): string => `<?xml version="1.0"?>
<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="40mm" viewBox="0 0 60 40">
<desc>Face up: ${face}.</desc>
${paths.join("\n")}
</svg>
`;

const group = (process: string, ...data: readonly string[]): string =>
  `<g id="${process}">${data.map((d, index) => `<path id="${process}${index}" d="${d}"/>`).join("")}</g>`;

const round = (x: number, y: number, diameter: number): string => {
  const r = diameter / 2;
  const down = 40 - y;
  return `M${x - r} ${down}A${r} ${r} 0 0 0 ${x + r} ${down}A${r} ${r} 0 0 0 ${x - r} ${down}Z`;
};

const bush = (over: Partial<BenchGauge> = {}): BenchGauge => ({
  what: "bush 1/4-40",
  x: 20,
  y: 15,
  go: { kind: "round", diameter: 6.35 },
  noGoSize: 6.9,
  ...over,
});

/** Kerf 0.2 below and 0.26 on top, paint 0.08 on every wall. */
const FINISHING: Finishing = { kerfTop: 0.26, kerfBottom: 0.2, paint: 0.08 };

const drawn = (diameter: number): string => sheet([group("cut-inner", round(20, 15, diameter))]);

describe("a bush of 6.35 in a painted hole", () => {
  test("goes where the hole was drawn for paint and kerf", () => {
    // Finished 6.45: + 2 x 0.08 paint = 6.61 cut, - 0.2 kerf = 6.41 drawn.
    const result = tryGauge(finishSheet(drawn(6.41), FINISHING), bush());
    expect(result.goes).toBe(true);
    expect(result.why).toBe("goes with 0.050 to spare");
  });

  test("binds where the hole was drawn for its finished size: paint was forgotten", () => {
    // 6.45 - 0.2 = 6.25 drawn: cut 6.45, painted 6.29.
    const result = tryGauge(finishSheet(drawn(6.25), FINISHING), bush());
    expect(result).toMatchObject({ goes: false, why: "binds by 0.030" });
  });

  test("binds where the kerf is 0.1 less than was thought", () => {
    const narrow = { kerfTop: 0.16, kerfBottom: 0.1, paint: 0.08 };
    expect(tryGauge(finishSheet(drawn(6.3), narrow), bush()).goes).toBe(false);
    expect(tryGauge(finishSheet(drawn(6.3), { ...narrow, paint: 0 }), bush()).goes).toBe(true);
  });

  test("is judged at the narrow end of a tapered hole, the no-go at the wide end", () => {
    const tapered = { kerfTop: 0.5, kerfBottom: 0.1, paint: 0 };
    // 6.3 drawn: 6.4 below, 6.8 on top.
    expect(tryGauge(finishSheet(drawn(6.3), tapered), bush()).goes).toBe(true);
    expect(tryGauge(finishSheet(drawn(6.2), tapered), bush())).toMatchObject({
      why: "binds by 0.025",
    });
    expect(tryGauge(finishSheet(drawn(6.42), tapered), bush())).toMatchObject({
      goes: false,
      why: "no-go enters by 0.010",
    });
  });

  test("binds where its hole is out of place, unless it may be pushed aside", () => {
    const sound = finishSheet(drawn(6.41), FINISHING);
    expect(tryGauge(sound, bush({ x: 20.06 })).goes).toBe(false);
    expect(tryGauge(sound, bush({ x: 20.06, float: 0.06 })).goes).toBe(true);
    expect(tryGauge(sound, bush({ x: 40 }))).toMatchObject({
      goes: false,
      why: "there is no opening",
    });
  });
});

describe("a D bush, 12 over a flat at 5", () => {
  /** Radius r, flat f above the axis at (20, 15). */
  const flatHole = (r: number, f: number): string => {
    const half = Math.sqrt(r * r - f * f);
    const [left, right, down] = [20 - half, 20 + half, 25 - f];
    return sheet([
      group("cut-inner", `M${right} ${down}L${left} ${down}A${r} ${r} 0 1 0 ${right} ${down}Z`),
    ]);
  };
  const gauge = bush({ go: { kind: "flat", diameter: 12, flat: 5, clock: 0 }, noGoSize: null });
  const bare: Finishing = { kerfTop: 0.2, kerfBottom: 0.2, paint: 0 };

  test("goes with its flat up, and does not turned", () => {
    const sound = finishSheet(flatHole(6, 5), bare);
    expect(tryGauge(sound, gauge)).toMatchObject({ goes: true, why: "goes with 0.100 to spare" });
    const turned = bush({ go: { kind: "flat", diameter: 12, flat: 5, clock: 90 }, noGoSize: null });
    expect(tryGauge(sound, turned).goes).toBe(false);
  });

  test("binds on a flat that is too near", () => {
    expect(tryGauge(finishSheet(flatHole(6.2, 4.8), bare), gauge)).toMatchObject({
      goes: false,
      why: "binds by 0.100",
    });
  });
});

describe("a tab in a slot", () => {
  const slot = sheet([group("cut-inner", "M10 20L30 20L30 23L10 23Z")]);
  const tab = (height: number): BenchGauge => ({
    what: "tab",
    x: 20,
    y: 18.5,
    go: { kind: "rectangle", width: 20, height },
    noGoSize: null,
  });

  test("goes up to the slot's finished width; a thicker sheet does not", () => {
    const finished = finishSheet(slot, { kerfTop: 0.2, kerfBottom: 0.1, paint: 0 });
    expect(tryGauge(finished, tab(3.1)).goes).toBe(true);
    expect(tryGauge(finished, tab(3.7))).toMatchObject({ goes: false, why: "binds by 0.300" });
  });
});

describe("a sheet", () => {
  const plate = (face: string): string =>
    sheet(
      [
        group("engrave", "M1 1L2 1L2 2Z"),
        group("drill", round(45, 15, 2.5)),
        group("cut-inner", round(20, 15, 6.41)),
        group("cut-outer", "M5 5L55 5L55 35L5 35Z", round(3, 3, 2)),
      ],
      face,
    );

  test("that was cut face down is turned over before it is tried", () => {
    expect(tryGauge(finishSheet(plate("FRONT"), FINISHING), bush()).goes).toBe(true);
    const turned = finishSheet(plate("REAR"), FINISHING);
    expect(tryGauge(turned, bush()).goes).toBe(false);
    expect(tryGauge(turned, bush({ x: 40 })).goes).toBe(true);
  });

  test("lies where its corner is put", () => {
    const moved = finishSheet(plate("FRONT"), { ...FINISHING, corner: { x: -10, y: -10 } });
    expect(tryGauge(moved, bush({ x: 10, y: 5 })).goes).toBe(true);
  });

  test("keeps its drilled holes straight, less paint", () => {
    const pin = (diameter: number): BenchGauge =>
      bush({ x: 45, go: { kind: "round", diameter }, noGoSize: null });
    const results = tryGauges(finishSheet(plate("FRONT"), FINISHING), [pin(2.34), pin(2.35)]);
    expect(results.map(({ goes }) => goes)).toEqual([true, false]);
  });

  test("goes between its neighbours at its largest: least kerf, paint on both edges", () => {
    // 50 drawn - 0.2 + 0.16 = 49.96; 30 drawn gives 29.96.
    const finished = finishSheet(plate("FRONT"), FINISHING);
    expect(finished.outline?.width).toBeCloseTo(49.96, 9);
    expect(tryFrame(finished, { width: 50, height: 30 }).goes).toBe(true);
    expect(tryFrame(finished, { width: 49.9, height: 30 })).toMatchObject({
      goes: false,
      why: "too large by 0.060",
    });
  });
});

describe("a thread through the stack", () => {
  const stack = { threadLength: 8.9, nut: 2, washers: [0.5] };

  test("holds its nut behind two nominal sheets of 3", () => {
    const paints = [0.08, 0.08];
    expect(tryThread({ ...stack, sheetThicknesses: [3, 3], paints })).toEqual({
      goes: true,
      why: "2.240 of thread left",
    });
  });

  test("does not at the thick end, where one of them is 3.7", () => {
    expect(tryThread({ ...stack, sheetThicknesses: [3, 3.7], paints: [0.08, 0.08] })).toEqual({
      goes: false,
      why: "1.540 of thread left for a nut of 2",
    });
  });
});

test("a file that is damaged is refused, not guessed at", () => {
  expect(() => finishSheet(drawn(6.4).replace("</g>", ""), FINISHING)).toThrow();
  expect(() => finishSheet(drawn(6.4).replace("A3.2", "C3.2"), FINISHING)).toThrow();
});
