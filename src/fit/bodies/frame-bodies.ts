// Parts of the console's frame as bodies: each a prism of its own plane, its cut-outs left open.

import type { Span } from "../../diagnostics/finding.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { mm } from "../../geometry/quantity.ts";
import { prism, solidRegion } from "../../geometry/solid/solid.ts";
import type { ConsoleFrame, FramePart } from "../../parts/frame/frame-part.ts";
import type { ConsoleBodyRole } from "../console-body.ts";
import type { StandingBody } from "./standing-body.ts";

/** `span`: of the frame as a whole; its parts are not written one by one. */
export const frameBodies = (frame: ConsoleFrame, span: Span): readonly StandingBody[] =>
  frame.parts.map((part) => ({
    id: part.id,
    role: roleOf(part),
    thing: withinSentence(part.title),
    what: "",
    solid: prism(-part.thickness, 0, solidRegion(part.region)),
    extent: { ...contourExtent(part.region.outline), minZ: mm(-part.thickness), maxZ: mm(0) },
    frame: part.frame,
    span,
  }));

/** Titles begin with a capital; findings speak of a board in the middle of a sentence. */
const withinSentence = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1);

const roleOf = ({ role }: FramePart): ConsoleBodyRole => {
  switch (role) {
    case "rail-bar":
      return "rail";
    case "rib":
      return "rib";
    case "cheek":
    case "floor":
    case "top":
    case "front":
    case "back":
    case "hatch":
    case "strip":
      return "frame";
  }
};
