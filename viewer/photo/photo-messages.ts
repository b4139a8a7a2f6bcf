// What the page and its picture worker say to each other. Plain data both ways.

import type { Extent } from "../../src/geometry/extent.ts";
import type { Homography } from "../../src/geometry/homography.ts";

export interface StraightRequest {
  readonly number: number;
  /** The same for the same picture. */
  readonly key: string;
  readonly blob: Blob;
  /** Pixels of the picture to millimetres on the panel. */
  readonly map: Homography;
  /** What of the panel's plane is to be drawn. */
  readonly box: Extent;
}

export type StraightReply =
  | {
      readonly kind: "straight";
      readonly number: number;
      readonly blob: Blob;
      readonly box: Extent;
      readonly perMm: number;
    }
  | { readonly kind: "failed"; readonly number: number; readonly why: string };
