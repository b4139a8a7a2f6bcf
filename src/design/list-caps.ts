// How long a component list may be before it is read at all.

/** A list of a thousand parts with notes. */
export const MOST_LIST_CHARACTERS = 262_144;
