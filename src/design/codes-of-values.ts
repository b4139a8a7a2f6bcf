// Codes for a single value that can't be understood: a length, an angle, a name, a date.

import type { CodeEntry, Severity } from "../diagnostics/finding.ts";

const value = (
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

export const VALUE_CODES = {
  wrongShape: value(
    "wrong-shape",
    "A single value, a list or a group of keys stands where another is needed",
    {
      why: "Each key takes one of the three: `x: 24 mm` is a value, `[1, 2]` a list, `{ x: 24 mm }` a group of keys.",
      example: "height: [11 modules]",
    },
  ),
  notALength: value("not-a-length", "This is not a length", {
    why: 'Lengths are `12.5` (millimetres), `12.5 mm`, `1.2 cm`, `3/8 in`, `5 3/4 in` or `5.75"`.',
    example: "gap: wide",
  }),
  unknownUnit: value("unknown-unit", "This unit is not known here", {
    why: 'Lengths take mm, cm, m and in (or "). A thousandth of an inch is written as 0.001 in. Angles take deg or °.',
    example: "gap: 50 thou",
  }),
  fractionWithoutUnit: value("fraction-without-unit", "A fraction has no unit", {
    why: "3/8 can be a number of millimetres or the 3/8 inch of a drill. The two differ by a factor of 25. Say which.",
    example: "dowels: 3/8",
  }),
  lookAlike: value("look-alike", "A character only looks like the one that is needed", {
    why: "Ordinal signs and rings pass for the degree sign, typographic quotes for the inch sign, dashes for the minus. Text copied from a page brings them in, and searching for the right one never finds them.",
    example: "turn: 15º",
  }),
  exponent: value("exponent", "A number is written with an exponent", {
    why: "1e3 and 1E-2 are easily misread at the bench. Write the number out.",
    example: "gap: 1e1 mm",
  }),
  notFinite: value("not-finite", "This is not a number that can be made", {
    why: "Infinity and NaN come from a calculation that failed. Enter the size that is meant.",
    example: "gap: NaN",
  }),
  outOfRange: value("out-of-range", "The value is outside what makes sense here", {
    why: "A negative thickness, a hole of no size or a panel of a kilometre is a slip: a sign, a decimal point or a unit.",
    example: "dowels: -3 mm",
  }),
  notAnAngle: value("not-an-angle", "This is not an angle", {
    why: "Angles are `15`, `15 deg` or `15°`, all in degrees.",
    example: "turn: quarter",
  }),
  notANumber: value("not-a-number", "This is not a number", {
    why: "A plain number is expected, with a point as decimal mark and no unit.",
    example: "scale: { from: zero, to: 10, major: 2 }",
  }),
  notACount: value("not-a-count", "This is not a whole number", {
    why: "Things are counted in whole numbers; half a lamp can be neither bought nor placed.",
    example: "row: { part: led-5, count: 2.5, pitch: 15 mm, x: 20, y: 20 }",
  }),
  notASize: value("not-a-size", "This is not a size", {
    why: "Sizes are lengths, or a count of the mount's own pitch: `11 modules`, `3 U`, `42 HP`.",
    example: "height: tall",
  }),
  notAPlace: value("not-a-place", "This is neither a length nor a word for a place", {
    why: "x and y take a length from the panel's left or lower edge, or a word: centre, left, right, bottom, top.",
    example: "at: { x: middle, y: 20 mm }",
  }),
  notADate: value("not-a-date", "This is not a date", {
    why: "Dates are written year-month-day, so that they sort and cannot be read two ways: 2026-10-02.",
    example: "dated: 02.10.2026",
  }),
  notAName: value("not-a-name", "This is not a name", {
    why: "Names are small letters, figures and hyphens, and begin with a letter: `fire-pump-2`. They become file names and wire labels, on every system.",
    example: "name: Fire Pump #2",
  }),
  notARevision: value("not-a-revision", "This is not a revision", {
    why: "Letters a to z, figures, points, hyphens, underlines and spaces, a letter or figure first. It is cut into the waste and stands in every file, and old formats know no other characters.",
    example: "revision: A, mended",
  }),
  notAColour: value("not-a-colour", "This is not a colour", {
    why: 'Colours for the cutter\'s software are written "#ff0000", in quotation marks, because a bare # begins a comment.',
    example: 'process-colours: { engrave: "red" }',
  }),
  unknownWord: value("unknown-word", "The word is not one of those that can stand here", {
    why: "The message lists the words that can. A mistyped word would otherwise be taken for the usual case.",
    example: "fitted: latter",
  }),
  emptyText: value("empty-text", "The text is empty", {
    why: "Nothing would be engraved or printed. Leave the key out where there is nothing to say.",
    example: 'legend: ""',
  }),
  textTooLong: value("text-too-long", "The text is too long for its place", {
    why: "Legends, titles and names have to find room on a panel or a sheet.",
    example: "(a legend of more than 200 characters)",
  }),
  textOfLines: value("text-of-lines", "The text runs over more than one line", {
    why: "This text is engraved or printed on a single line. Write further lines as markings of their own.",
    example: 'legend: "PAY\\nOUT"',
  }),
  listOrDecimalComma: value("list-or-decimal-comma", "Two lengths, or one with a decimal comma", {
    why: "[3,5 mm] is read as two values, 3 and 5 mm. If it means 3.5 mm, write a point; if it means two, put a space after the comma.",
    example: "drills: [3,5 mm]",
    severity: "query",
  }),
} as const;
