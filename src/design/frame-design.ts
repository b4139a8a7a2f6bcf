// What a builder writes of the frame, the boards that make the console. One line is enough: everything but type and sheet
// has the trade's usual value.

import type { Mm } from "../geometry/quantity.ts";
import type { Written } from "./written.ts";

/** Beside the operator, or before him over a knee space. */
export type FrameType = "side-console" | "front-desk";

/** How boards meet the cheeks, and rail bars the ribs. */
export type FrameJoints = "tab-and-slot" | "half-lap" | "dowel" | "screws";

/** A side of the console, as its operator sees it: `back` is where its first bay begins, `front` where its last one ends. */
export type FrameSide = "left" | "right" | "front" | "back";

/** Boards that close the console; cheeks, ribs and rails it always has. */
export type FramePanel = "top" | "front" | "back" | "floor";

export interface FrameDesign {
  readonly type: FrameType;
  readonly sheet: string;
  readonly joints: FrameJoints;
  /** Slot less tab, in all. */
  readonly clearance: Mm;
  /** Width and height of the door that its sections must pass; null where none is in the way. */
  readonly doorway: readonly [Mm, Mm] | null;
  /**
   * Between the cheeks of each unit; null: as narrow as the bays allow, and where knees go below one alone no narrower than those.
   */
  readonly width: Mm | null;
  /** Underside of the floor board above the floor. */
  readonly toe: Mm;
  /** How far the cheeks stand beyond bays, top, front and back; null: what is usual, and in a thick sheet what its slots want. */
  readonly beyond: Mm | null;
  readonly ribs: RibsDesign;
  readonly rails: RailsDesign;
  /**
   * Before a front desk: how deep the knee space is from where the bays begin, and how high; null: what a seated person's
   * knees and feet want, as far as the desk leaves it.
   */
  readonly knees: readonly [Mm, Mm] | null;
  readonly hatch: FrameSide | "none";
  readonly cables: CablesDesign;
  readonly vents: VentsDesign;
  readonly panels: readonly FramePanel[];
  readonly written: Written;
}

export interface RibsDesign {
  /** At most this far apart. */
  readonly spacing: Mm;
  /** What stands below the room of the panels. */
  readonly web: Mm;
}

export interface RailsDesign {
  /** Least width of a bar; it runs on to the cheek. */
  readonly width: Mm;
  /** In the bars, for the panels' fasteners; null: as wide as the panels' own. */
  readonly hole: Mm | null;
}

export interface CablesDesign {
  readonly diameter: Mm;
  readonly through: readonly FramePanel[];
}

export interface VentsDesign {
  /** Low, where cool air comes in. */
  readonly inlet: "front" | "back" | "none";
  /** High, where warm air leaves. */
  readonly outlet: "front" | "back" | "none";
}
