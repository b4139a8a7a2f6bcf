// The bodies of a console packed for the eye: a group for each panel and one for the console itself, and in each group one
// lot for every tone at every level. Kernel-free, unless true shapes are handed in.

import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { frameSeenFrom } from "../../src/fit/hull-relation.ts";
import type { Mesh } from "../../src/geometry/solid/mesh.ts";
import { prism, solidRegion } from "../../src/geometry/solid/solid.ts";
import { type Frame, WORLD } from "../../src/geometry/space/frame.ts";
import type { ConsoleLayout, PlacedPanel } from "../../src/layout/console/console-layout.ts";
import { levelOf, markingTone, toneOf } from "./body-tone.ts";
import type { LotRange, SceneBody, SceneGroup, SceneLot, Tone } from "./console-messages.ts";
import { addFlat, addMesh, addSolid, type GrowingLot } from "./low-mesh.ts";
import { addStroke } from "./stroke-mesh.ts";

/** The kernel's mesh of a body that is worth one; null: convex or near enough. */
export type TrueShape = (body: ConsoleBody) => Mesh | null;

export const sceneGroups = (
  bodies: readonly ConsoleBody[],
  layout: ConsoleLayout,
  trueShape: TrueShape = () => null,
): readonly SceneGroup[] => [
  ...layout.panels.map((panel) =>
    panelGroup(
      panel,
      bodies.filter((body) => body.panel === panel.name),
      trueShape,
    ),
  ),
  packed(
    { key: "", frame: WORLD },
    bodies
      .filter(({ panel }) => panel === null)
      .map((body) => ({
        body,
        tone: toneOf(body, null),
        level: 0,
        add: (lot) => addShape(lot, body, { frame: body.frame, trueShape }),
      })),
  ),
];

interface Piece {
  readonly body: SceneBody;
  readonly tone: Tone;
  readonly level: number;
  readonly add: (lot: GrowingLot) => void;
}

const panelGroup = (
  panel: PlacedPanel,
  bodies: readonly ConsoleBody[],
  trueShape: TrueShape,
): SceneGroup => {
  const { name, layout, frame } = panel;
  const solid = bodies.map((body): Piece => {
    const within = frameSeenFrom(frame, body.frame);
    return {
      body,
      tone: toneOf(body, layout),
      level: levelOf(body, layout),
      add: (lot) => addShape(lot, body, { frame: within, trueShape }),
    };
  });
  return packed({ key: name, frame }, [...solid, ...levers(panel), ...markings(panel)]);
};

const addShape = (
  lot: GrowingLot,
  { shape, ...body }: ConsoleBody,
  { frame, trueShape }: { readonly frame: Frame; readonly trueShape: TrueShape },
): void => {
  const mesh = shape.kind === "mesh" ? shape.mesh : trueShape({ shape, ...body });
  if (mesh !== null) addMesh(lot, mesh, frame);
  else if (shape.kind === "recipe") addSolid(lot, shape.solid, frame);
};

/** Bodies hold where a lever moves; the eye wants the lever too, upright. */
const levers = ({ name, layout }: PlacedPanel): readonly Piece[] =>
  layout.components.flatMap(({ id, part, bodies }) =>
    part.lever === null
      ? []
      : bodies
          .filter(({ role, low, high }) => (role === "lever" || role === "cap") && high > low)
          .map(({ role, footprint, low, high }): Piece => {
            const solid = prism(low, high, solidRegion({ outline: footprint, holes: [] }));
            const tone = role === "lever" ? "metal" : "cap";
            return {
              body: { id: `${name}/${id}/${role} upright`, role: "upright", thing: id, what: role },
              tone,
              level: 0,
              add: (lot) => addSolid(lot, solid, WORLD),
            };
          }),
  );

/** What is read, a hair before the face that carries it. */
const markings = ({ name, layout }: PlacedPanel): readonly Piece[] =>
  layout.markings.flatMap(({ id, owner, layer, fills, strokes }) => {
    const index = layout.layers.findIndex((each) => each.id === layer);
    const carrier = layout.layers[index];
    if (carrier === undefined) return [];
    const height = carrier.front + HAIR;
    return [
      {
        body: { id: `${name}/${id}`, role: "marking" as const, thing: owner, what: id },
        tone: markingTone(carrier),
        level: index + 1,
        add: (lot: GrowingLot) => {
          for (const region of fills) addFlat(lot, region, height);
          for (const stroke of strokes) addStroke(lot, stroke, height);
        },
      },
    ];
  });

/** Before its face by so much, or two planes would flicker: mm. */
const HAIR = 0.12;

const packed = (
  of: { readonly key: string; readonly frame: Frame },
  pieces: readonly Piece[],
): SceneGroup => {
  const lots = new Map<
    string,
    GrowingLot & { readonly ranges: LotRange[]; readonly piece: Piece }
  >();
  for (const [index, piece] of pieces.entries()) {
    const key = `${piece.tone} ${piece.level}`;
    const lot = lots.get(key) ?? { positions: [], triangles: [], edges: [], ranges: [], piece };
    lots.set(key, lot);
    const [triangles, edges] = [lot.triangles.length / 3, lot.edges.length / 6];
    piece.add(lot);
    lot.ranges.push({
      body: index,
      triangles: { from: triangles, count: lot.triangles.length / 3 - triangles },
      edges: { from: edges, count: lot.edges.length / 6 - edges },
    });
  }
  const bodies = pieces.map(({ body: { id, role, thing, what } }) => ({ id, role, thing, what }));
  return { ...of, bodies, lots: [...lots.values()].map(sentLot) };
};

const sentLot = (
  lot: GrowingLot & { readonly ranges: readonly LotRange[]; readonly piece: Piece },
): SceneLot => ({
  tone: lot.piece.tone,
  level: lot.piece.level,
  positions: Float32Array.from(lot.positions),
  triangles: Uint32Array.from(lot.triangles),
  edges: Float32Array.from(lot.edges),
  ranges: lot.ranges,
});
