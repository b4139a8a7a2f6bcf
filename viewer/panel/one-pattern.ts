// Members of one row, column, grid or ring that were picked to be set in order: they stand so by their entry's own numbers, and
// move as one. Pure.

import { entryPattern } from "../../src/layout/entry-pattern.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { SheetThing } from "./sheet-things.ts";

/** Why there is nothing to set in order among them; null where they are not members of one pattern alone. */
export function onePatternWords(
  things: readonly SheetThing[],
  layout: Pick<PanelLayout, "design" | "ownPlaces">,
): string | null {
  const [first] = things;
  if (first === undefined || things.some(({ entry }) => entry !== first.entry)) return null;
  const pattern = entryPattern(first.entry, layout);
  if (pattern === null || things.length < 2) return null;
  return `These are members of one ${pattern.kind}, ${first.entry}, that is moved whole: its numbers set them out. Pick something beside it too.`;
}
