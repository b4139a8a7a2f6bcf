// A bought thing that goes on a panel: what it needs of each layer, in front and behind.
// z is measured from the seat, the plane where the part's own shoulder or flange bears on a layer or on its spacers:
// positive toward the operator. All shapes are centred on the part's axis.

import type { Point } from "../geometry/contour.ts";
import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { HandKind } from "../standards/separation.ts";
import type { PartLatch } from "./latch.ts";
import type { Shape, ShapeAt } from "./shape.ts";

export type PartFamily =
  | "toggle"
  | "rocker"
  | "lever"
  | "rotary-switch"
  | "thumbwheel"
  | "push-button"
  | "key"
  | "keypad"
  | "potentiometer"
  | "slide"
  | "encoder"
  | "lamp"
  | "display"
  | "instrument"
  | "servo"
  | "connector"
  | "fuse-holder"
  | "key-switch"
  | "speaker";

export interface Part {
  readonly kind: "part";
  readonly id: string;
  readonly title: string;
  readonly family: PartFamily;
  readonly hand: HandKind;
  readonly hold: Hold;
  readonly openings: Openings;
  /** Everything solid, front (z > 0) and behind (z < 0), for collisions, depth and drawings. */
  readonly bodies: readonly Body[];
  /** What is drawn on the face, from the outside in. */
  readonly face: readonly ShapeAt[];
  readonly shaft: Shaft | null;
  readonly lever: Lever | null;
  readonly turning: Turning | null;
  readonly display: DisplayArea | null;
  /** Of the plug behind the panel; null where it is only pulled, or has none there. */
  readonly latch: PartLatch | null;
  /** Drawn and judged with these unless the design says otherwise; ids of knobs, caps, guards. */
  readonly usual: readonly string[];
  readonly contacts: readonly Contact[];
  readonly supply: Supply | null;
  /** Wears the look of an emergency stop (red mushroom on yellow): a dummy of it is refused. */
  readonly emergencyLook: boolean;
  /** What a builder must be told wherever this part is used; null for most. Defers to local codes and licensed practice. */
  readonly caution: string | null;
  readonly figures: Figures;
}

/** How a part is held. */
export type Hold =
  | {
      /** A threaded bush and a nut. `seat: behind`: shoulder behind, nut in front. `front`: flange in front, nut behind. */
      readonly kind: "bush";
      readonly seat: "behind" | "front";
      readonly thread: string;
      /** Major diameter of the bush. */
      readonly diameter: Mm;
      /** Length of thread from the seat. */
      readonly length: Mm;
      /** Thickness that it can clamp with its nut and washers. */
      readonly grip: Grip;
      readonly nut: string;
      readonly washers: readonly string[];
      /** Room that the nut's spanner or socket needs. */
      readonly spanner: Mm;
    }
  | {
      /** Barbs or a spring clip that take a range of thickness. */
      readonly kind: "snap";
      readonly seat: "front";
      readonly grip: Grip;
    }
  | {
      /** Screws through the clamped layer, the part in front of it or behind it. */
      readonly kind: "screws";
      readonly seat: "behind" | "front";
      readonly screw: string;
      readonly holes: readonly ScrewHole[];
      /** Distance that spacers or bosses hold it off the layer. */
      readonly standOff: Mm;
      readonly grip: Grip;
    }
  | {
      /** Sits on a board or in a printed part behind; the fascia only gives it room. */
      readonly kind: "behind";
      readonly seat: "behind";
    };

export interface Grip {
  readonly least: Mm;
  readonly most: Mm;
}

export interface ScrewHole {
  readonly at: Point;
  readonly diameter: Mm;
  /** The screw head's diameter, on the operator's side. */
  readonly head: Mm;
}

export interface Openings {
  /** The hole in the layer that it clamps, in metal, with its anti-rotation feature. */
  readonly clamp: Shape;
  /** Further holes in the clamped layer: locating tabs and pegs. */
  readonly tabs: readonly ShapeAt[];
  /** What must enter the clamp opening: the go gauge. */
  readonly passes: Shape;
  /** The widest clamp opening that nut, washer or flange still covers: the no-go gauge (a diameter, or the smaller cover). */
  readonly covered: Mm;
  /** What a layer in front of the clamped one must open by. null: nothing passes it. */
  readonly front: Shape | null;
  /** What a sheet behind the clamped one must open by. */
  readonly behind: Shape | null;
}

export type BodyRole =
  | "flange"
  | "nut"
  | "bush"
  | "lever"
  | "needle"
  | "button"
  | "shaft"
  | "lens"
  | "glass"
  | "case"
  | "board"
  | "tails"
  | "plug"
  | "cable";

/**
 * A prism between two heights above the seat. Bush, shaft and lever follow from their own fields; nut, washers and what
 * is fitted to the part are no bodies of it.
 */
export interface Body {
  readonly role: BodyRole;
  readonly shape: Shape;
  readonly at: Point;
  readonly from: Mm;
  readonly to: Mm;
}

export interface Shaft {
  readonly diameter: Mm;
  readonly form: "round" | "flat" | "splined";
  /** End of the shaft above the seat. */
  readonly length: Mm;
  /** Clock angle that the flat faces with the shaft at its first stop. */
  readonly flatAt: Degrees | null;
}

export interface Lever {
  /** End of the lever above the seat, upright. */
  readonly length: Mm;
  readonly tip: Mm;
  /** How far it leans to each side of upright, and along which clock line. */
  readonly throw: Degrees;
  readonly line: Degrees;
  readonly positions: readonly string[];
}

/** How it turns, seen from the front; clock angles. */
export interface Turning {
  /** First mechanical stop and travel clockwise from it; null for endless turning. */
  readonly first: Degrees;
  readonly travel: Degrees | null;
  /** Angle from one detent to the next; null where there are none. */
  readonly step: Degrees | null;
  readonly positions: number | null;
}

export interface DisplayArea {
  /** The clear opening in front of it. */
  readonly window: ShapeAt;
  readonly active: { readonly width: Mm; readonly height: Mm; readonly at: Point };
  /** How far the glass or bezel stands in front of the seat. */
  readonly proud: Mm;
}

export interface Contact {
  readonly name: string;
  /** "pole", "throw", "anode", "data" ... in the words of the wiring. */
  readonly role: string;
}

export interface Supply {
  readonly volts: number;
  readonly milliamps: number;
}

export type SourceKind = "datasheet" | "standard" | "practice" | "memory" | "measured";

/** Where the record's numbers come from. */
export interface Figures {
  readonly source: string;
  readonly kind: SourceKind;
  /** Fields that come from elsewhere, by path ("hold.length"). */
  readonly exceptions: Readonly<
    Record<string, { readonly source: string; readonly kind: SourceKind }>
  >;
  /** Fields that decide a fit and that nobody has measured: each gives a measuring line. */
  readonly measureFirst: readonly string[];
}
