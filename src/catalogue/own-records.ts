// A project's own catalogue file: read like the built-in ones, then proved against the catalogue it joins.
// A record that the linter refuses is left out with its findings; one that takes a built-in one's place is noted.

import type { MeasuredDesign } from "../design/panel-design.ts";
import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { nearestNames } from "../diagnostics/nearest.ts";
import { MEASURED_UNKNOWN, RECORD_FAULT, RECORD_REPLACES } from "./codes.ts";
import { numberPaths } from "./field-path.ts";
import { catalogueWith, partAsMeasured } from "./library.ts";
import { lintRecord } from "./lint.ts";
import type { Part } from "./part.ts";
import { readRecords, type WrittenMeasures, type WrittenRecord } from "./read-records.ts";
import type { Catalogue, CatalogueRecord } from "./record.ts";

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
  const bench = measuredParts(measured, catalogueWith(library, sound));
  return {
    records: [...sound, ...bench.records],
    findings: [
      ...findings,
      ...judged.flatMap(({ faults, notes }) => [...faults, ...notes]),
      ...bench.findings,
    ],
  };
}

/** Parts with what was measured on the bench over their records' figures. */
function measuredParts(measures: readonly WrittenMeasures[], catalogue: Catalogue): OwnRecords {
  const findings: Finding[] = [];
  const records = measures.flatMap(({ part: id, measured, span }): readonly Part[] => {
    const part = catalogue.parts.get(id);
    if (part === undefined) {
      findings.push(unknownMeasured(id, span, catalogue));
      return [];
    }
    findings.push(...unknownPaths(part, measured));
    return [partAsMeasured(part, measured)];
  });
  return { records, findings };
}

const unknownMeasured = (id: string, span: Span, catalogue: Catalogue): Finding => {
  const nearest = nearestNames(id, catalogue.parts.keys());
  return finding(MEASURED_UNKNOWN, {
    message: `There is no part called "${id}" to put measured sizes on. Nearest: ${nearest.join(", ")}.`,
    span,
    subjects: [id],
  });
};

/** A finding for each measured path that the part has no number at: it would be lost in silence. */
export const unknownPaths = (part: Part, measured: MeasuredDesign): readonly Finding[] => {
  const known = numberPaths(part);
  return Object.keys(measured.values)
    .filter((path) => !known.includes(path))
    .map((path) =>
      finding(MEASURED_UNKNOWN, {
        message: `${part.id} has no size at ${path}. Nearest: ${nearestNames(path, known).join(", ")}.`,
        span: measured.written.keys[path] ?? measured.written.span,
        subjects: [part.id],
      }),
    );
};

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
  library.boards.has(id) ||
  library.strips.has(id) ||
  library.ledBoards.has(id) ||
  library.inserts.has(id) ||
  library.mounts.has(id) ||
  library.materials.has(id);
