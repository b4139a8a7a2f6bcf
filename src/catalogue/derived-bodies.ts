// Bodies that follow from other fields of a part: its bush, shaft and lever. They are worked out in one place, when a
// record is read and again when a field of it is measured, so that the two never disagree.

import { point } from "../geometry/contour.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { Body, BodyRole, Hold, Part } from "./part.ts";
import type { Shape } from "./shape.ts";

export type Derived = Pick<Part, "hold" | "openings" | "shaft" | "lever">;

/** In the order bush, shaft, lever. */
export function derivedBodies(part: Derived): readonly Body[] {
  const bodies: Body[] = [];
  if (part.hold.kind === "bush") bodies.push(bushBody(part.hold, part.openings.passes));
  const foot = footOf(part.hold);
  if (part.shaft !== null) {
    const shape: Shape = { kind: "round", diameter: part.shaft.diameter };
    bodies.push(upright("shaft", shape, { from: foot, to: part.shaft.length }));
  }
  if (part.lever !== null) {
    const shape: Shape = { kind: "round", diameter: part.lever.tip };
    bodies.push(upright("lever", shape, { from: foot, to: part.lever.length }));
  }
  return bodies;
}

/** The bodies that are written in a record, without those that are worked out. */
export const writtenBodies = (bodies: readonly Body[]): readonly Body[] =>
  bodies.filter((body) => !DERIVED.includes(body.role));

const DERIVED: readonly BodyRole[] = ["bush", "shaft", "lever"];

/** Flats and key of a bush are those of what passes its hole. */
const bushBody = (hold: Hold & { readonly kind: "bush" }, passes: Shape): Body =>
  hold.seat === "behind"
    ? upright("bush", passes, { from: mm(0), to: hold.length })
    : upright("bush", passes, { from: mm(-hold.length), to: mm(0) });

const footOf = (hold: Hold): Mm =>
  hold.kind === "bush" && hold.seat === "behind" ? hold.length : mm(0);

const upright = (
  role: BodyRole,
  shape: Shape,
  reach: { readonly from: Mm; readonly to: Mm },
): Body => ({ role, shape, at: point(0, 0), ...reach });
