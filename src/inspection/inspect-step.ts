// Reads a written STEP file back and measures its one solid against the recipe: what the reader does not understand or finds at odds,
// how many solids, whether it is one shell that faces outward, volume and box. Takes the file's bytes; gives the table's rows.

import { recipeExtent } from "../geometry/solid/recipe-extent.ts";
import { recipeVolume } from "../geometry/solid/recipe-volume.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { stepAllowance, stepVolumeAllowance } from "./allowance.ts";
import { boxReadings, finite } from "./box-readings.ts";
import { type InspectionRow, numberReading, type Reading, wordReading } from "./row.ts";
import { measuredStep, type StepMeasures } from "./step-measure.ts";
import { readStepFile } from "./step-reader.ts";
import type { StepSolid } from "./step-shape.ts";

export interface StepInspection {
  readonly file: string;
  /** Of the product and of its one solid. */
  readonly title: string;
  /** Name under which its rows stand, as in the other formats. */
  readonly name: string;
  readonly solid: Solid;
}

export const inspectStep = (bytes: Uint8Array, of: StepInspection): readonly InspectionRow[] => {
  const read = readStepFile(new TextDecoder().decode(bytes));
  const [solid] = read.solids;
  return [
    wordReading(FILE, "content", {
      expected: SOUND,
      measured: read.strangers.length === 0 ? SOUND : read.strangers.join(", "),
    }),
    wordReading(FILE, "part", { expected: of.title, measured: read.title ?? "not said" }),
    wordReading(FILE, "count", {
      expected: "1 solid",
      measured: read.solids.length === 1 ? "1 solid" : `${read.solids.length} solids`,
    }),
    ...(solid === undefined ? [] : solidReadings(solid, of)),
  ].map((row) => ({ file: of.file, ...row }));
};

/** Name under which rows stand that belong to no single body. */
const FILE = "file";

const SOUND = "closed faces on planes and cylinders, in millimetres";

const solidReadings = (read: StepSolid, { name, solid }: StepInspection): readonly Reading[] => {
  const measures = measuredStep(read);
  const isOutward = measures.turned === 0 && measures.volume > 0;
  return [
    wordReading(name, "outward", {
      expected: "outward",
      measured: isOutward ? "outward" : inwardWords(measures),
    }),
    wordReading(name, "shells", { expected: "1", measured: String(measures.shells) }),
    numberReading(name, "volume", {
      expected: recipeVolume(solid),
      measured: finite(measures.volume),
      allowance: stepVolumeAllowance(measures.surface),
    }),
    ...boxReadings(name, measures, { box: recipeExtent(solid), allowance: stepAllowance }),
  ];
};

const inwardWords = ({ turned, volume }: StepMeasures): string =>
  turned > 0 ? `${turned} ${turned === 1 ? "face" : "faces"} the other way` : volumeWords(volume);

const volumeWords = (volume: number): string => (volume < 0 ? "inward" : "no volume");
