// Where panels stand in a console, against arithmetic by hand and figures of the rail's standard.

import { describe, expect, test } from "vitest";
import { consoleBodies } from "../../src/fit/bodies/console-bodies.ts";
import { degrees, mm } from "../../src/geometry/quantity.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { pointOut } from "../../src/geometry/space/frame.ts";
import type { SpaceBox } from "../../src/geometry/space/space-box.ts";
import { cross, dot, vector, vectorLength } from "../../src/geometry/space/vector.ts";
import { bayFrame } from "../../src/layout/console/bay-frame.ts";
import type { ConsoleLayout } from "../../src/layout/console/console-layout.ts";
import { compile } from "../../src/project.ts";
import { SEATED_PERSON } from "../../src/standards/reach.ts";
import { testLibrary } from "../support/test-library.ts";

const WORKSHOP = `consolewright: 1
kind: workshop
name: shed
stock: { plate: { material: aluminium, colour: aluminium, nominal: 2 mm, measured: 2 mm, dated: 2026-01-31 } }
`;

const panel = (height: string, more = "mount: console-rail"): string => `consolewright: 1
kind: panel
name: p
workshop: shed.yaml
${more}
height: ${height}
stack: [{ layer: face, sheet: plate }]
components:
  a: { part: led-5, at: { x: centre, y: centre } }
`;

const consoleOf = (
  text: string,
  panels: Readonly<Record<string, string>> = {},
): { readonly layout: ConsoleLayout; readonly codes: readonly string[] } => {
  const head = "consolewright: 1\nkind: console\nname: c\nworkshop: shed.yaml\n";
  const files = new Map([
    ["console.yaml", head + text],
    ["shed.yaml", WORKSHOP],
    ...[4, 6, 10, 1].map((count): [string, string] => [`${count}.yaml`, panel(`${count} modules`)]),
    ...Object.entries(panels),
  ]);
  const project = compile({ entry: "console.yaml", files }, testLibrary());
  const { console } = project;
  if (console === null) throw new Error(project.findings.map(({ message }) => message).join("\n"));
  return { layout: console.layout, codes: project.findings.map(({ code }) => code) };
};

const bay = (length: string, more = ""): string =>
  `bays:\n  aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], length: ${length}, depth: 180 mm${more} }\n`;

const TWO_BAYS = bay("40 modules").concat(
  "  fore: { mount: console-rail, at: [500, -420, 620], along: [1, 0, 0], length: 40 modules, depth: 180 mm }\n",
);

const uses = (...counts: readonly number[]): string =>
  `panels:\n${counts.map((count, index) => `  - { file: ${count}.yaml, as: p${index}, bay: aft }\n`).join("")}`;

