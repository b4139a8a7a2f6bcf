// Reads a written print file back and measures every body against its recipe: closed, facing outward, so many shells, no
// flat triangle, volume, box, and whether it fits the bed. Takes the file's bytes; gives the table's rows.

import { fixed } from "../geometry/number.ts";
import { recipeExtent, type SolidExtent } from "../geometry/solid/recipe-extent.ts";
import { recipeVolume } from "../geometry/solid/recipe-volume.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { boxAllowance, volumeShare } from "./allowance.ts";
import { boxReadings, finite } from "./box-readings.ts";
import { type InspectionRow, numberReading, type Reading, wordReading } from "./row.ts";
import type { SolidBody, SolidFile } from "./solid-file.ts";
import { measuredSolid, type SolidMeasures } from "./solid-measure.ts";
import { readStl } from "./solid-stl.ts";
import { readThreeMf } from "./solid-three-mf.ts";

export interface SolidInspection {
  readonly file: string;
  readonly format: "stl" | "3mf";
  /** As a 3MF says it; STL has no words. */
  readonly title: string;
  /** In the file's order. An STL holds one. */
  readonly bodies: readonly ExpectedBody[];
  /** Width, depth and height that the printer can make; null where no printer is known. */
  readonly bed: readonly [number, number, number] | null;
}

export interface ExpectedBody {
  readonly name: string;
  readonly solid: Solid;
  /** Where cuts take an outermost face away, the box that is left; null: the recipe's own. */
  readonly box: SolidExtent | null;
  /** Closed surfaces: one for a piece without hollows. */
  readonly shells: number;
}

export const inspectSolid = (bytes: Uint8Array, of: SolidInspection): readonly InspectionRow[] => {
  const read = of.format === "stl" ? readStl(bytes, of.bodies[0]?.name ?? "") : readThreeMf(bytes);
  const measured = read.bodies.map(measuredSolid);
  return [
    ...fileReadings(read, of),
    ...of.bodies.flatMap((expected, index) => {
      const body = read.bodies[index];
      const measures = measured[index];
      return body === undefined || measures === undefined
        ? []
        : bodyReadings(expected, body, measures);
    }),
    ...(of.bed === null || measured.length === 0 ? [] : [bedReading(measured, of.bed)]),
  ].map((row) => ({ file: of.file, ...row }));
};

/** Name under which rows stand that belong to no single body. */
const FILE = "file";

const fileReadings = (read: SolidFile, of: SolidInspection): readonly Reading[] => {
  const content = wordReading(FILE, "content", {
    expected: "triangles only",
    measured: read.strangers.length === 0 ? "triangles only" : read.strangers.join(", "),
  });
  if (of.format === "stl") return [content];
  return [
    content,
    wordReading(FILE, "units", { expected: "millimeter", measured: read.unit ?? "not said" }),
    wordReading(FILE, "part", { expected: of.title, measured: read.title ?? "not said" }),
    wordReading(FILE, "count", {
      expected: of.bodies.map(({ name }) => name).join(", "),
      measured: read.bodies.map(({ name }) => name).join(", "),
    }),
  ];
};

const bodyReadings = (
  expected: ExpectedBody,
  body: SolidBody,
  measures: SolidMeasures,
): readonly Reading[] => {
  const volume = recipeVolume(expected.solid);
  return [
    closedReading(expected.name, measures),
    outwardReading(body, measures),
    wordReading(expected.name, "shells", {
      expected: String(expected.shells),
      measured: String(measures.shells.length),
    }),
    wordReading(expected.name, "triangles", {
      expected: "none flat",
      measured: measures.flat === 0 ? "none flat" : `${measures.flat} flat`,
    }),
    numberReading(expected.name, "volume", {
      expected: volume,
      measured: finite(measures.volume),
      allowance: volume * volumeShare,
    }),
    ...boxReadings(expected.name, measures, {
      box: expected.box ?? recipeExtent(expected.solid),
      allowance: boxAllowance,
    }),
  ];
};

const CLOSED = "each edge used twice, in opposite directions";

const closedReading = (name: string, { open, crowded }: SolidMeasures): Reading =>
  wordReading(name, "closed", {
    expected: CLOSED,
    measured:
      open === 0 && crowded === 0 ? CLOSED : `${open} edges open, ${crowded} used twice one way`,
  });

/** A hollow's shell faces into the hollow: shells beyond the first may be either way, but the whole must not be inside out. */
const outwardReading = ({ name, turnedNormals }: SolidBody, { shells }: SolidMeasures): Reading => {
  const isOutward = (shells[0] ?? 0) > 0 && turnedNormals === 0;
  const normals = turnedNormals === 0 ? "" : `, ${turnedNormals} normals the other way`;
  return {
    feature: name,
    what: "outward",
    expected: "outward",
    measured: isOutward ? "outward" : `${(shells[0] ?? 0) > 0 ? "outward" : "inward"}${normals}`,
    difference: null,
    passed: isOutward,
  };
};

/** As it lies, or turned by a quarter. */
const bedReading = (
  bodies: readonly SolidMeasures[],
  [bedWidth, bedDepth, bedHeight]: readonly [number, number, number],
): Reading => {
  const sizeAlong = (axis: number): number =>
    finite(
      Math.max(...bodies.map(({ high }) => high[axis]!)) -
        Math.min(...bodies.map(({ low }) => low[axis]!)),
    );
  const [width, depth, height] = [sizeAlong(0), sizeAlong(1), sizeAlong(2)];
  const isFlatIn = (along: number, across: number): boolean =>
    along <= bedWidth && across <= bedDepth;
  return {
    feature: FILE,
    what: "bed",
    expected: `within ${sizes([bedWidth, bedDepth, bedHeight])}`,
    measured: sizes([width, depth, height]),
    difference: null,
    passed: height <= bedHeight && (isFlatIn(width, depth) || isFlatIn(depth, width)),
  };
};

const sizes = (values: readonly number[]): string =>
  values.map((value) => fixed(value, 2)).join(" x ");
