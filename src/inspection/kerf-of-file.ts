// The kerf that a file really carries, told from its lines alone: each cut gives one reading, and the kerf that most of
// them agree on is the file's. So a kerf applied twice, or not at all, is one wrong row and not a hundred.

import { closedGap, kerfAllowance } from "./allowance.ts";
import { CLOSE_PROBING, runBeside, shiftOfBox } from "./beside.ts";
import type { ExpectedFeature } from "./expectation.ts";
import { lineBeside } from "./kerf-opinion.ts";
import { loopArea } from "./loop.ts";
import type { MatchedLine, Matching } from "./matching.ts";

export interface FoundKerf {
  /** Full width in mm. */
  readonly kerf: number;
  /** Cuts that carry it, of all that were read. */
  readonly agreeing: number;
  readonly read: number;
}

/** null where no cut could be read. */
export const kerfOfFile = (
  features: readonly ExpectedFeature[],
  matching: Matching,
  stated: number,
): FoundKerf | null => {
  const readings = matching.byFeature
    .filter((_, index) => features[index]?.kind === "cut")
    .flat()
    .flatMap((matched) => kerfReading(matched, stated));
  if (readings.length === 0) return null;
  const supportOf = (kerf: number): number =>
    readings.filter((reading) => Math.abs(reading - kerf) <= kerfAllowance).length;
  let found = { kerf: stated, agreeing: supportOf(stated) };
  for (const kerf of readings) {
    const agreeing = supportOf(kerf);
    // One cut alone that differs is a cut of a wrong size, not a kerf.
    if (agreeing > Math.max(found.agreeing, 1)) found = { kerf, agreeing };
  }
  return { ...found, read: readings.length };
};

const kerfReading = ({ line, expected }: MatchedLine, stated: number): readonly number[] => {
  if (expected.side === 0 || line.gap > closedGap) return [];
  const target = lineBeside(expected.edges, expected.box, (expected.side * stated) / 2);
  const shift = shiftOfBox(line.box, target.box);
  const { offset } = runBeside(line.edges, expected.edges, { parts: CLOSE_PROBING, shift });
  const isAround = Math.abs(loopArea(line.edges)) > Math.abs(loopArea(expected.edges));
  return [2 * offset * (isAround ? 1 : -1) * expected.side];
};
