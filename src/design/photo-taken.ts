// What a place that was taken from a photograph says of it in the text: how far off it may be. Takes places by their paths; gives
// one edit, and which of them could not say it and why.

import { type Edit, nodeAt, type Path, setKey } from "./edit.ts";
import { rewritten } from "./rewriting.ts";
import type { Source } from "./source.ts";

/** A place as it is written: of a component, a window, a line's end, a screw. */
export interface WrittenPlace {
  readonly name: string;
  /** null: the text has no place of its own for it. */
  readonly path: Path | null;
}

export interface TakenFromPhoto {
  /** Of those that can say it; null where none can. */
  readonly edit: Edit | null;
  readonly said: readonly string[];
  /** The others, and why. */
  readonly unsaid: readonly { readonly name: string; readonly why: string }[];
}

/** Says of places that they were read from the photograph. */
export const takenFromPhoto = (
  from: Source,
  places: readonly WrittenPlace[],
  residual: string,
): TakenFromPhoto => {
  const asked = places.map(({ name, path }) => ({ name, path, why: whyUnsaid(from, path) }));
  const paths = asked.flatMap(({ path, why }) => (path === null || why !== null ? [] : [path]));
  const steps = paths.map(
    (path) =>
      (now: Source): Edit =>
        setKey(now, path, { key: "residual", value: residual }),
  );
  return {
    edit: steps.length === 0 ? null : rewritten(from, steps),
    said: asked.flatMap(({ name, why }) => (why === null ? [name] : [])),
    unsaid: asked.flatMap(({ name, why }) => (why === null ? [] : [{ name, why }])),
  };
};

const whyUnsaid = (from: Source, path: Path | null): string | null => {
  const node = path === null ? null : nodeAt(from, path);
  if (node === null) return "the text gives it no place of its own";
  return node.kind === "map" ? null : "it is placed by a word; write numbers for it first";
};
