// A screw as a list names it: the shortest that is sold and does, or what length it must have where none does.

import type { Catalogue } from "../catalogue/record.ts";
import { decimal } from "../geometry/number.ts";
import { type ScrewNeed, type SoldScrew, screwFor, soldScrews } from "../parts/screw-need.ts";

export interface ScrewWords {
  readonly part: string;
  readonly title: string;
}

/** Of the kinds of screw that `among` lets through; of any where it is not given. */
export const screwWords = (
  need: ScrewNeed,
  catalogue: Catalogue,
  among: (sold: SoldScrew) => boolean = () => true,
): ScrewWords => {
  const found = screwFor(need, soldScrews(need.thread, catalogue).filter(among));
  if (found !== null)
    return {
      part: found.screw.id,
      title: `${found.screw.title}, ${decimal(found.length, 1)} mm long`,
    };
  const { thread, least, most } = need;
  const length =
    most === null
      ? `at least ${decimal(least, 1)} mm long`
      : `${decimal(least, 1)} to ${decimal(most, 1)} mm long`;
  return { part: thread, title: `screw ${thread}, ${length}: none in the catalogue` };
};
