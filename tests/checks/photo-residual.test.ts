// What is said of a photograph's marks that disagree, by how many there are. Ten pixels are a millimetre, the panel's lower
// left corner is seen at 100, 900: where a mark should lie follows from its place on the panel.

import { expect, test } from "vitest";
import { checked, ofCode } from "./panel.ts";

const PANEL = `mount: corner-screws
width: 120 mm
height: 80 mm
stack:
  - { layer: face, sheet: plate }
`;

type Mark = readonly [x: number, y: number, right?: number, up?: number];

/** Each with what it was set beside its spot, mm. */
const found = (...marks: readonly Mark[]) => {
  const points = marks.map(
    ([x, y, right = 0, up = 0]) =>
      `{ in-picture: [${100 + 10 * (x + right)}, ${900 - 10 * (y + up)}], on-panel: [${x} mm, ${y} mm] }`,
  );
  const of = checked(`photo: { file: old.png, points: [${points.join(", ")}] }\n`, PANEL);
  const [first] = ofCode(of, "checks/photo-residual");
  return first === undefined
    ? null
    : { ...first, at: of.texts.get("panel.yaml")?.slice(first.span.start, first.span.end) };
};

const WRONG: Mark = [120, 0, 2, 0];
const [A, C, D]: readonly [Mark, Mark, Mark] = [
  [0, 0],
  [120, 80],
  [0, 80],
];
const [E, F]: readonly [Mark, Mark] = [
  [60, 52],
  [40, 20],
];

const REST: readonly Mark[] = [
  [60, 0],
  [120, 40],
  [60, 80],
  [0, 40],
];

test("of eight the wrong one is named, with the spot where it belongs", () => {
  const one = found(A, WRONG, C, D, ...REST);
  expect(one?.message).toContain("point 2 is 2 mm off where the others put it, more than 0.5 mm");
  expect(one?.message).toContain("They put it at [1300, 900] in the picture.");
  expect(one?.measured).toEqual({ value: 2, unit: "mm" });
  expect(one?.limit).toEqual({ value: 0.5, unit: "mm" });
  expect(one?.at).toBe("[1320, 900]");
  // Set there it is gone.
  expect(found(A, [120, 0], C, D, ...REST)).toBeNull();
});

test("of six one within the others is named; of two corners that explain it alike neither is", () => {
  expect(found(A, [120, 0], C, D, [60, 52, 2, 0], F)?.message).toContain("point 5 is 2 mm off");
  expect(found(A, WRONG, C, D, E, F)?.message).toContain("One of point 2, point 4 is wrong");
});

test("of five none is named", () => {
  const one = found(A, WRONG, C, D, E);
  expect(one?.message).toMatch(/its 5 marks disagree by .* Five do not tell which is wrong/);
});

test("where a mark of five in the middle shows only a part of a corner's error, they still disagree", () => {
  expect(found(A, WRONG, C, D, [60, 40])?.message).toMatch(/its 5 marks disagree by 0\.6\d? mm/);
});

test("two wrong ones of eight are none that could be named", () => {
  const one = found(A, WRONG, C, [0, 80, 0, 2], [60, 0], [120, 40], [60, 80], [0, 40]);
  expect(one?.message).toMatch(/No single one of them is to blame/);
});

test("four are not judged: they always fit", () => {
  expect(found(A, WRONG, C, D)).toBeNull();
});

test("a mark far outside the panel is told with its distance and what is taken, and nothing else of it", () => {
  const points = [
    [0, 0],
    [120, 0],
    [120, 80],
    [0, 80],
    [60, 400],
  ].map(
    ([x, y]) =>
      `{ in-picture: [${100 + 10 * x!}, ${900 - Math.min(y!, 90) * 10}], on-panel: [${x} mm, ${y} mm] }`,
  );
  const of = checked(`photo: { file: old.png, points: [${points.join(", ")}] }\n`, PANEL);
  const photo = of.findings.filter(({ code }) => code.startsWith("checks/photo"));
  // 400 mm up, on a panel 80 mm high and 120 mm long.
  expect(photo.map(({ code, message }) => `${code} ${message}`)).toEqual([
    "checks/photo-mark-far old.png: point 5 lies 320 mm outside the panel by its figures; a mark up to 120 mm from it is taken for one beside it. Measure its place again from the panel's lower left corner.",
  ]);
});

test("beside a mark far outside the panel the others are held against each other", () => {
  // It lies where it is said to, 180 mm to the right of the panel.
  const far: Mark = [300, 40];
  expect(found(A, [120, 0], far, C, D, ...REST)).toBeNull();
  const one = found(A, far, WRONG, C, D, ...REST);
  expect(one?.message).toContain("point 3 is 2 mm off where the others put it, more than 0.5 mm");
  expect(one?.message).toMatch(/ Point 2, far outside the panel, is not among them\.$/);
  expect(one?.at).toBe("[1320, 900]");
  expect(found(A, far, WRONG, C, D, E, F)?.message).toContain("One of point 3, point 5 is wrong");
  // Four are left, which always fit.
  expect(found(A, WRONG, C, D, far)).toBeNull();
});

test("marks beside the panel, as far as it is long, and a sheet that overhangs it are sound; a sheet far away is not", () => {
  expect(found([0, 0], [120, 0], [120, 80], [0, 80], [60, 200])).toBeNull();
  const sheet = (at: string): readonly string[] =>
    ofCode(
      checked(
        `photo: { file: old.png, sheet: { size: a3, corners: [[90, 800], [700, 810], [690, 90], [100, 80]], at: ${at} } }\n`,
        PANEL,
      ),
      "checks/photo-mark-far",
    ).map(({ message }) => message);
  // 297 by 420 mm: its corners lie more than 120 mm outside, and the panel lies under it.
  expect(sheet("[-100 mm, -200 mm]")).toEqual([]);
  expect(sheet("[300 mm, 0]")).toEqual([
    expect.stringContaining("old.png: the sheet lies 180 mm outside the panel"),
  ]);
});