// Modules of 9.525 (3/8 in): MIL-F-25173A, secondary copies. 6 + 10 + 4 are 190.5.
describe("panels along a rail", () => {
  test("of 6 + 10 + 4 modules fill 190.5 mm", () => {
    const { layout, codes } = consoleOf(bay("20 modules") + uses(6, 10, 4));
    expect(layout.bays[0]?.length).toBeCloseTo(190.5, 9);
    expect(codes).toEqual([]);
    expect(layout.bays[0]?.free).toEqual([]);
    expect(
      layout.panels.map(({ place }) => (place.kind === "bay" ? [place.module, place.from] : [])),
    ).toEqual([
      [0, 0],
      [6, expect.closeTo(57.15, 9)],
      [16, expect.closeTo(152.4, 9)],
    ]);
  });

  test("of one module more overrun by 9.525 mm", () => {
    const head = "consolewright: 1\nkind: console\nname: c\nworkshop: shed.yaml\n";
    const files = new Map([
      ["console.yaml", head + bay("20 modules") + uses(6, 10, 4, 1)],
      ["shed.yaml", WORKSHOP],
      ...[4, 6, 10, 1].map((count): [string, string] => [
        `${count}.yaml`,
        panel(`${count} modules`),
      ]),
    ]);
    const { findings } = compile({ entry: "console.yaml", files }, testLibrary());
    const [overrun] = findings.filter(({ code }) => code === "fit/bay-overrun");
    expect((overrun?.measured?.value ?? 0) - (overrun?.limit?.value ?? 0)).toBeCloseTo(9.525, 6);
    expect(overrun?.remedies[0]?.title).toBe("length: 21 modules");
  });

  test("stand on whole modules even where one is not whole, and leave the rest free", () => {
    const { layout } = consoleOf(
      bay("200 mm") +
        `panels:\n  - { file: odd.yaml, as: odd, bay: aft }\n  - { file: 6.yaml, as: six, bay: aft, after: odd }\n`,
      {
        "odd.yaml": panel("50 mm"),
      },
    );
    // 50 / 9.525 is 5.25 modules: the next stud stands on the sixth.
    expect(layout.panels.map(({ place }) => (place.kind === "bay" ? place.module : -1))).toEqual([
      0, 6,
    ]);
    expect(layout.bays[0]?.free.map(({ from }) => from)).toEqual([expect.closeTo(114.3, 9)]);
  });

  test("butt where the mount has no pitch", () => {
    const { layout } = consoleOf(
      "bays:\n  lid: { mount: corner-screws, at: [0, 0, 700], along: [1, 0, 0], length: 160 mm, depth: 90 mm }\npanels:\n  - { file: a.yaml, as: a, bay: lid }\n  - { file: a.yaml, as: b, bay: lid }\n",
      { "a.yaml": panel("62.5 mm", "mount: corner-screws\nwidth: 80 mm") },
    );
    expect(layout.panels.map(({ place }) => (place.kind === "bay" ? place.from : -1))).toEqual([
      0, 62.5,
    ]);
  });

  test("are placed by module, by neighbour, or in the order of the text", () => {
    const { layout } = consoleOf(
      bay("40 modules") +
        "panels:\n  - { file: 4.yaml, as: last, bay: aft, after: mid }\n  - { file: 6.yaml, as: mid, bay: aft, module: 20 }\n  - { blanking: 3 modules, bay: aft }\n",
    );
    const modules = Object.fromEntries(
      layout.panels.map(({ name, place }) => [name, place.kind === "bay" ? place.module : -1]),
    );
    expect(modules).toEqual({ mid: 20, last: 26, "blanking-1": 26 });
  });
});

describe("of what could not be read", () => {
  test("nothing more is said to the panel that follows it", () => {
    const { codes } = consoleOf(
      bay("40 modules") +
        "panels:\n  - { file: 4.yaml, as: first, bay: aft, module: -1 }\n  - { file: 6.yaml, as: next, bay: aft, after: first }\n",
    );
    expect(codes).toEqual(["design/out-of-range"]);
  });

  test("nobody takes the place: what follows it in the order of the text has none until it is read", () => {
    const placesOf = (lines: readonly string[]): Readonly<Record<string, number>> => {
      const { layout } = consoleOf(`${TWO_BAYS}panels:\n${lines.join("")}`, {
        "bad.yaml": "consolewright: 1\nkind: panel\nheight: 4 modules\n",
        "rack.yaml": panel("2 U", "mount: rack-19"),
      });
      return Object.fromEntries(
        layout.panels.map(({ name, place }) => [name, place.kind === "bay" ? place.module : -1]),
      );
    };
    const use = (file: string, name: string, more = ""): string =>
      `  - { file: ${file}.yaml, as: ${name}, bay: aft${more} }\n`;
    const [first, second, third] = [use("6", "a"), use("4", "b"), use("4", "c", ", module: 20")];
    const other = "  - { file: 4.yaml, as: d, bay: fore }\n";
    const last = use("4", "e");
    expect(placesOf([first, use("1", "x"), second, third, other, last])).toEqual({
      a: 0,
      x: 6,
      b: 7,
      c: 20,
      d: 0,
      e: 24,
    });
    for (const lost of [
      use("no-such-file", "x"),
      use("bad", "x"),
      use("rack", "x"),
      use("4", "x", ", module: -1"),
      use("4", "x", ", after: nobody"),
      "  - { blanking: 0 modules, bay: aft }\n",
    ])
      expect(placesOf([first, lost, second, third, other, last])).toEqual({
        a: 0,
        c: 20,
        d: 0,
        e: 24,
      });
    // A bay that could not be read may have been either of the two.
    expect(
      placesOf([first, use("4", "x").replace("bay: aft", "bay: []"), second, other, third]),
    ).toEqual({ a: 0, c: 20 });
    // What stands on feet of its own, or has no bay, shifts nobody.
    expect(
      placesOf([first, use("4", "x").replace(", bay: aft", ", loop: much"), second, third]),
    ).toEqual({ a: 0, b: 6, c: 20 });
  });
});

