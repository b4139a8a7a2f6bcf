// The fit report of a console: everything that is known of its fit, both numbers beside each other, and what was not asked.
// Takes the layout, the facts and the findings; gives a report as data, in an order that is the same on every run.

import type { WorkshopDesign } from "../design/workshop-design.ts";
import { countWords } from "../diagnostics/count-words.ts";
import type { Finding, Measure } from "../diagnostics/finding.ts";
import { limitInWords } from "../diagnostics/limit-in-words.ts";
import { lineAndColumn } from "../diagnostics/position.ts";
import type { Report, ReportSection } from "../export/report.ts";
import type { FitFacts } from "../fit/fit-facts.ts";
import { decimal } from "../geometry/number.ts";
import type { ConsoleLayout } from "../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../parts/frame/frame-part.ts";
import { baySections } from "./fit-report-bays.ts";
import { bodySections } from "./fit-report-bodies.ts";
import { operatorSections } from "./fit-report-hands.ts";
import { serviceSections } from "./fit-report-service.ts";
import { factSection, saying, wordColumn } from "./report-section.ts";
import { revisionWords } from "./revision-words.ts";

export const FIT_REPORT_FORMAT = "consolewright-fit-1";

export interface FitReportSource {
  readonly layout: ConsoleLayout;
  readonly fit: FitFacts;
  readonly frame: ConsoleFrame | null;
  readonly workshop: WorkshopDesign | null;
  /** Of the console; findings of single panels stand in their own packs. */
  readonly findings: readonly Finding[];
  readonly texts: ReadonlyMap<string, string>;
}

export const fitReport = (source: FitReportSource): Report => {
  const { layout, fit, findings } = source;
  return {
    title: `Fit of ${layout.design.title}`,
    facts: [
      `Console ${layout.name}, ${revisionWords(layout.design)}: ${countWords(layout.bays.length, "bay")}, ${countWords(layout.panels.length, "panel")}. ${severityWords(findings)}`,
      "Lengths in millimetres; places forward, to the left and up from the console's origin on the floor. Sizes that nobody has measured are typical ones: measure before you cut.",
    ],
    sections: [
      findingTable(source),
      ...baySections(layout, fit),
      ...bodySections(fit),
      ...operatorSections(layout.operator, fit),
      ...serviceSections(source),
      notAsked(source),
    ],
  };
};

const severityWords = (findings: readonly Finding[]): string => {
  const count = (severity: Finding["severity"], one: string, more: string): string => {
    const found = findings.filter((each) => each.severity === severity).length;
    return `${found} ${found === 1 ? one : more}`;
  };
  return `${count("fault", "fault", "faults")}, ${count("query", "query", "queries")}, ${count("note", "note", "notes")}.`;
};

const findingTable = ({ findings, texts }: FitReportSource): ReportSection =>
  factSection<Finding>({
    id: "findings",
    heading: "Findings",
    words: [
      "A fault is a part that would be wrong; a query can be made, a person must decide; a note is worth knowing.",
    ],
    empty: "Nothing was found.",
    columns: [
      wordColumn("severity", "kind", ({ severity }) => severity),
      wordColumn("message", "what", ({ message }) => message),
      saying(
        "",
        wordColumn("measured", "is", ({ measured }) => measureWords(measured)),
      ),
      saying(
        "",
        wordColumn("limit", "limit", ({ limit }) => measureWords(limit)),
      ),
      saying(
        "",
        wordColumn("source", "whose", ({ source }) => source && limitInWords(source)),
      ),
      saying(
        "",
        wordColumn("remedy", "would clear it", ({ remedies }) => remedyWords(remedies)),
      ),
      wordColumn("code", "code", ({ code }) => code),
      wordColumn("place", "written at", (found) => placeOf(found, texts)),
    ],
    rows: findings,
  });

const measureWords = (measure: Measure | null): string | null =>
  measure === null ? null : `${decimal(measure.value, 2)} ${unitWord(measure)}`;

const unitWord = ({ value, unit }: Measure): string =>
  unit === "modules" && decimal(value, 2) === "1" ? "module" : unit;

const remedyWords = (remedies: Finding["remedies"]): string | null =>
  remedies.length === 0 ? null : remedies.map(({ title }) => title).join("; ");

const placeOf = ({ span }: Finding, texts: ReadonlyMap<string, string>): string =>
  `${span.file}, line ${lineAndColumn(texts.get(span.file) ?? "", span.start).line}`;

/** What nobody wrote can't be judged: the reader must not take silence for a yes. */
const notAsked = ({ layout, frame }: FitReportSource): ReportSection => {
  const { design, operator, envelope, obstacles, bays, lost } = layout;
  const unplaced = design.panels.filter(
    ({ as }) => !lost.includes(as) && !layout.panels.some(({ name }) => name === as),
  );
  const rows = [
    ...(operator === null
      ? ["No operator is written: reach, sight, knees and the front edge are not judged."]
      : []),
    ...(envelope === null && frame === null
      ? ["No envelope is written: whether bodies stay inside the console is not judged."]
      : []),
    ...(obstacles.length === 0 ? ["No obstacle is written."] : []),
    ...(frame === null ? ["No frame is made: its parts, joints and doorway are not judged."] : []),
    ...(design.frame !== null && design.frame.doorway === null
      ? ["No doorway is written: whether the frame's sections pass one is not judged."]
      : []),
    ...bays
      .filter((bay) => bay.design.loom === null)
      .map(
        ({ id }) =>
          `${id}: no place is written where its looms leave; they are taken to leave beneath each panel.`,
      ),
    ...unplaced.map(({ as }) => `${as} stands in no bay and on no stand: its fit is not judged.`),
    ...lost.map((name) => `${name} could not be placed: its fit is not judged.`),
  ];
  return factSection<string>({
    id: "not-asked",
    heading: "What was not asked",
    words: [],
    empty: "Nothing was left out that the design could have said.",
    columns: [wordColumn("what", "what", (row) => row)],
    rows,
  });
};
