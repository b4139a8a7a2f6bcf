// All deeds with what is picked that are loaded with the first pick, and its ticket: this is their one list.

import { gapSelection, lineUpSelection, makePattern, spaceSelection } from "./arrange-acts.ts";
import { copySelection } from "./copy-acts.ts";
import { removeSelection } from "./remove-acts.ts";
import { Picked } from "./ticket-picked.tsx";
import { turnSelection } from "./turn-acts.ts";

export const deeds = {
  copySelection,
  gapSelection,
  lineUpSelection,
  makePattern,
  Picked,
  removeSelection,
  spaceSelection,
  turnSelection,
} as const;
