// The fields of a mount; see mount.ts for what each means.

import { byWord } from "../../design/choice-fields.ts";
import { type Field, mapped } from "../../design/field.ts";
import { optional, record, required } from "../../design/fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "../../design/length-fields.ts";
import { oneOf } from "../../design/text-fields.ts";
import type { Mount, MountHoles } from "../mount.ts";
import { idField, orNone, titleField } from "./basic-fields.ts";
import { figuresField } from "./figures-field.ts";
import { shapeField } from "./shape-fields.ts";

const some = someMillimetres("a length");
const noOrSome = noOrSomeMillimetres("a length");
const by = <const Word extends string>(word: Word) =>
  required(oneOf("how the holes lie", [word]), "how the holes lie");

const holesField: Field<MountHoles> = byWord<MountHoles>("mount holes", "by", {
  columns: mapped(
    record("two columns of holes", {
      by: by("columns"),
      apart: required(some, "from one column to the other"),
      first: required(some, "first row from each end"),
      pitch: required(some, "pitch of the rows that may be used"),
      hole: required(shapeField, "the hole in metal"),
      "in-acrylic": required(shapeField, "the hole in painted acrylic"),
      "slotted-column": required(
        oneOf("a column", ["left", "right", "none"]),
        "the column that is slotted in acrylic",
      ),
      span: required(some, "most that two rows may lie apart"),
    }),
    (value) => ({
      kind: "columns",
      apart: value.apart,
      first: value.first,
      pitch: value.pitch,
      hole: value.hole,
      inAcrylic: value["in-acrylic"],
      slottedColumn: value["slotted-column"],
      span: value.span,
    }),
  ),
  units: mapped(
    record("holes of a rack", {
      by: by("units"),
      apart: required(some, "from one column to the other"),
      hole: required(shapeField, "the hole"),
      inset: required(some, "from the panel's lower and upper edge"),
    }),
    ({ apart, hole, inset }) => ({ kind: "units", apart, hole, inset }),
  ),
  subrack: mapped(
    record("holes of a subrack", {
      by: by("subrack"),
      "rows-apart": required(some, "from one row to the other"),
      "first-from-left": required(some, "first hole from the left edge"),
      pitch: required(some, "pitch along the row"),
      hole: required(shapeField, "the hole"),
    }),
    (value) => ({
      kind: "subrack",
      rowsApart: value["rows-apart"],
      firstFromLeft: value["first-from-left"],
      pitch: value.pitch,
      hole: value.hole,
    }),
  ),
  corners: mapped(
    record("a hole near each corner", {
      by: by("corners"),
      inset: required(some, "from both edges"),
      hole: required(shapeField, "the hole"),
    }),
    ({ inset, hole }) => ({ kind: "corners", inset, hole }),
  ),
});

const heightField: Field<Mount["height"]> = mapped(
  record("how a size is counted", {
    unit: required(oneOf("a unit", ["modules", "U", "HP", "mm"]), "what is counted"),
    pitch: required(some, "how long one is"),
    less: required(noOrSome, "how much shorter a panel is than its count"),
  }),
  ({ unit, pitch, less }) => ({ unit, pitch, less }),
);

/** Reads everything but the mount's name, which is the key it stands under. */
export const mountField: Field<Omit<Mount, "id">> = mapped(
  record("a mount", {
    title: required(titleField, "what it is called in lists"),
    width: required(orNone(some), "nominal width, or none where the design gives it"),
    height: required(heightField, "how a size is counted"),
    counts: required(oneOf("a side", ["height", "width"]), "which side is counted"),
    "fixed-height": optional(some, "height of mounts that count widths"),
    undersize: required(noOrSome, "how much smaller a panel is cut, a side"),
    corner: required(noOrSome, "radius of the outline's corners"),
    holes: required(holesField, "its holes"),
    fastener: required(idField, "the stud or screw"),
    seat: required(noOrSome, "strip of the rear that a rail covers, a side"),
    "clear-width": required(orNone(some), "clear width between the rails, or none"),
    web: required(some, "web between hole and nominal outline"),
    "head-clearance": required(noOrSome, "hole in the layers in front of the clamped one"),
    figures: required(figuresField, "where the numbers come from"),
  }),
  (value) => ({
    kind: "mount",
    title: value.title,
    width: value.width,
    height: value.height,
    counts: value.counts,
    fixedHeight: value["fixed-height"],
    undersize: value.undersize,
    corner: value.corner,
    holes: value.holes,
    fastener: value.fastener,
    seat: value.seat,
    clearWidth: value["clear-width"],
    web: value.web,
    headClearance: value["head-clearance"],
    figures: value.figures,
  }),
);
