// The table of what can't be placed in a console. Each says what was asked for and the nearest things there are.

import type { CodeEntry } from "../../diagnostics/finding.ts";

export const UNKNOWN_BAY: CodeEntry = {
  code: "layout/unknown-bay",
  severity: "fault",
  title: "a bay that the console does not have",
  why: "A panel stands in a bay by the bay's name. In none, or in one that is not there, it has no place and nothing round it can be judged.",
  example: "panels:\n  - { file: panels/a.yaml, as: a, bay: aft-bay }",
};

export const UNKNOWN_PANEL: CodeEntry = {
  code: "layout/unknown-panel",
  severity: "fault",
  title: "a panel to follow that does not stand in the bay",
  why: "`after` names the panel that comes before it in the same bay. Where that panel is not there, or stands elsewhere, the place is not known.",
  example: "panels:\n  - { file: panels/a.yaml, as: a, bay: aft, after: no-such-panel }",
};

export const CIRCULAR_ORDER: CodeEntry = {
  code: "layout/circular-order",
  severity: "fault",
  title: "panels that follow each other in a circle",
  why: "Each of these panels takes its place from the next, and the last from the first, so that none has a place. Give one of them a module.",
  example:
    "panels:\n  - { file: a.yaml, as: a, bay: aft, after: b }\n  - { file: b.yaml, as: b, bay: aft, after: a }",
};

export const BAY_UNIT: CodeEntry = {
  code: "layout/bay-unit",
  severity: "fault",
  title: "a bay counted in another mount's pitch",
  why: "Modules belong to console rails, U and HP to racks and subracks: the length of the bay would be a guess.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, 0, 600], along: [1, 0, 0], length: 12 U, depth: 180 mm }",
};

export const BAY_MOUNT: CodeEntry = {
  code: "layout/bay-mount",
  severity: "fault",
  title: "a panel for another mount than its bay's",
  why: "A panel drops onto the rails that its holes are for. On others neither its width nor its studs fit.",
  example:
    "bays:\n  aft: { mount: rack-19, at: [0, 0, 600], along: [0, 0, 1], length: 12 U, depth: 180 mm }",
};

export const BAD_OUTLINE: CodeEntry = {
  code: "layout/bad-outline",
  severity: "fault",
  title: "corners that do not go round a surface",
  why: "The corners of a profile or a prism are joined one after the other. Where the sides cross, meet or enclose nothing, there is no inside.",
  example: "envelope: { profile: [[0, 0], [100, 100], [100, 0], [0, 100]], across: [-500, -300] }",
};

export const RIB_OUTSIDE: CodeEntry = {
  code: "layout/rib-outside",
  severity: "fault",
  title: "a rib that does not stand in the console",
  why: "A rib fills the profile from where it begins to where it ends. One that lies outside is nowhere, and what it would be in the way of is not judged.",
  example:
    "envelope: { profile: [[0, 0], [600, 0], [600, 700], [0, 700]], across: [-500, -300], ribs: [{ name: bulkhead, at: 900, thickness: 12 }] }",
};

export const OBSTACLE_FILE: CodeEntry = {
  code: "layout/obstacle-file",
  severity: "fault",
  title: "an obstacle's file that is no closed solid",
  why: "Whether something fits beside an obstacle is known only where the obstacle has an inside. An STL file carries bare triangles: they must close, and look outward.",
  example: "obstacles:\n  - { name: seat, stl: seat.stl, at: [300, -360, 0] }",
};

export const CONSOLE_LAYOUT_CODES: readonly CodeEntry[] = [
  UNKNOWN_BAY,
  UNKNOWN_PANEL,
  CIRCULAR_ORDER,
  BAY_UNIT,
  BAY_MOUNT,
  BAD_OUTLINE,
  RIB_OUTSIDE,
  OBSTACLE_FILE,
];
