// Codes for keys and values that are well written one by one and say something impossible together.

import type { CodeEntry, Severity } from "../diagnostics/finding.ts";

const meaning = (
  name: string,
  title: string,
  said: { readonly why: string; readonly example: string; readonly severity?: Severity },
): CodeEntry => ({
  code: `design/${name}`,
  severity: said.severity ?? "fault",
  title,
  why: said.why,
  example: said.example,
});

export const MEANING_CODES = {
  formatVersion: meaning(
    "format-version",
    "The format version is missing or not one that this program reads",
    {
      why: "The first line of each file says by which rules it is written, so that it can still be read in twenty years: `consolewright: 1`.",
      example: "consolewright: 99\nkind: panel",
    },
  ),
  unknownKind: meaning(
    "unknown-kind",
    "The file does not say what it is, or says something unknown",
    {
      why: "A file is a panel, a console, a workshop or a list of parts, and says so with `kind`.",
      example: "consolewright: 1\nkind: pannel",
    },
  ),
  otherKind: meaning("other-kind", "The file is of another kind than the one that is needed", {
    why: "A list of parts belongs to a panel or console that names it under `catalogue`; by itself there is nothing to lay out.",
    example: "consolewright: 1\nkind: parts",
  }),
  unknownKey: meaning("unknown-key", "The key is not known here", {
    why: "A mistyped key would be ignored, and its value with it. The message names the nearest keys that can stand here.",
    example: "components:\n  brake: { part: toggle-12, legned: BRAKE, at: centre }",
  }),
  missingKey: meaning("missing-key", "A key that is needed is missing", {
    why: "Without it the thing can't be made, and there is no usual value that would be safe to take.",
    example: "components:\n  brake: { at: centre }",
  }),
  contradiction: meaning("contradiction", "Two keys say different things about the same", {
    why: "One of the two would have to be ignored. Keep the one that is meant.",
    example: "at: { x: 20 mm, left: 24 mm, y: 10 mm }",
  }),
  oneOfKeys: meaning("one-of-keys", "Exactly one of several keys must be given", {
    why: "The key says what kind of thing this is. With none it is unknown, with two it is undecided.",
    example: "stack:\n  - { layer: face }",
  }),
  placeIncomplete: meaning("place-incomplete", "A place is said in one direction only", {
    why: "A place needs one statement across (x, left, right, right-of, left-of, in-line-with) and one up (y, top, bottom, above, below, level-with). Beside a neighbour the other may be left out: the thing keeps the neighbour's line.",
    example: "at: { left: 24 mm }",
  }),
  wrongCount: meaning("wrong-count", "The number of values does not match", {
    why: "A list that names one value a member or a direction must have as many values as there are members or directions. One too few moves all that follow.",
    example:
      "warn:\n  row: { part: led-5, count: 4, pitch: 15 mm, x: 20, y: 20 }\n  legends: [PAY OUT, HAUL, SLIP]",
  }),
  noDirection: meaning("no-direction", "A direction has no length", {
    why: "`along` says where a bay runs; with all three numbers zero it runs nowhere.",
    example: "along: [0, 0, 0]",
  }),
  photoMarks: meaning(
    "photo-marks",
    "The marks of a photograph do not say where the panel lies in it",
    {
      why: "Four marks of which no three lie in a line say scale, slant and place, whatever the camera's angle. Marks at one place, in a line, or in another order than on the panel say nothing, or a thing that no camera sees.",
      example:
        "photo:\n  file: old.jpg\n  points:\n    - { in-picture: [100, 900], on-panel: [0, 0] }\n    - { in-picture: [500, 900], on-panel: [50, 0] }\n    - { in-picture: [900, 900], on-panel: [100, 0] }\n    - { in-picture: [100, 100], on-panel: [0, 80] }",
    },
  ),
  undated: meaning("undated", "A measured value has no date", {
    why: "Sheets, tools and machines change. A measurement without its date can't be told from one of three years ago.",
    example:
      "stock:\n  face: { material: acrylic-cast, colour: opal, nominal: 3 mm, measured: 2.86 mm }",
    severity: "note",
  }),
  pathRefused: meaning("path-refused", "The path of a file can't be used", {
    why: "Files are named relative to the file that names them, with forward slashes, inside the folder of the design: so the design can be copied, sent and built on any system.",
    example: "workshop: C:\\shed\\workshop.yaml",
  }),
  fileMissing: meaning("file-missing", "A file that is named is not there", {
    why: "The name is looked up from the folder of the file that names it, and capitals count.",
    example: "workshop: ../worksop.yaml",
  }),
  includeCycle: meaning("include-cycle", "Files name each other in a circle", {
    why: "A console names panels, a panel names its workshop, and none of them leads back to itself. The message shows the circle.",
    example: "panels:\n  - { file: console.yaml, as: again, bay: aft, module: 0 }",
  }),
} as const;
