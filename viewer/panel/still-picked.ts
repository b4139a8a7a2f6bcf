// What is picked once a row has become shorter: a member that is gone hands over to the last one that is left.

import { entryName } from "../../src/design/entry-name.ts";

/** Ids of things that exist, in the order of `things`. */
export function stillPicked(
  picked: readonly string[],
  things: readonly { readonly id: string; readonly entry: string }[],
): ReadonlySet<string> {
  const there = new Set(things.map(({ id }) => id));
  const ids = picked.flatMap((id) => {
    if (there.has(id) || id === entryName(id)) return id;
    return things.findLast(({ entry }) => entry === entryName(id))?.id ?? [];
  });
  return new Set(ids.filter((id) => there.has(id)));
}
