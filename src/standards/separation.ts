// How far apart controls must stand for one bare hand, edge to edge, by how the hand takes hold of each.
// Takes two kinds of hold, gives millimetres and who says so: a pair that no table covers carries a house figure that says it is one.

import { type Mm, mm } from "../geometry/quantity.ts";

/** The row of the people table: how a hand takes hold. Lamps, displays and connectors are not touched in use. */
export type HandKind =
  | "push-button"
  | "toggle"
  | "lever-lock-toggle"
  | "rotary-selector"
  | "knob"
  | "thumbwheel"
  | "slide"
  | "key-operated"
  | "none";

export interface Separation {
  readonly least: Mm;
  /** Document, table and edition, or the plain truth where there is none. */
  readonly source: string;
}

// MIL-STD-1472E Table VII and NUREG-0700 Rev 3 Table 11.5 agree wherever both give a figure; the figures are theirs.
const TABLE = "NUREG-0700 Rev 3 Table 11.5 / MIL-STD-1472E Table VII";
const SELECTORS = "MIL-STD-1472E figure 4";
const KEYS = "NUREG-0700 Rev 3 Table 11.5";
const MEMORY = "from memory, unverified";
const AS_TOGGLE = `as a toggle, ${TABLE}`;
const AS_KNOB = "no published figure: as beside a knob";

/** Between two controls worked by one hand at random, in either order; null where a hand never touches one of them. */
export function separation(a: HandKind, b: HandKind): Separation | null {
  return ROWS[`${a}/${b}`] ?? ROWS[`${b}/${a}`] ?? null;
}

/** Whether a document gives the figure, nobody has seen one, or it is taken over from another pair. */
export const separationKind = (source: string): "standard" | "memory" | "practice" => {
  if (source === MEMORY) return "memory";
  return source === AS_KNOB ? "practice" : "standard";
};

const row = (least: number, source: string): Separation => ({ least: mm(least), source });

// Each unordered pair stands here once.
const ROWS: Readonly<Record<string, Separation>> = {
  "push-button/push-button": row(13, TABLE),
  "push-button/toggle": row(13, TABLE),
  "push-button/thumbwheel": row(13, TABLE),
  "push-button/rotary-selector": row(13, TABLE),
  "push-button/knob": row(13, TABLE),
  "push-button/slide": row(13, TABLE),
  "toggle/toggle": row(19, TABLE),
  "toggle/thumbwheel": row(13, TABLE),
  "toggle/rotary-selector": row(19, TABLE),
  "toggle/knob": row(19, TABLE),
  "toggle/slide": row(19, TABLE),
  "thumbwheel/thumbwheel": row(13, TABLE),
  "thumbwheel/rotary-selector": row(19, TABLE),
  "thumbwheel/knob": row(19, TABLE),
  "thumbwheel/slide": row(13, TABLE),
  "rotary-selector/rotary-selector": row(25, SELECTORS),
  "rotary-selector/knob": row(25, TABLE),
  "rotary-selector/slide": row(13, TABLE),
  "knob/knob": row(25, MEMORY),
  "knob/slide": row(13, TABLE),
  "slide/slide": row(13, TABLE),
  "key-operated/key-operated": row(25, KEYS),
  "key-operated/push-button": row(13, KEYS),
  "key-operated/toggle": row(19, KEYS),
  "key-operated/knob": row(19, KEYS),
  "key-operated/rotary-selector": row(19, AS_KNOB),
  "key-operated/thumbwheel": row(19, AS_KNOB),
  "key-operated/slide": row(19, AS_KNOB),
  "lever-lock-toggle/lever-lock-toggle": row(25, MEMORY),
  "lever-lock-toggle/toggle": row(25, MEMORY),
  "lever-lock-toggle/push-button": row(13, AS_TOGGLE),
  "lever-lock-toggle/thumbwheel": row(13, AS_TOGGLE),
  "lever-lock-toggle/rotary-selector": row(19, AS_TOGGLE),
  "lever-lock-toggle/knob": row(19, AS_TOGGLE),
  "lever-lock-toggle/slide": row(19, AS_TOGGLE),
  "lever-lock-toggle/key-operated": row(19, AS_TOGGLE),
};

/** Push-button arrays and legend switches, between groups and to toggles: NUREG-0700 Rev 3 Table 11.5. */
export const ARRAY_SEPARATION = { betweenGroups: mm(50), toToggle: mm(38), source: KEYS } as const;

/** Keys of one pad, centre gaps: a pad counts as one component, so this is only for pads built of single keys. */
export const KEYS_OF_ONE_PAD: Separation = row(6.4, MEMORY);
