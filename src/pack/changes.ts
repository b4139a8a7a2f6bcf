// What changed since the last pack, part by part, from two manifests: so that a builder cuts again only what must be.

import type { Manifest } from "./manifest.ts";
import type { PartHash } from "./part-hash.ts";

export interface PartChange {
  readonly part: string;
  /** `setting`: the same shape from another kerf, machine or side; a piece already cut still serves. */
  readonly change: "new" | "changed" | "setting" | "as-cut" | "gone";
}

export const changesBetween = (before: Manifest, after: Manifest): readonly PartChange[] => [
  ...after.parts.map((part) => ({
    part: part.id,
    change: changeOf(
      before.parts.find(({ id }) => id === part.id),
      part,
    ),
  })),
  ...before.parts
    .filter(({ id }) => !after.parts.some((part) => part.id === id))
    .map(({ id }) => ({ part: id, change: "gone" as const })),
];

const changeOf = (before: PartHash | undefined, after: PartHash): PartChange["change"] => {
  if (before === undefined) return "new";
  if (before.shape !== after.shape) return "changed";
  return before.setting === after.setting ? "as-cut" : "setting";
};

const WORDS: Readonly<Record<PartChange["change"], string>> = {
  new: "is new",
  changed: "changed",
  setting: "has the same shape at another setting",
  "as-cut": "as cut",
  gone: "is no longer wanted",
};

/** "winch-face changed, winch-backing as cut". */
export const changesSentence = (changes: readonly PartChange[]): string =>
  changes.map(({ part, change }) => `${part} ${WORDS[change]}`).join(", ");
