// A board of the frame as boxes side by side, cut at the corners of its outline: a cheek that is cut out for knees is no wall
// before them. Takes a body; gives boxes in the console that hold all of it, the whole's own for what is no board.

import type { Contour, Point } from "../../geometry/contour.ts";
import { flattened } from "../../geometry/flatten.ts";
import { mm } from "../../geometry/quantity.ts";
import { boxOut, type SpaceBox } from "../../geometry/space/space-box.ts";
import type { ConsoleBody } from "../console-body.ts";

export const boardBoxes = ({ role, shape, frame, box }: ConsoleBody): readonly SpaceBox[] => {
  if (role !== "frame" || shape.kind !== "recipe" || shape.solid.kind !== "layered") return [box];
  return shape.solid.layers.flatMap(({ from, to, regions }) =>
    regions.flatMap(({ outline }) =>
      stripsOf(outline.contour).map((each) =>
        boxOut(frame, { ...each, minZ: mm(from), maxZ: mm(to) }),
      ),
    ),
  );
};

type Strip = Pick<SpaceBox, "minX" | "maxX" | "minY" | "maxY">;

/** Chords of reliefs and round corners, in mm. */
const CHORD = 0.2;

/** Not one above another: what stands on the floor would seem to hang where its upper box begins. */
const stripsOf = (outline: Contour): readonly Strip[] => {
  const corners = flattened(outline, CHORD);
  const places = [...new Set(corners.map(({ x }) => x))].toSorted((a, b) => a - b);
  return places.slice(1).map((right, index) => strip(corners, places[index]!, right));
};

const strip = (corners: readonly Point[], left: number, right: number): Strip => {
  const heights = corners.flatMap((from, index) => {
    const to = corners[(index + 1) % corners.length]!;
    const [near, far] = from.x <= to.x ? [from, to] : [to, from];
    if (far.x <= left || near.x >= right) return [];
    const at = (x: number): number => near.y + ((far.y - near.y) * (x - near.x)) / (far.x - near.x);
    return [at(Math.max(left, near.x)), at(Math.min(right, far.x))];
  });
  return {
    minX: mm(left),
    maxX: mm(right),
    minY: mm(Math.min(...heights)),
    maxY: mm(Math.max(...heights)),
  };
};
