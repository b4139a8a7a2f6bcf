// What the plan of a section hangs on beside its bays.

import type { Point } from "../../geometry/contour.ts";
import type { Span } from "./board.ts";
import type { FrameBay } from "./frame-bay.ts";
import type { KneesAsked } from "./knees-asked.ts";
import type { SizedFrame } from "./sized-frame.ts";

export interface PlanOptions {
  readonly design: SizedFrame;
  readonly thickness: number;
  /** Inner faces of the cheeks, to the right of the console's origin. */
  readonly across: Span;
  /** Added to the ids of its parts where there are several units or sections. */
  readonly suffix: string;
  /** Below the first section only, of a unit that has them; null: none. */
  readonly knees: KneesAsked | null;
}

/** A section while it is planned. */
export interface PlanScene extends PlanOptions {
  readonly bays: readonly FrameBay[];
  /** What each bay fills of the profile. */
  readonly hulls: readonly (readonly Point[])[];
  /** Inner faces of the end boards. */
  readonly inner: Span;
}
