// One JSON object a line and finding, for scripts. The first ten keys and their order are fixed; more may follow them.

import type { Finding } from "./finding.ts";
import { lineAndColumn } from "./position.ts";
import { printable } from "./printable.ts";

/** `files` holds the text of each file that a finding points into; a file that is not there counts as empty. */
export const renderJson = (
  findings: readonly Finding[],
  files: ReadonlyMap<string, string>,
): string =>
  findings.map((found) => `${printable(JSON.stringify(findingRecord(found, files)))}\n`).join("");

/** A finding as a script gets it. */
export interface FindingRecord {
  readonly code: string;
  readonly severity: Finding["severity"];
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly message: string;
  readonly measured: Finding["measured"];
  readonly limit: Finding["limit"];
  readonly source: Finding["source"];
  readonly remedies: Finding["remedies"];
  readonly panel: string;
  readonly subjects: readonly string[];
  readonly related: readonly {
    readonly what: string;
    readonly file: string;
    readonly line: number;
    readonly column: number;
  }[];
  readonly suppressed: number;
}

export const findingRecord = (
  found: Finding,
  files: ReadonlyMap<string, string>,
): FindingRecord => ({
  code: found.code,
  severity: found.severity,
  file: found.span.file,
  ...lineAndColumn(files.get(found.span.file) ?? "", found.span.start),
  message: found.message,
  measured: found.measured,
  limit: found.limit,
  source: found.source,
  remedies: found.remedies,
  panel: found.panel,
  subjects: found.subjects,
  related: found.related.map(({ what, span }) => ({
    what,
    file: span.file,
    ...lineAndColumn(files.get(span.file) ?? "", span.start),
  })),
  suppressed: found.suppressed,
});
