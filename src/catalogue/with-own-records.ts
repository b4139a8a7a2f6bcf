// The catalogue with each of a project's own files over it, in the order in which they are named: takes the texts, gives
// the catalogue and what was found in them.

import type { Finding } from "../diagnostics/finding.ts";
import { catalogueWith } from "./library.ts";
import { readOwnRecords } from "./own-records.ts";
import type { Catalogue } from "./record.ts";

export const withOwnRecords = (
  library: Catalogue,
  paths: readonly string[],
  files: ReadonlyMap<string, string>,
): { readonly catalogue: Catalogue; readonly findings: readonly Finding[] } => {
  let catalogue = library;
  const findings: Finding[] = [];
  for (const path of paths) {
    const own = readOwnRecords(path, files.get(path) ?? "", catalogue);
    findings.push(...own.findings);
    catalogue = catalogueWith(catalogue, own.records);
  }
  return { catalogue, findings };
};
