// The length that a bay is to be given so that something goes in: whole pitches of its mount; where that counts in millimetres,
// in the unit that the bay's length is written in, up and never down.

import type { Span } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { arithmeticNoise } from "../geometry/tolerance.ts";
import type { BayLayout } from "../layout/console/console-layout.ts";
import { MM_PER_INCH } from "../standards/inch.ts";
import { isInInches } from "./words.ts";

export interface NeededLength {
  readonly text: string;
  readonly length: Mm;
}

export const neededLength = (
  { mount, pitch }: Pick<BayLayout, "mount" | "pitch">,
  least: number,
  written: { readonly texts: ReadonlyMap<string, string>; readonly span: Span },
): NeededLength => {
  const { unit } = mount.height;
  if (unit !== "mm") {
    const count = Math.ceil(least / pitch - arithmeticNoise);
    return { text: `${count} ${unit}`, length: mm(count * pitch) };
  }
  if (isInInches(written, written.span)) {
    const inches = Math.ceil((least / MM_PER_INCH) * 1e4 - arithmeticNoise) / 1e4;
    return { text: `${decimal(inches, 4)} in`, length: mm(inches * MM_PER_INCH) };
  }
  const millimetres = Math.ceil(least * 1000 - arithmeticNoise) / 1000;
  return { text: `${decimal(millimetres, 3)} mm`, length: mm(millimetres) };
};
