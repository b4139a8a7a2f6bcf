// Cut-outs for panel-mount instruments and for round control devices, and the rule of signs that lets neighbours touch.

import { type Mm, mm } from "../geometry/quantity.ts";

export interface InstrumentCutOut {
  /** Bezel, square, and its tolerance: minus only. */
  readonly bezel: Mm;
  /** Nominal cut-out and its tolerance: plus only. */
  readonly cutOut: Mm;
  readonly plus: Mm;
  readonly source: string;
}

// The rule of signs and the 45 were seen; the other cut-outs are from memory, unverified.
const instrument = (bezel: number, cutOut: number, plus: number): InstrumentCutOut => ({
  bezel: mm(bezel),
  cutOut: mm(cutOut),
  plus: mm(plus),
  source: bezel === 48 ? "IEC 61554:1999" : "IEC 61554:1999, from memory, unverified",
});

/** IEC 61554:1999, by bezel size. */
export const INSTRUMENT_CUT_OUTS: readonly InstrumentCutOut[] = [
  instrument(48, 45, 0.6),
  instrument(72, 68, 0.7),
  instrument(96, 92, 0.8),
  instrument(144, 138, 1.0),
];

/** IEC 61554:1999: a cut-out may only be larger than nominal, a bezel only smaller. */
export const isCutOutWithin = (size: Mm, of: InstrumentCutOut): boolean =>
  size >= of.cutOut && size <= of.cutOut + of.plus;

/** Opening for `count` instruments side by side without gaps: bezel (n - 1) + cut-out. */
export const groupedCutOut = (count: number, of: InstrumentCutOut): Mm =>
  mm(of.bezel * (count - 1) + of.cutOut);

export interface DeviceHole {
  readonly hole: Mm;
  readonly plus: Mm;
  /** Width of the notch and the size over it; null where the size has none from a source. */
  readonly notch: { readonly width: Mm; readonly over: Mm } | null;
  readonly source: string;
}

/** Push buttons and lamps by nominal size: IEC 60947-5-1. 22.3 and the 3.2 notch were seen, the rest is from memory, unverified. */
export const DEVICE_HOLES: Readonly<Record<"16" | "22" | "30", DeviceHole>> = {
  "16": {
    hole: mm(16.2),
    plus: mm(0.2),
    notch: null,
    source: "IEC 60947-5-1, from memory, unverified",
  },
  "22": {
    hole: mm(22.3),
    plus: mm(0.4),
    notch: { width: mm(3.2), over: mm(24.1) },
    source: "IEC 60947-5-1",
  },
  "30": {
    hole: mm(30.5),
    plus: mm(0.5),
    notch: null,
    source: "IEC 60947-5-1, from memory, unverified",
  },
};

/** Round instruments: 2 1/4 in and 3 1/8 in, common practice. */
export const ROUND_INSTRUMENTS = {
  small: mm(57.15),
  large: mm(79.375),
  source: "common practice",
} as const;

/** IEC 60715; seen. */
export const DIN_RAIL = {
  width: mm(35),
  depths: [mm(7.5), mm(15)],
  module: mm(17.5),
  source: "IEC 60715",
} as const;
