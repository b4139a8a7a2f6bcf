// A project's own catalogue file: read like the built-in ones, then proved against the catalogue it joins.
// A record that the linter refuses is left out with its findings; one that takes a built-in one's place is noted.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { RECORD_FAULT, RECORD_REPLACES } from "./codes.ts";
import { catalogueWith } from "./library.ts";
import { lintRecord } from "./lint.ts";
import { readRecords, type WrittenRecord } from "./read-records.ts";
import type { Catalogue, CatalogueRecord } from "./record.ts";

export interface OwnRecords {
  readonly records: readonly CatalogueRecord[];
  readonly findings: readonly Finding[];
}

/** `library` is what the records join: names of nuts, screws and knobs are looked up there and in the file itself. */
export function readOwnRecords(file: string, text: string, library: Catalogue): OwnRecords {
  const { records, findings } = readRecords(file, text);
  const joined = catalogueWith(
    library,
    records.map(({ record }) => record),
  );
  const judged = records.map((written) => ({
    record: written.record,
    faults: faultsOf(written, joined),
    notes: replacementNotes(written, library),
  }));
  return {
    records: judged.filter(({ faults }) => faults.length === 0).map(({ record }) => record),
    findings: [...findings, ...judged.flatMap(({ faults, notes }) => [...faults, ...notes])],
  };
}

const faultsOf = ({ record, span }: WrittenRecord, catalogue: Catalogue): readonly Finding[] =>
  lintRecord(record, catalogue).map(({ path, says }) =>
    finding(RECORD_FAULT, {
      message: `${record.id}: ${path}: ${says}. The record is left out until it is put right.`,
      span,
      subjects: [record.id],
    }),
  );

const replacementNotes = (
  { record, span }: WrittenRecord,
  library: Catalogue,
): readonly Finding[] =>
  isBuiltIn(record, library)
    ? [
        finding(RECORD_REPLACES, {
          message: `${record.id} of this file is used in place of the built-in ${record.id}.`,
          span,
          subjects: [record.id],
        }),
      ]
    : [];

const isBuiltIn = ({ id }: CatalogueRecord, library: Catalogue): boolean =>
  library.parts.has(id) ||
  library.hardware.has(id) ||
  library.mounts.has(id) ||
  library.materials.has(id);
