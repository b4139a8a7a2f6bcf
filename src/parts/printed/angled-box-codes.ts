// What an angled box can't be made as.

import type { CodeEntry } from "../../diagnostics/finding.ts";

const BOX = (box: string): string => `mount: box-lid\nwidth: 80 mm\nheight: 60 mm\nbox: ${box}`;
const CORNERS = "[[0, 0], [100, 0], [100, 75], [0, 75]]";

export const ANGLED_BOX_MOUNT: CodeEntry = {
  code: "parts/angled-box-mount",
  severity: "fault",
  title: "a box under a panel that is not screwed to one",
  why: "The panel on an angled box is its lid: screws near its corners end in brass inserts in the face. A panel that is held by studs on rails has none.",
  example: `mount: console-rail\nheight: 6 modules\nbox: { footprint: ${CORNERS}, rise: 30 mm }`,
};

export const ANGLED_BOX_FOOTPRINT: CodeEntry = {
  code: "parts/angled-box-footprint",
  severity: "fault",
  title: "a footprint that has no walls",
  why: "The corners of a footprint are its walls' outside in order, round once. Where they cross, or leave less than two walls between them, or turn in more sharply than a wall can follow, there is no box.",
  example: BOX("{ footprint: [[0, 0], [100, 75], [100, 0], [0, 75]], rise: 30 mm }"),
};

export const ANGLED_BOX_FACE: CodeEntry = {
  code: "parts/angled-box-face",
  severity: "fault",
  title: "a face without room for its panel",
  why: "The panel lies in the middle of the sloping face, its opening inside the walls, and the bosses of its screws clear of them all the way down. A wider or deeper footprint makes a larger face.",
  example: BOX("{ footprint: [[0, 0], [60, 0], [60, 60], [0, 60]], rise: 30 mm }"),
};

export const ANGLED_BOX_ROOM: CodeEntry = {
  code: "parts/angled-box-room",
  severity: "fault",
  title: "a component that an angled box has no room for",
  why: "What hangs behind the panel goes through the opening of the face, stays off the walls, and ends above the console. A higher rise, a larger footprint or a flatter part makes room.",
  example: `${BOX(`{ footprint: ${CORNERS}, rise: 10 mm }`)}\ncomponents:\n  a: { part: toggle-12, at: centre }`,
};

export const ANGLED_BOX_CODES: readonly CodeEntry[] = [
  ANGLED_BOX_MOUNT,
  ANGLED_BOX_FOOTPRINT,
  ANGLED_BOX_FACE,
  ANGLED_BOX_ROOM,
];
