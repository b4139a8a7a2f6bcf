// The fields of a part, in the order of its record; see part.ts for what each means.

import { type Field, mapped } from "../../design/field.ts";
import { list, optional, record, required, usual } from "../../design/fields.ts";
import { millimetres, someMillimetres } from "../../design/length-fields.ts";
import { mapById, type NameRule } from "../../design/map-fields.ts";
import { angle, count, number } from "../../design/number-fields.ts";
import { oneOf, text, yesNo } from "../../design/text-fields.ts";
import { point } from "../../geometry/contour.ts";
import { degrees } from "../../geometry/quantity.ts";
import { derivedBodies } from "../derived-bodies.ts";
import type {
  Body,
  Contact,
  DisplayArea,
  Hold,
  Lever,
  Openings,
  Part,
  Shaft,
  Supply,
  Turning,
} from "../part.ts";
import type { Shape } from "../shape.ts";
import { idsField, orNone, pointField, sizePair, titleField } from "./basic-fields.ts";
import { beside } from "./beside.ts";
import { figuresField } from "./figures-field.ts";
import { holdField } from "./hold-field.ts";
import { partLatchField } from "./latch-fields.ts";
import { shapeAtField, shapeField } from "./shape-fields.ts";

const length = someMillimetres("a length");
const turn = angle("an angle");

interface WrittenOpenings extends Omit<Openings, "passes"> {
  readonly passes: Shape | null;
}

const openingsField: Field<WrittenOpenings> = mapped(
  record("the openings that it needs", {
    clamp: required(shapeField, "the hole in the layer that it clamps, in metal"),
    tabs: usual(list("holes for tabs", shapeAtField), { value: [], about: "holes for its tabs" }),
    passes: optional(shapeField, "what must enter the hole; a bush where nothing is written"),
    covered: required(length, "the widest hole that nut, washer or flange still covers"),
    front: optional(shapeField, "the opening in a layer in front"),
    behind: optional(shapeField, "the opening in a sheet behind"),
  }),
  ({ written: _written, ...openings }) => openings,
);

const bodyKeys = record("a body", {
  role: required(
    oneOf("what the body is", [
      "flange",
      "nut",
      "needle",
      "button",
      "lens",
      "glass",
      "case",
      "board",
      "tails",
      "plug",
      "cable",
    ]),
    "what it is",
  ),
  at: usual(pointField, { value: point(0, 0), about: "from the axis of the part" }),
  from: required(millimetres("a height above the seat"), "its lower end"),
  to: required(millimetres("a height above the seat"), "its upper end"),
});

const bodyField: Field<Body> = mapped(
  beside(shapeField, bodyKeys, ["role", "at", "from", "to"]),
  ({ first: shape, second: { role, at, from, to } }) => ({ role, shape, at, from, to }),
);

const shaftField: Field<Shaft> = mapped(
  record("a shaft", {
    diameter: required(length, "its diameter"),
    form: required(oneOf("its form", ["round", "flat", "splined"]), "its form"),
    length: required(length, "its end above the seat"),
    "flat-at": required(orNone(turn), "clock angle of the flat at the first stop, or none"),
  }),
  (value) => ({
    diameter: value.diameter,
    form: value.form,
    length: value.length,
    flatAt: value["flat-at"],
  }),
);

const leverField: Field<Lever> = mapped(
  record("a lever", {
    length: required(length, "its end above the seat, upright"),
    tip: required(length, "diameter of its tip"),
    throw: required(angle("an angle", { above: 0, most: 60 }), "lean to each side"),
    line: usual(turn, { value: degrees(0), about: "clock line that it moves along" }),
    positions: required(list("positions", text("a position", 40), { least: 2 }), "its positions"),
  }),
  (value) => ({
    length: value.length,
    tip: value.tip,
    throw: value.throw,
    line: value.line,
    positions: value.positions,
  }),
);

const turningField: Field<Turning> = mapped(
  record("how it turns", {
    first: required(turn, "clock angle of the first stop"),
    travel: required(orNone(angle("an angle", { above: 0 })), "travel to the last stop, or none"),
    step: required(orNone(angle("an angle", { above: 0 })), "from detent to detent, or none"),
    positions: required(orNone(count("a number of positions", { least: 2 })), "how many, or none"),
  }),
  ({ first, travel, step, positions }) => ({ first, travel, step, positions }),
);