describe("of blanking panels that could not be read or made", () => {
  test("the others keep the numbers that they have in the text, and what follows one is told nothing", () => {
    const { layout, codes } = consoleOf(
      `${bay("40 modules")}panels:\n  - { blanking: 3 modules, bay: aft, module: -1 }\n  - { file: 4.yaml, as: a, bay: aft, after: blanking-1 }\n  - { blanking: 3 modules, bay: aft, sheet: plate, module: 20 }\n  - { file: 4.yaml, as: b, bay: aft, after: blanking-2 }\n`,
    );
    expect(codes).toEqual(["design/out-of-range"]);
    expect(layout.panels.map(({ name }) => name)).toEqual(["blanking-2", "b"]);
    expect(layout.lost).toEqual(["blanking-1", "a"]);
  });

  test("a blanking panel that can't be made leaves its place to nobody", () => {
    const { layout } = consoleOf(
      `${TWO_BAYS}panels:\n  - { blanking: 3 modules, bay: fore }\n  - { blanking: 3 modules, bay: fore, sheet: plate }\n`,
    );
    expect(layout.panels).toEqual([]);
    expect(layout.lost).toEqual(["blanking-1", "blanking-2"]);
  });

  test("nothing more is said to a blanking panel beside it, or in its bay", () => {
    const blanking = "  - { blanking: 3 modules, bay: aft, module: 10 }\n";
    const unread = "panels:\n  - { file: 4.yaml, as: first, bay: aft, module: -1 }\n";
    expect(consoleOf(bay("40 modules") + unread + blanking).codes).toEqual(["design/out-of-range"]);
    const lost = "panels:\n  - { file: 5.yaml, as: first, bay: aft }\n";
    expect(consoleOf(bay("40 modules") + lost + blanking).codes).toEqual(["design/file-missing"]);
    const noBay = bay("-2 modules") + uses(4) + blanking;
    expect(consoleOf(noBay).codes).toEqual(["design/not-a-count"]);
  });
});

describe("the axes of a bay", () => {
  const pose = { at: [mm(10), mm(20), mm(30)] as const, slope: degrees(0), cant: degrees(0) };

  test("of a desk that runs forward: right is right, normal is up", () => {
    const frame = bayFrame({ ...pose, along: [2, 0, 0] });
    expect([frame.x, frame.y, frame.z]).toEqual([
      vector(0, -1, 0),
      vector(1, 0, 0),
      vector(0, 0, 1),
    ]);
  });

  test("of a front that runs up: it looks back at the operator, right is right", () => {
    const frame = bayFrame({ ...pose, along: [0, 0, 1] });
    expect(frame.z).toEqual(vector(-1, 0, 0));
    expect(frame.x).toEqual(vector(0, -1, 0));
  });

  test("slope lowers the beginning and raises the far end, cant lowers the left edge", () => {
    // sin 30 is 1/2 exactly: 100 along rise 50; 100 to the left fall 50.
    const sloped = bayFrame({ ...pose, along: [1, 0, 0], slope: degrees(30) });
    expect(pointOut(sloped, vector(0, 100, 0)).z).toBeCloseTo(80, 9);
    const canted = bayFrame({ ...pose, along: [1, 0, 0], cant: degrees(30) });
    expect(pointOut(canted, vector(-100, 0, 0)).z).toBeCloseTo(-20, 9);
    // A starboard bay leans toward the seat on its left.
    expect(canted.z.y).toBeCloseTo(0.5, 9);
  });

  test("stay at right angles and right-handed however they are turned", () => {
    for (const along of [
      [1, 0, 0],
      [0, 1, 0],
      [0.3, -2, 0.9],
      [0, 0, -1],
    ] as const)
      for (const slope of [-40, 0, 25])
        for (const cant of [-20, 0, 33]) {
          const { x, y, z } = bayFrame({
            ...pose,
            along,
            slope: degrees(slope),
            cant: degrees(cant),
          });
          for (const axis of [x, y, z]) expect(vectorLength(axis)).toBeCloseTo(1, 12);
          expect(dot(x, y)).toBeCloseTo(0, 12);
          expect(
            vectorLength(vector(cross(x, y).x - z.x, cross(x, y).y - z.y, cross(x, y).z - z.z)),
          ).toBeCloseTo(0, 12);
        }
  });
});

