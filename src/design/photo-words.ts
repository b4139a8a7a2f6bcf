// What keeps a photograph's marks from saying where the panel lies in it, in a builder's words: for findings and for the page.

import type { PhotoMarks } from "./photo-design.ts";
import { ASSUMED_MARKING, type PhotoAccuracy, type PhotoTrouble } from "./photo-plane.ts";

export const photoTroubleWords = (trouble: PhotoTrouble, marks: PhotoMarks["kind"]): string => {
  const names = (indices: readonly number[]): string => markNames(indices, marks);
  switch (trouble.kind) {
    case "too-few":
      return `${trouble.count} marks are too few; four of which no three lie in a line say where the panel lies`;
    case "coincident":
      return `${names(trouble.pairs)} lie at one place ${sideWords(trouble.side)}; set them apart`;
    case "collinear":
      return `${names(trouble.pairs)} lie in a line ${sideWords(trouble.side)}; take marks of which no three do, such as the four corners`;
    case "folded":
      return "two marks are exchanged: the lines between them cross in the picture and not on the panel, or the other way round";
    case "mirrored":
      return "the marks go round the panel the other way than in the picture: left and right, or upper and lower, are exchanged";
  }
};

/** Whose figure the accuracy is, as the end of a sentence; empty where the marks themselves say it. */
export const accuracyWords = (
  accuracy: PhotoAccuracy,
  { marks, count }: { readonly marks: PhotoMarks["kind"]; readonly count: number },
): string => {
  switch (accuracy.kind) {
    case "checked":
      return "";
    case "assumed":
      return `${uncheckedWords(accuracy.untold, { marks, count })}; it is assumed, no measurement, that each lies within ${ASSUMED_MARKING} pixels of its spot`;
    case "unknown":
      return `${uncheckedWords(accuracy.untold, { marks, count })}, and the marks disagree: any of these may be wrong by more than shows`;
  }
};

const uncheckedWords = (
  untold: readonly number[],
  { marks, count }: { readonly marks: PhotoMarks["kind"]; readonly count: number },
): string =>
  count === 4
    ? "four marks always fit, so that nothing checks them"
    : `nothing checks ${markNames(untold, marks)}, without which the others lie in a line; a further mark off that line does`;

const markNames = (indices: readonly number[], marks: PhotoMarks["kind"]): string =>
  inSeries(indices.map((index) => markName(index, marks)));

/** `point 3`, or `the sheet's upper right corner`. */
export const markName = (index: number, marks: PhotoMarks["kind"]): string =>
  marks === "sheet" ? `the sheet's ${CORNER_NAMES[index] ?? ""} corner` : `point ${index + 1}`;

export const CORNER_NAMES = ["lower left", "lower right", "upper right", "upper left"] as const;

const sideWords = (side: "from" | "to"): string =>
  side === "from" ? "in the picture" : "on the panel";

const inSeries = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
