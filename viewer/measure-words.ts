// The numbers under a finding's sentence: in inches where the sentence tells them in inches, else in the unit that they have.

import { lengthIn, type WritingUnit } from "../src/design/length-text.ts";
import type { Measure } from "../src/diagnostics/finding.ts";
import { decimal } from "../src/geometry/number.ts";
import { MM_PER_INCH } from "../src/standards/inch.ts";

const UNIT_WORDS: Readonly<Record<Measure["unit"], string>> = {
  mm: " mm",
  deg: "°",
  arcmin: "′",
  count: "",
  ratio: "",
  modules: " modules",
  U: " U",
  HP: " HP",
  bytes: " bytes",
  celsius: " °C",
  pixels: " pixels",
};

export const measureWords = ({ value, unit }: Measure, lengths: WritingUnit): string =>
  unit === "mm" && lengths === "in"
    ? lengthIn("in", value)
    : `${decimal(value, 3)}${UNIT_WORDS[unit]}`;

/** A sentence that has one of these lengths in inches speaks in inches; "the 4 in this row" has none of them. */
export function unitOfSentence(sentence: string, measures: readonly Measure[]): WritingUnit {
  const inches = [...sentence.matchAll(/(\d+(?:\.(\d+))?) in\b/g)].map(
    ([, figures = "", decimals = ""]) => ({
      mm: Number(figures) * MM_PER_INCH,
      // Sentences round a limit up or down: by less than one of the last figure, and never by more than a hundredth.
      within: Math.min(10 ** -decimals.length, 0.01) * MM_PER_INCH,
    }),
  );
  const isTold = ({ value, unit }: Measure): boolean =>
    unit === "mm" && inches.some(({ mm, within }) => Math.abs(Math.abs(value) - mm) < within);
  return measures.some(isTold) ? "in" : "mm";
}
