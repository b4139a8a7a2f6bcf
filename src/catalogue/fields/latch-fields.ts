// The fields of a latch; see latch.ts for what each means.

import { type Field, mapped } from "../../design/field.ts";
import { record, required, tuple } from "../../design/fields.ts";
import { someMillimetres } from "../../design/length-fields.ts";
import { angle } from "../../design/number-fields.ts";
import { oneOf } from "../../design/text-fields.ts";
import type { BoardLatch, LatchRoom, PartLatch } from "../latch.ts";

const roomField: Field<LatchRoom> = mapped(
  tuple("the room of a thumb", someMillimetres("a length"), ["width", "out", "length"]),
  ([width, out, length]) => ({ width, out, length }),
);

const room = required(roomField, "across its side, outward from it, and along the plug");

export const partLatchField: Field<PartLatch> = mapped(
  record("a latch", {
    clock: required(angle("an angle"), "clock angle of the side that it is on"),
    room,
  }),
  (value) => ({ clock: value.clock, ...value.room }),
);

export const boardLatchField: Field<BoardLatch> = mapped(
  record("a latch", {
    side: required(
      oneOf("a side of the plug", ["front", "back"]),
      "away from the front of the board, or from its back",
    ),
    room,
  }),
  (value) => ({ side: value.side, ...value.room }),
);
