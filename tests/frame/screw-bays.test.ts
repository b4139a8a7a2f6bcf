// Bays whose mount has no rails of its own: panels held by screws near their corners, racks, and subracks. Their rails are made
// with holes where the panels' own holes come, and such a frame goes together as any other.

import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import { pointIn, pointOut } from "../../src/geometry/space/frame.ts";
import { type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleLayout } from "../../src/layout/console/console-layout.ts";
import type { ConsoleFrame, FramePart } from "../../src/parts/frame/frame-part.ts";
import { compile, fitOfProject, type Project } from "../../src/project.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";
import { PLY_SHED } from "./ply-shed.ts";
import { blockedSteps, clashes, inRoomOf, looseSlots, piecesOf, standing } from "./put-together.ts";

const kernel = await openKernel();

interface Sized {
  readonly mount: string;
  /** Its keys of size. */
  readonly size: string;
}

const panelText = (name: string, { mount, size }: Sized): string =>
  `consolewright: 1\nkind: panel\nname: ${name}\nworkshop: shed.yaml\nmount: ${mount}\n${size}\nstack: [{ layer: face, sheet: plate }]\ncomponents:\n  lamp: { part: led-5, at: centre }\n`;

interface Said {
  readonly bay: string;
  readonly frame?: string;
  readonly panels: Readonly<Record<string, Sized>>;
}

const projectOf = ({
  bay,
  frame = "{ type: side-console, sheet: ply }",
  panels,
}: Said): Project => {
  const names = Object.keys(panels);
  const text = `consolewright: 1\nkind: console\nname: stand\nworkshop: shed.yaml\nbays:\n  ${bay}\nframe: ${frame}\npanels:\n${names.map((name) => `  - { file: ${name}.yaml, as: ${name}, bay: desk }\n`).join("")}`;
  const files = new Map([
    ["console.yaml", text],
    ["shed.yaml", PLY_SHED],
    ...names.map((name) => [`${name}.yaml`, panelText(name, panels[name]!)] as const),
  ]);
  return compile({ entry: "console.yaml", files, binaries: new Map() }, testLibrary());
};

interface Made {
  readonly frame: ConsoleFrame;
  readonly layout: ConsoleLayout;
  /** With those of the fit. */
  readonly findings: readonly Finding[];
}

const madeOf = (said: Said): Made => {
  const project = projectOf(said);
  const { console } = project;
  if (console === null || console.frame === null)
    throw new Error(project.findings.map(({ message }) => message).join("\n"));
  const { frame, layout } = console;
  const fitted = fitOfProject(project, console, kernel).findings;
  return { frame, layout, findings: [...project.findings, ...fitted] };
};

const CORNERS: Said = {
  bay: "desk: { mount: corner-screws, at: [0, -400, 700], along: [1, 0, 0], cant: 6 deg, length: 400 mm, depth: 120 mm }",
  panels: {
    wide: { mount: "corner-screws", size: "width: 180 mm\nheight: 120 mm" },
    narrow: { mount: "corner-screws", size: "width: 140 mm\nheight: 90 mm" },
  },
};

const LIDS: Said = {
  bay: "desk: { mount: box-lid, at: [0, -400, 700], along: [1, 0, 0], slope: 20 deg, length: 300 mm, depth: 120 mm }",
  panels: { lid: { mount: "box-lid", size: "width: 160 mm\nheight: 110 mm" } },
};

const RACK: Said = {
  bay: "desk: { mount: rack-19, at: [300, 0, 400], along: [0, 0, 1], length: 8 U, depth: 250 mm }",
  panels: {
    one: { mount: "rack-19", size: "height: 1 U" },
    three: { mount: "rack-19", size: "height: 3 U" },
  },
};

