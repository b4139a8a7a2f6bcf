// What bodies that meet are marked by in the picture, and the numbers that stand there.

import { decimal } from "../../src/geometry/number.ts";
import type { DragMeeting } from "./console-messages.ts";
import type { Mark, Note } from "./look.ts";

export const meetingMarks = ({ kind, a, b }: DragMeeting): readonly Mark[] =>
  [a, b].map(({ group, id }) => ({ kind, group, body: id }));

/** The three gravest have their numbers in the picture; all of them are in the list. */
export const meetingNotes = (meetings: readonly DragMeeting[]): readonly Note[] =>
  meetings
    .slice(0, 3)
    .map(({ kind, at, length }) => ({ kind, at, words: lengthWords(kind, length) }));

const lengthWords = (kind: DragMeeting["kind"], length: number): string => {
  switch (kind) {
    case "clash":
      return `clash, ${decimal(length, 2)} mm`;
    case "touching":
      return "touches";
    case "near":
      return `${decimal(length, 2)} mm apart`;
  }
};
