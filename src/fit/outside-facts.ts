// What stands out of the inside of a console. Only what lies behind the seat of its panel is asked; what touches the wall is
// inside. Bodies whose box lies within are left at that; the kernel takes the inside off all others.

import type { Manifold } from "manifold-3d";
import { containsContour, containsPoint } from "../geometry/containment.ts";
import { type Contour, type Point, point, type Region } from "../geometry/contour.ts";
import { convexHull } from "../geometry/convex-hull.ts";
import { pointToContour } from "../geometry/distance.ts";
import { mm } from "../geometry/quantity.ts";
import { polygon } from "../geometry/shapes.ts";
import { withKept } from "../geometry/solid/kernel.ts";
import { type Frame, pointIn, pointOut } from "../geometry/space/frame.ts";
import {
  boxCorners,
  boxOut,
  boxRound,
  joinedBox,
  type SpaceBox,
} from "../geometry/space/space-box.ts";
import { dot, scaled, vector } from "../geometry/space/vector.ts";
import type { PlacedPanel } from "../layout/console/console-layout.ts";
import { shapeExtent } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { ConsoleInside } from "./console-inside.ts";
import type { OutsideFact } from "./fit-facts.ts";
import { sharedVolume, touchDepth } from "./fit-tolerance.ts";
import { frameSeenFrom } from "./hull-relation.ts";
import { type KernelShapes, kernelFrame } from "./kernel-shapes.ts";
import { extentOf } from "./pair-relation.ts";

export const outsideFacts = (
  panels: readonly { readonly panel: PlacedPanel; readonly bodies: readonly ConsoleBody[] }[],
  insideOf: (panel: PlacedPanel) => ConsoleInside | null,
  shapes: KernelShapes,
): readonly OutsideFact[] =>
  panels.flatMap(({ panel, bodies }) => {
    const inside = insideOf(panel);
    // Most panels lie within as a whole: then their bodies need not be asked one by one.
    if (inside === null || keepsInside(panel, bodies, { inside, to: panel.frame })) return [];
    return bodies.flatMap((body) => outsideFact(body, { panel, inside, shapes }) ?? []);
  });

/**
 * A panel at a place keeps within, by the box round what lies behind its seat alone: what is called inside is inside, what
 * is not may only be slanted or hollow there. `to`: the panel's frame at that place.
 */
export const keepsInside = (
  panel: PlacedPanel,
  bodies: readonly ConsoleBody[],
  { inside, to }: { readonly inside: ConsoleInside; readonly to: Frame },
): boolean => {
  const behind = bodies.flatMap((body) => boxBehind(body, panel) ?? []);
  return behind.length === 0 || holdsBox(inside, behind.reduce(joinedBox), to);
};

interface Asked {
  readonly panel: PlacedPanel;
  readonly inside: ConsoleInside;
  readonly shapes: KernelShapes;
}

const outsideFact = (body: ConsoleBody, { panel, inside, shapes }: Asked): OutsideFact | null => {
  const behind = boxBehind(body, panel);
  if (behind === null || holdsBox(inside, behind, panel.frame)) return null;
  return withKept((keep): OutsideFact | null => {
    const seen = frameSeenFrom(inside.frame, body.frame);
    const whole = keep(shapes.of(body.shape).transform(kernelFrame(seen)));
    const seat = frameSeenFrom(inside.frame, panel.frame);
    const normal = scaled(seat.z, -1);
    const offset = dot(normal, pointOut(seat, vector(0, 0, panel.seat)));
    const rear = keep(whole.trimByPlane([normal.x, normal.y, normal.z], offset));
    const out = keep(rear.subtract(shapes.of({ kind: "recipe", solid: inside.solid })));
    return factOf(body, out, inside);
  });
};

const factOf = (body: ConsoleBody, out: Manifold, inside: ConsoleInside): OutsideFact | null => {
  const volume = out.isEmpty() ? 0 : out.volume();
  if (volume <= sharedVolume) return null;
  const depth = farthestFrom(inside, out);
  if (depth <= touchDepth) return null;
  const at = pointOut(inside.frame, extentOf(out).middle);
  return { body, of: inside.of, volume, depth: mm(depth), at };
};

/** Of the corners of what stands out, which it has where it is farthest from straight walls. */
const farthestFrom = (inside: ConsoleInside, out: Manifold): number => {
  const { numProp, vertProperties } = out.getMesh();
  const regions = regionsOf(inside);
  const { minZ, maxZ } = shapeExtent({ kind: "recipe", solid: inside.solid });
  let farthest = 0;
  for (let first = 0; first < vertProperties.length; first += numProp) {
    const [x, y, z] = [0, 1, 2].map((axis) => vertProperties[first + axis]!);
    const across = Math.max(minZ - z!, z! - maxZ, 0);
    const beside = awayFrom(regions, point(x!, y!));
    farthest = Math.max(farthest, Math.sqrt(across * across + beside * beside));
  }
  return farthest;
};

const awayFrom = (regions: readonly Region[], at: Point): number =>
  Math.min(
    ...regions.map((region) =>
      isWithin(region, at)
        ? 0
        : Math.min(...contoursOf(region).map((contour) => pointToContour(at, contour).gap)),
    ),
  );

const isWithin = ({ outline, holes }: Region, at: Point): boolean =>
  containsPoint(outline, at) && !holes.some((hole) => containsPoint(hole, at));

const contoursOf = ({ outline, holes }: Region): readonly Contour[] => [outline, ...holes];

/** In panel coordinates; null for what lies before the seat. */
const boxBehind = (body: ConsoleBody, { frame, seat }: PlacedPanel): SpaceBox | null => {
  const seen = frameSeenFrom(frame, body.frame);
  const box = boxOut(seen, shapeExtent(body.shape));
  return box.minZ >= seat - touchDepth ? null : { ...box, maxZ: mm(Math.min(box.maxZ, seat)) };
};

/** What its eight corners span, seen from the side, lies within a region that has no holes. `frame`: in which the box is given. */
const holdsBox = (inside: ConsoleInside, box: SpaceBox, frame: Frame): boolean => {
  const corners = boxCorners(box).map((at) => pointIn(inside.frame, pointOut(frame, at)));
  const { minZ, maxZ } = boxRound(corners);
  const across = shapeExtent({ kind: "recipe", solid: inside.solid });
  const seen = polygon(convexHull(corners.map(({ x, y }) => point(x, y))));
  return (
    minZ >= across.minZ - touchDepth &&
    maxZ <= across.maxZ + touchDepth &&
    regionsOf(inside).some(
      ({ outline, holes }) => holes.length === 0 && containsContour(outline, seen),
    )
  );
};

/** Of its profile; an inside is a prism. */
const regionsOf = ({ solid }: ConsoleInside): readonly Region[] =>
  solid.kind === "layered"
    ? solid.layers.flatMap(({ regions }) =>
        regions.map(({ outline, holes }) => ({
          outline: outline.contour,
          holes: holes.map(({ contour }) => contour),
        })),
      )
    : [];
