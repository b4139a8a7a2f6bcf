// The codes of the frame: what its boards can't be, or only with a person's word.

import type { CodeEntry } from "../../diagnostics/finding.ts";

const FRAME_LINE = "frame: { type: side-console, sheet: birch-ply-12 }";

export const SHEET_UNKNOWN: CodeEntry = {
  code: "parts/frame-unknown-stock",
  severity: "fault",
  title: "a frame of a sheet that nobody knows",
  why: "The frame's sheet is looked up in the workshop's stock and in the catalogue. Without its thickness there are no slots.",
  example: "frame: { type: side-console, sheet: birch-ply-21 }",
};

export const SHEET_UNMEASURED: CodeEntry = {
  code: "parts/frame-unmeasured-sheet",
  severity: "query",
  title: "slots for a sheet whose thickness nobody has measured",
  why: "Slots follow the thickness, and plywood may be a millimetre under its name: then every joint rattles, or none goes in. Measure the sheet that will be cut and write it into the workshop with its date.",
  example: FRAME_LINE,
};

export const BAY_NOT_CARRIED: CodeEntry = {
  code: "parts/frame-bay",
  severity: "fault",
  title: "a bay that the frame can't carry",
  why: "Two upright cheeks carry bays that stand in one row between them, with rails of console pitch, above the floor board. A bay that runs across, or lies too low or is too short for two ribs, wants a frame of its own.",
  example: `bays:\n  aft: { mount: console-rail, at: [0, -420, 620], along: [1, 1, 0], length: 60 modules, depth: 180 mm }\n${FRAME_LINE}`,
};

export const BAYS_CROSS: CodeEntry = {
  code: "parts/frame-bays-cross",
  severity: "fault",
  title: "two bays whose ribs want the same room",
  why: "Between the cheeks each bay has its rails, the room behind its panels, and the ribs below it. Where two bays come too close these would meet; move one along, or give it less depth.",
  example: FRAME_LINE,
};

export const TOO_NARROW: CodeEntry = {
  code: "parts/frame-width",
  severity: "fault",
  title: "cheeks that are to stand closer than their bays allow",
  why: "Between the cheeks go the panels, the rails beside them, and the ribs that carry both; a canted bay takes more. A frame may be wider than that, not narrower.",
  example: "frame: { type: side-console, sheet: birch-ply-12, width: 150 mm }",
};

export const KNEES_FILLED: CodeEntry = {
  code: "parts/frame-knees",
  severity: "fault",
  title: "a knee space that does not go into its desk",
  why: "The room behind the panels and the ribs below it hang over the knees: raise the bay, give it less depth, or make the knee space lower if those who sit there are small. And behind the knees stands the desk's foot: make the knee space less deep, or the bays longer.",
  example: "frame: { type: front-desk, sheet: birch-ply-12, knees: [440, 700] }",
};

export const RAIL_HOLES_MEET: CodeEntry = {
  code: "parts/frame-rail-hole",
  severity: "fault",
  title: "holes of the rails that run together",
  why: "Rail bars carry holes on the mount's pitch, beside their inner edge. Holes as wide as the pitch are a slit, and the panel's screws hold in nothing.",
  example: "frame: { type: side-console, sheet: birch-ply-12, rails: { hole: 12 mm } }",
};

export const RIBS_MEET: CodeEntry = {
  code: "parts/frame-ribs",
  severity: "fault",
  title: "ribs of a frame that want the same place",
  why: "Each rib stands in a slot of the cheeks. Where ribs are nearer than the sheet is thick, the boards meet and the slots run together.",
  example: "frame: { type: side-console, sheet: birch-ply-12, ribs: { spacing: 10 mm } }",
};

export const DOORWAY: CodeEntry = {
  code: "parts/frame-doorway",
  severity: "fault",
  title: "a section that does not pass the doorway",
  why: "The frame is parted between bays into sections that pass the door; a single bay can't be parted.",
  example: "frame: { type: side-console, sheet: birch-ply-12, doorway: [180, 1900] }",
};

export const SECTIONS_CLOSE: CodeEntry = {
  code: "parts/frame-sections",
  severity: "fault",
  title: "no room to part the frame between two bays",
  why: "Where the frame is parted, each section has an end board and its cheeks run on beyond it. Move the bays apart, or have the whole cut on a larger bed.",
  example: FRAME_LINE,
};

export const BED: CodeEntry = {
  code: "parts/frame-bed",
  severity: "fault",
  title: "a piece of the frame larger than the machine's bed",
  why: "The piece with its waste must lie on the bed, turned a quarter where that helps. Choose another machine for the frame under `use`, or a cutting service.",
  example: FRAME_LINE,
};

export const WEB: CodeEntry = {
  code: "parts/frame-web",
  severity: "query",
  title: "little wood between two slots, or a slot and an edge",
  why: "What stands between slots carries the joint: at least the sheet's thickness is common practice; less breaks out when the frame is knocked together.",
  example: "frame: { type: side-console, sheet: birch-ply-12, beyond: 4 mm }",
};

export const TOOL: CodeEntry = {
  code: "parts/frame-tool",
  severity: "fault",
  title: "no tool that reaches into the corners of the slots",
  why: "A round tool leaves its radius in each corner; reliefs (dogbones) of the tool's own radius let the square tab in, and must find room in the slot's width.",
  example: "machines:\n  router: { type: router, bed: [1300, 900], tools: [{ diameter: 12 mm }] }",
};

export const LEFT_OPEN: CodeEntry = {
  code: "parts/frame-left-open",
  severity: "note",
  title: "an opening of the frame that found no room, or a gap that no strip closes",
  why: "Strips need room for a tab and its webs; hatch, vents and passes need a clear board. What is left out here a person may still cut by hand.",
  example: FRAME_LINE,
};

export const FRAME_CODES: readonly CodeEntry[] = [
  SHEET_UNKNOWN,
  SHEET_UNMEASURED,
  BAY_NOT_CARRIED,
  BAYS_CROSS,
  TOO_NARROW,
  KNEES_FILLED,
  RAIL_HOLES_MEET,
  RIBS_MEET,
  DOORWAY,
  SECTIONS_CLOSE,
  BED,
  WEB,
  TOOL,
  LEFT_OPEN,
];
