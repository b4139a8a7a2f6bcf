// The fields of a strip. A roll is sold by its LEDs a metre, so that is what a record writes; pitch and cut length are
// worked out from it, and 60 a metre in threes cuts at 50 mm exactly.

import { type Field, mapped } from "../../design/field.ts";
import { record, required } from "../../design/fields.ts";
import { someMillimetres } from "../../design/length-fields.ts";
import { angle, count, number } from "../../design/number-fields.ts";
import { mm } from "../../geometry/quantity.ts";
import type { Strip } from "../strip.ts";
import { titleField } from "./basic-fields.ts";
import { figuresField } from "./figures-field.ts";

const some = someMillimetres("a length");

/** Reads everything but the strip's name, which is the key it stands under. */
export const stripField: Field<Omit<Strip, "id">> = mapped(
  record("a strip", {
    title: required(titleField, "what it is called in lists"),
    width: required(some, "its width"),
    height: required(some, "its height over all"),
    "per-metre": required(count("a number of LEDs", { least: 1 }), "LEDs in a metre"),
    "leds-per-cut": required(count("a number of LEDs", { least: 1, most: 24 }), "from cut to cut"),
    joint: required(some, "length that a soldered joint costs"),
    volts: required(number("volts", { above: 0, most: 60 }), "volts"),
    "milliamps-per-cut": required(number("milliamps", { above: 0 }), "one cut at full brightness"),
    "half-angle": required(angle("an angle", { above: 0, most: 90 }), "to half of the intensity"),
    "lumens-per-led": required(number("lumens", { above: 0 }), "typical light of one LED"),
    figures: required(figuresField, "where the numbers come from"),
  }),
  (value) => ({
    kind: "strip",
    title: value.title,
    width: value.width,
    height: value.height,
    pitch: mm(METRE / value["per-metre"]),
    cutEvery: mm((METRE * value["leds-per-cut"]) / value["per-metre"]),
    ledsPerCut: value["leds-per-cut"],
    joint: value.joint,
    volts: value.volts,
    milliampsPerCut: value["milliamps-per-cut"],
    halfAngle: value["half-angle"],
    lumensPerLed: value["lumens-per-led"],
    figures: value.figures,
  }),
);

/** In millimetres. */
const METRE = 1000;
