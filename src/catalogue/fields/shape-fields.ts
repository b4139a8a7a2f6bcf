// Shapes as a record writes them: told apart by their first key, sizes in mm, clock angles from twelve.

import { byKey } from "../../design/choice-fields.ts";
import { type Field, mapped } from "../../design/field.ts";
import { list, record, required, usual } from "../../design/fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "../../design/length-fields.ts";
import { angle } from "../../design/number-fields.ts";
import { point } from "../../geometry/contour.ts";
import { degrees, mm } from "../../geometry/quantity.ts";
import type { Shape, ShapeAt } from "../shape.ts";
import { pointField, sizePair } from "./basic-fields.ts";
import { beside } from "./beside.ts";

const size = someMillimetres("a size");
const clock = usual(angle("a clock angle"), {
  value: degrees(0),
  about: "degrees clockwise from twelve",
});
const corner = usual(noOrSomeMillimetres("a radius"), {
  value: mm(0),
  about: "radius of its corners",
});

const diameter = required(size, "its diameter");

type ShapeFields = Readonly<Record<string, Field<Shape>>>;

const ROUND_SHAPES = {
  round: mapped(record("a round shape", { round: diameter }), (value) => ({
    kind: "round",
    diameter: value.round,
  })),
  flat: mapped(
    record("a round shape with one flat", {
      flat: diameter,
      "to-flat": required(size, "from the axis to the flat"),
      clock,
    }),
    (value) => ({
      kind: "flat",
      diameter: value.flat,
      flat: value["to-flat"],
      clock: value.clock,
    }),
  ),
  "double-flat": mapped(
    record("a round shape with two flats", {
      "double-flat": diameter,
      across: required(size, "across the flats"),
      clock,
    }),
    (value) => ({
      kind: "double-flat",
      diameter: value["double-flat"],
      across: value.across,
      clock: value.clock,
    }),
  ),
  notched: mapped(
    record("a round shape with a notch", {
      notched: diameter,
      width: required(size, "width of the notch"),
      over: required(size, "from the far side to the bottom of the notch"),
      clock,
    }),
    (value) => ({
      kind: "notch",
      diameter: value.notched,
      width: value.width,
      over: value.over,
      clock: value.clock,
    }),
  ),
} satisfies ShapeFields;

const STRAIGHT_SHAPES = {
  rectangle: mapped(
    record("a rectangle", { rectangle: required(sizePair, "width and height"), corner }),
    ({ rectangle: [width, height], corner: radius }) => ({
      kind: "rectangle",
      width,
      height,
      corner: radius,
    }),
  ),
  slot: mapped(
    record("a slot", { slot: required(sizePair, "length over all, and width"), clock }),
    (value) => ({ kind: "slot", length: value.slot[0], width: value.slot[1], clock: value.clock }),
  ),
  polygon: mapped(
    record("a polygon", {
      polygon: required(
        list("corners", pointField, { least: 3 }),
        "its corners, counter-clockwise",
      ),
      corner,
    }),
    (value) => ({ kind: "polygon", points: value.polygon, corner: value.corner }),
  ),
} satisfies ShapeFields;

/** `{ round: 6.4 }`, `{ rectangle: [50.3, 19], corner: 0.5 }` ... */
export const shapeField: Field<Shape> = byKey<Shape>("a shape", {
  ...ROUND_SHAPES,
  ...STRAIGHT_SHAPES,
});

const place = record("a place", {
  at: usual(pointField, { value: point(0, 0), about: "from the axis of the part" }),
});

/** A shape with `at`, from the axis. */
export const shapeAtField: Field<ShapeAt> = mapped(
  beside(shapeField, place, ["at"]),
  ({ first: shape, second: { at } }) => ({ shape, at }),
);
