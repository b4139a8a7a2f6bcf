// What stands out of the console's envelope. Only what lies behind the seat of its panel is asked; what touches the wall is
// inside. Bodies whose box lies within are left at that; the kernel takes the envelope off all others.

import type { Manifold } from "manifold-3d";
import { containsContour } from "../geometry/containment.ts";
import type { Contour } from "../geometry/contour.ts";
import { extent } from "../geometry/extent.ts";
import { mm } from "../geometry/quantity.ts";
import { rectangle } from "../geometry/shapes.ts";
import { withKept } from "../geometry/solid/kernel.ts";
import { pointIn, pointOut } from "../geometry/space/frame.ts";
import { boxCorners, boxOut, boxRound, type SpaceBox } from "../geometry/space/space-box.ts";
import { dot, scaled, vector } from "../geometry/space/vector.ts";
import type { EnvelopeLayout, PlacedPanel } from "../layout/console/console-layout.ts";
import { shapeExtent } from "./body-groups.ts";
import type { ConsoleBody } from "./console-body.ts";
import type { OutsideFact } from "./fit-facts.ts";
import { sharedVolume, touchDepth } from "./fit-tolerance.ts";
import { frameSeenFrom } from "./hull-relation.ts";
import { type KernelShapes, kernelFrame } from "./kernel-shapes.ts";
import { extentOf } from "./pair-relation.ts";

export const outsideFacts = (
  panels: readonly { readonly panel: PlacedPanel; readonly bodies: readonly ConsoleBody[] }[],
  envelope: EnvelopeLayout | null,
  shapes: KernelShapes,
): readonly OutsideFact[] =>
  envelope === null
    ? []
    : panels
        // What stands on its own feet stands on the console, not in it.
        .filter(({ panel }) => panel.place.kind === "bay")
        .flatMap(({ panel, bodies }) =>
          bodies.flatMap((body) => outsideFact(body, { panel, envelope, shapes }) ?? []),
        );

interface Inside {
  readonly panel: PlacedPanel;
  readonly envelope: EnvelopeLayout;
  readonly shapes: KernelShapes;
}

const outsideFact = (body: ConsoleBody, inside: Inside): OutsideFact | null => {
  const behind = boxBehind(body, inside.panel);
  if (behind === null || holdsBox(inside, behind)) return null;
  const { panel, envelope, shapes } = inside;
  return withKept((keep): OutsideFact | null => {
    const seen = frameSeenFrom(envelope.frame, body.frame);
    const whole = keep(shapes.of(body.shape).transform(kernelFrame(seen)));
    const seat = frameSeenFrom(envelope.frame, panel.frame);
    const normal = scaled(seat.z, -1);
    const offset = dot(normal, pointOut(seat, vector(0, 0, panel.seat)));
    const rear = keep(whole.trimByPlane([normal.x, normal.y, normal.z], offset));
    const out = keep(rear.subtract(shapes.of({ kind: "recipe", solid: envelope.solid })));
    return factOf(body, out, envelope);
  });
};

const factOf = (
  body: ConsoleBody,
  out: Manifold,
  { frame }: EnvelopeLayout,
): OutsideFact | null => {
  const volume = out.isEmpty() ? 0 : out.volume();
  if (volume <= sharedVolume) return null;
  const { size, middle } = extentOf(out);
  const depth = Math.min(size.x, size.y, size.z);
  if (depth <= touchDepth) return null;
  return { body, volume, depth: mm(depth), at: pointOut(frame, middle) };
};

/** In panel coordinates; null for what lies before the seat. */
const boxBehind = (body: ConsoleBody, { frame, seat }: PlacedPanel): SpaceBox | null => {
  const seen = frameSeenFrom(frame, body.frame);
  const box = boxOut(seen, shapeExtent(body.shape));
  return box.minZ >= seat - touchDepth ? null : { ...box, maxZ: mm(Math.min(box.maxZ, seat)) };
};

/** The flat box round its eight corners lies within the profile. */
const holdsBox = ({ panel, envelope }: Inside, box: SpaceBox): boolean => {
  const corners = boxCorners(box).map((at) => pointIn(envelope.frame, pointOut(panel.frame, at)));
  const { minX, minY, minZ, maxX, maxY, maxZ } = boxRound(corners);
  const across = shapeExtent({ kind: "recipe", solid: envelope.solid });
  const outline = outlineOf(envelope);
  return (
    outline !== null &&
    minZ >= across.minZ - touchDepth &&
    maxZ <= across.maxZ + touchDepth &&
    containsContour(outline, rectangle(extent(minX, minY, maxX, maxY)))
  );
};

const outlineOf = ({ solid }: EnvelopeLayout): Contour | null =>
  solid.kind === "layered" ? (solid.layers[0]?.regions[0]?.outline.contour ?? null) : null;
