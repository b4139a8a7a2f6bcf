// How tall and how bold a legend must be for the eye that reads it. Heights come from the angle that a capital subtends
// at the eye; stroke and spacing are shares of that height.

import { type Degrees, degrees, type Mm, mm } from "../geometry/quantity.ts";
import { arcTangent, tangent, toDegrees, toRadians } from "../geometry/trigonometry.ts";

const ARC_MINUTES_PER_DEGREE = 60;

/** Angles in arc minutes. */
export const CHARACTER_ANGLES = {
  /** NUREG-0700 Rev 3, 11.4.1.5-1. */
  least: { arcMinutes: 15, source: "NUREG-0700 Rev 3, 11.4.1.5-1" },
  preferred: { arcMinutes: 20, source: "NUREG-0700 Rev 3, 11.4.1.5-1" },
  /** The older edition asks for more: NUREG-0700 Rev 2, 1.3.1-4. */
  leastInRevision2: { arcMinutes: 16, source: "NUREG-0700 Rev 2, 1.3.1-4" },
  preferredMost: { arcMinutes: 22, source: "NUREG-0700 Rev 2, 1.3.1-4" },
  /** Legends that alert: MIL-STD-411F, 5.2.9. */
  alerting: { arcMinutes: 20, source: "MIL-STD-411F, 5.2.9" },
} as const;

/** Stroke as a share of cap height: DOD-HDBK-791, 6-5.3.2. */
export const STROKE_SHARES = {
  darkOnLight: 1 / 6,
  lightOnDarkMost: 1 / 7,
  lightOnDarkLeast: 1 / 8,
  source: "DOD-HDBK-791, 6-5.3.2",
} as const;

/** Width of a capital as a share of its height: DOD-HDBK-791, 6-5.3.2. */
export const WIDTH_SHARES = { least: 3 / 5, most: 1, source: "DOD-HDBK-791, 6-5.3.2" } as const;

/** Least gaps: characters by strokes, words by characters, lines by heights: NUREG-0700 Rev 3, 11.4.1.5-7. */
export const SPACING = {
  betweenCharactersInStrokes: 1,
  betweenWordsInCharacters: 1,
  betweenLinesInHeights: 1 / 2,
  source: "NUREG-0700 Rev 3, 11.4.1.5-7",
} as const;

/** Height that subtends `arcMinutes` at `distance`: 2 D tan(angle / 2). */
export function characterHeight(distance: Mm, arcMinutes: number): Mm {
  return mm(2 * distance * tangent(toRadians(degrees(arcMinutes / ARC_MINUTES_PER_DEGREE / 2))));
}

/** Arc minutes that a character of `height` subtends at `distance`. */
export function arcMinutes(height: Mm, distance: Mm): number {
  const half: Degrees = toDegrees(arcTangent(height / (2 * distance)));
  return 2 * half * ARC_MINUTES_PER_DEGREE;
}
