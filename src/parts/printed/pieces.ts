// A part cut into the pieces that the bed takes. Each layer of each body is cut at the joints, whose two halves meet at
// different places in front and behind; pegs are added, holes and numbers taken out.

import { intersection, unionRegions } from "../../geometry/boolean.ts";
import type { Region } from "../../geometry/contour.ts";
import { type Extent, extent } from "../../geometry/extent.ts";
import { rectangle } from "../../geometry/shapes.ts";
import {
  type Clearance,
  type LayeredSolid,
  layered,
  type SolidLayer,
} from "../../geometry/solid/solid.ts";
import { LAP } from "./bed-split.ts";
import { plainRegion } from "./grown-regions.ts";
import type { Joint, JointFeature } from "./joint.ts";
import type { PrintedPiece } from "./printed-part.ts";
import { layerOf, subtracted } from "./region-sums.ts";

export interface LayeredBody {
  readonly name: string;
  readonly colour: string;
  readonly solid: LayeredSolid;
}

/** `joints` from low to high; none gives the part itself as its one piece. Features are the first body's. */
export const piecesOf = (
  bodies: readonly LayeredBody[],
  joints: readonly Joint[],
  box: Extent,
): readonly PrintedPiece[] => {
  if (joints.length === 0) return [{ number: 1, bodies }];
  return Array.from({ length: joints.length + 1 }, (_, index) => ({
    number: index + 1,
    bodies: bodies.flatMap((body, place) =>
      cutBody(body, {
        index,
        joints,
        box,
        isFirst: place === 0,
        loops: bodies.length > 1 ? "exact" : "clear",
      }),
    ),
  }));
};

interface Cut {
  readonly index: number;
  readonly joints: readonly Joint[];
  readonly box: Extent;
  readonly isFirst: boolean;
  readonly loops: Clearance;
}

const cutBody = (body: LayeredBody, cut: Cut): readonly LayeredBody[] => {
  const features = cut.isFirst ? featuresOf(cut) : [];
  const layers = refined(body.solid.layers, heightsOf(cut, features)).flatMap((layer) =>
    cutLayer(layer, features, cut),
  );
  return layers.length === 0 ? [] : [{ ...body, solid: layered(layers) }];
};

const featuresOf = ({ index, joints }: Cut): readonly JointFeature[] => [
  ...(joints[index - 1]?.features.filter(({ piece }) => piece === "high") ?? []),
  ...(joints[index]?.features.filter(({ piece }) => piece === "low") ?? []),
];

const heightsOf = ({ joints }: Cut, features: readonly JointFeature[]): readonly number[] => [
  ...joints.map(({ middle }) => middle),
  ...features.flatMap(({ from, to }) => [from, to]),
];

/** The same layers, parted at further heights. */
const refined = (
  layers: readonly SolidLayer[],
  heights: readonly number[],
): readonly SolidLayer[] =>
  layers.flatMap((layer) => {
    const inside = heights.filter((z) => z > layer.from && z < layer.to);
    const steps = [...new Set([layer.from, ...inside, layer.to])].sort((a, b) => a - b);
    return steps.slice(1).map((to, index): SolidLayer => {
      const part = layerOf(steps[index]!, to, { regions: [], loops: "exact" });
      return { ...part, regions: layer.regions };
    });
  });

const cutLayer = (
  layer: SolidLayer,
  features: readonly JointFeature[],
  cut: Cut,
): readonly SolidLayer[] => {
  const here = features.filter(({ from, to }) => from <= layer.from && to >= layer.to);
  const added = here.filter(({ does }) => does === "add").flatMap(({ regions }) => regions);
  const taken = here.filter(({ does }) => does === "cut").flatMap(({ regions }) => regions);
  const kept = intersection(layer.regions.map(plainOf), [
    plainRegion(rectangle(windowAt(layer.from, cut))),
  ]);
  const regions = subtracted(unionRegions([...kept, ...added]), taken);
  return regions.length === 0 ? [] : [layerOf(layer.from, layer.to, { regions, loops: cut.loops })];
};

const plainOf = ({ outline, holes }: SolidLayer["regions"][number]): Region => ({
  outline: outline.contour,
  holes: holes.map(({ contour }) => contour),
});

/** What belongs to the piece at a height: the rear half of each joint reaches on, the front half stops short. */
const windowAt = (z: number, { index, joints, box }: Cut): Extent => {
  const low = joints[index - 1];
  const high = joints[index];
  const from = low === undefined ? null : meetingAt(low, z) + low.fact.gap / 2;
  const to = high === undefined ? null : meetingAt(high, z) - high.fact.gap / 2;
  const across = (low ?? high)?.band.across;
  return across === "y"
    ? extent(box.minX - 1, from ?? box.minY - 1, box.maxX + 1, to ?? box.maxY + 1)
    : extent(from ?? box.minX - 1, box.minY - 1, to ?? box.maxX + 1, box.maxY + 1);
};

const meetingAt = ({ band, middle }: Joint, z: number): number =>
  z < middle ? band.at + LAP / 2 : band.at - LAP / 2;
