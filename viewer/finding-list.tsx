// The findings, gravest first, each with its place, both numbers and who set the limit. A finding can be pointed at:
// what it speaks of is then marked in the drawing.

import type { JSX } from "preact";
import type { LimitSource, Measure, Severity } from "../src/diagnostics/finding.ts";
import { decimal } from "../src/geometry/number.ts";
import type { PlacedFinding } from "./core-messages.ts";
import { findings, pointAt, pointedAt, progress } from "./desk.ts";

const SEVERITIES: readonly Severity[] = ["fault", "query", "note"];

const WORDS: Readonly<Record<Severity, string>> = { fault: "Fault", query: "Query", note: "Note" };

export function FindingList(): JSX.Element | null {
  if (progress.value.kind !== "shown") return null;
  const sorted = SEVERITIES.flatMap((severity) =>
    findings.value.filter(({ finding }) => finding.severity === severity),
  );
  return (
    <section class="findings" aria-labelledby="findings-title">
      <h2 id="findings-title">{countWords(sorted)}</h2>
      <ol>
        {sorted.map((placed) => (
          <FindingItem key={keyOf(placed)} placed={placed} />
        ))}
      </ol>
    </section>
  );
}

function FindingItem({ placed }: { readonly placed: PlacedFinding }): JSX.Element {
  const { finding, line, column } = placed;
  const isPointed = pointedAt.value === placed;
  return (
    <li class={`finding ${finding.severity}`}>
      <button
        type="button"
        aria-pressed={isPointed}
        onClick={() => pointAt(isPointed ? null : placed)}
      >
        <b>{WORDS[finding.severity]}</b> {finding.message}
      </button>
      <p>
        {finding.span.file}, line {line}, column {column}
      </p>
      <NumberPair placed={placed} />
      {finding.remedies.length > 0 && (
        <ul>
          {finding.remedies.map(({ title }) => (
            <li key={title}>{title}</li>
          ))}
        </ul>
      )}
      <p class="code">{finding.code}</p>
    </li>
  );
}

function NumberPair({ placed }: { readonly placed: PlacedFinding }): JSX.Element | null {
  const { measured, limit, source } = placed.finding;
  if (measured === null || limit === null) return null;
  return (
    <dl>
      <Figure name="is" words={measureWords(measured)} />
      <Figure name="limit" words={measureWords(limit)} />
      {source !== null && <Figure name="set by" words={sourceWords(source)} />}
    </dl>
  );
}

interface FigureProps {
  readonly name: string;
  readonly words: string;
}

const Figure = ({ name, words }: FigureProps): JSX.Element => (
  <div>
    <dt>{name}</dt>
    <dd>{words}</dd>
  </div>
);

const UNIT_WORDS: Readonly<Record<Measure["unit"], string>> = {
  mm: " mm",
  deg: "°",
  arcmin: "′",
  count: "",
  ratio: "",
  modules: " modules",
  bytes: " bytes",
  celsius: " °C",
};

const measureWords = ({ value, unit }: Measure): string =>
  `${decimal(value, 3)}${UNIT_WORDS[unit]}`;

const sourceWords = (source: LimitSource): string =>
  source.kind === "house-rule" ? `${source.name} (house rule ${source.key})` : source.name;

const countWords = (sorted: readonly PlacedFinding[]): string => {
  const counts = SEVERITIES.map((severity) => {
    const count = sorted.filter(({ finding }) => finding.severity === severity).length;
    return `${count} ${severity === "query" && count !== 1 ? "queries" : count === 1 ? severity : `${severity}s`}`;
  });
  return counts.join(", ");
};

const keyOf = ({ finding }: PlacedFinding): string =>
  [finding.code, finding.span.file, finding.span.start, finding.message].join(" ");