const SUBRACK: Said = {
  bay: "desk: { mount: subrack-3u, at: [0, -400, 700], along: [1, 0, 0], length: 60 HP, depth: 180 mm }",
  panels: {
    left: { mount: "subrack-3u", size: "width: 20 HP\nheight: 128.5 mm" },
    right: { mount: "subrack-3u", size: "width: 28 HP\nheight: 128.5 mm" },
  },
};

const trouble = ({ frame, layout }: Made): readonly string[] =>
  withKept((keep) => {
    const bench = { kernel, keep };
    const all = standing(piecesOf(frame), bench);
    return [
      ...clashes(all, bench),
      ...looseSlots(frame, all, bench),
      ...blockedSteps(frame, all, bench),
      ...layout.bays.flatMap((bay) => inRoomOf(bay, all, bench)),
    ];
  });

const railHoles = ({ frame, layout }: Made): readonly Vector[] =>
  frame.parts
    .filter(({ role }) => role === "rail-bar")
    .flatMap((part) => holesOf(part).map((at) => pointIn(layout.bays[0]!.frame, at)));

const holesOf = ({ frame, holes }: FramePart): readonly Vector[] =>
  holes.flatMap(({ feature, contour }) =>
    feature.startsWith("rail-hole.") && contour.kind === "circle"
      ? [pointOut(frame, vector(contour.centre.x, contour.centre.y, 0))]
      : [],
  );

describe.each<readonly [string, Said]>([
  ["corner screws", CORNERS],
  ["lids of boxes", LIDS],
  ["a rack", RACK],
  ["a subrack", SUBRACK],
  [
    "corner screws, half-lapped",
    { ...CORNERS, frame: "{ type: side-console, sheet: ply, joints: half-lap }" },
  ],
  [
    "corner screws in measured walls",
    { ...CORNERS, bay: CORNERS.bay.replace(" }", ", clear-width: 184 mm }") },
  ],
])("a frame for %s", (_, said) => {
  const made = madeOf(said);

  test("goes together", () => expect(trouble(made)).toEqual([]));

  test("is fitted without a fault", () => {
    expect(
      made.findings.filter(({ severity }) => severity === "fault").map(({ message }) => message),
    ).toEqual([]);
  });

  test("has a hole under each of its panels' holes", () => {
    const rails = railHoles(made);
    const wanted = made.layout.panels.flatMap(({ frame, layout }) =>
      layout.mountHoles.map(({ at }) =>
        pointIn(made.layout.bays[0]!.frame, pointOut(frame, vector(at.x, at.y, 0))),
      ),
    );
    expect(wanted.length).toBeGreaterThan(3);
    for (const { x, y } of wanted)
      expect(Math.min(...rails.map((hole) => Math.hypot(hole.x - x, hole.y - y)))).toBeLessThan(
        1e-6,
      );
  });
});

