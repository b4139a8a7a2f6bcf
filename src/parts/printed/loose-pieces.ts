// Into how many loose pieces a solid of layers falls: where what stands in a part cuts it through, each side is a piece of
// its own. Layers lie on one another where their regions share area.

import { intersection } from "../../geometry/boolean.ts";
import type { Region } from "../../geometry/contour.ts";
import { type Extent, extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { Solid, SolidLayer } from "../../geometry/solid/solid.ts";
import type { PrintedPart } from "./printed-part.ts";

/** The most of any of its bodies, whole or as cut for the bed. */
export const loosePieces = ({ pieces }: PrintedPart): number =>
  Math.max(...pieces.flatMap(({ bodies }) => bodies.map(({ solid }) => loosePiecesOf(solid))));

/** Solids of other kinds are made in one. */
export const loosePiecesOf = (solid: Solid): number => {
  if (solid.kind !== "layered") return 1;
  const [first, ...others] = solid.layers;
  if (first === undefined) return 0;
  // What is one at its foot is one: nothing printed begins in the air.
  if (first.regions.length === 1) return 1;
  let groups: readonly Group[] = first.regions.map((_, index) => ({ top: [index] }));
  let below = first;
  let finished = 0;
  for (const layer of others) {
    const stood = standing(groups, below, layer);
    finished += stood.ended;
    groups = stood.groups;
    below = layer;
  }
  return finished + groups.length;
};

/** What hangs together so far, by its regions in the highest layer. */
interface Group {
  readonly top: readonly number[];
}

/** A group that nothing stands on has ended; what stands on two joins them; what stands on none begins one. */
const standing = (
  groups: readonly Group[],
  below: SolidLayer,
  layer: SolidLayer,
): { readonly groups: readonly Group[]; readonly ended: number } => {
  const rests = layer.regions.map((region) =>
    groups.map(({ top }) => top.some((index) => restsOn(region, below.regions[index]!))),
  );
  const made: { from: boolean[]; top: number[] }[] = [];
  for (const [index, own] of rests.entries()) {
    const joined = made.filter(({ from }) => from.some((isOn, at) => isOn && own[at]));
    for (const one of joined) made.splice(made.indexOf(one), 1);
    made.push({
      from: own.map((isOn, at) => isOn || joined.some(({ from }) => from[at])),
      top: [index, ...joined.flatMap(({ top }) => top)],
    });
  }
  const ended = groups.filter((_, at) => !made.some(({ from }) => from[at])).length;
  return { groups: made, ended };
};

type SolidArea = SolidLayer["regions"][number];

const restsOn = (one: SolidArea, other: SolidArea): boolean => {
  const [box, otherBox] = [boxOf(one), boxOf(other)];
  return (
    extentsOverlap(box, otherBox) &&
    intersection([areaNear(one, otherBox)], [areaNear(other, box)]).length > 0
  );
};

const boxOf = ({ outline }: SolidArea): Extent => contourExtent(outline.contour);

/** Without the holes that lie away from a box: what is shared within it is the same, and most of a tray's holes are away. */
const areaNear = ({ outline, holes }: SolidArea, box: Extent): Region => ({
  outline: outline.contour,
  holes: holes
    .map(({ contour }) => contour)
    .filter((contour) => extentsOverlap(contourExtent(contour), box)),
});
