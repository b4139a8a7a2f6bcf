// What the readers give: a written cut file as edges, whatever its format was.
// Coordinates are millimetres, x right, y up, exactly as drawn (a mirrored file stays mirrored), the lower left corner of the
// sheet lying where the reader was told that it lies on the panel.

import type { Point } from "../geometry/contour.ts";
import type { Extent } from "../geometry/extent.ts";
import type { Statements } from "./statements.ts";

export interface ReadFile {
  readonly format: "svg" | "dxf";
  readonly statements: Statements;
  readonly units: ReadUnits;
  readonly items: readonly ReadItem[];
  /** What stands in the file and could not be read, or must not stand there (a transform, text). */
  readonly strangers: readonly string[];
}

/** How the file says that its numbers are millimetres. */
export interface ReadUnits {
  /** `166.05 mm x 172.4 mm, viewBox 166.05 x 172.4`. */
  readonly stated: string;
  /** Millimetres that the file claims for one of its units; null where it claims none. */
  readonly millimetres: number | null;
  /** Size of the sheet, where the format gives it. */
  readonly sheet: Extent | null;
}

/** One drawn thing: a path of an SVG, an entity of a DXF. */
export interface ReadItem {
  /** Group or layer that it stands in. */
  readonly process: string;
  /** Name of the feature, where the format carries one. */
  readonly feature: string | null;
  readonly loops: readonly ReadLoop[];
  /** How an SVG paints it; null in a DXF, which has lines only. */
  readonly look: "line" | "fill" | "both" | "none" | null;
}

/** A run of edges, each beginning where the one before ends. */
export interface ReadLoop {
  readonly edges: readonly Edge[];
  /** Distance from the last edge's end to the first edge's start; 0 where it is closed. */
  readonly gap: number;
  /** Closed chains that its pieces make where they meet: 1 for one sound outline. */
  readonly chains: number;
  readonly box: Extent;
}

export type Edge =
  | { readonly kind: "line"; readonly from: Point; readonly to: Point }
  | {
      readonly kind: "arc";
      readonly from: Point;
      readonly to: Point;
      readonly centre: Point;
      readonly radius: number;
      /** Angle turned from `from` to `to`, in radians: positive counter-clockwise; a whole circle is 2π. */
      readonly sweep: number;
    };
