// A frame goes together: its written cut files, read back by a reader of the tests, are put together as solids by the kernel.
// Nothing shares more than 0.01 mm³, every slot has its tab with the stated clearance, and every piece finds its way in.

import { describe, expect, test } from "vitest";
import { withKept } from "../../src/geometry/solid/kernel.ts";
import type { ConsoleFrame } from "../../src/parts/frame/frame-part.ts";
import { openKernel } from "../support/kernel.ts";
import { type FrameText, soundFrame } from "./framed.ts";
import {
  blockedSteps,
  clashes,
  looseSlots,
  piecesOf,
  type ReadPiece,
  standing,
} from "./put-together.ts";

const kernel = await openKernel();

const trouble = (
  frame: ConsoleFrame,
  pieces: readonly ReadPiece[] = piecesOf(frame),
): readonly string[] =>
  withKept((keep) => {
    const bench = { kernel, keep };
    const all = standing(pieces, bench);
    return [
      ...clashes(all, bench),
      ...looseSlots(frame, all, bench),
      ...blockedSteps(frame, all, bench),
    ];
  });

const SIDE = "{ type: side-console, sheet: birch-ply-12 }";

const steep = (cant: number): readonly string[] => [
  `aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], cant: ${cant}, length: 60 modules, depth: 180 mm }`,
  `forward: { mount: console-rail, at: [640, -420, 640], along: [1, 0, 0], slope: 25, cant: ${cant}, length: 40 modules, depth: 150 mm }`,
];

const DESK: Partial<FrameText> = {
  bays: [
    "desk: { mount: console-rail, at: [300, 0, 900], along: [1, 0, 0.1], length: 40 modules, depth: 100 mm }",
    "wall: { mount: console-rail, at: [720, 0, 1000], along: [0, 0, 1], length: 30 modules, depth: 150 mm }",
  ],
  frame: "{ type: front-desk, sheet: birch-ply-12 }",
};

describe.each<readonly [string, Partial<FrameText>]>([
  ["flat and rising bays", {}],
  ["steep bays, far tilted", { bays: steep(20) }],
  ["bays tilted the other way", { bays: steep(-20) }],
  ["a desk with an upright bay", DESK],
  ["half-laps", { frame: "{ type: side-console, sheet: birch-ply-12, joints: half-lap }" }],
  [
    // At 75 degrees the cheek's edge stands 11.6 / cos 75 = 44.8 over a rib: farther than three sheets.
    "half-laps in a bay that is canted by 75 degrees",
    {
      bays: [
        "aft: { mount: console-rail, at: [0, -420, 900], along: [1, 0, 0], cant: 75, length: 24 modules, depth: 80 mm }",
      ],
      frame:
        "{ type: side-console, sheet: birch-ply-12, joints: half-lap, beyond: 0, ribs: { web: 220 mm } }",
    },
  ],
  ["screws", { frame: "{ type: side-console, sheet: birch-ply-12, joints: screws }" }],
  ["dowels", { frame: "{ type: side-console, sheet: birch-ply-12, joints: dowel }" }],
  [
    "no top, no floor, a hatch in front",
    { frame: "{ type: side-console, sheet: birch-ply-12, panels: [front, back], hatch: front }" },
  ],
  ["a wide tool", { tools: "[{ diameter: 6 mm }]" }],
])("%s", (_, said) => {
  const frame = soundFrame(said);

  test("goes together", () => expect(trouble(frame)).toEqual([]));

  test("numbers its pieces in the order of assembly, each once", () => {
    expect(frame.parts.map(({ number }) => number)).toEqual(
      frame.parts.map((_part, index) => index + 1),
    );
    expect(frame.assembly.flatMap(({ adds }) => adds)).toEqual(frame.parts.map(({ id }) => id));
  });
});

describe("the test objects", () => {
  const frame = soundFrame({ frame: SIDE });
  const pieces = piecesOf(frame);
  const moved = (
    id: string,
    feature: string,
    by: { readonly x: number; readonly y: number },
  ): readonly ReadPiece[] =>
    pieces.map((piece) => {
      const hole = piece.holes.get(feature);
      if (piece.part.id !== id) return piece;
      if (hole === undefined) throw new Error(`${id} has no ${feature}`);
      const shifted = (place: {
        readonly x: number;
        readonly y: number;
      }): { x: number; y: number } => ({
        x: place.x + by.x,
        y: place.y + by.y,
      });
      const run = {
        ...hole,
        edges: hole.edges.map((edge) =>
          edge.kind === "arc"
            ? {
                ...edge,
                from: shifted(edge.from),
                to: shifted(edge.to),
                centre: shifted(edge.centre),
              }
            : { ...edge, from: shifted(edge.from), to: shifted(edge.to) },
        ),
      };
      return { ...piece, holes: new Map([...piece.holes, [feature, run]]) };
    });

  test("to a slot that is 1 mm off", () => {
    const found = trouble(frame, moved("cheek-left", "slot.rib-aft-1.1", { x: 1, y: 0 }));
    expect(found.some((line) => /^rib-aft-1 and cheek-left: \d/.test(line))).toBe(true);
    expect(found.some((line) => line.startsWith("cheek-left, slot.rib-aft-1.1"))).toBe(true);
  });

  test("to a slot that is 0.05 mm off and still takes its tab", () => {
    const found = trouble(frame, moved("rail-aft-left", "slot.rib-aft-2", { x: 0.05, y: 0 }));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^rail-aft-left, slot\.rib-aft-2: 0\.(050|150) and/);
  });

  test("to a slot without a tab", () => {
    const away = pieces.filter(({ part }) => part.id !== "rib-forward-2");
    const bare = { ...frame, assembly: [] };
    expect(trouble(bare, away).some((line) => line.endsWith("no such piece"))).toBe(true);
  });
});
