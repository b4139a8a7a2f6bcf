// All deeds that take the reader of texts, and the ticket of what is picked: this is their one list.

import { gapSelection, lineUpSelection, makePattern, spaceSelection } from "./arrange-acts.ts";
import { copySelection } from "./copy-acts.ts";
import { moveEntries, placePart } from "./edit-acts.ts";
import { removeSelection } from "./remove-acts.ts";
import { Picked } from "./ticket-picked.tsx";
import { turnSelection } from "./turn-acts.ts";

export const deeds = {
  copySelection,
  gapSelection,
  lineUpSelection,
  makePattern,
  moveEntries,
  Picked,
  placePart,
  removeSelection,
  spaceSelection,
  turnSelection,
} as const;
