// What is sound and of which no file is to be written: of a console without a frame no fascia is cut. By itself, so that who asks
// loads none of what makes packs.

import type { PackDraft } from "./pack-drafts.ts";

export const isNothing = ({ faults, pack }: PackDraft): boolean =>
  faults.length === 0 && pack.files.length === 0;
