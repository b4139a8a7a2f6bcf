// What bounds the space of a console: its envelope with ribs and walls, and obstacles.

import { finding } from "../diagnostics/finding.ts";
import { byKey } from "./choice-fields.ts";
import { MEANING_CODES } from "./codes-of-meaning.ts";
import type { EnvelopeDesign, ObstacleDesign, ObstacleShape, RibDesign } from "./console-design.ts";
import { type Field, mapped, read, refined, unread } from "./field.ts";
import { list, optional, record, required, tuple, usual } from "./fields.ts";
import { filePath } from "./file-field.ts";
import { millimetres, someMillimetres } from "./length-fields.ts";
import { angle } from "./number-fields.ts";
import { text } from "./text-fields.ts";
import { about } from "./text-node.ts";
import { UNTURNED } from "./usual-values.ts";
import { spanOf } from "./written.ts";

export const SPACE_POINT = tuple("a place", millimetres("a length"), [
  "forward",
  "to the left",
  "up",
]);

export const FLOOR_POINT = tuple("a place", millimetres("a length"), ["forward", "to the left"]);

const HALF_TURN = 180;
const MOST_NAME = 60;
const FEWEST_CORNERS = 3;

const COMMON_KEYS = {
  name: required(text("a name", MOST_NAME), "What it is"),
  at: required(SPACE_POINT, "The centre of its base"),
  turn: usual(angle("an angle", { least: -HALF_TURN, most: HALF_TURN }), {
    value: UNTURNED,
    about: "About the vertical, counter-clockwise from above",
  }),
};

const BOX: Field<ObstacleDesign> = mapped(
  record("an obstacle", {
    ...COMMON_KEYS,
    box: required(
      tuple("a box", someMillimetres("a length"), ["forward", "to the left", "up"]),
      "How large it is",
    ),
  }),
  ({ box: size, ...common }) => shaped({ kind: "box", size }, common),
);

const CYLINDER: Field<ObstacleDesign> = mapped(
  record("an obstacle", {
    ...COMMON_KEYS,
    cylinder: required(
      tuple("a cylinder", someMillimetres("a length"), ["diameter", "height"]),
      "Its diameter and its height",
    ),
  }),
  ({ cylinder: [diameter, height], ...common }) =>
    shaped({ kind: "cylinder", diameter, height }, common),
);

const PRISM: Field<ObstacleDesign> = mapped(
  record("an obstacle", {
    ...COMMON_KEYS,
    prism: required(
      list("corners", FLOOR_POINT, { least: FEWEST_CORNERS }),
      "Its corners, forward and to the left of `at`",
    ),
    height: required(someMillimetres("a height"), "How high it is"),
  }),
  ({ prism: corners, height, ...common }) => shaped({ kind: "prism", corners, height }, common),
);

const MESH: Field<ObstacleDesign> = mapped(
  record("an obstacle", {
    ...COMMON_KEYS,
    stl: required(filePath("the path of a file"), "An STL file, in millimetres"),
  }),
  ({ stl: file, ...common }) => shaped({ kind: "mesh", file }, common),
);

const shaped = (shape: ObstacleShape, common: Omit<ObstacleDesign, "shape">): ObstacleDesign => ({
  ...common,
  shape,
});

export const OBSTACLE: Field<ObstacleDesign> = byKey<ObstacleDesign>("an obstacle", {
  box: BOX,
  cylinder: CYLINDER,
  prism: PRISM,
  stl: MESH,
});

const RIB: Field<RibDesign> = mapped(
  record("a rib", {
    name: required(text("a name", MOST_NAME), "What it is called"),
    at: required(millimetres("a length"), "Its nearer face, forward from the origin"),
    thickness: required(someMillimetres("a thickness"), "How thick it is"),
    "up-to": optional(millimetres("a height"), "Where it ends, when it is lower than the profile"),
  }),
  ({ "up-to": upTo, ...rib }) => ({ ...rib, upTo }),
);

export const ENVELOPE: Field<EnvelopeDesign> = refined(
  record("the envelope", {
    profile: required(
      list("corners", tuple("a corner", millimetres("a length"), ["forward", "up"]), {
        least: FEWEST_CORNERS,
      }),
      "Its corners as seen from the side, one after the other",
    ),
    across: required(
      tuple("two walls", millimetres("a length"), ["the right wall", "the left wall"]),
      "The inner faces of its side walls, to the left of the origin",
    ),
    ribs: usual(list("ribs", RIB, { leaveOut: true }), { value: [], about: "Boards across it" }),
    walls: usual(list("walls", OBSTACLE, { leaveOut: true }), {
      value: [],
      about: "Boards in it, at any place",
    }),
  }),
  (envelope, node) => {
    const { across, written } = envelope;
    const [right, left] = across;
    if (right >= left)
      return unread(
        node,
        finding(MEANING_CODES.contradiction, {
          message: `${about(node)}across: the right wall comes first, then the left one; left of the origin is positive`,
          span: spanOf(written, "across"),
        }),
      );
    return read(envelope, node);
  },
);
