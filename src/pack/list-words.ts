// Names in a row as they are said: `a`, `a and b`, `a, b and c`; a long run of one pattern by its ends, `a.1 to a.24`.

export const listWords = (words: readonly string[]): string => {
  const last = words.at(-1);
  if (last === undefined) return "";
  return words.length === 1 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
};

/** Fewer are easier to tick by name. */
const LEAST_RUN = 5;

export const idWords = (ids: readonly string[]): string => {
  const [first] = ids;
  const last = ids.at(-1);
  if (first === undefined || last === undefined) return "";
  const stem = first.replace(/\d+$/, "");
  const start = Number(first.slice(stem.length));
  const isRun = ids.every((id, index) => id === `${stem}${start + index}`);
  return isRun && ids.length >= LEAST_RUN ? `${first} to ${last}` : listWords(ids);
};
