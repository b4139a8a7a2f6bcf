// The fields of boards and of boards with LEDs; see board.ts and strip.ts for what each means.

import { type Field, mapped } from "../../design/field.ts";
import { list, optional, record, required, tuple, usual } from "../../design/fields.ts";
import { noOrSomeMillimetres, someMillimetres } from "../../design/length-fields.ts";
import { mapById } from "../../design/map-fields.ts";
import { angle, count, number } from "../../design/number-fields.ts";
import { oneOf } from "../../design/text-fields.ts";
import { mm } from "../../geometry/quantity.ts";
import type { Board, BoardConnector, BoardHole, PlugRoom } from "../board.ts";
import type { LedBoard } from "../strip.ts";
import { orNone, pointField, sizePair, titleField } from "./basic-fields.ts";
import { figuresField } from "./figures-field.ts";
import { boardLatchField } from "./latch-fields.ts";
import { CONTACT_NAMES, supplyField } from "./part-fields.ts";

const some = someMillimetres("a length");
const noOrSome = noOrSomeMillimetres("a length");

const holeField: Field<BoardHole> = mapped(
  record("a hole", {
    at: required(pointField, "its place from the lower left corner"),
    diameter: required(some, "its diameter"),
  }),
  ({ at, diameter }) => ({ at, diameter }),
);

const holes = usual(list("holes", holeField), { value: [], about: "its mounting holes" });

const plugRoomField: Field<PlugRoom> = mapped(
  tuple("the room of a plug", some, ["width", "height", "depth"]),
  ([width, height, depth]) => ({ width, height, depth }),
);

const connectorField: Field<Omit<BoardConnector, "name">> = mapped(
  record("a connector", {
    at: required(pointField, "the middle of its mouth, or of its footprint"),
    side: required(
      oneOf("a side of the board", ["left", "right", "top", "bottom", "up"]),
      "where its plug comes from",
    ),
    overhang: usual(noOrSome, { value: mm(0), about: "how far it stands out over the edge" }),
    size: required(sizePair, "along the edge and above the board"),
    plug: required(plugRoomField, "width, height and depth of the mated plug"),
    bend: required(noOrSome, "room for the bend of its cable"),
    latch: optional(boardLatchField, "the latch of its plug"),
  }),
  ({ at, side, overhang, size: [width, height], plug, bend, latch }) => ({
    at,
    side,
    overhang,
    width,
    height,
    plug,
    bend,
    latch,
  }),
);

const connectorsField: Field<readonly BoardConnector[]> = mapped(
  mapById("connectors by name", connectorField, CONTACT_NAMES),
  (entries) =>
    entries.flatMap((entry) => (entry.kind === "read" ? [{ name: entry.id, ...entry.value }] : [])),
);

/** Reads everything but the board's name, which is the key it stands under. */
export const boardField: Field<Omit<Board, "id">> = mapped(
  record("a board", {
    title: required(titleField, "what it is called in lists"),
    size: required(sizePair, "width and height"),
    thickness: required(some, "thickness of the bare board"),
    holes,
    "head-limit": optional(some, "largest screw head that clears its parts"),
    holding: required(
      oneOf("how it is held", ["holes", "clip", "socket"]),
      "by its holes, by a clip over its edges, or in a socket",
    ),
    connectors: usual(connectorsField, { value: [], about: "its connectors by name" }),
    "tallest-front": required(some, "tallest part on its front"),
    "tallest-back": required(noOrSome, "longest lead or part behind it"),
    lines: required(count("a number of lines"), "lines for inputs and outputs"),
    supply: required(orNone(supplyField), "what it draws by itself, or none"),
    figures: required(figuresField, "where the numbers come from"),
  }),
  (value) => ({
    kind: "board",
    title: value.title,
    width: value.size[0],
    height: value.size[1],
    thickness: value.thickness,
    holes: value.holes,
    headLimit: value["head-limit"],
    holding: value.holding,
    connectors: value.connectors,
    tallestFront: value["tallest-front"],
    tallestBack: value["tallest-back"],
    lines: value.lines,
    supply: value.supply,
    figures: value.figures,
  }),
);

export const ledBoardField: Field<Omit<LedBoard, "id">> = mapped(
  record("a board with LEDs", {
    title: required(titleField, "what it is called in lists"),
    size: required(sizePair, "width and height"),
    thickness: required(some, "thickness of the bare board"),
    leds: required(
      list("places", pointField, { least: 1 }),
      "its LEDs, from its lower left corner",
    ),
    "led-height": required(some, "top of the LEDs above the board"),
    "tallest-back": required(noOrSome, "pads, leads and solder behind it"),
    volts: required(number("volts", { above: 0, most: 60 }), "volts"),
    milliamps: required(number("milliamps", { above: 0 }), "milliamps of the whole board"),
    "half-angle": required(angle("an angle", { above: 0, most: 90 }), "to half of the intensity"),
    "lumens-per-led": required(number("lumens", { above: 0 }), "typical light of one LED"),
    holes,
    figures: required(figuresField, "where the numbers come from"),
  }),
  (value) => ({
    kind: "led-board",
    title: value.title,
    width: value.size[0],
    height: value.size[1],
    thickness: value.thickness,
    leds: value.leds,
    ledHeight: value["led-height"],
    tallestBack: value["tallest-back"],
    volts: value.volts,
    milliamps: value.milliamps,
    halfAngle: value["half-angle"],
    lumensPerLed: value["lumens-per-led"],
    holes: value.holes,
    figures: value.figures,
  }),
);
