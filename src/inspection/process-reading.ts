// Under which process a feature was found, and whether it is painted as that process must be: a cut is a line without
// fill, an engraved area a fill without line. DXF paints nothing: there the layer says it all.

import type { DrawnLine } from "./drawn-line.ts";
import type { ExpectedFeature } from "./expectation.ts";
import { type Reading, wordReading } from "./row.ts";

export const processReading = (
  feature: ExpectedFeature,
  lines: readonly DrawnLine[],
  look: "line" | "fill",
): Reading => {
  const found = lines.map((line) => foundProcess(line, look));
  return wordReading(feature.feature, "process", {
    expected: feature.process,
    measured: Array.from(new Set(found)).toSorted().join(", "),
  });
};

const foundProcess = (line: DrawnLine, look: "line" | "fill"): string =>
  line.look === null || line.look === look
    ? line.process
    : `${line.process}, drawn as ${LOOK_WORDS[line.look]}`;

const LOOK_WORDS: Readonly<Record<NonNullable<DrawnLine["look"]>, string>> = {
  line: "a line",
  fill: "an area",
  both: "an area with a line round it",
  none: "nothing that is seen",
};
