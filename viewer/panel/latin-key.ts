// The letter that a key stands for in the help of the page: on a keyboard of another script, the Latin letter of its place.

export type Key = Pick<KeyboardEvent, "key" | "code">;

/** Small; names of keys (Escape, Home) as they are. */
export function latinKey({ key, code }: Key): string {
  if (key.length !== 1) return key;
  const place = /^Key([A-Z])$/.exec(code)?.[1];
  return (isLatin(key) || place === undefined ? key : place).toLowerCase();
}

/** Letters with marks are Latin too: they have their own places, and are no letters of the help. */
const isLatin = (key: string): boolean => /^(?:\p{ASCII}|\p{Script=Latin})$/u.test(key);
