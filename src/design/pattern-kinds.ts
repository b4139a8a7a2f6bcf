// The words for how several are set out, in the order in which they are told.

export const PATTERN_KINDS = ["row", "column", "grid", "ring"] as const;
