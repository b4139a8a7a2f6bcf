// Sizes of a seated person, and of what a hand can turn: 5th-percentile woman to 95th-percentile man, in mm.
// Reach is measured from the plane of the seat back at shoulder height.

import { type Degrees, degrees, type Mm, mm } from "../geometry/quantity.ts";

export interface BodySpan {
  /** 5th-percentile woman. */
  readonly small: Mm;
  /** 95th-percentile man. */
  readonly large: Mm;
}

const span = (small: number, large: number): BodySpan => ({ small: mm(small), large: mm(large) });

/** NUREG-0700 Rev 3, table 11.4; seen. */
export const SEATED_PERSON = {
  functionalReach: span(677, 886),
  extendedReach: span(735, 942),
  eyeAboveSeat: span(724, 862),
  shoulderAboveSeat: span(509, 646),
  popliteal: span(376, 473),
  thighClearance: span(141, 186),
  kneeHeight: span(503, 604),
  source: "NUREG-0700 Rev 3, table 11.4",
} as const;

/** Head upright, back of the head near the plane of the seat back: from memory, unverified. A measured eye goes over it. */
export const EYE_BEFORE_SEAT_BACK = {
  distance: mm(180),
  source: "from memory, unverified",
} as const;

/** Controls on a console lie within this of its front edge: NUREG-0700 Rev 2, 11.1.1-5; seen. */
export const DEPTH_FROM_FRONT_EDGE = {
  most: mm(635),
  source: "NUREG-0700 Rev 2, 11.1.1-5",
} as const;

/** Room for knees and feet: OSHA guidance on computer workstations; seen. */
export const KNEE_BOX = {
  width: mm(520),
  depthAtKnee: mm(440),
  depthAtFoot: mm(600),
  source: "OSHA workstation guidance",
} as const;

/** Up to here feet are wanted, above it shins and knees: a shoe's toe with some air. */
export const FOOT_ROOM = { height: mm(120), source: "common practice" } as const;

export interface RotarySelectorLimits {
  readonly length: { readonly least: Mm; readonly most: Mm };
  readonly width: { readonly most: Mm };
  readonly height: { readonly least: Mm; readonly most: Mm };
  readonly step: { readonly least: Degrees; readonly most: Degrees };
  readonly positions: { readonly most: number };
  readonly source: string;
}

/** Knob of a rotary selector: MIL-STD-1472E, figure 4; seen. */
export const ROTARY_SELECTOR: RotarySelectorLimits = {
  length: { least: mm(25), most: mm(100) },
  width: { most: mm(25) },
  height: { least: mm(16), most: mm(75) },
  step: { least: degrees(15), most: degrees(40) },
  positions: { most: 24 },
  source: "MIL-STD-1472E figure 4",
};