test("a panel lies on its rails with the rear of its sheet, in the middle of the bay", () => {
  const { layout } = consoleOf(bay("20 modules") + uses(6));
  const [placed] = layout.panels;
  // 146.05 / 2 (MS25212, secondary copies); the sheet of 2 mm stands in front of the rails.
  expect(placed?.frame.origin.y).toBeCloseTo(-420 + 73.025, 9);
  expect(placed?.frame.origin.z).toBeCloseTo(622, 9);
  expect(placed?.seat).toBeCloseTo(-2, 9);
});

test("a rack panel lies in the middle of its units", () => {
  const { layout, codes } = consoleOf(
    "bays:\n  rack: { mount: rack-19, at: [400, 0, 300], along: [0, 0, 1], length: 6 U, depth: 200 mm }\npanels:\n  - { file: u.yaml, as: u, bay: rack }\n  - { file: u.yaml, as: v, bay: rack }\n",
    { "u.yaml": panel("3 U", "mount: rack-19") },
  );
  expect(codes).toEqual([]);
  // 44.45 n - 0.79: IEC 60297-3-100.
  expect(layout.panels.map(({ place }) => (place.kind === "bay" ? place.from : -1))).toEqual([
    expect.closeTo(0.395, 9),
    expect.closeTo(133.745, 9),
  ]);
});

test("a panel on a stand has its lower edge there", () => {
  const { layout } = consoleOf(
    "panels:\n  - { file: 6.yaml, as: a, stand: { at: [100, -420, 700], along: [1, 0, 0], slope: 30 deg } }\n",
  );
  const [placed] = layout.panels;
  if (placed === undefined) throw new Error("nothing stands");
  const edge = pointOut(placed.frame, vector(146.05 / 2, 0, placed.seat));
  expect([edge.x, edge.y, edge.z]).toEqual([
    expect.closeTo(100, 9),
    expect.closeTo(-420, 9),
    expect.closeTo(700, 9),
  ]);
});

test("the operator has the standard's eyes and shoulders, and an eye that was measured goes over them", () => {
  // NUREG-0700 Rev 3, table 11.4: eye 724 / 862, shoulder 509 / 646 above the seat; reach 677 and 735 / 886 and 942.
  const seat = "operator: { seat-height: 430 mm, at: [-250, 0] }\n";
  const { operator } = consoleOf(seat).layout;
  expect(operator?.eye.small.z).toBe(1154);
  expect(operator?.eye.large.z).toBe(1292);
  expect(operator?.shoulder.small).toEqual({ x: -250, y: 0, z: 939 });
  expect(operator?.shoulder.large.z).toBe(1076);
  expect([operator?.functionalReach, operator?.extendedReach]).toEqual([
    SEATED_PERSON.functionalReach,
    SEATED_PERSON.extendedReach,
  ]);
  const measured = consoleOf(
    "operator: { seat-height: 430 mm, at: [-250, 0], eye: [-60, 0, 1180] }\n",
  );
  expect(measured.layout.operator?.eye.small).toEqual({ x: -60, y: 0, z: 1180 });
});

