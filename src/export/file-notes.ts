// What every cut file says about itself, line by line, in plain words: part, revision, which face is up, kerf, units.
// Takes a part and one of its set-ups; gives lines that hold the design's own words unescaped: the format escapes them.

import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import type { SetUp, SheetPart } from "../parts/sheet-part.ts";
import { engravingSpot, kerfResidual } from "./kerf.ts";

export const fileNotes = (part: SheetPart, setUp: SetUp): readonly string[] => [
  `Part ${part.id}, revision ${part.revision}, panel ${part.panel}, layer ${part.layer}, set-up ${setUp.id}.`,
  `Stock ${part.stock.id}, thickness ${length(part.thickness)}, machine ${setUp.machine.id}.`,
  faceNote(setUp),
  ...kerfNotes(setUp),
  `Units: millimetres. Sheet ${length(extentWidth(setUp.sheet))} x ${length(extentHeight(setUp.sheet))}; the origin is a corner of the sheet.`,
  ...setUp.instructions,
];

const length = (value: number): string => `${decimal(value, 4)} mm`;

const faceNote = (setUp: SetUp): string =>
  setUp.faceUp === "rear"
    ? "Face up: REAR. Mirrored once, about the vertical centre line of the sheet; do not mirror again."
    : "Face up: FRONT. Not mirrored.";

const kerfNotes = (setUp: SetUp): readonly string[] => {
  const { kerf } = setUp;
  if (kerf.kind === "left-to-cutter")
    return [
      "Kerf: left to the cutter. Lines are the edges that the part must have; the cutter compensates, once.",
    ];
  const measured = kerf.measured ? "measured" : "not measured";
  const spot = engravingSpot(setUp);
  return [
    `Kerf: in this file, ${length(kerf.kerf)} full width, ${measured}. Lines are the middle of the cut; do not compensate again.`,
    ...residualNotes(setUp),
    ...(spot > 0 ? [`Engraved areas are inset by half the spot of ${length(spot)}.`] : []),
  ];
};

/** One offset serves both axes; what their difference leaves is said, not hidden. */
const residualNotes = (setUp: SetUp): readonly string[] => {
  const { kerf } = setUp;
  const residual = kerfResidual(kerf);
  if (kerf.kind === "left-to-cutter" || (residual.x === 0 && residual.y === 0)) return [];
  return [
    `Kerf across x ${length(kerf.x)}, across y ${length(kerf.y)}: beyond the line in this file it takes ${length(residual.x)} a side in x, ${length(residual.y)} a side in y.`,
  ];
};
