// Key `photo` of a panel: read, refused with what is wrong, and what its marks say of the panel's plane.

import { describe, expect, test } from "vitest";
import { binariesOf } from "../../src/design/includes.ts";
import {
  markPairs,
  type PhotoAccuracy,
  photoPlane,
  sheetCorners,
} from "../../src/design/photo-plane.ts";
import { mapped } from "../../src/geometry/homography.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { codesOf, FILE, panelText, readPanel } from "./reading.ts";

const point = (x: number, y: number, right: string, up: string): string =>
  `{ in-picture: [${x}, ${y}], on-panel: [${right}, ${up}] }`;

const withinOf = (accuracy: PhotoAccuracy): number =>
  accuracy.kind === "unknown" ? Number.NaN : accuracy.within;

/** Ten pixels a millimetre, 100 pixels from the left and 900 from the top. */
const CORNERS = [
  point(100, 900, "0 mm", "0 mm"),
  point(1100, 900, "100 mm", "0 mm"),
  point(1100, 100, "100 mm", "80 mm"),
  point(100, 100, "0 mm", "80 mm"),
];

const ofPoints = (points: readonly string[], file = "old.jpg"): string =>
  `photo: { file: ${file}, points: [${points.join(", ")}] }`;

const ofSheet = (more = ""): string =>
  `photo: { file: old.jpg, sheet: { size: a4, corners: [[100, 3070], [2200, 3070], [2200, 100], [100, 100]], at: [20 mm, -40 mm]${more} } }`;

describe("reading", () => {
  test("four points, in any unit", () => {
    const inches = CORNERS.with(1, point(1100, 900, "3.937007874 in", "0"));
    const { panel, findings } = readPanel(ofPoints(inches));
    expect(findings).toEqual([]);
    expect(panel?.photo?.file).toBe("old.jpg");
    const pairs = panel?.photo === null || panel === null ? [] : markPairs(panel.photo.marks);
    expect(pairs[1]?.from).toEqual({ x: 1100, y: 900 });
    expect(pairs[1]?.to.x).toBeCloseTo(100, 6);
  });

  test.each([
    ["three points", ofPoints(CORNERS.slice(1)), ["wrong-count"]],
    ["neither points nor a sheet", "photo: { file: old.jpg }", ["one-of-keys"]],
    ["a path out of the design", ofPoints(CORNERS, "../../../secret.jpg"), ["path-refused"]],
    [
      "a spot of three numbers",
      ofPoints(CORNERS.with(0, CORNERS[0]!.replace("900", "900, 1"))),
      ["wrong-count"],
    ],
    [
      "a spot left of the picture",
      ofPoints(CORNERS.with(0, point(-1, 900, "0", "0"))),
      ["out-of-range"],
    ],
    ["paper of no known size", ofSheet().replace("a4", "a9"), ["unknown-word"]],
  ])("%s", (_what, text, codes) => {
    const { panel, findings } = readPanel(text);
    expect(codesOf(findings)).toEqual(codes);
    // The rest of the panel stands.
    expect(panel?.photo).toBeNull();
    expect(panel?.stack).toHaveLength(1);
  });
});

describe("marks and file", () => {
  test.each([
    [
      "in a line",
      CORNERS.with(2, point(600, 900, "100 mm", "80 mm")),
      /point 1, point 2 and point 3 lie in a line in the picture/,
    ],
    [
      "at one place",
      CORNERS.with(1, point(100, 900, "100 mm", "0 mm")),
      /point 1 and point 2 lie at one place in the picture/,
    ],
    [
      "two exchanged",
      [
        CORNERS[0]!,
        CORNERS[2]!.replace("[100 mm, 80 mm]", "[100 mm, 0 mm]"),
        CORNERS[1]!.replace("[100 mm, 0 mm]", "[100 mm, 80 mm]"),
        CORNERS[3]!,
      ],
      /exchanged/,
    ],
    [
      "upside down",
      [
        point(100, 100, "0", "0"),
        point(1100, 100, "100", "0"),
        point(1100, 900, "100", "80"),
        point(100, 900, "0", "80"),
      ],
      /the other way than in the picture/,
    ],
  ])("marks %s are told and kept, so that the page can mend them", (_what, points, words) => {
    const { panel, findings } = readPanel(ofPoints(points));
    expect(codesOf(findings)).toEqual(["photo-marks"]);
    expect(findings[0]?.message).toMatch(words);
    expect(panel?.photo).not.toBeNull();
  });

  test("the file is one that the design names, as the shapes of obstacles are", () => {
    expect(binariesOf(FILE, panelText(ofPoints(CORNERS)))).toEqual(["panels/old.jpg"]);
    expect(binariesOf(FILE, panelText(ofPoints(CORNERS, "../../x.jpg")))).toEqual([]);
    expect(binariesOf(FILE, panelText("photo: old.jpg"))).toEqual([]);
  });
});

describe("the plane", () => {
  const planeOf = (text: string) => {
    const { panel } = readPanel(text);
    const photo = panel?.photo ?? null;
    const plane = photo === null ? null : photoPlane(photo.marks);
    if (plane?.kind !== "plane") throw new Error("it says no plane");
    return plane;
  };

  test("of a picture taken straight on", () => {
    const plane = planeOf(ofPoints(CORNERS));
    const middle = mapped(plane.map, { x: 600, y: 500 });
    expect(middle?.x).toBeCloseTo(50, 9);
    expect(middle?.y).toBeCloseTo(40, 9);
    // Four always fit: what is said of them is a pixel, a tenth of a millimetre, to read a place and the two assumed of a mark.
    expect(plane.check).toEqual({ kind: "unchecked" });
    expect(plane.pixel).toBeCloseTo(0.1, 9);
    expect(plane.accuracy).toMatchObject({ kind: "assumed", untold: [0, 1, 2, 3] });
    expect(withinOf(plane.accuracy)).toBeCloseTo(0.3, 9);
  });

  // ISO 216: A4 is 210 by 297 mm. Ten pixels a millimetre; the lower left corner lay at 20, -40.
  test("of a sheet of A4, as it lay", () => {
    const plane = planeOf(ofSheet());
    const corner = mapped(plane.map, { x: 2200, y: 100 });
    expect(corner?.x).toBeCloseTo(230, 8);
    expect(corner?.y).toBeCloseTo(257, 8);
  });

  test("of a sheet that lay on its side", () => {
    const corners = sheetCorners({ size: "a4", at: { x: 300, y: 5 }, turn: degrees(90) });
    // Turned a quarter to the left its width goes up and its height goes left.
    expect(corners[1]).toEqual({ x: 300, y: 215 });
    expect(corners[3]).toEqual({ x: 3, y: 5 });
    const middle = mapped(planeOf(ofSheet(", turn: 90 deg")).map, { x: 100, y: 3070 });
    expect(middle?.x).toBeCloseTo(20, 8);
    expect(middle?.y).toBeCloseTo(-40, 8);
  });
});
