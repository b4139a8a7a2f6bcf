// A body as the thing that carries it knows it: a recipe in a frame of the panel's (or the console's) own coordinates.
// Made once for a panel, stood in the console as often as the panel is moved.

import type { Span } from "../../diagnostics/finding.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import type { SolidExtent } from "../../geometry/solid/recipe-extent.ts";
import { prism, type Solid, solidRegion } from "../../geometry/solid/solid.ts";
import { type Frame, frameWithin, WORLD } from "../../geometry/space/frame.ts";
import { boxOut } from "../../geometry/space/space-box.ts";
import type { ConsoleBody, ConsoleBodyRole } from "../console-body.ts";

export interface StandingBody {
  readonly id: string;
  readonly role: ConsoleBodyRole;
  readonly thing: string;
  readonly what: string;
  readonly solid: Solid;
  /** Of the solid in its own frame. */
  readonly extent: SolidExtent;
  /** Within the panel, or within the console. */
  readonly frame: Frame;
  readonly span: Span;
}

/** What a body is called, and where it was asked for. */
export type BodyNames = Pick<StandingBody, "id" | "role" | "thing" | "what" | "span">;

/** A footprint between two heights. */
export const prismBody = (
  names: BodyNames,
  footprint: Contour,
  heights: { readonly low: number; readonly high: number; readonly frame?: Frame },
): StandingBody => {
  const { low, high, frame = WORLD } = heights;
  return {
    ...names,
    solid: prism(low, high, solidRegion({ outline: footprint, holes: [] })),
    extent: { ...contourExtent(footprint), minZ: mm(low), maxZ: mm(high) },
    frame,
  };
};

/** Stood in the console with what carries it: a panel's frame, or the console itself. */
export const stoodBody = (
  body: StandingBody,
  on: Pick<ConsoleBody, "panel" | "bay" | "frame">,
): ConsoleBody => {
  const frame = frameWithin(on.frame, body.frame);
  return {
    id: body.id,
    role: body.role,
    panel: on.panel,
    bay: on.bay,
    thing: body.thing,
    what: body.what,
    shape: { kind: "recipe", solid: body.solid },
    frame,
    box: boxOut(frame, body.extent),
    span: body.span,
  };
};

/** Ids that would be one get a number: `case`, `case.2`. Takes and gives them in one order. */
export const numberedIds = (bodies: readonly StandingBody[]): readonly StandingBody[] => {
  const seen = new Map<string, number>();
  return bodies.map((body) => {
    const count = (seen.get(body.id) ?? 0) + 1;
    seen.set(body.id, count);
    return count === 1 ? body : { ...body, id: `${body.id}.${count}` };
  });
};
