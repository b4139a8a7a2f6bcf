// Names for the things of a list: from the legend where there is one, else from the part; each once.

/** A name that a design takes: small letters, digits and hyphens. */
const nameFrom = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, LONGEST)
    .replace(/-+$/, "");

/** A name begins with a letter: "2 A" is no name, and what is left of it would be none to know it by. */
const startsWell = (name: string): string => (/^[a-z]/.test(name) ? name : "");

const LONGEST = 24;

/** Gives a fresh name at each call, none of those that are taken; the second of a name gets a number. */
export const namer = (
  taken: Iterable<string> = [],
): ((legend: string | null, part: string) => string) => {
  const used = new Map<string, number>(Array.from(taken, (name) => [name, 1]));
  return (legend, part) => {
    const base = startsWell(nameFrom(legend ?? "")) || startsWell(nameFrom(part)) || "item";
    let count = (used.get(base) ?? 0) + 1;
    let name = count === 1 ? base : `${base}-${count}`;
    while (count > 1 && used.has(name)) {
      count += 1;
      name = `${base}-${count}`;
    }
    used.set(base, count);
    if (name !== base) used.set(name, 1);
    return name;
  };
};
