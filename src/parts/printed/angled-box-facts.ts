// What is known about an angled box besides its shape.

import type { Contour, Point } from "../../geometry/contour.ts";
import type { Degrees, Mm } from "../../geometry/quantity.ts";
import type { PrintedPart } from "./printed-part.ts";

export interface AngledBoxFact {
  readonly slope: Degrees;
  /** Height of the walls at their lowest and highest, above the console. */
  readonly low: Mm;
  readonly high: Mm;
  readonly wall: Mm;
  readonly lines: number;
  readonly line: Mm;
  readonly flange: {
    readonly width: Mm;
    readonly thickness: Mm;
    /** In the plane of the console, as the footprint is written. */
    readonly holes: readonly Point[];
  };
  readonly face: {
    /** In panel coordinates, seen from the front. */
    readonly outline: Contour;
    readonly opening: Contour;
    readonly thickness: Mm;
    /** What the panel lies on, the least at any side. */
    readonly seat: Mm;
  };
  readonly screws: readonly Point[];
}

export interface AngledBoxPart extends PrintedPart {
  readonly role: "angled-box";
  readonly angledBox: AngledBoxFact;
}

/** Only angled boxes have this role, and all of them have these facts. */
export const isAngledBoxPart = (part: PrintedPart): part is AngledBoxPart =>
  part.role === "angled-box";
