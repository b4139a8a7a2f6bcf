// What is said of a step of a drag: the gravest first, the least clearance always as a number with its pair, the rest counted.

import { describe, expect, test } from "vitest";
import { vector } from "../../src/geometry/space/vector.ts";
import type { DragMeeting, DragReading } from "../../viewer/console/console-messages.ts";
import {
  dragWords,
  listedMeetings,
  moveWords,
  restWords,
} from "../../viewer/console/drag-words.ts";
import { meetingNotes } from "../../viewer/console/meeting-marks.ts";

const meeting = (kind: DragMeeting["kind"], length: number, name = `${length}`): DragMeeting => ({
  kind,
  a: { group: "winch", id: `a ${name}`, words: `case ${name}` },
  b: { group: "radio", id: `b ${name}`, words: `sheet ${name}` },
  length,
  at: vector(0, 0, 0),
});

/** Ten clashes and thirty that are near, as a reading has them: gravest first, nearest first. */
const CROWDED = [
  ...Array.from({ length: 10 }, (_, at) => meeting("clash", 20 - at)),
  ...Array.from({ length: 30 }, (_, at) => meeting("near", 0.4 + at / 10, `near ${at}`)),
];

const reading = (meetings: readonly DragMeeting[]): DragReading => ({
  move: { panel: "winch", module: 24 },
  frames: [],
  meetings,
  from: 24,
  to: 37,
  over: 0,
  within: 5,
  milliseconds: 1,
});

describe("a step that clashes", () => {
  test("lists the least clearance among its clashes, however many these are", () => {
    const { listed, rest } = listedMeetings(CROWDED);
    expect(listed.map(({ kind }) => kind)).toEqual([...Array(7).fill("clash"), "near"]);
    expect(listed.at(-1)).toMatchObject({ length: 0.4, a: { words: "case near 0" } });
    expect(restWords(rest)).toBe("3 more clashes, 29 more near, with larger gaps");
  });

  test("says it with its pair, and has its number in the picture", () => {
    expect(dragWords(reading(CROWDED))).toBe(
      "winch takes modules 24 to 37. 10 clashes; case 20 and sheet 20 by 20 mm along the rail. Least clearance 0.4 mm: case near 0 and sheet near 0.",
    );
    expect(meetingNotes(CROWDED).map(({ words }) => words)).toEqual([
      "clash, 20 mm",
      "clash, 19 mm",
      "clash, 18 mm",
      "0.4 mm apart",
    ]);
  });
});

test("a step that is free of everything says within how much that is", () =>
  expect(dragWords(reading([]))).toBe(
    "winch takes modules 24 to 37. Nothing clashes. Everything else is 5 mm off or more.",
  ));

test("a move is told from the stretch that a panel takes", () => {
  expect(moveWords({ panel: "winch", from: 18, module: 24 })).toBe(
    "winch: moved from module 18 to module 24",
  );
  expect(moveWords({ panel: "winch", from: 18, module: 18 })).toBe(
    "winch: at module 18, where it stood",
  );
});
