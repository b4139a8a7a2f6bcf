// What is printed for a panel as bodies, in its place: spacers, trims, trays, lamp boxes.

import { recipeExtent } from "../../geometry/solid/recipe-extent.ts";
import { WORLD } from "../../geometry/space/frame.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import type { StandingBody } from "./standing-body.ts";

export const printBodies = (parts: readonly PrintedPart[]): readonly StandingBody[] =>
  parts.flatMap((part) => (NOT_IN_PLACE.has(part.role) ? [] : partBodies(part)));

/** Drawn about origins of their own: thin rings between nut and sheet, and what only a printer is tried with. */
const NOT_IN_PLACE: ReadonlySet<PrintedPart["role"]> = new Set(["washer", "test-piece"]);

const partBodies = (part: PrintedPart): readonly StandingBody[] =>
  part.bodies.map(({ name, solid }) => ({
    id: `${part.id}/${name}`,
    role: "print",
    thing: part.owner,
    what: part.role.replaceAll("-", " "),
    solid,
    extent: recipeExtent(solid),
    frame: WORLD,
    span: part.span,
  }));
