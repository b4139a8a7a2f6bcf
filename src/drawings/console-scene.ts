// What the drawings of a console are made from, and how each kind of body is painted.

import type { ConsoleBody, ConsoleBodyRole } from "../fit/console-body.ts";
import type { ConsoleLayout } from "../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../parts/frame/frame-part.ts";
import type { Ink } from "./drawing.ts";

export interface ConsoleScene {
  readonly layout: ConsoleLayout;
  readonly bodies: readonly ConsoleBody[];
  readonly frame: ConsoleFrame | null;
}

/** Areas of a view from outside are white, so that what lies behind is hidden; an empty one leaves it seen. */
interface BodyLook {
  readonly seen: Ink | null;
  readonly cut: Ink;
  readonly line: Ink;
  readonly dashed: boolean;
}

const solid = (cut: Ink, seen: Ink = "paper", line: Ink = "line"): BodyLook => ({
  seen,
  cut,
  line,
  dashed: false,
});

/** Room that something moves or bends in: nothing is there all the time. */
const room: BodyLook = { seen: null, cut: "paper", line: "faint", dashed: true };

export const BODY_LOOKS: Readonly<Record<ConsoleBodyRole, BodyLook>> = {
  layer: solid("opaque"),
  print: solid("printed"),
  front: solid("component", "paper", "line"),
  sweep: room,
  rear: solid("component", "paper", "line"),
  tails: solid("component", "paper", "faint"),
  plug: solid("component", "paper", "faint"),
  cable: room,
  latch: room,
  rail: solid("rail", "rail"),
  frame: solid("rail"),
  rib: solid("rail"),
  wall: { seen: null, cut: "faint", line: "faint", dashed: true },
  obstacle: solid("faint", "faint"),
};
