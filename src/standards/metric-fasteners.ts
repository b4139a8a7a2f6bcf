// Metric screws, nuts, washers and the holes they go through. Diameters and heights in mm, by thread ("m3").
// Each table is one standard: the same screw under another norm has other numbers, so the norm stays with the number.

import { type Mm, mm } from "../geometry/quantity.ts";

export const METRIC_THREADS = ["m2", "m2.5", "m3", "m4", "m5", "m6", "m8"] as const;
export type MetricThread = (typeof METRIC_THREADS)[number];

export interface ClearanceHole {
  readonly fine: Mm;
  readonly medium: Mm;
  readonly coarse: Mm;
}

export interface HeadSize {
  /** Head diameter dk (theoretical sharp edge on a countersunk head). */
  readonly diameter: Mm;
  /** Head height k. */
  readonly height: Mm;
}

export interface NutSize {
  /** Across flats s. */
  readonly acrossFlats: Mm;
  /** Greatest thickness m. */
  readonly thickness: Mm;
}

export interface WasherSize {
  readonly inside: Mm;
  readonly outside: Mm;
  readonly thickness: Mm;
}

/** Nominal thread diameter (ISO 261). */
export const THREAD_DIAMETER: Readonly<Record<MetricThread, Mm>> = {
  m2: mm(2),
  "m2.5": mm(2.5),
  m3: mm(3),
  m4: mm(4),
  m5: mm(5),
  m6: mm(6),
  m8: mm(8),
};

/** Clearance holes: ISO 273:1979, table; agreeing copies seen. */
export const CLEARANCE_HOLES: Readonly<Record<MetricThread, ClearanceHole>> = {
  m2: clearance(2.2, 2.4, 2.6),
  "m2.5": clearance(2.7, 2.9, 3.1),
  m3: clearance(3.2, 3.4, 3.6),
  m4: clearance(4.3, 4.5, 4.8),
  m5: clearance(5.3, 5.5, 5.8),
  m6: clearance(6.4, 6.6, 7.0),
  m8: clearance(8.4, 9.0, 10),
};

/** Hexagon socket countersunk, 90°: ISO 10642, theoretical dk and k; agreeing copies seen. */
export const ISO_10642: Readonly<Partial<Record<MetricThread, HeadSize>>> = {
  m3: head(6.72, 1.86),
  m4: head(8.96, 2.48),
  m5: head(11.2, 3.1),
  m6: head(13.44, 3.72),
};

/** Slotted and cross-recessed countersunk, 90°: ISO 2009 and ISO 7046; agreeing copies seen. */
export const ISO_2009_7046: Readonly<Partial<Record<MetricThread, HeadSize>>> = {
  m2: head(4.4, 1.2),
  "m2.5": head(5.5, 1.5),
  m3: head(6.3, 1.65),
  m4: head(9.4, 2.7),
  m5: head(10.4, 2.7),
  m6: head(12.6, 3.3),
};

/** Hexagon socket button head: ISO 7380-1; agreeing copies seen. */
export const ISO_7380_1: Readonly<Partial<Record<MetricThread, HeadSize>>> = {
  m3: head(5.7, 1.65),
  m4: head(7.6, 2.2),
  m5: head(9.5, 2.75),
  m6: head(10.5, 3.3),
};

/** Hexagon socket cap head: ISO 4762; agreeing copies seen. */
export const ISO_4762: Readonly<Partial<Record<MetricThread, HeadSize>>> = {
  m3: head(5.5, 3),
  m4: head(7, 4),
  m5: head(8.5, 5),
  m6: head(10, 6),
};

/** Hexagon nuts, style 1: ISO 4032; agreeing copies seen. */
export const ISO_4032: Readonly<Partial<Record<MetricThread, NutSize>>> = {
  m2: nut(4, 1.6),
  "m2.5": nut(5, 2),
  m3: nut(5.5, 2.4),
  m4: nut(7, 3.2),
  m5: nut(8, 4.7),
  m6: nut(10, 5.2),
};

/** Plain washers, normal series: ISO 7089; agreeing copies seen. */
export const ISO_7089: Readonly<Partial<Record<MetricThread, WasherSize>>> = {
  "m2.5": washer(2.7, 6, 0.5),
  m3: washer(3.2, 7, 0.5),
  m4: washer(4.3, 9, 0.8),
  m5: washer(5.3, 10, 1.0),
  m6: washer(6.4, 12, 1.6),
};

/** Depth of a 90° countersink that brings a head of `headDiameter` flush over a hole: k = (dk - d) / 2, from the 45° flank. */
export const countersinkDepth = (headDiameter: Mm, hole: Mm): Mm => mm((headDiameter - hole) / 2);

function clearance(fine: number, medium: number, coarse: number): ClearanceHole {
  return { fine: mm(fine), medium: mm(medium), coarse: mm(coarse) };
}

function head(diameter: number, height: number): HeadSize {
  return { diameter: mm(diameter), height: mm(height) };
}

function nut(acrossFlats: number, thickness: number): NutSize {
  return { acrossFlats: mm(acrossFlats), thickness: mm(thickness) };
}

function washer(inside: number, outside: number, thickness: number): WasherSize {
  return { inside: mm(inside), outside: mm(outside), thickness: mm(thickness) };
}
