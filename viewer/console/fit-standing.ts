// Whether the fit of the console has been checked, for those who stand outside its room: it loads nothing of it.

import { signal } from "@preact/signals";

export type FitStanding = "unchecked" | "stale" | "checked";

export const fitStanding = signal<FitStanding>("unchecked");

/** Empty where there is nothing to add to the count of the findings. */
export const fitStandingWords = (): string =>
  ({
    unchecked: "; fit not checked yet",
    stale: "; fit not checked since the last change",
    checked: "",
  })[fitStanding.value];
