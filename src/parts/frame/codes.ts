// The codes of a frame that there is no plan for.

import type { CodeEntry } from "../../diagnostics/finding.ts";

const FRAME_LINE = "frame: { type: side-console, sheet: birch-ply-12 }";

export const SHEET_UNKNOWN: CodeEntry = {
  code: "parts/frame-unknown-stock",
  severity: "fault",
  title: "a frame of a sheet that nobody knows",
  why: "The frame's sheet is looked up in the workshop's stock and in the catalogue. Without its thickness there are no slots.",
  example: "frame: { type: side-console, sheet: birch-ply-21 }",
};

export const BAY_NOT_CARRIED: CodeEntry = {
  code: "parts/frame-bay",
  severity: "fault",
  title: "a bay that the frame can't carry",
  why: "Two upright cheeks carry the bays of a unit, with rails of console pitch, above the floor board. A bay that looks down, lies too low or is too short for two ribs finds no room between them.",
  example: `bays:\n  aft: { mount: console-rail, at: [0, -420, 200], along: [1, 0, 0], length: 60 modules, depth: 180 mm }\n${FRAME_LINE}`,
};

export const BAYS_CROSS: CodeEntry = {
  code: "parts/frame-bays-cross",
  severity: "fault",
  title: "two bays whose ribs want the same room",
  why: "Between the cheeks each bay has its rails, the room behind its panels, and the ribs below it. Where two bays come too close these would meet; move one along, or give it less depth.",
  example: FRAME_LINE,
};

export const FRAME_CODES: readonly CodeEntry[] = [SHEET_UNKNOWN, BAY_NOT_CARRIED, BAYS_CROSS];
