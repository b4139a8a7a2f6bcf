// The names that a mistyped one was most likely meant to be, nearest first.
// Distance counts letters added, lost, changed or swapped with their neighbour; ties go by name.

/** At most `count` of the names, nearest first. */
export const nearestNames = (
  name: string,
  names: Iterable<string>,
  count = 3,
): readonly string[] => {
  const measured: { name: string; distance: number }[] = [];
  for (const candidate of new Set(names)) {
    measured.push({ name: candidate, distance: typingDistance(name, candidate) });
  }
  measured.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1));
  return measured.slice(0, count).map((entry) => entry.name);
};

/** "brake, break-2 or brass" for the end of a sentence; empty where there are no names. */
export const inWords = (names: readonly string[], last = "or"): string => {
  const head = names.slice(0, -1);
  const tail = names.at(-1) ?? "";
  return head.length === 0 ? tail : `${head.join(", ")} ${last} ${tail}`;
};

/** "; the nearest are brake and break-2" behind a name that is not known; empty where there are none. */
export const nearestHint = (names: readonly string[]): string =>
  names.length === 0
    ? ""
    : `; the nearest ${names.length === 1 ? "is" : "are"} ${inWords(names, "and")}`;

/** Longer names are compared by their beginnings: the work grows with the square of the length. */
const LONGEST = 48;

/** Whether a name was likely meant by what was written: a name of up to three letters has one slip, one of twelve four. */
export const isNearly = (written: string, name: string): boolean =>
  typingDistance(written, name) <=
  Math.ceil(Math.max(written.length, name.length) / LETTERS_A_SLIP);

const LETTERS_A_SLIP = 3;

/** A part of a name that was typed whole ("toggle" for "toggle-12") is nearer than its missing letters say. */
export const typingDistance = (written: string, candidate: string): number => {
  const [wanted, other] = [compared(written), compared(candidate)];
  const letters = swapDistance(wanted, other);
  const holds = wanted.length >= 3 && (other.includes(wanted) || wanted.includes(other));
  return holds ? Math.min(letters, 2 + letters / LONGEST) : letters;
};

const compared = (name: string): string => name.slice(0, LONGEST).toLowerCase();

/** Optimal string alignment: Levenshtein's distance with swaps of neighbours (Damerau 1964). */
const swapDistance = (a: string, b: string): number => {
  let beforeLast: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const changed = (last[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      const added = Math.min(last[column] ?? 0, current[column - 1] ?? 0) + 1;
      const swapped = isSwap(a, b, { row, column })
        ? (beforeLast[column - 2] ?? 0) + 1
        : Number.POSITIVE_INFINITY;
      current.push(Math.min(changed, added, swapped));
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
};

const isSwap = (
  a: string,
  b: string,
  { row, column }: { readonly row: number; readonly column: number },
): boolean => row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
