// A record of any kind with what was measured on the bench over its figures. What follows from a figure follows the
// reading: the bodies of a bush, the LEDs of a strip between two cuts.

import type { MeasuredDesign } from "../design/panel-design.ts";
import { mm } from "../geometry/quantity.ts";
import { writtenBodies } from "./derived-bodies.ts";
import { numberPaths, pathOf } from "./field-path.ts";
import { partAsMeasured } from "./library.ts";
import { measuredFigures, withReadings } from "./measured-figures.ts";
import type { CatalogueRecord } from "./record.ts";
import type { Strip } from "./strip.ts";

export function recordAsMeasured(
  record: CatalogueRecord,
  measured: MeasuredDesign,
): CatalogueRecord {
  if (record.kind === "part") return partAsMeasured(record, measured);
  const changed = withReadings(record, measured);
  return {
    ...(changed.kind === "strip" ? asCut(changed) : changed),
    figures: measuredFigures(record, measured),
  };
}

/** A strip is measured over its cuts, where the error of one pitch does not count: the pitch follows. */
const asCut = (strip: Strip): Strip => ({
  ...strip,
  pitch: mm(strip.cutEvery / strip.ledsPerCut),
});

/** Every path that a reading may be entered at, in the text's spelling. What is worked out from other fields has none. */
export function measurablePaths(record: CatalogueRecord): readonly string[] {
  if (record.kind === "part")
    return numberPaths({ ...record, bodies: writtenBodies(record.bodies) });
  return numberPaths(record).filter((path) => record.kind !== "strip" || path !== "pitch");
}

export const isMeasurable = (record: CatalogueRecord, path: string): boolean =>
  measurablePaths(record).includes(pathOf(record, path));