const sideOf = ({ frame }: Made, id: string): FramePart => {
  const found = frame.parts.find((part) => part.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
};

/** From the bay's middle: the inner edge of its right rail, and its holes. */
const rightRail = (
  made: Made,
): { readonly edge: number; readonly holes: readonly (readonly [number, number])[] } => {
  const part = sideOf(made, "rail-desk-right");
  const bay = made.layout.bays[0]!.frame;
  return {
    edge: pointIn(bay, part.frame.origin).x,
    holes: holesOf(part).map((at) => {
      const { x, y } = pointIn(bay, at);
      return [Number(x.toFixed(4)), Number(y.toFixed(4))] as const;
    }),
  };
};

// 7 mm from each edge; the narrow one's stand in the middle of what it covers: 70 - 2 x 7 = 56.
test("rails lie under the narrowest panel's screws, and have each panel's holes", () => {
  const { edge, holes } = rightRail(madeOf(CORNERS));
  expect(edge).toBeCloseTo(56, 6);
  expect(holes).toEqual([
    [83, 7],
    [83, 113],
    [63, 127],
    [63, 203],
  ]);
});

// IEC 60297-3-100, EIA/ECA-310: 450 open, 465.1 between columns, three holes a unit.
test("a rack's rails have the standard's opening and steps", () => {
  const { edge, holes } = rightRail(madeOf(RACK));
  expect(edge).toBeCloseTo(225, 6);
  expect(holes).toHaveLength(24);
  expect(holes.slice(0, 4)).toEqual([
    [232.55, 6.35],
    [232.55, 22.225],
    [232.55, 38.1],
    [232.55, 50.8],
  ]);
});

const saidOf = (said: Said): readonly string[] =>
  projectOf(said).findings.map(({ code, message }) => `${code}: ${message}`);

test("a rack measured wider than its screws stand is told what clear width does", () => {
  const wide = (clear: string): Said => ({
    ...RACK,
    bay: RACK.bay.replace(" }", `, clear-width: ${clear} mm }`),
  });
  const found = saidOf(wide("470")).find((line) => line.startsWith("checks/frame")) ?? "";
  expect(found).toContain("checks/frame-rail-hole: The rails of desk are to be 470 mm apart");
  const [, works = ""] = /clear-width: ([\d.]+) mm/.exec(found) ?? [];
  expect(saidOf(wide(works)).filter((line) => line.startsWith("checks/frame-rail-hole"))).toEqual(
    [],
  );
});

test("a bay of screws without a panel or a width is told to say one", () => {
  expect(saidOf({ ...CORNERS, panels: {} }).find((line) => line.startsWith("parts/"))).toMatch(
    /^parts\/frame-bay: Nothing says how wide desk is .* write it as clear-width/,
  );
});

// Screws stand 7 mm from each edge, 9 - 7 = 2 from the middle of 18 mm, and rails reach as far in from them as out: with 5 mm from
// there to the middle, so that ribs have room for a tool's reliefs. 7 + 5 are 12, 10 more on each side.
test("screws so near that the rails below them would meet are told of, with both numbers", () => {
  const narrow = (width: number): Said => ({
    ...CORNERS,
    panels: { slip: { mount: "corner-screws", size: `width: ${width} mm\nheight: 90 mm` } },
  });
  const found = saidOf(narrow(18)).filter((line) => line.startsWith("parts/"));
  expect(found).toEqual([
    "parts/frame-bay: The screws of the narrowest panel on desk stand 2 mm from its middle, and rails under them with room between take 12 mm. One 20 mm wider leaves it.",
  ]);
  const isCarried = (width: number): boolean =>
    saidOf(narrow(width)).every((line) => !line.startsWith("parts/"));
  expect([isCarried(37.9), isCarried(38)]).toEqual([false, true]);
});

test("rails that are measured nearer than ribs between them can be are told of with a width that does", () => {
  const near = (clear: number): readonly string[] =>
    saidOf({
      bay: `desk: { mount: console-rail, at: [0, -400, 700], along: [1, 0, 0], length: 20 modules, depth: 120 mm, clear-width: ${clear} mm }`,
      panels: {},
    }).filter((line) => line.startsWith("parts/"));
  expect(near(5)).toEqual([
    "parts/frame-bay: The rails of desk are to be 5 mm apart, and the ribs' edges between them take 10 mm. clear-width: 10 mm does.",
  ]);
  expect(near(10)).toEqual([]);
});

// Farther than that no text can say.
test.each([90, -90])(
  "a bay canted by %s degrees is told that it looks along its cheeks",
  (cant) => {
    const over = { ...CORNERS, bay: CORNERS.bay.replace("cant: 6", `cant: ${cant}`) };
    expect(saidOf(over).filter((line) => line.startsWith("parts/"))).toEqual([
      "parts/frame-bay: The panels of desk look down, or along its own cheeks.",
    ]);
  },
);

test("panels that can't be read are not told of again as a missing width", () => {
  const lost = { ...CORNERS, panels: { wide: { mount: "corner-screws", size: "width: 180 mm" } } };
  expect(saidOf(lost).filter((line) => line.startsWith("parts/"))).toEqual([]);
});
