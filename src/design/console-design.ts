// A console file: which panels stand in it, and where. Frame, operator and obstacles are kept as they were written.
// Console axes: x forward (where the operator faces), y to the left, z up from the floor.

import type { Span } from "../diagnostics/finding.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { FrameDesign } from "./frame-design.ts";
import type { IsoDate, Pitches, Size, Written } from "./written.ts";

export interface ConsoleDesign {
  readonly kind: "console";
  readonly written: Written;
  readonly file: string;
  readonly name: string;
  readonly title: string;
  readonly revision: string;
  readonly dated: IsoDate | null;
  readonly workshop: string | null;
  readonly catalogue: readonly string[];
  readonly bays: Readonly<Record<string, BayDesign>>;
  /** Bays of the text that could not be read (each has its finding): nothing more is said of who names them. */
  readonly unreadBays: readonly string[];
  readonly panels: readonly PanelUse[];
  /** Panels and blanking panels of the text that could not be read (each has its finding): one without a name by its path. */
  readonly unreadPanels: readonly UnreadPanel[];
  readonly blankings: readonly BlankingUse[];
  readonly operator: OperatorDesign | null;
  /** The space that the console's own walls leave; null where nothing bounds it but obstacles and the frame. */
  readonly envelope: EnvelopeDesign | null;
  readonly frame: FrameDesign | null;
  readonly obstacles: readonly ObstacleDesign[];
  /** Keys whose values could not be read (each has its finding). */
  readonly unread: readonly string[];
}

export interface BayDesign {
  readonly id: string;
  readonly mount: string;
  /** Usable length, in the mount's own count or in mm. */
  readonly length: Size;
  readonly depth: Mm;
  /** Between the rails; null where the mount's own figure holds. */
  readonly clearWidth: Mm | null;
  /** How deep its rails are behind their faces; of a console with a frame that follows from its sheet. */
  readonly railDepth: Mm;
  /** How far from its beginning its sections are drawn; empty: one across its middle. */
  readonly sections: readonly Mm[];
  /** Middle of the width where the usable length begins, on the faces of the rails. */
  readonly at: SpacePoint;
  /** Where the bay runs; not all three are zero. */
  readonly along: readonly [number, number, number];
  /** Turned about its width: positive lowers the edge where it begins. */
  readonly slope: Degrees;
  /** Turned about its length: positive lowers the left edge, seen from the front. */
  readonly cant: Degrees;
  /** Where the looms of its panels leave the console; null: beneath each panel, at the bay's depth. */
  readonly loom: SpacePoint | null;
  readonly written: Written;
}

export type SpacePoint = readonly [Mm, Mm, Mm];

/** A panel of the text that could not be read: what is known of it. */
export interface UnreadPanel {
  readonly name: string;
  /** null where it names none. `any`: what it says of its bay could not be read either. */
  readonly bay: { readonly kind: "named"; readonly id: string } | { readonly kind: "any" } | null;
  readonly span: Span;
}

/** One panel file at one place; `as` names this use of it. */
export interface PanelUse {
  readonly file: string;
  readonly as: string;
  readonly bay: string | null;
  readonly module: number | null;
  readonly after: string | null;
  /** Where it stands when it lies in no bay. */
  readonly stand: StandDesign | null;
  /** Length of its service loop, from the console's own tie to the panel. */
  readonly loop: Mm | null;
  readonly written: Written;
}

/** A panel on its own feet or on a board: the place of the middle of its lower edge, on the face that it lies on. */
export interface StandDesign {
  readonly at: SpacePoint;
  readonly along: readonly [number, number, number];
  readonly slope: Degrees;
  readonly cant: Degrees;
  readonly written: Written;
}

/** Closes free modules. `sheet`: the stock it is cut from; `print`: the stock it is printed of; at most one of them. */
export interface BlankingUse {
  readonly length: Pitches;
  /** Both null: as the sheet that lies on the rails in the bay's first panel. */
  readonly sheet: string | null;
  readonly print: string | null;
  readonly as: string | null;
  /** From 1, among the blanking panels of the text: it is called by it where it has no name. */
  readonly number: number;
  readonly bay: string | null;
  readonly module: number | null;
  readonly after: string | null;
  readonly written: Written;
}

export interface OperatorDesign {
  readonly seatHeight: Mm;
  readonly at: readonly [Mm, Mm];
  readonly hand: "right" | "left";
  /** Where the eye was measured; null: the standard's seated heights. */
  readonly eye: SpacePoint | null;
  readonly written: Written;
}

/**
 * The inside of a console. `profile`: corners [forward, up] as seen from its side, one after the other; `across`: from its
 * right wall to its left one. What stands within it and is fixed are its ribs (across the whole profile) and its walls.
 */
export interface EnvelopeDesign {
  readonly profile: readonly (readonly [Mm, Mm])[];
  readonly across: readonly [Mm, Mm];
  readonly ribs: readonly RibDesign[];
  readonly walls: readonly ObstacleDesign[];
  readonly written: Written;
}

/** A board across the console: from `at` (forward) as thick as it is, and as high as the profile unless `upTo` ends it. */
export interface RibDesign {
  readonly name: string;
  readonly at: Mm;
  readonly thickness: Mm;
  readonly upTo: Mm | null;
  readonly written: Written;
}

/** Something in the way; `at` is the centre of its base (of its own origin, where it is a file). */
export interface ObstacleDesign {
  readonly name: string;
  readonly shape: ObstacleShape;
  readonly at: SpacePoint;
  /** About the vertical through `at`, counter-clockwise from above. */
  readonly turn: Degrees;
  readonly written: Written;
}

export type ObstacleShape =
  /** Sizes forward, to the left, up. */
  | { readonly kind: "box"; readonly size: SpacePoint }
  | { readonly kind: "cylinder"; readonly diameter: Mm; readonly height: Mm }
  /** Corners [forward, to the left] from `at`, and how high it is. */
  | {
      readonly kind: "prism";
      readonly corners: readonly (readonly [Mm, Mm])[];
      readonly height: Mm;
    }
  /** An STL file, in millimetres; path as written. */
  | { readonly kind: "mesh"; readonly file: string };
