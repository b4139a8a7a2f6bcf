// How a part is held: by its bush and nut, by a snap or bracket, by screws, or not by the fascia at all.

import { byWord } from "../../design/choice-fields.ts";
import { type Field, mapped } from "../../design/field.ts";
import { list, record, required, usual } from "../../design/fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "../../design/length-fields.ts";
import { oneOf } from "../../design/text-fields.ts";
import { mm } from "../../geometry/quantity.ts";
import type { Hold, ScrewHole } from "../part.ts";
import { gripField, idField, idsField, pointField, threadField } from "./basic-fields.ts";

const length = someMillimetres("a length");
const seat = oneOf("which side of the layer it bears on", ["behind", "front"]);
const grip = required(gripField, "thickness that it can clamp, least and most");
const by = <const Word extends string>(word: Word) =>
  required(oneOf("how it is held", [word]), "how it is held");

const screwHole: Field<ScrewHole> = mapped(
  record("a screw hole", {
    at: required(pointField, "its place from the axis"),
    diameter: required(length, "its diameter"),
    head: required(length, "diameter of the screw's head on the operator's side"),
  }),
  ({ at, diameter, head }) => ({ at, diameter, head }),
);

export const holdField: Field<Hold> = byWord<Hold>("how it is held", "by", {
  bush: mapped(
    record("a threaded bush", {
      by: by("bush"),
      seat: required(
        seat,
        "behind: shoulder behind, nut in front; front: flange in front, nut behind",
      ),
      thread: required(threadField, "its thread"),
      diameter: required(length, "major diameter of the thread"),
      length: required(length, "length of thread from the seat"),
      grip,
      nut: required(idField, "its nut"),
      washers: usual(idsField, { value: [], about: "its washers, from the panel out" }),
      spanner: required(length, "diameter of the room that the nut's spanner or socket needs"),
    }),
    ({ by: _by, written: _written, ...bush }) => ({ kind: "bush", ...bush }),
  ),
  snap: mapped(
    record("barbs, a clip or a bracket", { by: by("snap"), grip }),
    ({ grip: range }) => ({ kind: "snap", seat: "front", grip: range }),
  ),
  screws: mapped(
    record("screws", {
      by: by("screws"),
      seat: required(
        seat,
        "behind: the part lies behind the layer; front: its flange lies in front",
      ),
      screw: required(idField, "its screw"),
      holes: required(list("screw holes", screwHole, { least: 1 }), "its screw holes"),
      "stand-off": usual(noOrSomeMillimetres("a distance"), {
        value: mm(0),
        about: "spacers that hold it off the layer",
      }),
      grip,
    }),
    (value) => ({
      kind: "screws",
      seat: value.seat,
      screw: value.screw,
      holes: value.holes,
      standOff: value["stand-off"],
      grip: value.grip,
    }),
  ),
  behind: mapped(record("held behind the fascia", { by: by("behind") }), () => ({
    kind: "behind",
    seat: "behind",
  })),
});
