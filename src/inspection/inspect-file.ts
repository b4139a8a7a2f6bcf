// One read file against its set-up: finds how the file lies and what kerf it carries, then measures every feature.
// Each cause gives one row that fails: a file that is mirrored, scaled or compensated twice is put right, row by row,
// before its features are measured, so that the table says what is wrong and that the rest is sound.

import type { SetUp, SheetPart } from "../parts/sheet-part.ts";
import { cutReadings } from "./cut-readings.ts";
import { type DrawnLine, drawnLines } from "./drawn-line.ts";
import {
  type ExpectedFeature,
  type ExpectedLoop,
  engravedInset,
  expectedFeatures,
  statedKerf,
} from "./expectation.ts";
import { type FoundKerf, kerfOfFile } from "./kerf-of-file.ts";
import { type FoundLie, lieOfFile } from "./lie-of-file.ts";
import { markReadings } from "./mark-readings.ts";
import { type Matching, matchLines } from "./matching.ts";
import { orderReading } from "./order-reading.ts";
import type { ReadFile } from "./read-file.ts";
import type { InspectionRow } from "./row.ts";
import {
  countReadings,
  extraReading,
  kerfReadings,
  mirrorReading,
  statementReadings,
  unitsReading,
} from "./sheet-readings.ts";

/** What a written file is inspected against, and the name that its rows carry. */
export interface InspectionOf {
  readonly part: SheetPart;
  readonly setUp: SetUp;
  readonly file: string;
}

export const inspectFile = (read: ReadFile, of: InspectionOf): readonly InspectionRow[] =>
  rowsOf(read, understood(read, of.setUp), of);

/** The rows of a file that is understood already. */
export const rowsOf = (
  read: ReadFile,
  reading: Understood,
  { part, setUp, file }: InspectionOf,
): readonly InspectionRow[] =>
  [
    ...statementReadings(read, part, setUp),
    unitsReading(read, setUp, reading.lie),
    mirrorReading(setUp, reading.lie),
    ...kerfReadings(read, setUp, reading.kerf),
    orderReading(reading.lines),
    ...countReadings(reading.features, reading.lines),
    ...reading.features.flatMap((feature, index) =>
      featureReadings(feature, { reading, index, setUp }),
    ),
    ...reading.matching.extra.map(extraReading),
  ].map((row) => ({ file, ...row }));

/** A file with its features found. */
export interface Understood {
  readonly features: readonly ExpectedFeature[];
  readonly lie: FoundLie;
  readonly lines: readonly DrawnLine[];
  readonly matching: Matching;
  readonly kerf: FoundKerf | null;
}

export const understood = (read: ReadFile, setUp: SetUp): Understood => {
  const features = expectedFeatures(setUp);
  const kerf = statedKerf(setUp);
  const inset = engravedInset(setUp);
  const offsetOf = (loop: ExpectedLoop): number =>
    features[loop.index]?.kind === "fill" ? inset : kerf / 2;
  const lie = lieOfFile(read, {
    sheet: setUp.sheet,
    isRearUp: setUp.faceUp === "rear",
    loops: features.flatMap(({ loops }) => loops),
    offsetOf,
  });
  const lines = drawnLines(read, lie.lie);
  const matching = matchLines(features, lines, offsetOf);
  return { features, lie, lines, matching, kerf: kerfOfFile(features, matching, kerf) };
};

const featureReadings = (
  feature: ExpectedFeature,
  of: { readonly reading: Understood; readonly index: number; readonly setUp: SetUp },
): ReturnType<typeof cutReadings> => {
  const matched = of.reading.matching.byFeature[of.index] ?? [];
  return feature.kind === "cut"
    ? cutReadings(feature, matched, of.reading.kerf?.kerf ?? statedKerf(of.setUp))
    : markReadings(feature, matched, engravedInset(of.setUp));
};
