// The fit of the console: asked for, its progress, and its findings, each of which brings the picture to what it speaks of.

import type { JSX } from "preact";
import type { Severity } from "../../src/diagnostics/finding.ts";
import { texts } from "../desk.ts";
import type { FitFinding } from "./console-messages.ts";
import { scene } from "./console-state.ts";
import { askFit, cancelFit, chooseFinding, chosenFinding, fit, foundWords } from "./fit-run.ts";
import { cameraNow } from "./shown-picture.ts";

const SEVERITIES: readonly Severity[] = ["fault", "query", "note"];
const WORDS: Readonly<Record<Severity, string>> = { fault: "Fault", query: "Query", note: "Note" };

export function ConsoleFit(): JSX.Element | null {
  if (scene.value === null) return null;
  const now = fit.value;
  return (
    <section class="console-fit findings" aria-labelledby="console-fit-title">
      <h2 id="console-fit-title">Fit</h2>
      {now.kind === "running" ? (
        <p class="buttons">
          <progress aria-label="Working on the fit" /> {sentence(now.words)} …
          <button type="button" onClick={cancelFit}>
            Give it up
          </button>
        </p>
      ) : (
        <button type="button" onClick={() => void askFit()}>
          {now.kind === "done" ? "Check the fit again" : "Check the fit"}
        </button>
      )}
      {now.kind === "failed" && <p>The program itself has failed: {now.why}</p>}
      {now.kind === "done" && (
        <>
          {now.of !== texts.value && <p class="stale">The design has changed since.</p>}
          <p>{foundWords(now)}</p>
          <ol>
            {SEVERITIES.flatMap((severity) =>
              now.findings.filter(({ finding }) => finding.severity === severity),
            ).map((found) => (
              <FitItem key={`${found.finding.code} ${found.finding.message}`} found={found} />
            ))}
          </ol>
        </>
      )}
    </section>
  );
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function FitItem({ found }: { readonly found: FitFinding }): JSX.Element {
  const { finding, line, column } = found;
  return (
    <li class={`finding ${finding.severity}`}>
      <button
        type="button"
        aria-pressed={chosenFinding.value === found}
        onClick={() => {
          const camera = cameraNow();
          if (camera !== null) chooseFinding(found, camera);
        }}
      >
        <b>{WORDS[finding.severity]}</b> {finding.message}
      </button>
      <p>
        {finding.span.file}, line {line}, column {column}
      </p>
      <p class="code">{finding.code}</p>
    </li>
  );
}
