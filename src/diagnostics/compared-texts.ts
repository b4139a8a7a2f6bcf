// The order of two texts, letter by letter: the same in any language and on any machine.

/** Less than 0 where `a` comes first, 0 where they are the same. */
export const comparedTexts = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
