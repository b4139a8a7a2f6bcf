// Trim, lamp box and angled box as they are written.

import { degrees } from "../geometry/quantity.ts";
import { type Field, mapped } from "./field.ts";
import { list, optional, record, required, tuple, usual } from "./fields.ts";
import { millimetres, noOrSomeMillimetres, someMillimetres } from "./length-fields.ts";
import { angle, count } from "./number-fields.ts";
import type { AngledBoxDesign, LampBoxDesign, TrimDesign } from "./printed-design.ts";
import { name, oneOf } from "./text-fields.ts";
import {
  BOX_FLANGE,
  BOX_STOCK,
  LAMP_BOX_DIFFUSER,
  LAMP_BOX_FLANGE,
  LAMP_BOX_LED,
  LAMP_BOX_LEDS,
} from "./usual-values.ts";

const STOCK = name("the name of a stock");
const PRINT = optional(STOCK, "The stock it is printed from; as the spacer where it is not said");

export const TRIM: Field<TrimDesign> = record("a trim", {
  lip: optional(
    someMillimetres("a length"),
    "How far its lip reaches in over the display's edge; as far as the window where it is not said",
  ),
  fixing: usual(oneOf("a fixing", ["snap", "glue", "screw"]), {
    value: "snap",
    about: "What holds it in the fascia",
  }),
  filter: optional(STOCK, "The tinted sheet behind its lip"),
  print: PRINT,
});

/** More LEDs than this behind one window are a strip. */
const MOST_LEDS = 24;

export const LAMP_BOX: Field<LampBoxDesign> = record("a lamp box", {
  leds: usual(count("a count", { least: 1, most: MOST_LEDS }), {
    value: LAMP_BOX_LEDS,
    about: "LEDs in each window",
  }),
  led: usual(name("the name of a part"), {
    value: LAMP_BOX_LED,
    about: "The bare LED, from the catalogue",
  }),
  depth: optional(
    millimetres("a depth", { above: 0, most: 100 }),
    "From the sheet that it lies on to its lid; as deep as the spacer where it is not said",
  ),
  diffuser: usual(STOCK, {
    value: LAMP_BOX_DIFFUSER,
    about: "The sheet on the shelf of each cell",
  }),
  flange: usual(noOrSomeMillimetres("a width"), {
    value: LAMP_BOX_FLANGE,
    about: "Round its front, to glue or clamp it by",
  }),
  print: PRINT,
});

const CORNER = mapped(tuple("a corner", millimetres("a length"), ["x", "y"]), ([x, y]) => ({
  x,
  y,
}));

/** A face steeper than this is a wall. */
const STEEPEST = 75;

export const ANGLED_BOX: Field<AngledBoxDesign> = record("an angled box", {
  footprint: required(
    list("the corners of a footprint", CORNER, { least: 3, most: 40 }),
    "Corners of its walls on the console, seen from above; y away from the operator",
  ),
  slope: usual(angle("a slope", { least: 0, most: STEEPEST }), {
    value: degrees(0),
    about: "Of its face, rising away from the operator",
  }),
  rise: required(someMillimetres("a height"), "Height of its walls where they are lowest"),
  flange: usual(noOrSomeMillimetres("a width"), {
    value: BOX_FLANGE,
    about: "Round its foot, outside the walls; 0 mm: none",
  }),
  print: usual(STOCK, { value: BOX_STOCK, about: "The stock it is printed from" }),
});
