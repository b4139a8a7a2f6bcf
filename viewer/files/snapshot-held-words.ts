// What a snapshot holds beside its texts, in words, and what it does not.

import type { SnapshotFiles } from "./snapshot-plan.ts";

export const heldWords = ({ files, leftOut }: SnapshotFiles): string => {
  if (files === null) return "texts alone";
  const count = files.size;
  const held =
    count === 0
      ? []
      : [`with ${count === 1 ? "one shape or photograph" : `${count} shapes and photographs`}`];
  const without = leftOut.length === 0 ? [] : [`without ${leftOut.join(", ")}`];
  return [...held, ...without].join(", ");
};
