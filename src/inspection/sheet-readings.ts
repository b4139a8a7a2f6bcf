// What holds for a whole file: its words, units, content, mirror, kerf, counts and order of work, one row each.

import { extentHeight, extentWidth } from "../geometry/extent.ts";
import type { Process, SetUp, SheetPart } from "../parts/sheet-part.ts";
import { kerfAllowance, placeAllowance } from "./allowance.ts";
import type { DrawnLine } from "./drawn-line.ts";
import { type ExpectedFeature, statedKerf } from "./expectation.ts";
import type { FoundKerf } from "./kerf-of-file.ts";
import type { FoundLie } from "./lie-of-file.ts";
import type { ReadFile } from "./read-file.ts";
import { length, type Reading, roundedDifference, wordReading } from "./row.ts";

/** Name under which rows stand that belong to no single feature. */
const SHEET = "sheet";

const UNSAID = "not said";

/** What the file says of itself in words. */
export const statementReadings = (
  file: ReadFile,
  part: SheetPart,
  setUp: SetUp,
): readonly Reading[] => {
  const { statements } = file;
  return [
    wordReading(SHEET, "part", { expected: part.id, measured: statements.part ?? UNSAID }),
    wordReading(SHEET, "revision", {
      expected: part.revision,
      measured: statements.revision ?? UNSAID,
    }),
    wordReading(SHEET, "side", {
      expected: `${setUp.faceUp} up`,
      measured: statements.faceUp === null ? UNSAID : `${statements.faceUp} up`,
    }),
    contentReading(file),
  ];
};

const contentReading = (file: ReadFile): Reading =>
  wordReading(SHEET, "content", {
    expected: "lines and areas, no transforms",
    measured:
      file.strangers.length === 0
        ? "lines and areas, no transforms"
        : file.strangers.slice(0, MOST_NAMED).join(", "),
  });

const MOST_NAMED = 5;

export const unitsReading = (file: ReadFile, setUp: SetUp, lie: FoundLie): Reading => {
  const { units } = file;
  const width = extentWidth(setUp.sheet);
  const height = extentHeight(setUp.sheet);
  const isMillimetres = units.millimetres !== null && Math.abs(units.millimetres - 1) < EVEN_UNIT;
  const isWhole =
    units.sheet === null ||
    Math.max(
      roundedDifference(extentWidth(units.sheet) - width),
      roundedDifference(extentHeight(units.sheet) - height),
    ) <= placeAllowance;
  const cause = lie.scaleCause === null ? "" : `; drawn at a wrong scale: ${lie.scaleCause}`;
  return {
    feature: SHEET,
    what: "units",
    expected: `1 unit is 1 mm, sheet ${length(width)} x ${length(height)}`,
    measured: `${units.stated}${cause}`,
    difference: null,
    passed: isMillimetres && isWhole && lie.scaleCause === null,
  };
};

/** Width and viewBox are written with four decimals: over a whole sheet they can't differ by a millionth. */
const EVEN_UNIT = 2e-6;

export const mirrorReading = (setUp: SetUp, lie: FoundLie): Reading => {
  const isMirrored = setUp.faceUp === "rear";
  return {
    feature: SHEET,
    what: "mirror",
    expected: isMirrored ? "mirrored once" : "not mirrored",
    measured: mirrorWords(isMirrored, lie.fits),
    difference: null,
    passed: lie.fits !== "turned-over",
  };
};

const mirrorWords = (isMirrored: boolean, fits: FoundLie["fits"]): string => {
  switch (fits) {
    case "either-way":
      return "the same either way";
    case "as-expected":
      return isMirrored ? "mirrored once" : "not mirrored";
    case "turned-over":
      return isMirrored ? "not mirrored, or mirrored twice" : "mirrored";
  }
};

/** The kerf that the lines carry, and the kerf that the words state. */
export const kerfReadings = (
  file: ReadFile,
  setUp: SetUp,
  found: FoundKerf | null,
): readonly Reading[] => {
  const stated = statedKerf(setUp);
  const expected = kerfWords(setUp.kerf.kind === "left-to-cutter", stated);
  const said = kerfWords(file.statements.leavesKerf, file.statements.kerf);
  const words = wordReading("words", "kerf", { expected, measured: said });
  if (found === null) return [words];
  const difference = roundedDifference(found.kerf - stated);
  return [
    words,
    {
      feature: SHEET,
      what: "kerf",
      expected: `${length(stated)} in the lines`,
      measured: `${length(found.kerf)} in ${found.agreeing} of ${found.read} cuts`,
      difference,
      passed: difference <= kerfAllowance,
    },
  ];
};

const kerfWords = (isLeft: boolean, kerf: number | null): string => {
  if (isLeft) return "left to the cutter";
  return kerf === null ? UNSAID : `${length(kerf)} in the file`;
};

/** One row a process: lines of cuts, features of markings (a legend is as many lines as it has letters). */
export const countReadings = (
  features: readonly ExpectedFeature[],
  lines: readonly DrawnLine[],
): readonly Reading[] =>
  CUTTING.flatMap((process) => {
    const expected = features.filter((feature) => feature.process === process).length;
    const measured = lines.filter((line) => line.process === process).length;
    if (expected === 0 && measured === 0) return [];
    return [
      {
        feature: process,
        what: "count",
        expected: `${expected}`,
        measured: `${measured}`,
        difference: null,
        passed: expected === measured,
      },
    ];
  });

const CUTTING: readonly Process[] = ["drill", "cut-inner", "cut-outer"];

/** A line that nothing in the set-up asks for. */
export const extraReading = (line: DrawnLine): Reading => ({
  feature: line.name ?? `${line.process} at ${length(line.box.minX)}, ${length(line.box.minY)}`,
  what: "count",
  expected: "no such line",
  measured: `drawn under ${line.process}`,
  difference: null,
  passed: false,
});