test("an envelope is its profile from wall to wall, and a rib fills it up to where it ends", () => {
  const { layout, codes } = consoleOf(
    "envelope: { profile: [[0, 0], [0, 600], [900, 700], [900, 0]], across: [-500, -340], ribs: [{ name: rib 1, at: 300, thickness: 12 mm, up-to: 400 }, { name: rib 2, at: 450, thickness: 12 mm }] }\n",
  );
  expect(codes).toEqual([]);
  const { envelope, obstacles } = layout;
  const solids = [
    envelope?.solid,
    ...obstacles.map(({ shape }) => (shape.kind === "recipe" ? shape.solid : undefined)),
  ];
  const volumes = solids.map((solid) =>
    solid?.kind === "layered" ? Math.abs(recipeVolume(solid)) : 0,
  );
  // A trapezium of 600 and 700 by 900, 160 across; a slab of 12 by 400; one of 12 by 650.67 in the middle (450 to 462).
  expect(volumes[0]).toBeCloseTo(650 * 900 * 160, 3);
  expect(volumes[1]).toBeCloseTo(12 * 400 * 160, 3);
  expect(volumes[2]).toBeCloseTo(12 * (600 + (100 * 456) / 900) * 160, 1);
  const frame = envelope?.frame;
  if (frame === undefined) throw new Error("no envelope");
  expect(pointOut(frame, vector(600, 0, 0))).toEqual(vector(0, -500, 600));
});

describe("a bay whose mount leaves the width open", () => {
  const lid = (mount: string, width: number): string =>
    panel("80 mm", `mount: ${mount}\nwidth: ${width} mm`);
  const widthsOf = (mount: string, more: string): readonly number[] => {
    const { layout } = consoleOf(
      `bays:\n  aft: { mount: ${mount}, at: [0, 0, 600], along: [1, 0, 0], length: 200 mm, depth: 60 mm${more} }\npanels:\n  - { file: wide.yaml, as: wide, bay: aft }\n  - { file: narrow.yaml, as: narrow, bay: aft }\n`,
      { "wide.yaml": lid(mount, 120), "narrow.yaml": lid(mount, 100) },
    );
    return layout.bays.flatMap(({ width, clearWidth }) => [width, clearWidth]);
  };

  // Screws 7 mm in, in the middle of the strip under the narrow panel's edge: 100 - 4 x 7.
  test("is as wide as its widest panel, and clear between the screws of its narrowest", () => {
    expect(widthsOf("corner-screws", "")).toEqual([120, 72]);
  });

  test("goes by what was measured: the room that panels go into", () => {
    expect(widthsOf("corner-screws", ", clear-width: 121 mm")).toEqual([121, 72]);
  });

  // The lid lies on 10 mm of wall at each side.
  test("has its walls under the panels' edges where the mount has a seat", () => {
    expect(widthsOf("box-lid", "")).toEqual([120, 80]);
    expect(widthsOf("box-lid", ", clear-width: 101 mm")).toEqual([121, 101]);
  });
});

describe("rails of a console without a frame", () => {
  const railsOf = (text: string, panels: Readonly<Record<string, string>>): readonly SpaceBox[] => {
    const { layout } = consoleOf(text, panels);
    return consoleBodies({ layout, printedParts: new Map(), frame: null }).flatMap(
      ({ role, box }) => (role === "rail" ? [box] : []),
    );
  };

  // The bay lies level at 620.
  test("are as deep as is written, 12 mm where nothing is", () => {
    const low = (more: string): readonly number[] =>
      railsOf(bay("20 modules", more), {}).map(({ minZ }) => 620 - minZ);
    expect(low("")).toEqual([12, 12]);
    expect(low(", rail-depth: 25 mm")).toEqual([25, 25]);
  });

  // A lid of 120 on walls of 10 mm: they stand from 50 to 60 on either side of the middle.
  test("stand under the edges of a lid where nobody measured between them", () => {
    const lids = railsOf(
      "bays:\n  aft: { mount: box-lid, at: [0, 0, 600], along: [1, 0, 0], length: 100 mm, depth: 60 mm }\npanels:\n  - { file: lid.yaml, as: lid, bay: aft }\n",
      { "lid.yaml": panel("80 mm", "mount: box-lid\nwidth: 120 mm") },
    );
    const across = lids.map(({ minY, maxY }) => [minY, maxY]).toSorted((a, b) => a[0]! - b[0]!);
    expect(across).toEqual([
      [-60, -50],
      [50, 60],
    ]);
  });
});
