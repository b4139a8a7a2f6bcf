// A body seen from the side: the box of its z and of its extent along the panel. Turned and round things get a few lines
// more, always inside that box, so that a silhouette is as deep as its body.

import type { PartFamily } from "../catalogue/part.ts";
import { type Contour, loop, vertex } from "../geometry/contour.ts";
import { type Extent, extent, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { rectangle, roundedRectangle } from "../geometry/shapes.ts";
import type { PlacedBody } from "../layout/panel-layout.ts";
import type { DrawingItem, Ink } from "./drawing.ts";
import { filled, HAIR, outlined, segment, stroked, THIN } from "./items.ts";

/** z runs to the left from `zero`. */
export const bodyBox = (body: PlacedBody, zero: number): Extent => {
  const across = contourExtent(body.footprint);
  return extent(zero - body.high, across.minY, zero - body.low, across.maxY);
};

/** Painted first to last: what lies inside comes after what holds it. */
export const ROLE_ORDER: readonly PlacedBody["role"][] = [
  "cable",
  "plug",
  "case",
  "board",
  "glass",
  "tails",
  "guard",
  "flange",
  "bush",
  "washer",
  "nut",
  "shaft",
  "lever",
  "needle",
  "button",
  "lens",
  "cap",
  "knob",
  "spanner",
];

export const bodyItems = (
  body: PlacedBody,
  family: PartFamily,
  zero: number,
): readonly DrawingItem[] => {
  const box = bodyBox(body, zero);
  // The shell of a connector stands where a lamp has its lens.
  const isShell = body.role === "lens" && family === "connector";
  const { ink, dashed } = isShell ? solid("metal-light") : LOOKS[body.role];
  const shape = silhouette(body, box);
  return [
    ...(ink === null ? [] : [filled([shape], ink)]),
    outlined([shape], { ink: "line", width: dashed ? HAIR : THIN, dashed }),
    ...innerLines(body, box),
  ];
};

interface RoleLook {
  readonly ink: Ink | null;
  readonly dashed: boolean;
}

const solid = (ink: Ink): RoleLook => ({ ink, dashed: false });
const room: RoleLook = { ink: null, dashed: true };

/** Plug, cable and spanner are room that must stay free: broken lines. */
const LOOKS: Readonly<Record<PlacedBody["role"], RoleLook>> = {
  case: solid("component"),
  board: solid("advisory"),
  glass: solid("glass"),
  tails: solid("metal"),
  flange: solid("metal"),
  bush: solid("metal-light"),
  washer: solid("metal-dark"),
  nut: solid("metal"),
  shaft: solid("metal-light"),
  lever: solid("metal-light"),
  needle: solid("lens-amber"),
  button: solid("key-top"),
  lens: solid("lamp"),
  cap: solid("key-top"),
  knob: solid("knob"),
  guard: { ink: null, dashed: false },
  plug: room,
  cable: room,
  spanner: room,
};

const silhouette = (body: PlacedBody, box: Extent): Contour => {
  const least = Math.min(extentWidth(box), extentHeight(box));
  switch (body.role) {
    case "lens":
    case "lever":
      return roundedFront(box, least * 0.45);
    case "button":
    case "cap":
      return roundedFront(box, least * 0.2);
    case "knob":
      return knobSide(box);
    case "cable":
      return roundedRectangle(box, least * 0.3);
    default:
      return rectangle(box);
  }
};

/** tan(90 / 4): a quarter turn. */
const QUARTER = Math.sqrt(2) - 1;

/** The operator's end is round. */
const roundedFront = ({ minX, minY, maxX, maxY }: Extent, radius: number): Contour =>
  loop([
    vertex(minX + radius, minY),
    vertex(maxX, minY),
    vertex(maxX, maxY),
    vertex(minX + radius, maxY, QUARTER),
    vertex(minX, maxY - radius),
    vertex(minX, minY + radius, QUARTER),
  ]);

/** A skirt at the foot and a body that tapers a little toward the hand. */
const knobSide = (box: Extent): Contour => {
  const { minX, minY, maxX, maxY } = box;
  const half = extentHeight(box) / 2;
  const skirt = maxX - extentWidth(box) * 0.22;
  const inset = half * 0.14;
  const taper = half * 0.22;
  return loop([
    vertex(maxX, minY),
    vertex(maxX, maxY),
    vertex(skirt, maxY),
    vertex(skirt, maxY - inset),
    vertex(minX, maxY - taper),
    vertex(minX, minY + taper),
    vertex(skirt, minY + inset),
    vertex(skirt, minY),
  ]);
};

/** Threads on a bush, the corners of a nut. */
const innerLines = (body: PlacedBody, box: Extent): readonly DrawingItem[] => {
  if (body.role === "bush") {
    const count = Math.floor(extentWidth(box) / THREAD_PITCH);
    const lines = Array.from({ length: count }, (_, index) => {
      const x = box.minX + (index + 0.5) * THREAD_PITCH;
      return segment(x, box.minY, x, box.maxY);
    });
    return [stroked(lines, { ink: "component", width: HAIR })];
  }
  if (body.role === "nut") {
    const quarter = extentHeight(box) / 4;
    const lines = [box.minY + quarter, box.maxY - quarter].map((y) =>
      segment(box.minX, y, box.maxX, y),
    );
    return [stroked(lines, { ink: "line", width: HAIR })];
  }
  return [];
};

/** A sign for a thread, not its pitch. */
const THREAD_PITCH = 0.8;