const activeField = mapped(
  record("the active area", {
    size: required(sizePair, "width and height"),
    at: usual(pointField, { value: point(0, 0), about: "its centre from the axis" }),
  }),
  ({ size: [width, height], at }) => ({ width, height, at }),
);

const displayField: Field<DisplayArea> = mapped(
  record("a display", {
    window: required(shapeAtField, "the clear opening in front of it"),
    active: required(activeField, "the area that shows something"),
    proud: required(millimetres("a height above the seat"), "front of glass or bezel"),
  }),
  ({ window, active, proud }) => ({ window, active, proud }),
);

export const CONTACT_NAMES: NameRule = {
  pattern: /^[a-z0-9]+(?:-[a-z0-9]+)*$/,
  hint: () => "small letters, figures and hyphens",
  isInstance: false,
};

const contactsField: Field<readonly Contact[]> = mapped(
  mapById("contacts", text("what the contact is", 30), CONTACT_NAMES),
  (entries) =>
    entries.flatMap((entry) =>
      entry.kind === "read" ? [{ name: entry.id, role: entry.value }] : [],
    ),
);

export const supplyField: Field<Supply> = mapped(
  record("a supply", {
    volts: required(number("volts", { above: 0, most: 60 }), "volts"),
    milliamps: required(number("milliamps", { above: 0 }), "milliamps"),
  }),
  ({ volts, milliamps }) => ({ volts, milliamps }),
);

const FAMILY = oneOf("a family of parts", [
  "toggle",
  "rocker",
  "lever",
  "rotary-switch",
  "thumbwheel",
  "push-button",
  "key",
  "keypad",
  "potentiometer",
  "slide",
  "encoder",
  "lamp",
  "display",
  "instrument",
  "servo",
  "connector",
  "fuse-holder",
  "key-switch",
  "speaker",
]);

const HAND = oneOf("how a hand takes hold", [
  "push-button",
  "toggle",
  "lever-lock-toggle",
  "rotary-selector",
  "knob",
  "thumbwheel",
  "slide",
  "key-operated",
  "none",
]);

/** Reads everything but the part's name, which is the key it stands under. */
export const partField: Field<Omit<Part, "id">> = mapped(
  record("a part", {
    title: required(titleField, "what it is called in lists"),
    family: required(FAMILY, "its family"),
    hand: required(HAND, "how a hand takes hold of it"),
    hold: required(holdField, "how it is held"),
    openings: required(openingsField, "the openings that it needs"),
    bodies: required(
      list("bodies", bodyField, { least: 1 }),
      "everything solid but bush, shaft and lever",
    ),
    face: required(list("outlines", shapeAtField, { least: 1 }), "what is drawn on the face"),
    shaft: optional(shaftField, "its shaft"),
    lever: optional(leverField, "its lever"),
    turning: optional(turningField, "how it turns"),
    display: optional(displayField, "its window and active area"),
    latch: optional(partLatchField, "the latch of its plug behind the panel"),
    usual: usual(idsField, { value: [], about: "knob, cap or guard that it usually wears" }),
    contacts: usual(contactsField, { value: [], about: "its contacts by name" }),
    supply: optional(supplyField, "what it draws"),
    "emergency-look": usual(yesNo("whether it looks like an emergency stop"), {
      value: false,
      about: "wears the look of an emergency stop",
    }),
    caution: optional(text("a caution", 300), "what a builder must be told wherever it is used"),
    figures: required(figuresField, "where the numbers come from"),
  }),
  ({ written: _written, "emergency-look": emergencyLook, ...fields }) => {
    const openings = withPasses(fields.openings, fields.hold);
    const bodies = [...fields.bodies, ...derivedBodies({ ...fields, openings })];
    return { kind: "part", ...fields, openings, bodies, emergencyLook };
  },
);

/** A bush passes as the plain cylinder that it is; anything else passes as its opening unless something is written. */
const withPasses = (openings: WrittenOpenings, hold: Hold): Openings => ({
  ...openings,
  passes:
    openings.passes ??
    (hold.kind === "bush" ? { kind: "round", diameter: hold.diameter } : openings.clamp),
});
