// Names for files and folders that every file system takes: lower-case ASCII words joined by hyphens.
// Takes whatever a builder called the thing; gives a name that is the same on Linux, macOS and Windows.

import { sha256 } from "./sha256.ts";
import { utf8Bytes } from "./utf8.ts";

/** Longest name without its ending. Windows' path limit of 260 leaves room for folders and endings. */
const LONGEST = 64;
/** Hexadecimal digits that keep apart names which differ only in what was cut off or could not be spelt. */
const MARK_LENGTH = 8;

// Names that Windows keeps for devices, with any ending (Microsoft, "Naming files, paths, and namespaces").
const DEVICE = /^(con|prn|aux|nul|conin|conout|clock|com[0-9]|lpt[0-9])$/;

// Letters that Unicode does not take apart into a base letter and an accent.
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/ß/g, "ss"],
  [/æ/g, "ae"],
  [/œ/g, "oe"],
  [/ø/g, "o"],
  [/[đð]/g, "d"],
  [/þ/g, "th"],
  [/ł/g, "l"],
  [/ı/g, "i"],
];

export const safeName = (words: string): string => {
  const plain = spelt(words);
  const name = plain.replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
  const isWhole = !hasUnspeltLetters(plain);
  if (isWhole && name !== "" && name.length <= LONGEST)
    return DEVICE.test(name) ? `${name}-named` : name;
  const mark = sha256(utf8Bytes(words.normalize("NFC"))).slice(0, MARK_LENGTH);
  const kept = name.slice(0, LONGEST - MARK_LENGTH - 1).replace(/-+$/, "");
  return kept === "" ? `name-${mark}` : `${kept}-${mark}`;
};

/** The same paths, in the same order, with `-2`, `-3` where two would be one file on a case-blind disk. */
export const distinctPaths = (paths: readonly string[]): readonly string[] => {
  const taken = new Set<string>();
  return paths.map((path) => {
    const free = firstFree(path, taken);
    taken.add(free.toLowerCase());
    return free;
  });
};

const firstFree = (path: string, taken: ReadonlySet<string>): string => {
  if (!taken.has(path.toLowerCase())) return path;
  const slash = path.lastIndexOf("/") + 1;
  const dot = path.indexOf(".", slash);
  const cut = dot < 0 ? path.length : dot;
  for (let count = 2; ; count++) {
    const candidate = `${path.slice(0, cut)}-${count}${path.slice(cut)}`;
    if (!taken.has(candidate.toLowerCase())) return candidate;
  }
};

const spelt = (words: string): string =>
  SPELLINGS.reduce(
    (text, [letter, spelling]) => text.replace(letter, spelling),
    words
      .normalize("NFKD")
      .toLowerCase()
      .replace(/\p{Mark}+/gu, ""),
  );

const hasUnspeltLetters = (plain: string): boolean => /[^\P{L}a-z]|[^\P{N}0-9]/u.test(plain);

/** Null where a path may be written on every system; else what stands against it. */
export const pathFault = (path: string): string | null => {
  for (const step of path.split("/")) {
    if (step === "" || step === "." || step === "..") return "it has an empty step or leads upward";
    if (!/^[A-Za-z0-9][A-Za-z0-9._-]*$/.test(step)) return `"${step}" has a character to avoid`;
    if (/[. ]$/.test(step)) return `"${step}" ends in a point or a space`;
    if (DEVICE.test(step.toLowerCase().split(".")[0] ?? ""))
      return `"${step}" is a device on Windows`;
    if (step.length > LONGEST * 2) return `"${step}" is longer than ${LONGEST * 2} characters`;
  }
  return null;
};
