// Something solid in the console, at its place: what may clash, touch or come near. A recipe in its own frame, never moved
// corner by corner: a drag changes the frame alone.

import type { Span } from "../diagnostics/finding.ts";
import type { Mesh } from "../geometry/solid/mesh.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import type { Frame } from "../geometry/space/frame.ts";
import type { SpaceBox } from "../geometry/space/space-box.ts";

/**
 * What a body is to its neighbours. `layer`: a sheet. `print`: a spacer, trim, tray, lamp box. `front`: what stands before
 * the face and does not move (a guard, a bezel, a button). `sweep`: where a lever or a knob moves. `rear`: case, nut, board.
 * `tails`, `plug`, `cable`: what hangs on it, plug and bend included. `latch`: room for a thumb, nothing solid. `rail`, `frame`, `rib`, `wall`, `obstacle`: the console's.
 */
export type ConsoleBodyRole =
  | "layer"
  | "print"
  | "front"
  | "sweep"
  | "rear"
  | "tails"
  | "plug"
  | "cable"
  | "latch"
  | "rail"
  | "frame"
  | "rib"
  | "wall"
  | "obstacle";

export interface ConsoleBody {
  /** `winch/brake/lever`, `rail aft left`, `rib 2`: unique in the console, stable from run to run. */
  readonly id: string;
  readonly role: ConsoleBodyRole;
  /** The panel that carries it; null for what is the console's own. */
  readonly panel: string | null;
  /** The bay that it belongs to, as a rail or with its panel; null where it is of none. */
  readonly bay: string | null;
  /** Component, layer, printed part, frame part or obstacle, in the user's own words. */
  readonly thing: string;
  /** What of it: "lever", "case", "plug of x", "spacer"; empty where it is the whole thing. */
  readonly what: string;
  readonly shape: BodyShape;
  readonly frame: Frame;
  /** In console coordinates; may be larger than need be. */
  readonly box: SpaceBox;
  /** Where the design asks for it. */
  readonly span: Span;
}

export type BodyShape =
  | { readonly kind: "recipe"; readonly solid: Solid }
  | { readonly kind: "mesh"; readonly mesh: Mesh };
