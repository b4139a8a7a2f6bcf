// Reasons as they come from elsewhere, put into sentences: whether they begin small or end in a full stop is theirs to choose.

export const asSentence = (words: string): string =>
  `${words.charAt(0).toUpperCase()}${unstopped(words).slice(1)}.`;

/** To stand within a sentence that goes on. */
export const unstopped = (words: string): string => words.replace(/\.$/, "");
