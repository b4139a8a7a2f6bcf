// Members of one row, column, grid or ring that were picked to be set in order: they stand so by their entry's own numbers, and
// move as one. Pure.

import type { PanelDesign } from "../../src/design/panel-design.ts";
import type { SheetThing } from "./sheet-things.ts";

/** Why there is nothing to set in order among them; null where they are not members of one pattern alone. */
export function onePatternWords(things: readonly SheetThing[], design: PanelDesign): string | null {
  const [first] = things;
  if (first === undefined || things.some(({ entry }) => entry !== first.entry)) return null;
  const entry = design.components.find(({ id }) => id === first.entry);
  if (entry?.kind !== "pattern" || things.length < 2) return null;
  const { kind } = entry.pattern;
  return `These are members of one ${kind}, ${entry.id}, that is moved whole: its numbers set them out. Pick something beside it too.`;
}
