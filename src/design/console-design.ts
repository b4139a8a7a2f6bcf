// A console file: which panels stand in it, and where. Frame, operator and obstacles are kept as they were written.
// Console axes: x forward (where the operator faces), y to the left, z up from the floor.

import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { Pitches, Written } from "./written.ts";

export interface ConsoleDesign {
  readonly kind: "console";
  readonly written: Written;
  readonly file: string;
  readonly name: string;
  readonly title: string;
  readonly workshop: string | null;
  readonly catalogue: readonly string[];
  readonly bays: Readonly<Record<string, BayDesign>>;
  readonly panels: readonly PanelUse[];
  readonly blankings: readonly BlankingUse[];
  readonly operator: OperatorDesign | null;
  readonly frame: FrameDesign | null;
  readonly obstacles: readonly ObstacleDesign[];
  /** Keys whose values could not be read (each has its finding). */
  readonly unread: readonly string[];
}

export interface BayDesign {
  readonly id: string;
  readonly mount: string;
  /** Usable length in the mount's own count; `unit` says which. */
  readonly modules: number;
  readonly unit: Pitches["unit"];
  readonly depth: Mm;
  readonly at: SpacePoint;
  /** Where the bay runs; not all three are zero. */
  readonly along: readonly [number, number, number];
  /** Turned about its width: positive lowers the edge nearer the operator. */
  readonly slope: Degrees;
  /** Turned about its length. */
  readonly cant: Degrees;
  readonly written: Written;
}

export type SpacePoint = readonly [Mm, Mm, Mm];

/** One panel file at one place; `as` names this use of it. */
export interface PanelUse {
  readonly file: string;
  readonly as: string;
  readonly bay: string | null;
  readonly module: number | null;
  readonly after: string | null;
  readonly written: Written;
}

export interface BlankingUse {
  readonly length: Pitches;
  readonly as: string | null;
  readonly bay: string | null;
  readonly module: number | null;
  readonly after: string | null;
  readonly written: Written;
}

export interface OperatorDesign {
  readonly seatHeight: Mm;
  readonly at: readonly [Mm, Mm];
  readonly hand: "right" | "left";
  readonly written: Written;
}

export interface FrameDesign {
  readonly type: string;
  readonly sheet: string;
  readonly joints: string | null;
  /** Width and height of the door that its pieces must pass. */
  readonly doorway: readonly [Mm, Mm] | null;
  readonly written: Written;
}

/** A box in the way; `at` is the centre of its base. */
export interface ObstacleDesign {
  readonly name: string;
  readonly box: SpacePoint;
  readonly at: SpacePoint;
  readonly written: Written;
}
