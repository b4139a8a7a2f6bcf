// Puts a frame together from its written cut files alone: each piece's outline and holes are read back from its SVG by the
// reader that the program does not have, made as thick as the sheet, and set where the frame says. Then it is looked at:
// which pieces want the same room, and how each tab lies in its slot.

import type { Manifold, Mat4 } from "manifold-3d";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { svgCutFile } from "../../src/export/svg-cut-file.ts";
import type { Keep, Kernel } from "../../src/geometry/solid/kernel.ts";
import { cross, dot, type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { BayLayout } from "../../src/layout/console/console-layout.ts";
import type { ConsoleFrame, FrameJoint, FramePart } from "../../src/parts/frame/frame-part.ts";
import { placeOnEdge, readSvgFile, runArea, type SvgRun } from "../support/svg-reader.ts";

export interface Bench {
  readonly kernel: Kernel;
  readonly keep: Keep;
}

/** What a file says of a piece, in its own plane (y up). */
export interface ReadPiece {
  readonly part: FramePart;
  readonly outline: SvgRun;
  readonly holes: ReadonlyMap<string, SvgRun>;
  readonly left: number;
  readonly top: number;
}

const cutFileOf = (part: FramePart): string => {
  const setUp = part.sheetPart.setUps[0];
  if (setUp === undefined) throw new Error(`${part.id} has no set-up`);
  return svgCutFile(part.sheetPart, setUp, { colours: DEFAULT_COLOURS, title: part.title });
};

const readPiece = (part: FramePart, text: string): ReadPiece => {
  const sheet = part.sheetPart.setUps[0]!.sheet;
  const holes = new Map<string, SvgRun>();
  let outline: SvgRun | null = null;
  for (const { group, attributes, runs } of readSvgFile(text).paths) {
    const [run] = runs;
    if (run === undefined) continue;
    if (group === "cut-outer") outline = run;
    if (group === "cut-inner") holes.set(attributes.get("id") ?? "", run);
  }
  if (outline === null) throw new Error(`${part.id} has no outline`);
  return { part, outline, holes, left: sheet.minX, top: sheet.maxY };
};

type Pair = [number, number];

/** Chords lie on the material's side of every hole and relief here, so that few of them find no clash too few. */
const CHORDS = 3;

const cornersOf = (run: SvgRun, { left, top }: ReadPiece): Pair[] =>
  run.edges.flatMap((edge) =>
    Array.from({ length: edge.kind === "arc" ? CHORDS : 1 }, (_, index): Pair => {
      const { x, y } = placeOnEdge(edge, index / (edge.kind === "arc" ? CHORDS : 1));
      return [left + x, top - y];
    }),
  );

/** Counter-clockwise where `sign` is 1; in the file y runs down, so that its areas have the other sign. */
const turned = (run: SvgRun, piece: ReadPiece, sign: 1 | -1): Pair[] => {
  const corners = cornersOf(run, piece);
  return -runArea(run) * sign > 0 ? corners : corners.toReversed();
};

/** The board behind its good face, in its own frame. */
const flat = (piece: ReadPiece, { kernel, keep }: Bench): Manifold => {
  const { thickness } = piece.part;
  const polygons = [
    turned(piece.outline, piece, 1),
    ...[...piece.holes.values()].map((hole) => turned(hole, piece, -1)),
  ];
  return keep(keep(kernel.Manifold.extrude(polygons, thickness)).translate([0, 0, -thickness]));
};

const matrixOf = ({ x, y, z, origin }: FramePart["frame"], by: Vector = vector(0, 0, 0)): Mat4 => [
  x.x,
  x.y,
  x.z,
  0,
  y.x,
  y.y,
  y.z,
  0,
  z.x,
  z.y,
  z.z,
  0,
  origin.x + by.x,
  origin.y + by.y,
  origin.z + by.z,
  1,
];

export interface Standing {
  readonly piece: ReadPiece;
  readonly solid: Manifold;
}

export const standing = (pieces: readonly ReadPiece[], bench: Bench): readonly Standing[] =>
  pieces.map((piece) => {
    const solid = bench.keep(flat(piece, bench).transform(matrixOf(piece.part.frame)));
    if (solid.isEmpty()) throw new Error(`${piece.part.id} is empty`);
    return { piece, solid };
  });

export const piecesOf = (frame: ConsoleFrame): readonly ReadPiece[] =>
  frame.parts.map((part) => readPiece(part, cutFileOf(part)));

/** Less is what float32 corners leave where two faces touch. */
const CLASH = 0.01;

/** Faces that touch may stand into each other by the files' last digits, 0.0001 mm on each side. */
const LAST_DIGITS = 0.0003;

/** 0 where they are apart or touch. */
const clashVolume = (a: Standing, b: Standing, { keep }: Bench): number => {
  if (!boxesMeet(a.solid, b.solid)) return 0;
  const shared = keep(a.solid.intersect(b.solid));
  const volume = shared.volume();
  if (volume < CLASH) return 0;
  const axes = [a, b].flatMap(({ piece: { part } }) => [part.frame.x, part.frame.y, part.frame.z]);
  const isTouch = axes.some((axis) => {
    const { from, to } = spread(shared, axis);
    return to - from < LAST_DIGITS;
  });
  return isTouch ? 0 : volume;
};

const boxesMeet = (a: Manifold, b: Manifold): boolean => {
  const [one, other] = [a.boundingBox(), b.boundingBox()];
  return [0, 1, 2].every(
    (axis) => one.min[axis]! < other.max[axis]! && other.min[axis]! < one.max[axis]!,
  );
};

/** Pairs of pieces that want the same room, with how much of it. */
export const clashes = (all: readonly Standing[], bench: Bench): readonly string[] =>
  all.flatMap((one, index) =>
    all.slice(index + 1).flatMap((other) => {
      const volume = clashVolume(one, other, bench);
      return volume === 0
        ? []
        : [`${one.piece.part.id} and ${other.piece.part.id}: ${volume.toFixed(3)} mm³`];
    }),
  );

/** Slots whose tab is missing, does not go through, or lies otherwise than with the stated clearance. */
export const looseSlots = (
  frame: ConsoleFrame,
  all: readonly Standing[],
  bench: Bench,
): readonly string[] => {
  const byId = new Map(all.map((each) => [each.piece.part.id, each]));
  return frame.joints.flatMap((joint) => {
    const from = byId.get(joint.from);
    const into = byId.get(joint.into);
    if (from === undefined || into === undefined) return [`${joint.feature}: no such piece`];
    const faults = joint.kind === "half-lap" ? lapFaults : slotFaults;
    if (joint.kind === "dowel" || joint.kind === "screws") return [];
    return faults(joint, { from, into }, bench).map(
      (why) => `${joint.into}, ${joint.feature}: ${why}`,
    );
  });
};

const slotFaults = (
  joint: FrameJoint,
  { from, into }: { readonly from: Standing; readonly into: Standing },
  { kernel, keep }: Bench,
): readonly string[] => {
  const { piece } = into;
  const hole = piece.holes.get(joint.feature);
  if (hole === undefined) return ["not in the file"];
  const { thickness, frame } = piece.part;
  const slot = keep(
    keep(
      keep(kernel.Manifold.extrude([turned(hole, piece, 1)], thickness)).translate([
        0,
        0,
        -thickness,
      ]),
    ).transform(matrixOf(frame)),
  );
  const tab = keep(slot.intersect(from.solid));
  if (tab.volume() < 1) return ["empty"];
  const across = from.piece.part.frame.z;
  const along = cross(frame.z, across);
  const through = spread(tab, frame.z);
  const faults =
    Math.abs(through.to - through.from - thickness) > 0.001 ? ["the tab does not go through"] : [];
  return [
    ...faults,
    ...[across, along].flatMap((axis) => {
      const sides = sidesAlong(hole, piece, axis);
      const inside = spread(tab, axis);
      const low = inside.from - sides.from;
      const high = sides.to - inside.to;
      const isRight =
        Math.abs(low + high - joint.clearance) < 0.002 &&
        Math.min(low, high) > joint.clearance / 2 - 0.002;
      return isRight ? [] : [`${low.toFixed(3)} and ${high.toFixed(3)} of ${joint.clearance}`];
    }),
  ];
};

/** A board in a slot that is open above moves half the clearance to each side, and not 0.05 mm more. */
const lapFaults = (
  joint: FrameJoint,
  { from, into }: { readonly from: Standing; readonly into: Standing },
  bench: Bench,
): readonly string[] => {
  const across = from.piece.part.frame.z;
  const isFree = (by: number): boolean => {
    const moved = bench.keep(from.solid.translate([across.x * by, across.y * by, across.z * by]));
    return clashVolume({ piece: from.piece, solid: moved }, into, bench) === 0;
  };
  const half = joint.clearance / 2;
  return [1, -1].flatMap((side) => [
    ...(isFree(side * (half - 0.02)) ? [] : ["too tight"]),
    ...(isFree(side * (half + 0.05)) ? ["too loose"] : []),
  ]);
};

const spread = (solid: Manifold, axis: Vector): { readonly from: number; readonly to: number } => {
  const { vertProperties, numProp } = solid.getMesh();
  let [from, to] = [Infinity, -Infinity];
  for (let at = 0; at < vertProperties.length; at += numProp) {
    const place = dot(
      axis,
      vector(vertProperties[at]!, vertProperties[at + 1]!, vertProperties[at + 2]!),
    );
    from = Math.min(from, place);
    to = Math.max(to, place);
  }
  return { from, to };
};

/** Where the straight sides of a slot lie that are square to the axis: reliefs in its corners do not count. */
const sidesAlong = (
  run: SvgRun,
  { part: { frame }, left, top }: ReadPiece,
  axis: Vector,
): { readonly from: number; readonly to: number } => {
  const out = ({ x, y }: { readonly x: number; readonly y: number }): number =>
    dot(axis, frame.origin) + (left + x) * dot(axis, frame.x) + (top - y) * dot(axis, frame.y);
  const places = run.edges.flatMap((edge) => {
    const [a, b] = [out(edge.from), out(edge.to)];
    return edge.kind === "line" && Math.abs(a - b) < 0.001 ? [(a + b) / 2] : [];
  });
  return { from: Math.min(...places), to: Math.max(...places) };
};

/** How far back along its way a piece is looked at while it goes in. */
const WAY = [0.4, 3, 11, 60];

/** Pieces that can't go in as their step says, past those of their unit that stand already: each unit is built by itself. */
export const blockedSteps = (
  frame: ConsoleFrame,
  all: readonly Standing[],
  bench: Bench,
): readonly string[] => {
  const byId = new Map(all.map((each) => [each.piece.part.id, each]));
  const entering = frame.assembly.flatMap(({ adds, enters }) => adds.map((id) => ({ id, enters })));
  return entering.flatMap(({ id, enters }, index) => {
    const one = byId.get(id);
    if (one === undefined) throw new Error(`${id} is no piece`);
    if (enters === null) return [];
    const there = entering
      .slice(0, index)
      .flatMap((before) => byId.get(before.id) ?? [])
      .filter(({ piece }) => piece.part.unit === one.piece.part.unit);
    return WAY.flatMap((back) => {
      const by: [number, number, number] = [-enters.x * back, -enters.y * back, -enters.z * back];
      const moved = { piece: one.piece, solid: bench.keep(one.solid.translate(by)) };
      return there
        .filter((other) => clashVolume(moved, other, bench) > 0)
        .map(({ piece }) => `${id}, ${back} mm before its place, by ${piece.part.id}`);
    });
  });
};

/** Pieces that stand in the room behind a bay's panels: as wide as is clear between the rails, to the bay's depth. */
export const inRoomOf = (
  { frame, clearWidth, length, depth }: BayLayout,
  all: readonly Standing[],
  { kernel, keep }: Bench,
): readonly string[] => {
  const slack = 2 * LAST_DIGITS;
  const box = keep(kernel.Manifold.cube([clearWidth - slack, length, depth - slack]));
  const room = keep(
    keep(box.translate([(slack - clearWidth) / 2, 0, slack / 2 - depth])).transform(
      matrixOf(frame),
    ),
  );
  return all
    .filter(({ solid }) => keep(room.intersect(solid)).volume() > CLASH)
    .map(({ piece }) => piece.part.id);
};
