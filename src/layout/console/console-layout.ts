// A console in millimetres: bays, panels placed, operator posed, what is in the way. Facts only.
// Console axes: x forward (where the operator faces), y to the left, z up from the floor.
// A frame's x runs to the right, y up the panel, z toward the operator, as on a panel.

import type { Mount } from "../../catalogue/mount.ts";
import type {
  BayDesign,
  ConsoleDesign,
  OperatorDesign,
  PanelUse,
} from "../../design/console-design.ts";
import type { Span } from "../../diagnostics/finding.ts";
import type { Point } from "../../geometry/contour.ts";
import type { Mm } from "../../geometry/quantity.ts";
import type { Mesh } from "../../geometry/solid/mesh.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { Frame } from "../../geometry/space/frame.ts";
import type { Vector } from "../../geometry/space/vector.ts";
import type { BodySpan } from "../../standards/reach.ts";
import type { PanelLayout } from "../panel-layout.ts";

export interface ConsoleLayout {
  readonly kind: "console-layout";
  readonly name: string;
  readonly design: ConsoleDesign;
  readonly bays: readonly BayLayout[];
  /** By bay in the order of the text, then along it; panels on their own feet come last. */
  readonly panels: readonly PlacedPanel[];
  readonly operator: PosedOperator | null;
  readonly envelope: EnvelopeLayout | null;
  readonly obstacles: readonly ObstacleLayout[];
  /** Names of uses that could not be placed; what refers to them is left out without a finding of its own. */
  readonly lost: readonly string[];
}

/** A fastener's place, with its hole and its panel by name: `mount.1.left of winch`. */
export interface BayScrew extends Point {
  readonly name: string;
}

export interface BayLayout {
  readonly id: string;
  readonly design: BayDesign;
  readonly mount: Mount;
  /** Origin: middle of the width where it begins, on the rails' faces. */
  readonly frame: Frame;
  readonly pitch: Mm;
  /** Usable length, and the same in the mount's own count. */
  readonly length: Mm;
  readonly modules: number;
  /**
   * Nominal width of its panels, and between its rails: the mount's, what was measured, or what its panels take; else 0. Between
   * rails it is less where those under a narrow panel would overlap.
   */
  readonly width: Mm;
  readonly clearWidth: Mm;
  /** Where the fasteners of its panels come, in its own plane: x across, y along it. */
  readonly screws: readonly BayScrew[];
  readonly depth: Mm;
  /** What no panel takes, from its beginning to its end. */
  readonly free: readonly FreeRun[];
}

/** Along the bay, from where it begins. */
export interface FreeRun {
  readonly from: Mm;
  readonly to: Mm;
  readonly modules: number;
}

export interface PlacedPanel {
  readonly name: string;
  readonly layout: PanelLayout;
  /** `use` where the design names a file, `blanking` where it closes free modules. */
  readonly kind: "use" | "blanking";
  readonly use: Pick<PanelUse, "loop" | "written" | "module" | "after">;
  readonly place: PanelPlace;
  /** Panel coordinates (origin at the lower left of the nominal outline, z = 0 the finished front) in the console. */
  readonly frame: Frame;
  /** z of the face that lies on the rails, in panel coordinates: the rear of the last rigid sheet. */
  readonly seat: Mm;
}

export type PanelPlace =
  | {
      readonly kind: "bay";
      readonly bay: string;
      /** From the beginning of the bay, in its mount's count and in mm at nominal size. */
      readonly module: number;
      readonly from: Mm;
      readonly to: Mm;
    }
  | { readonly kind: "stand" };

/** A seated person; `small` and `large` are the two ends of the standard's range. Sizes come from standards/reach.ts. */
export interface PosedOperator {
  readonly design: OperatorDesign;
  readonly hand: "right" | "left";
  /** Where the plane of the seat back meets the seat, in the middle. */
  readonly seat: Vector;
  /** The eye of each; one point twice where it was measured. */
  readonly eye: { readonly small: Vector; readonly large: Vector };
  /** In the plane of the seat back at shoulder height, in the middle of the back. */
  readonly shoulder: { readonly small: Vector; readonly large: Vector };
  readonly functionalReach: BodySpan;
  readonly extendedReach: BodySpan;
}

/** The inside of the console: a prism whose frame's z runs across, from right to left. */
export interface EnvelopeLayout {
  readonly solid: Solid;
  readonly frame: Frame;
  readonly span: Span;
}

export interface ObstacleLayout {
  readonly name: string;
  readonly role: "obstacle" | "wall" | "rib";
  readonly shape:
    | { readonly kind: "recipe"; readonly solid: Solid }
    | { readonly kind: "mesh"; readonly mesh: Mesh };
  readonly frame: Frame;
  readonly span: Span;
}
