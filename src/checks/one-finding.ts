// One finding for what has one cause: what is wrong with a row's part is wrong with each of its members, and what lies too
// close in a row lies so all along it. Said once, with the count.

import { entryName } from "../design/entry-name.ts";
import type { Finding } from "../diagnostics/finding.ts";
import type { CutOut, PlacedComponent } from "../layout/panel-layout.ts";

/** One finding an entry of the text: the first that is found, the others counted. */
export const onePerEntry = (
  components: readonly PlacedComponent[],
  judgeOne: (component: PlacedComponent) => Finding | null,
): readonly Finding[] =>
  counted(
    components.flatMap((component) => {
      const found = judgeOne(component);
      return found === null ? [] : [{ key: component.entry, found }];
    }),
  );

/** One finding an owner of openings: its first opening that is found wanting; members of a row are counted. */
export const onePerOwner = <Thing extends { readonly cutOut: Pick<CutOut, "owner"> }>(
  things: readonly Thing[],
  judgeOne: (thing: Thing) => Finding | null,
): readonly Finding[] => {
  const owners = new Set<string>();
  const found: Keyed[] = [];
  for (const thing of things) {
    const { owner } = thing.cutOut;
    const one = owners.has(owner) ? null : judgeOne(thing);
    if (one === null) continue;
    owners.add(owner);
    found.push({ key: entryName(owner), found: one });
  }
  return counted(found);
};

/** One finding for each two entries. */
export const onePerPair = (found: readonly Finding[]): readonly Finding[] =>
  counted(
    found.map((one) => ({ key: one.subjects.map(entryName).toSorted().join(" "), found: one })),
  );

interface Keyed {
  readonly key: string;
  readonly found: Finding;
}

const counted = (all: readonly Keyed[]): readonly Finding[] => {
  const kept = new Map<string, Finding>();
  for (const { key, found } of all) {
    const first = kept.get(key);
    kept.set(
      key,
      first === undefined
        ? found
        : { ...first, suppressed: first.suppressed + found.suppressed + 1 },
    );
  }
  return [...kept.values()];
};
