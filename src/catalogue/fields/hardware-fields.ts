// The fields of knobs, caps, guards, bezels, boots, plugs, nuts, washers, standoffs, screws, studs, retainers and receptacles.

import { type Field, mapped } from "../../design/field.ts";
import { type Keys, list, type RecordOf, record, required } from "../../design/fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "../../design/length-fields.ts";
import { angle } from "../../design/number-fields.ts";
import { oneOf, text } from "../../design/text-fields.ts";
import type {
  Bezel,
  Boot,
  Cap,
  Guard,
  Hardware,
  Knob,
  Nut,
  Plug,
  Receptacle,
  Retainer,
  Screw,
  Standoff,
  Stud,
  Washer,
} from "../hardware.ts";
import { gripField, threadField, titleField } from "./basic-fields.ts";
import { figuresField } from "./figures-field.ts";
import { shapeField } from "./shape-fields.ts";

type Nameless<Kind extends Hardware> = Omit<Kind, "id">;

const length = someMillimetres("a length");

const named = {
  title: required(titleField, "what it is called in lists"),
  figures: required(figuresField, "where the numbers come from"),
} as const;

/** A record without the places of its keys. */
const bare = <Of extends Keys>(value: RecordOf<Of>): Omit<RecordOf<Of>, "written"> => {
  const { written: _written, ...fields } = value;
  return fields;
};

export const knobField: Field<Nameless<Knob>> = mapped(
  record("a knob", {
    ...named,
    diameter: required(length, "widest diameter"),
    height: required(length, "height"),
    bore: required(length, "diameter of the bore"),
    "bore-depth": required(length, "depth of the bore"),
    pointer: required(angle("an angle"), "clock angle from the bore's flat to the pointer"),
  }),
  ({ "bore-depth": boreDepth, title, figures, diameter, height, bore, pointer }) => ({
    kind: "knob",
    title,
    figures,
    diameter,
    height,
    bore,
    boreDepth,
    pointer,
  }),
);

export const capField: Field<Nameless<Cap>> = mapped(
  record("a cap", {
    ...named,
    shape: required(shapeField, "its outline"),
    height: required(length, "height that it adds to the button"),
  }),
  ({ title, figures, shape, height }) => ({ kind: "cap", title, figures, shape, height }),
);

export const guardField: Field<Nameless<Guard>> = mapped(
  record("a guard", {
    ...named,
    shape: required(shapeField, "footprint on the layer that it is clamped to"),
    thickness: required(length, "thickness of its plate under the nut"),
    height: required(length, "height closed"),
    "open-height": required(length, "reach of its cover open"),
  }),
  ({ title, figures, shape, thickness, height, "open-height": openHeight }) => ({
    kind: "guard",
    title,
    figures,
    shape,
    thickness,
    height,
    openHeight,
  }),
);

export const bezelField: Field<Nameless<Bezel>> = mapped(
  record("a bezel", {
    ...named,
    diameter: required(length, "outside diameter"),
    height: required(length, "height"),
  }),
  ({ title, figures, diameter, height }) => ({ kind: "bezel", title, figures, diameter, height }),
);

export const bootField: Field<Nameless<Boot>> = mapped(
  record("a boot", {
    ...named,
    thread: required(threadField, "its thread"),
    diameter: required(length, "diameter of its foot"),
    thickness: required(length, "length of thread that its foot takes"),
    height: required(length, "height over all above the layer it stands on"),
  }),
  (value) => ({ kind: "boot", ...bare(value) }),
);

export const plugField: Field<Nameless<Plug>> = mapped(
  record("a plug", {
    ...named,
    shape: required(shapeField, "its outline across its axis"),
    length: required(length, "how far it stands out from its socket"),
    bend: required(noOrSomeMillimetres("a length"), "room for the bend of its cable"),
  }),
  (value) => ({ kind: "plug", ...bare(value) }),
);

export const nutField: Field<Nameless<Nut>> = mapped(
  record("a nut", {
    ...named,
    thread: required(threadField, "its thread"),
    "across-flats": required(length, "across flats"),
    "across-corners": required(length, "across corners"),
    thickness: required(length, "thickness"),
  }),
  (value) => ({
    kind: "nut",
    title: value.title,
    figures: value.figures,
    thread: value.thread,
    acrossFlats: value["across-flats"],
    acrossCorners: value["across-corners"],
    thickness: value.thickness,
  }),
);

export const washerField: Field<Nameless<Washer>> = mapped(
  record("a washer", {
    ...named,
    inside: required(length, "inside diameter"),
    outside: required(length, "outside diameter"),
    thickness: required(length, "thickness"),
  }),
  (value) => ({ kind: "washer", ...bare(value) }),
);

export const standoffField: Field<Nameless<Standoff>> = mapped(
  record("a standoff", {
    ...named,
    thread: required(threadField, "its thread"),
    length: required(length, "length"),
    "across-flats": required(length, "across flats"),
  }),
  ({ title, figures, thread, length: long, "across-flats": acrossFlats }) => ({
    kind: "standoff",
    title,
    figures,
    thread,
    length: long,
    acrossFlats,
  }),
);

export const screwField: Field<Nameless<Screw>> = mapped(
  record("a screw", {
    ...named,
    thread: required(threadField, "its thread"),
    norm: required(text("a standard, or none", 40), "the standard that its head follows"),
    head: required(
      oneOf("a form of head", ["pan", "cap", "button", "countersunk"]),
      "form of its head",
    ),
    "head-diameter": required(length, "diameter of its head"),
    "head-height": required(length, "height of its head"),
    lengths: required(list("lengths", length, { least: 1 }), "lengths that are sold"),
  }),
  (value) => ({
    kind: "screw",
    title: value.title,
    figures: value.figures,
    thread: value.thread,
    norm: value.norm,
    head: value.head,
    headDiameter: value["head-diameter"],
    headHeight: value["head-height"],
    lengths: value.lengths,
  }),
);

export const studField: Field<Nameless<Stud>> = mapped(
  record("a stud", {
    ...named,
    head: required(length, "diameter of its head"),
    body: required(length, "diameter of its body"),
    hole: required(length, "hole in the panel"),
    grips: required(list("grips", gripField, { least: 1 }), "thicknesses that its lengths clamp"),
  }),
  (value) => ({ kind: "stud", ...bare(value) }),
);

export const retainerField: Field<Nameless<Retainer>> = mapped(
  record("a retainer", {
    ...named,
    outside: required(length, "outside diameter"),
    thickness: required(length, "thickness"),
  }),
  (value) => ({ kind: "retainer", ...bare(value) }),
);

export const receptacleField: Field<Nameless<Receptacle>> = mapped(
  record("a receptacle", {
    ...named,
    pitch: required(length, "pitch along the rail"),
    width: required(length, "width"),
  }),
  (value) => ({ kind: "receptacle", ...bare(value) }),
);
