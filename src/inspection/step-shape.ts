// What a STEP file says of a solid, as it was read: faces on planes and cylinders, bounded by lines and true arcs in millimetres.

import type { Vector } from "../geometry/space/vector.ts";

export interface StepFile {
  /** Of the product; null where none is named. */
  readonly title: string | null;
  readonly solids: readonly StepSolid[];
  /** What can't be read, does not agree with itself, or is not understood here. */
  readonly strangers: readonly string[];
}

export interface StepSolid {
  readonly name: string;
  readonly faces: readonly StepFace[];
  /** Each once, whichever faces meet along it. */
  readonly edges: readonly StepEdge[];
}

export interface StepFace {
  readonly surface: StepSurface;
  /** Whether the surface's own normal (of a cylinder: away from its axis) looks out of the solid. */
  readonly isOutward: boolean;
  readonly bounds: readonly (readonly UsedStepEdge[])[];
}

/** Its axes are unit vectors, upright to one another: `along` the normal or the cylinder's axis. */
export interface StepPlacement {
  readonly origin: Vector;
  readonly along: Vector;
  readonly right: Vector;
}

export type StepSurface =
  | { readonly kind: "plane"; readonly at: StepPlacement }
  | { readonly kind: "cylinder"; readonly at: StepPlacement; readonly radius: number };

export type StepEdge =
  | {
      readonly kind: "line";
      readonly from: Vector;
      readonly to: Vector;
      /** The line that it is a piece of: a place on it, and its way from `from` to `to` as a unit vector. */
      readonly through: Vector;
      readonly along: Vector;
    }
  | {
      readonly kind: "arc";
      readonly from: Vector;
      readonly to: Vector;
      readonly at: StepPlacement;
      readonly radius: number;
      /** Radians from `at.right` to `from`, and on to `to`: above zero it turns left about `at.along`; a whole turn for a circle. */
      readonly start: number;
      readonly sweep: number;
    };

export interface UsedStepEdge {
  readonly edge: StepEdge;
  readonly isForward: boolean;
}
