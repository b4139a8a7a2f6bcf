// What the panel view asks the worker beside the reading: the parts there are, a section, a panel made of a list.
// Plain data both ways.

import type { PartFamily } from "../../src/catalogue/part.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import type { PlacedFinding } from "../core-messages.ts";
import type { PictureShape } from "./panel-picture.ts";

export type PanelQuestion =
  | { readonly kind: "parts"; readonly number: number }
  | { readonly kind: "section"; readonly number: number; readonly panel: string }
  | { readonly kind: "mounts"; readonly number: number }
  | {
      readonly kind: "arrange";
      readonly number: number;
      readonly list: string;
      readonly name: string;
      readonly mount: string;
      /** Millimetres, for mounts that leave it open; null: the usual one. */
      readonly width: number | null;
      readonly isLit: boolean;
    };

export type PanelAnswer =
  | { readonly kind: "parts"; readonly number: number; readonly parts: readonly PartCard[] }
  | { readonly kind: "mounts"; readonly number: number; readonly mounts: readonly MountChoice[] }
  | { readonly kind: "section"; readonly number: number; readonly drawing: ShownDrawing | null }
  | {
      readonly kind: "arranged";
      readonly number: number;
      readonly text: string | null;
      readonly findings: readonly PlacedFinding[];
    }
  | { readonly kind: "failed"; readonly number: number; readonly why: string };

export interface MountChoice {
  readonly id: string;
  readonly title: string;
  /** The list's panel may be as wide as the person says. */
  readonly leavesWidth: boolean;
}

/** A part as the drawer shows it. */
export interface PartCard {
  readonly id: string;
  readonly title: string;
  readonly family: PartFamily;
  /** Words that a search looks in: kind, name, dimensions. */
  readonly words: string;
  /** Path data about the part's axis, y down. */
  readonly outline: string;
  readonly hole: string;
  readonly box: Extent;
  /** Width, height and depth behind the seat in words. */
  readonly sizes: string;
  readonly depth: number;
}

export interface ShownDrawing {
  readonly title: string;
  readonly box: Extent;
  readonly shapes: readonly PictureShape[];
}
