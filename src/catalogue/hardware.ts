// Things that are fitted to parts or hold the stack: knobs, caps, guards, nuts, washers, standoffs, screws, studs.

import type { Degrees, Mm } from "../geometry/quantity.ts";
import type { Figures } from "./part.ts";
import type { Shape } from "./shape.ts";

interface HardwareCommon {
  readonly id: string;
  readonly title: string;
  readonly figures: Figures;
}

export type Hardware =
  | Knob
  | Cap
  | Guard
  | Bezel
  | Boot
  | Plug
  | Nut
  | Washer
  | Standoff
  | Screw
  | Stud
  | Retainer
  | Receptacle;

/** Every kind of hardware, in the order of lists. */
export const HARDWARE_KINDS: readonly Hardware["kind"][] = [
  "knob",
  "cap",
  "guard",
  "bezel",
  "boot",
  "plug",
  "nut",
  "washer",
  "standoff",
  "screw",
  "stud",
  "retainer",
  "receptacle",
];

export interface Knob extends HardwareCommon {
  readonly kind: "knob";
  /** Widest diameter, the skirt where there is one. */
  readonly diameter: Mm;
  readonly height: Mm;
  readonly bore: Mm;
  /** Depth of the bore: the least shaft that it needs is about two thirds of it. */
  readonly boreDepth: Mm;
  /** Clock angle from the bore's flat to the pointer. */
  readonly pointer: Degrees;
}

export interface Cap extends HardwareCommon {
  readonly kind: "cap";
  readonly shape: Shape;
  readonly height: Mm;
}

export interface Guard extends HardwareCommon {
  readonly kind: "guard";
  /** Footprint on the layer that it is clamped to. */
  readonly shape: Shape;
  readonly thickness: Mm;
  /** Height closed, and the reach of its cover open. */
  readonly height: Mm;
  readonly openHeight: Mm;
}

export interface Bezel extends HardwareCommon {
  readonly kind: "bezel";
  readonly diameter: Mm;
  readonly height: Mm;
}

/** A rubber boot that seals a lever and takes the place of the nut on its bush. */
export interface Boot extends HardwareCommon {
  readonly kind: "boot";
  readonly thread: string;
  /** Diameter of its foot on the layer that it is clamped to. */
  readonly diameter: Mm;
  /** Length of thread that its foot takes, lip and moulded nut. */
  readonly thickness: Mm;
  /** Over all, above the layer that it stands on. */
  readonly height: Mm;
}

/** The free half of a connector, mated, for the room that it takes. */
export interface Plug extends HardwareCommon {
  readonly kind: "plug";
  /** Outline across its axis. */
  readonly shape: Shape;
  /** How far it stands out from the mouth of its socket, latch and cable clamp too. */
  readonly length: Mm;
  /** Room for the bend of its cable. */
  readonly bend: Mm;
}

export interface Nut extends HardwareCommon {
  readonly kind: "nut";
  readonly thread: string;
  readonly acrossFlats: Mm;
  readonly acrossCorners: Mm;
  readonly thickness: Mm;
}

export interface Washer extends HardwareCommon {
  readonly kind: "washer";
  readonly inside: Mm;
  readonly outside: Mm;
  readonly thickness: Mm;
}

export interface Standoff extends HardwareCommon {
  readonly kind: "standoff";
  readonly thread: string;
  readonly length: Mm;
  readonly acrossFlats: Mm;
}

export interface Screw extends HardwareCommon {
  readonly kind: "screw";
  readonly thread: string;
  readonly norm: string;
  readonly head: "pan" | "cap" | "button" | "countersunk";
  readonly headDiameter: Mm;
  readonly headHeight: Mm;
  readonly lengths: readonly Mm[];
}

export interface Stud extends HardwareCommon {
  readonly kind: "stud";
  readonly head: Mm;
  readonly body: Mm;
  readonly hole: Mm;
  readonly grips: readonly { readonly least: Mm; readonly most: Mm }[];
}

export interface Retainer extends HardwareCommon {
  readonly kind: "retainer";
  readonly outside: Mm;
  readonly thickness: Mm;
}

export interface Receptacle extends HardwareCommon {
  readonly kind: "receptacle";
  readonly pitch: Mm;
  readonly width: Mm;
}
