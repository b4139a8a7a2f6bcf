// The findings of the open panel, gravest first, each with its place, both numbers and who set the limit. A finding can be
// pointed at: what it speaks of is then marked in the drawing, under the same number. A remedy that edits is one button.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { LimitSource, Severity } from "../src/diagnostics/finding.ts";
import type { PlacedFinding } from "./core-messages.ts";
import { panels, pointAt, pointedAt, progress } from "./desk.ts";
import { measureWords, unitOfSentence } from "./measure-words.ts";
import { applyRemedy } from "./panel/acts.ts";
import type { NumberedFinding } from "./panel/board.ts";

const SEVERITIES: readonly Severity[] = ["fault", "query", "note"];

const WORDS: Readonly<Record<Severity, string>> = { fault: "Fault", query: "Query", note: "Note" };

export function FindingList(props: {
  readonly numbered: readonly NumberedFinding[];
  /** What the count leaves out, in words. */
  readonly without: string;
}): JSX.Element | null {
  const { numbered, without } = props;
  if (progress.value.kind === "empty" || progress.value.kind === "failed") return null;
  // "0 faults" of a design that is still being read would be no truth.
  if (progress.value.kind === "reading" && numbered.length === 0) return null;
  // Nor of one in which there is nothing to judge.
  if (panels.value.length === 0 && numbered.length === 0) return null;
  return (
    <section class="findings" aria-labelledby="findings-title">
      <h2 id="findings-title">
        {countWords(numbered.map(({ placed }) => placed))}
        {without}
      </h2>
      <ol>
        {keyed(numbered).map(({ key, number, placed }) => (
          <FindingItem key={key} number={number} placed={placed} />
        ))}
      </ol>
    </section>
  );
}

function FindingItem({ number, placed }: NumberedFinding): JSX.Element {
  const { finding, line, column } = placed;
  const isPointed = pointedAt.value === placed;
  const item = useRef<HTMLLIElement>(null);
  // Pointed at from the picture or from the text, it comes into sight here.
  useEffect(() => {
    if (isPointed) item.current?.scrollIntoView({ block: "nearest" });
  }, [isPointed]);
  return (
    <li ref={item} class={`finding ${finding.severity}`} id={`finding-${number}`}>
      <button
        type="button"
        aria-pressed={isPointed}
        onClick={() => pointAt(isPointed ? null : placed)}
      >
        <span class="finding-number">{number}</span> <b>{WORDS[finding.severity]}</b>{" "}
        {finding.message}
      </button>
      <NumberPair placed={placed} />
      {finding.remedies.length > 0 && (
        <ul>
          {finding.remedies.map((remedy, place) => (
            <li key={place}>
              {remedy.edits.length === 0 ? (
                remedy.title
              ) : (
                <button type="button" class="remedy" onClick={() => applyRemedy(remedy)}>
                  {remedy.title}
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
      <p class="code">
        {finding.span.file}, line {line}, column {column}; {finding.code}
      </p>
    </li>
  );
}

function NumberPair({ placed }: { readonly placed: PlacedFinding }): JSX.Element | null {
  const { measured, limit, source, message } = placed.finding;
  if (measured === null || limit === null) return null;
  const unit = unitOfSentence(message, [measured, limit]);
  return (
    <dl>
      <Figure name="is" words={measureWords(measured, unit)} />
      <Figure name="limit" words={measureWords(limit, unit)} />
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

const sourceWords = (source: LimitSource): string =>
  source.kind === "house-rule" ? `${source.name} (house rule ${source.key})` : source.name;

const countWords = (sorted: readonly PlacedFinding[]): string => {
  const counts = SEVERITIES.map((severity) => {
    const count = sorted.filter(({ finding }) => finding.severity === severity).length;
    return `${count} ${severity === "query" && count !== 1 ? "queries" : count === 1 ? severity : `${severity}s`}`;
  });
  return counts.join(", ");
};

/**
 * What a finding is of, without the numbers in its words: while a part is moved it is the same line, and whoever stands on its
 * remedy by keyboard goes on standing there.
 */
function keyed(
  numbered: readonly NumberedFinding[],
): readonly (NumberedFinding & { readonly key: string })[] {
  const counts = new Map<string, number>();
  return numbered.map((one) => {
    const { code, panel, span, subjects } = one.placed.finding;
    const what = [code, panel, span.file, ...subjects].join(" ");
    const before = counts.get(what) ?? 0;
    counts.set(what, before + 1);
    return { ...one, key: `${what} ${before}` };
  });
}
