// The catalogue with each of a project's own files over it, in the order in which they are named: takes the texts, gives
// the catalogue and what was found in them.

import type { Finding } from "../diagnostics/finding.ts";
import { madeOnceWith, steadyLists } from "../geometry/made-once.ts";
import { catalogueWith } from "./library.ts";
import { readOwnRecords } from "./own-records.ts";
import type { Catalogue } from "./record.ts";

interface WithOwn {
  readonly catalogue: Catalogue;
  readonly findings: readonly Finding[];
}

/** The very catalogue that it was as long as the texts say what they said: what is made of its records can be kept. */
export const withOwnRecords = (
  library: Catalogue,
  paths: readonly string[],
  files: ReadonlyMap<string, string>,
): WithOwn => {
  const texts = paths.map((path) => ({ path, text: files.get(path) ?? "" }));
  return withTexts(library, { texts: steady(library, texts) });
};

interface OwnText {
  readonly path: string;
  readonly text: string;
}

const steady = steadyLists<Catalogue, OwnText>(
  (one, other) => one.path === other.path && one.text === other.text,
);

const withTexts = madeOnceWith(
  (library: Catalogue, { texts }: { readonly texts: readonly OwnText[] }): WithOwn => {
    let catalogue = library;
    const findings: Finding[] = [];
    for (const { path, text } of texts) {
      const own = readOwnRecords(path, text, catalogue);
      findings.push(...own.findings);
      catalogue = catalogueWith(catalogue, own.records);
    }
    return { catalogue, findings };
  },
);
