// What a photograph's marks say of each other, on a panel of 120 by 80 mm seen straight on at ten pixels a millimetre. The
// true map is known, so that how far a place is off is looked up, not believed.

import { describe, expect, test } from "vitest";
import type { PhotoMarks } from "../../src/design/photo-design.ts";
import { type PhotoPlane, photoPlane } from "../../src/design/photo-plane.ts";
import { mapped } from "../../src/geometry/homography.ts";

type Place = readonly [number, number];
type Plane = Extract<PhotoPlane, { readonly kind: "plane" }>;

const CORNERS: readonly Place[] = [
  [0, 0],
  [120, 0],
  [120, 80],
  [0, 80],
];
const MIDDLE: Place = [60, 40];
const BESIDE: Place = [60, 52];
const SIX: readonly Place[] = [...CORNERS, BESIDE, [40, 20]];
const EIGHT: readonly Place[] = [...CORNERS, [60, 0], [120, 40], [60, 80], [0, 40]];

/** Marks of places, of which one was set beside its spot. */
const marksOf = (places: readonly Place[], wrong: number, by: Place = [0, 0]): PhotoMarks => ({
  kind: "points",
  points: places.map(([x, y], index) => {
    const [right, up] = index === wrong ? by : [0, 0];
    return {
      inPicture: { x: 100 + 10 * (x + right), y: 900 - 10 * (y + up) },
      onPanel: { x, y },
      written: { file: "panel.yaml", span: { file: "panel.yaml", start: 0, end: 0 }, keys: {} },
    };
  }),
});

const planeOf = (marks: PhotoMarks): Plane => {
  const plane = photoPlane(marks);
  if (plane.kind !== "plane") throw new Error(plane.trouble.kind);
  return plane;
};

/** How far the place of the panel that is farthest off is put from where it is, mm. */
const worstPlace = ({ map }: Plane): number => {
  let worst = 0;
  for (let x = 0; x <= 120; x += 10)
    for (let y = 0; y <= 80; y += 10) {
      const put = mapped(map, { x: 100 + 10 * x, y: 900 - 10 * y });
      worst = Math.max(worst, put === null ? 1e9 : Math.hypot(put.x - x, put.y - y));
    }
  return worst;
};

/** Two millimetres to eight sides. */
const SIDES: readonly Place[] = [0, 1, 2, 3, 4, 5, 6, 7].map((each) => [
  2 * Math.cos((each * Math.PI) / 4),
  2 * Math.sin((each * Math.PI) / 4),
]);

describe.each([
  ["five, one beside the middle", [...CORNERS, BESIDE]],
  ["five, one far from the middle", [...CORNERS, [30, 40] as const]],
  ["six", SIX],
  ["eight", EIGHT],
])("%s", (_what, places) => {
  test.each(places.map((_, index) => index))(
    "point %i wrong by 2 mm to any side: no place is off by more than is said",
    (wrong) => {
      for (const by of SIDES) {
        const plane = planeOf(marksOf(places, wrong, by));
        const { accuracy, check } = plane;
        if (check.kind !== "checked" || accuracy.kind !== "checked") throw new Error("unchecked");
        // The map of the others is the true one: the mark lies from it what it was moved, and the others agree.
        const held = check.marks[wrong];
        if (held?.kind !== "put") throw new Error("untold");
        expect(held.apart).toBeCloseTo(2, 9);
        expect(held.spot?.x).toBeCloseTo(100 + 10 * places[wrong]![0], 6);
        expect(held.spot?.y).toBeCloseTo(900 - 10 * places[wrong]![1], 6);
        if (places.length > 5) expect(held.rest).toBeLessThan(1e-9);
        else expect(held.rest).toBeNull();
        expect(accuracy.within).toBeGreaterThanOrEqual(2 - 1e-9);
        expect(worstPlace(plane)).toBeLessThan(1.05 * accuracy.within);
      }
    },
  );
});

describe("the fifth in the middle, on a line with two corners each way", () => {
  const five = [...CORNERS, MIDDLE];

  test.each([0, 1, 2, 3])("corner %i wrong by 2 mm across: nothing is promised", (wrong) => {
    const plane = planeOf(marksOf(five, wrong, [2, 0]));
    expect(worstPlace(plane)).toBeGreaterThan(1.8);
    expect(plane.check).toMatchObject({ kind: "checked" });
    // Without a corner the middle and the two next to it lie in a line.
    expect(plane.accuracy).toEqual({ kind: "unknown", untold: [0, 1, 2, 3] });
  });

  test("where all agree, what is said of the corners is an assumption", () => {
    expect(planeOf(marksOf(five, 0)).accuracy).toMatchObject({
      kind: "assumed",
      untold: [0, 1, 2, 3],
    });
  });
});

test("marks that agree are as good as a pixel", () => {
  const { accuracy } = planeOf(marksOf(EIGHT, 0));
  expect(accuracy.kind === "checked" && accuracy.within).toBeCloseTo(0.1, 8);
});
