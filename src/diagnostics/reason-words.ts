// What was thrown, in words: its message, or itself where it has none.

export const reasonWords = (reason: unknown): string =>
  reason instanceof Error ? reason.message : `${reason}`;
