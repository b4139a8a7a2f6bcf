// The sources of a record: every number has one, standards and memory are called by their names, and every path that
// is named leads somewhere.

import { fieldAt } from "../field-path.ts";
import { type FigureSource, figureSource } from "../figure-source.ts";
import type { Part, SourceKind } from "../part.ts";
import type { CatalogueRecord } from "../record.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function figureFaults(record: CatalogueRecord): readonly LintFault[] {
  const { figures } = record;
  return [
    ...sourceFaults(figures, "figures"),
    ...Object.entries(figures.exceptions).flatMap(([path, exception]) => [
      ...sourceFaults(exception, path),
      ...unless(
        fieldAt(record, path) !== undefined,
        path,
        "a source is given for a field that is not there",
      ),
    ]),
    ...figures.measureFirst.flatMap((path) =>
      unless(typeof fieldAt(record, path) === "number", path, "there is no number here to measure"),
    ),
    ...(record.kind === "part" ? remembered(record) : []),
  ];
}

/** A document's name, as standards are called. */
const STANDARD = /\b(?:ISO|IEC|EN|DIN|ASME|EIA|MIL|MS|TIA)\b/;

function sourceFaults({ source, kind }: FigureSource, path: string): readonly LintFault[] {
  const named: Readonly<Record<SourceKind, RegExp>> = {
    datasheet: /\S/,
    standard: STANDARD,
    practice: /common practice|cut to suit/,
    memory: /from memory, unverified/,
    measured: /measured/,
  };
  return unless(named[kind].test(source), path, `"${source}" does not read like ${WORDS[kind]}`);
}

const WORDS: Readonly<Record<SourceKind, string>> = {
  datasheet: "a datasheet",
  standard: "a standard",
  practice: "common practice",
  memory: "memory that says so",
  measured: "a measurement",
};

/** A bush that decides a fit and that is only remembered has to be measured before anything is cut. */
function remembered(part: Part): readonly LintFault[] {
  if (part.hold.kind !== "bush") return [];
  return unless(
    figureSource(part.figures, "hold.length").kind !== "memory" ||
      part.figures.measureFirst.includes("hold.length"),
    "hold.length",
    "it is from memory, and nobody is asked to measure it",
  );
}
