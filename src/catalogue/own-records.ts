// A project's own catalogue file: read like the built-in ones, then proved against the catalogue it joins.
// A record that the linter refuses is left out with its findings; one that takes a built-in one's place is noted.

import type { MeasuredDesign } from "../design/panel-design.ts";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { nearestNames } from "../diagnostics/nearest.ts";
import { MEASURED_UNKNOWN, RECORD_FAULT, RECORD_REPLACES } from "./codes.ts";
import { catalogueWith } from "./library.ts";
import { lintRecord } from "./lint.ts";
import { readRecords, type WrittenMeasures, type WrittenRecord } from "./read-records.ts";
import { type Catalogue, type CatalogueRecord, recordsById } from "./record.ts";
import { isMeasurable, measurablePaths, recordAsMeasured } from "./record-as-measured.ts";

export interface OwnRecords {
  readonly records: readonly CatalogueRecord[];
  readonly findings: readonly Finding[];
}

/** `library` is what the records join: names of nuts, screws and knobs are looked up there and in the file itself. */
export function readOwnRecords(file: string, text: string, library: Catalogue): OwnRecords {
  const { records, measured, findings } = readRecords(file, text);
  const joined = catalogueWith(
    library,
    records.map(({ record }) => record),
  );
  const judged = records.map((written) => ({
    record: written.record,
    faults: faultsOf(written, joined),
    notes: replacementNotes(written, library),
  }));
  const sound = judged.filter(({ faults }) => faults.length === 0).map(({ record }) => record);
  const bench = measuredRecords(measured, catalogueWith(library, sound));
  return {
    records: [...sound, ...bench.records],
    findings: [
      ...findings,
      ...judged.flatMap(({ faults, notes }) => [...faults, ...notes]),
      ...bench.findings,
    ],
  };
}

/** Records with what was measured on the bench over their figures. */
function measuredRecords(measures: readonly WrittenMeasures[], catalogue: Catalogue): OwnRecords {
  const findings: Finding[] = [];
  const known = recordsById(catalogue);
  const records = measures.flatMap(({ id, measured, span }): readonly CatalogueRecord[] => {
    const record = known.get(id);
    if (record === undefined) {
      findings.push(unknownMeasured(id, span, known));
      return [];
    }
    findings.push(...unknownPaths(record, measured));
    return [recordAsMeasured(record, measured)];
  });
  return { records, findings };
}

const unknownMeasured = (
  id: string,
  span: Span,
  known: ReadonlyMap<string, CatalogueRecord>,
): Finding => {
  const nearest = nearestNames(id, known.keys());
  return finding(MEASURED_UNKNOWN, {
    message: `Nothing in the catalogue is called "${id}", so its measured sizes have no place. Nearest: ${nearest.join(", ")}.`,
    span,
    subjects: [id],
  });
};

/** A finding for each measured path that the record has no number at: it would be lost in silence. */
export const unknownPaths = (
  record: CatalogueRecord,
  measured: MeasuredDesign,
): readonly Finding[] =>
  Object.keys(measured.values)
    .filter((path) => !isMeasurable(record, path))
    .map((path) =>
      finding(MEASURED_UNKNOWN, {
        message: `${record.id} has no size at ${path}. Nearest: ${nearestNames(path, measurablePaths(record)).join(", ")}.`,
        span: measured.written.keys[path] ?? measured.written.span,
        subjects: [record.id],
      }),
    );

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
  recordsById(library).has(id);
