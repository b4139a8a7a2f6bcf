// What is known about a printed part besides its shape: plain data for the floor that judges. Every list is in a defined
// order: by owner, then from left to right and upward. A part without a kind of feature has an empty list of it.

import type { LatchRoom } from "../../catalogue/latch.ts";
import type { Contour, Point } from "../../geometry/contour.ts";
import type { Extent } from "../../geometry/extent.ts";
import type { Degrees, Mm } from "../../geometry/quantity.ts";
import type { Vector } from "../../geometry/space/vector.ts";
import type { AllowedHole } from "./print-allowance.ts";

export interface PrintedFacts {
  readonly box: PrintedBox;
  readonly walls: readonly WallFact[];
  readonly floor: FloorFact | null;
  readonly rim: RimFact | null;
  readonly collars: readonly CollarFact[];
  readonly pockets: readonly PocketFact[];
  readonly bosses: readonly BossFact[];
  readonly channels: readonly ChannelFact[];
  readonly notches: readonly NotchFact[];
  readonly boards: readonly BoardFact[];
  readonly joints: readonly JointFact[];
  /** Long flat part: its longest flat side over its thickness; prints that warp are queried by it. */
  readonly flatness: { readonly longest: Mm; readonly thickness: Mm };
  /** What makes a light box white inside; `none` where there is no light in it. */
  readonly inside: "white-body" | "liner" | "paint" | "none";
}

/** As assembled, in panel coordinates. */
export interface PrintedBox {
  readonly plan: Extent;
  readonly rear: Mm;
  readonly front: Mm;
}

/** A wall that keeps light in, or holds something. */
export interface WallFact {
  /** `rim`, `collar`, `circuit`, `joint`, `floor`. */
  readonly kind: "rim" | "collar" | "circuit" | "joint" | "box" | "skirt";
  /** What it stands round or between. */
  readonly owners: readonly string[];
  readonly thickness: Mm;
  /** Whole lines in it, and the width of one. */
  readonly lines: number;
  readonly line: Mm;
  /** The least that its stock keeps light in with; null where nobody has said. */
  readonly opaqueFrom: Mm | null;
}

export interface FloorFact {
  /** Least thickness: under a channel. */
  readonly thickness: Mm;
  readonly layers: number;
  readonly layer: Mm;
  readonly opaqueFrom: Mm | null;
}

export interface RimFact {
  /** How far it reaches beyond its wall, and how deep the seat of its foam is. */
  readonly overlap: Mm;
  readonly seatDepth: Mm;
  readonly wall: Mm;
}

/** A wall up to the sheet in front, round a hole or a display window in a lit area. */
export interface CollarFact {
  readonly owners: readonly string[];
  readonly inner: Contour;
  /** Least thickness anywhere round it. */
  readonly thickness: Mm;
  readonly from: Mm;
  readonly to: Mm;
}

export interface PocketFact {
  readonly owner: string;
  /** The room itself, at finished size: what stands in it must pass. */
  readonly contours: readonly Contour[];
  readonly clearance: Mm;
  readonly from: Mm;
  readonly to: Mm;
  /** Least material left beside it, to the part's edge; negative where it breaks out. */
  readonly edge: Mm;
}

export interface BossFact {
  readonly owner: string;
  readonly at: Point;
  readonly kind: "insert" | "clearance" | "dowel" | "standoff" | "thread-forming";
  readonly thread: string | null;
  readonly hole: AllowedHole;
  readonly outside: Mm;
  /** Least plastic round the hole; the boss's own wall where nothing cuts into it. */
  readonly wall: Mm;
  /** Depth of the hole and solid plastic below it; `below` null where the hole runs through. */
  readonly depth: Mm;
  readonly below: Mm | null;
  /** Length of the insert; null where there is none. */
  readonly insert: Mm | null;
}

export interface ChannelFact {
  /** The strip or LED board that lies in it. */
  readonly part: string;
  readonly circuit: string;
  readonly width: Mm;
  readonly length: Mm;
  readonly from: Point;
  readonly to: Point;
  /** Cut lengths (or boards) in it, LEDs in all, and the distance between them. */
  readonly cuts: number;
  readonly leds: readonly Point[];
  readonly pitch: Mm;
  /** z of the LEDs' tops, and from there to the rear of the sheet that they light. */
  readonly lampHeight: Mm;
  readonly distance: Mm;
}

export interface NotchFact {
  readonly circuit: string;
  readonly at: Point;
  readonly exit: Contour;
  readonly passage: Contour;
  readonly plug: { readonly width: Mm; readonly height: Mm };
  readonly cornerRadius: Mm;
  readonly turns: number;
}

/** Where a thumb presses the latch of a board's plug, in panel coordinates. */
export interface LatchFact {
  /** On the plug's latched side, in the middle of its mouth. */
  readonly mouth: Vector;
  /** Along the plug, from its mouth, and away from its latched side: unit lengths. */
  readonly along: Vector;
  readonly away: Vector;
  readonly room: LatchRoom;
}

export interface BoardFact {
  readonly board: string;
  readonly box: Extent;
  /** Counter-clockwise from the record's own drawing. */
  readonly turn: Degrees;
  readonly holding: "holes" | "clip" | "socket";
  /** z of the board's front, of its longest lead behind and of its tallest part before it. */
  readonly front: Mm;
  readonly from: Mm;
  readonly to: Mm;
  readonly connectors: readonly {
    readonly name: string;
    readonly at: Point;
    /** Room that its plug and the bend of its cable take in the plane of the board; null where it looks up. */
    readonly room: Extent | null;
    /** Above the board, plug and bend included. */
    readonly height: Mm;
    /** null where its plug is only pulled. */
    readonly latch: LatchFact | null;
    /** Middle of the two slots for a cable tie; null where it looks up, or where the tray ends before. */
    readonly tie: Point | null;
  }[];
}

export interface JointFact {
  /** Across x: a line of constant x. */
  readonly across: "x" | "y";
  readonly at: Mm;
  readonly lap: Mm;
  readonly between: readonly [number, number];
  readonly gap: Mm;
  readonly locators: readonly {
    readonly kind: "round" | "slotted";
    readonly at: Point;
    readonly peg: Mm;
    readonly hole: Mm;
  }[];
  readonly screws: readonly Point[];
}
