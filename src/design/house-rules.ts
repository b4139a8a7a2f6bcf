// Limits that a workshop may set for itself, by the key that sets each. What holds where it says nothing stands with the check
// that judges by it.

import type { Mm } from "../geometry/quantity.ts";
import { type Field, mapped } from "./field.ts";
import { dispensable, optional, record } from "./fields.ts";
import { millimetres } from "./length-fields.ts";
import { lookupOf } from "./map-fields.ts";

const HOUSE_RULES = {
  web: "Least web between two openings of a sheet",
  edge: "Least rim between an opening and a sheet's edge",
  "acrylic-corner": "Least radius of an inside corner in acrylic",
  "mount-web-acrylic": "Least acrylic beside a stud that is drawn tight",
  "fixings-apart": "Most between neighbours among the stack's screws and dowels",
  proud: "How far a control must stand out of the face",
  "knob-play": "How much wider than its shaft a bore may be",
  "photo-residual": "How far the marks of a photograph may miss their places",
  "boss-wall": "Least plastic round an insert",
  "lip-cover": "How much more than the display's play a trim's lip covers",
  "lamp-box-least": "Least depth of a lamp box",
  "lamp-box-most": "Most depth of a lamp box",
  "sweep-room": "From a lever or a knob to what stands beside it",
  "built-in-room": "From a body to wood and to what is built in",
  "neighbour-room": "From a body to a neighbour's and to a rail",
  "driver-diameter": "Room across for a straight driver",
  "driver-length": "Room before a fastener for a driver's blade",
  "lift-room": "Room for hands under a panel that is lifted off",
  "loop-slack": "What a loom has more than the way to its plug",
  "frame-web": "Least wood beside a slot or a bolt of the frame",
  "rail-web": "Least wood beside a hole of a rail bar",
};

export type HouseRuleKey = keyof typeof HOUSE_RULES;

/** What the workshop says; a key that it leaves out is not there. */
export type HouseRules = Readonly<Partial<Record<HouseRuleKey, Mm>>>;

export const HOUSE_RULES_FIELD: Field<HouseRules> = mapped(
  record(
    "limits by name",
    Object.fromEntries(
      Object.entries(HOUSE_RULES).map(([key, about]) => [
        key,
        dispensable(optional(millimetres("a length", { least: 0 }), about)),
      ]),
    ),
  ),
  (values) =>
    lookupOf(
      Object.keys(HOUSE_RULES).flatMap((key) => {
        const value = values[key];
        return value === undefined || value === null ? [] : [[key, value] as const];
      }),
    ),
);
