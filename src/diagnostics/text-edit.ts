// A change to a design is a change to its text: one stretch replaced, everything else untouched.
// `baseHash` names the text that the edit was made for; on any other text it is refused.

export interface TextEdit {
  readonly file: string;
  readonly baseHash: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export type EditResult =
  | {
      readonly kind: "edited";
      readonly text: string;
      /** Edits on the new text that bring the old one back. */
      readonly undo: readonly TextEdit[];
    }
  | { readonly kind: "refused"; readonly why: string };

/** Carries out edits that were all made for this text of one file. Insertions at one place keep their order. */
export const applyEdits = (text: string, edits: readonly TextEdit[]): EditResult => {
  const ordered = edits.toSorted((a, b) => a.start - b.start || a.end - b.end);
  const why = refusal(text, ordered);
  if (why !== null) {
    return { kind: "refused", why };
  }
  const pieces: string[] = [];
  let taken = 0;
  for (const edit of ordered) {
    pieces.push(text.slice(taken, edit.start), edit.text);
    taken = edit.end;
  }
  pieces.push(text.slice(taken));
  const edited = pieces.join("");
  return { kind: "edited", text: edited, undo: undoEdits(text, edited, ordered) };
};

/**
 * A short name for a text: two 32-bit FNV-1a sums over its UTF-16 code units and its length.
 * It tells a stale edit from a fresh one; it is no defence against someone who forges a text.
 */
export const textHash = (text: string): string => {
  const known = KNOWN.get(text);
  if (known !== undefined) return known;
  const hash = newHash(text);
  const [oldest] = KNOWN.size < MOST_KNOWN ? [] : KNOWN.keys();
  if (oldest !== undefined) KNOWN.delete(oldest);
  KNOWN.set(text, hash);
  return hash;
};

/** A text's name is asked for at every step of its reading. A console of a dozen panels with what they name, twice over. */
const KNOWN = new Map<string, string>();
const MOST_KNOWN = 32;

const newHash = (text: string): string => {
  let low = FNV_OFFSET;
  let high = FNV_OFFSET ^ FNV_SECOND;
  for (let index = 0; index < text.length; index += 1) {
    const unit = text.charCodeAt(index);
    low = Math.imul(low ^ unit, FNV_PRIME);
    high = Math.imul(high ^ (unit + index), FNV_PRIME);
  }
  return `${hex(low)}${hex(high)}-${text.length}`;
};

// FNV-1a, 32 bits (Fowler, Noll, Vo; IETF draft "The FNV Non-Cryptographic Hash Algorithm").
const FNV_OFFSET = 0x811c9dc5;
const FNV_PRIME = 0x01000193;
/** Any odd constant that starts the second sum elsewhere. */
const FNV_SECOND = 0x5bd1e995;

const hex = (value: number): string => (value >>> 0).toString(16).padStart(8, "0");

const refusal = (text: string, ordered: readonly TextEdit[]): string | null => {
  const hash = ordered.length === 0 ? "" : textHash(text);
  for (const [index, edit] of ordered.entries()) {
    const before = ordered[index - 1];
    if (edit.baseHash !== hash) {
      return `${edit.file} has changed since this edit was made`;
    }
    if (before !== undefined && before.file !== edit.file) {
      return `the edits are for two files, ${before.file} and ${edit.file}`;
    }
    if (!isStretchOf(text, edit)) {
      return `the edit lies outside ${edit.file}`;
    }
    if (before !== undefined && before.end > edit.start) {
      return `two edits change the same stretch of ${edit.file}`;
    }
  }
  return null;
};

const isStretchOf = (text: string, { start, end }: TextEdit): boolean =>
  Number.isInteger(start) &&
  Number.isInteger(end) &&
  start >= 0 &&
  start <= end &&
  end <= text.length;

const undoEdits = (
  text: string,
  edited: string,
  ordered: readonly TextEdit[],
): readonly TextEdit[] => {
  const baseHash = textHash(edited);
  const undo: TextEdit[] = [];
  let shift = 0;
  for (const { file, start, end, text: added } of ordered) {
    const at = start + shift;
    undo.push({ file, baseHash, start: at, end: at + added.length, text: text.slice(start, end) });
    shift += added.length - (end - start);
  }
  return undo;
};
