// Screws of panels on the wooden rails of a console's own frame: long enough for panel, rail, washer and nut, with both in the
// list; and what the frame itself is put together with.

import { expect, test } from "vitest";
import { frameHardware } from "../../src/pack/frame-hardware.ts";
import { utf8Text } from "../../src/pack/utf8.ts";
import { compile, fitOfProject, packOfConsoleProject, packOfProject } from "../../src/project.ts";
import { openKernel } from "../support/kernel.ts";
import { testLibrary } from "../support/test-library.ts";

const panel = (name: string, size: string): string => `consolewright: 1
kind: panel
name: ${name}
${size}
depth: 70 mm
stack: [{ layer: face, sheet: aluminium-2 }]
`;

const FRAME = "frame: { type: side-console, sheet: ply-18, JOINTS doorway: [800, 2000] }";

const desk = (frame: string): ReturnType<typeof compile> =>
  compile(
    {
      entry: "console.yaml",
      files: new Map([
        [
          "console.yaml",
          `consolewright: 1
kind: console
name: desk
workshop: workshop.yaml
bays:
  low: { mount: corner-screws, at: [100, -400, 640], along: [1, 0, 0], length: 240 mm, depth: 120 mm, clear-width: 126 mm }
  rail: { mount: console-rail, at: [960, -400, 640], along: [1, 0, 0], length: 20 modules, depth: 120 mm }
  rack: { mount: rack-19, at: [420, -400, 760], along: [1, 0, 0], slope: 30 deg, length: 3 U, depth: 160 mm }
panels:
  - { file: lamps.yaml, as: lamps, bay: low, module: 0 }
  - { file: audio.yaml, as: audio, bay: rack, module: 0 }
  - { file: mimic.yaml, as: mimic, bay: rail, module: 0 }
${frame}
`,
        ],
        ["lamps.yaml", panel("lamps", "mount: corner-screws\nwidth: 160 mm\nheight: 120 mm")],
        ["audio.yaml", panel("audio", "mount: rack-19\nheight: 3 U")],
        ["mimic.yaml", panel("mimic", "mount: console-rail\nheight: 10 modules")],
        [
          "workshop.yaml",
          `consolewright: 1
kind: workshop
name: shed
stock:
  ply-18: { material: plywood, colour: birch, light: opaque, nominal: 18 mm, measured: 17.4 mm, dated: 2026-11-20 }
  aluminium-2: { material: aluminium, colour: aluminium, light: opaque, nominal: 2 mm, measured: 2 mm, dated: 2026-11-20 }
machines:
  router: { type: router, bed: [1300, 900], tools: [{ diameter: 6 mm }, { diameter: 3.175 mm }, { diameter: 1 mm }] }
use: { face: router, frame: router }
`,
        ],
      ]),
    },
    testLibrary(),
  );

const framed = (joints = ""): ReturnType<typeof compile> => desk(FRAME.replace("JOINTS", joints));

const project = framed();

const mountRows = (of: ReturnType<typeof compile>, name: string): readonly string[] => {
  const found = of.panels.find((each) => each.name === name);
  if (found === undefined) throw new Error(`no panel ${name}`);
  const { files } = packOfProject(of, found, { only: "everything", card: false });
  const list = files.find(({ path }) => path === "parts-list.csv");
  if (list === undefined) throw new Error("no parts list");
  return utf8Text(list.bytes)
    .split("\r\n")
    .filter((line) => line.startsWith("fasteners of the mount"))
    .map((line) => line.replace("fasteners of the mount,", ""));
};

// 2 of panel + 17.4 of rail + 1.6 of washer (ISO 7089) + 5.2 of nut (ISO 4032) + 1 of thread beyond it is 27.2: 30 is the next
// length of ISO 7045. M3: 2 + 17.4 + 0.5 + 2.4 + 1 = 23.3: 25 of ISO 7380-1.
test("a screw goes through its panel, the wooden rail and a nut, and both are in the list", () => {
  expect(project.findings.filter(({ severity }) => severity === "fault")).toEqual([]);
  expect(project.console?.frame).not.toBeNull();
  expect(mountRows(project, "audio")).toEqual([
    expect.stringMatching(/^4,screw-m6-pan,.* 30 mm long"?,/),
    expect.stringMatching(/^4,washer-m6,.*,.*behind the rail/),
    expect.stringMatching(/^4,nut-m6,.*,.*behind the rail/),
  ]);
  expect(mountRows(project, "lamps")).toEqual([
    expect.stringMatching(/^4,screw-m3-button,.* 25 mm long"?,/),
    expect.stringMatching(/^4,washer-m3,/),
    expect.stringMatching(/^4,nut-m3,/),
  ]);
});

test("what stands behind a panel on other rails is not guessed", () => {
  expect(mountRows(desk(""), "audio")).toEqual([
    expect.stringMatching(/^4,screw-m6-pan,.* 12 mm long"?,/),
  ]);
});

// Grip = panel + frame + gap + paint (common practice): 2 of panel and 17.4 of rail are 19.4; the studs of the catalogue grip 9 at
// most (tests write no longer one). On the standard's own rails the panel alone is gripped: 2 mm.
test("a quarter-turn stud grips the wooden rail with its panel", () => {
  const studded = (frame: string): readonly string[] => mountRows(desk(frame), "mimic");
  expect(studded(FRAME.replace("JOINTS", ""))).toEqual([
    expect.stringMatching(
      /stud-console,.*for a grip of 19\.4 mm, through the rail of 17\.4 mm: none in the catalogue/,
    ),
  ]);
  expect(studded("")).toEqual([expect.stringMatching(/stud-console,.*, grip 1\.5 to 3 mm/)]);
});

test("a frame's list counts the screws of its hatch and says what its joints take", async () => {
  const { console } = project;
  if (console?.frame == null) throw new Error("the desk has a frame");
  const holes = console.frame.parts.flatMap((part) => part.holes.map(({ feature }) => feature));
  const screws = holes.filter((feature) => feature.startsWith("hatch-screw."));
  expect(screws).toHaveLength(4);
  const pack = packOfConsoleProject(
    project,
    { console, fit: fitOfProject(project, console, await openKernel()) },
    { only: "everything", card: false, kernel: null },
  );
  const page = pack.files.find(({ path }) => path === "frame-parts.md");
  const text = utf8Text(page?.bytes ?? new Uint8Array());
  expect(text).toContain("## Hardware");
  // 17.4 of cover, and as far into the board behind it as that is thick: 34.8 at most; 30 is the longest of the usual steps.
  expect(text).toMatch(/\| +4 \| wood screw, 4 x 30 mm \| hatch /);
  expect(text).toMatch(/wood glue/);
  expect(text).toMatch(/Screws, washers and nuts of the panels/);
});

test("dowels and screws of butt joints are counted by their joints", () => {
  for (const [joints, what] of [
    ["dowel", "dowel, 8 mm"],
    ["screws", "wood screw, 4 x 45 mm"],
  ] as const) {
    const { console } = framed(`joints: ${joints},`);
    if (console?.frame == null) throw new Error(`the desk has a frame with ${joints}`);
    const count = console.frame.joints.filter(({ kind }) => kind === joints).length;
    expect(count).toBeGreaterThan(10);
    const row = frameHardware(console.frame).find(({ what: each }) => each.startsWith(what));
    expect(row?.count).toBe(count);
    expect(frameHardware(console.frame).some(({ what: each }) => each === "wood glue")).toBe(
      joints === "dowel",
    );
  }
});
