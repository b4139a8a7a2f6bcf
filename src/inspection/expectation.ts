// What a file must hold, from the set-up alone: every operation's lines at cut size, and how far beside them the machine's
// line must run. In panel coordinates, seen from the front; nothing here is mirrored.

import type { MachineDesign } from "../design/workshop-design.ts";
import type { Contour, Point } from "../geometry/contour.ts";
import { type Extent, joinedExtent } from "../geometry/extent.ts";
import type { Operation, Process, SetUp } from "../parts/sheet-part.ts";
import { edgesOfVertices } from "./edge.ts";
import { centreOfBox, edgesOfContour, loopOfEdges } from "./loop.ts";
import type { Edge } from "./read-file.ts";

export interface ExpectedFeature {
  readonly feature: string;
  readonly process: Process;
  readonly kind: Operation["kind"];
  /** Axis of a cut; middle of the box of anything else. */
  readonly centre: Point;
  /** For a whole round hole or disc: it is measured by its diameter. */
  readonly isRound: boolean;
  readonly loops: readonly ExpectedLoop[];
  readonly box: Extent;
}

export interface ExpectedLoop {
  /** At cut size. */
  readonly edges: readonly Edge[];
  readonly box: Extent;
  /** Place in the list of features. */
  readonly index: number;
  /**
   * Which way the machine's line lies beside the edges: 1 around them, -1 within them, 0 upon them. An engraved area
   * shrinks: within its outline, around its holes.
   */
  readonly side: 1 | 0 | -1;
  /** All lines that bound the same area. */
  readonly bounds: readonly Edge[];
}

/** Kept by identity: SVG, DXF and R12 of one set-up are measured against one expectation. */
export const expectedFeatures = (setUp: SetUp): readonly ExpectedFeature[] => {
  const known = kept.get(setUp);
  if (known !== undefined) return known;
  const features = featuresOf(setUp);
  kept.set(setUp, features);
  return features;
};

const kept = new WeakMap<SetUp, readonly ExpectedFeature[]>();

const featuresOf = (setUp: SetUp): readonly ExpectedFeature[] =>
  setUp.operations.flatMap((operation, index) => {
    const loops = loopsOfOperation(operation, index);
    const box = joinedBox(loops);
    if (box === null) return [];
    return [
      {
        feature: operation.feature,
        process: operation.process,
        kind: operation.kind,
        centre: operation.kind === "cut" ? operation.centre : centreOfBox(box),
        isRound: operation.kind === "cut" && operation.contour.kind === "circle",
        loops,
        box,
      },
    ];
  });

/** How far beside cut edges the line runs, each side: half the kerf that the file carries. */
export const statedKerf = (setUp: SetUp): number =>
  setUp.kerf.kind === "in-file" ? setUp.kerf.kerf : 0;

/** How far within their outlines engraved areas are drawn: half the laser's spot, where this program compensates. */
export const engravedInset = (setUp: SetUp): number =>
  setUp.kerf.kind === "in-file" ? spotOf(setUp.machine) / 2 : 0;

const spotOf = (machine: MachineDesign): number => {
  switch (machine.kind) {
    case "co2-laser":
    case "diode-laser":
      return machine.spot;
    case "router":
    case "drill-bench":
    case "printer":
      return 0;
  }
};

const joinedBox = (loops: readonly ExpectedLoop[]): Extent | null => {
  const [first, ...others] = loops;
  if (first === undefined) return null;
  return others.reduce((box, loop) => joinedExtent(box, loop.box), first.box);
};

const loopsOfOperation = (operation: Operation, index: number): readonly ExpectedLoop[] => {
  switch (operation.kind) {
    case "cut":
      return expectedLoops([edgesOfContour(operation.contour)], index, [
        sideOfCut(operation.process),
      ]);
    case "fill":
      return operation.regions.flatMap(({ outline, holes }) =>
        expectedLoops(edgesOfAll([outline, ...holes]), index, [-1, ...holes.map((): 1 => 1)]),
      );
    case "stroke":
      return operation.paths.flatMap(({ vertices }) =>
        expectedLoops([edgesOfVertices(vertices, false)], index, [0]),
      );
  }
};

const edgesOfAll = (contours: readonly Contour[]): readonly (readonly Edge[])[] =>
  contours.map(edgesOfContour);

/** An opening's line runs inside it, a piece's around it; a drill takes its own diameter. */
const sideOfCut = (process: "cut-inner" | "cut-outer" | "drill"): ExpectedLoop["side"] => {
  switch (process) {
    case "cut-inner":
      return -1;
    case "cut-outer":
      return 1;
    case "drill":
      return 0;
  }
};

const expectedLoops = (
  lines: readonly (readonly Edge[])[],
  index: number,
  sides: readonly ExpectedLoop["side"][],
): readonly ExpectedLoop[] => {
  const bounds = lines.flat();
  return lines.flatMap((edges, at) => {
    const loop = loopOfEdges(edges);
    return loop === null ? [] : [{ edges, box: loop.box, index, side: sides[at] ?? 0, bounds }];
  });
};
