// What bodies that meet are marked by in the picture, and the numbers that stand there.

import { decimal } from "../../src/geometry/number.ts";
import type { DragMeeting } from "./console-messages.ts";
import { nearestOf } from "./drag-words.ts";
import type { Mark, Note } from "./look.ts";

export const meetingMarks = ({ kind, a, b }: DragMeeting): readonly Mark[] =>
  [a, b].map(({ group, id }) => ({ kind, group, body: id }));

/** The three gravest have their numbers in the picture, and the least clearance; all of them are in the list. */
export const meetingNotes = (meetings: readonly DragMeeting[]): readonly Note[] => {
  const gravest = meetings.slice(0, 3);
  const nearest = nearestOf(meetings);
  const shown = nearest === null || gravest.includes(nearest) ? gravest : [...gravest, nearest];
  return shown.map(({ kind, at, length }) => ({
    kind,
    at,
    words: lengthWords(kind, length),
    isOnIt: false,
  }));
};

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
