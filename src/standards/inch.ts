// The inch, for whoever writes one or reads one back.

/** Exactly (ISO 80000-3:2019, Annex; international yard and pound agreement of 1959). */
export const MM_PER_INCH = 25.4;
