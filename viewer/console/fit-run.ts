// The fit of the console by the solid kernel: asked for, with its progress, given up, and its findings chosen one by one.

import { effect, signal } from "@preact/signals";
import { sourcesOf, texts } from "../desk.ts";
import { type FitRun, runFit } from "./console-client.ts";
import type { FitFinding, HeldBack } from "./console-messages.ts";
import { changeLook, look, said, wanted } from "./console-state.ts";
import { findingWords } from "./finding-words.ts";
import { fitStanding } from "./fit-standing.ts";
import { heldBackWords } from "./held-words.ts";
import { isCutAway } from "./look.ts";
import type { CameraNow } from "./shown-picture.ts";
import { goalOnBall } from "./standing-views.ts";

export type Fit =
  | { readonly kind: "unasked" }
  | { readonly kind: "running"; readonly words: string }
  | {
      readonly kind: "done";
      readonly of: ReadonlyMap<string, string>;
      readonly findings: readonly FitFinding[];
      readonly held: readonly HeldBack[];
    }
  | { readonly kind: "failed"; readonly why: string };

export const fit = signal<Fit>({ kind: "unasked" });
export const chosenFinding = signal<FitFinding | null>(null);

effect(() => {
  const now = fit.value;
  const isNew = now.kind === "done" && now.of === texts.value;
  fitStanding.value = isNew ? "checked" : now.kind === "done" ? "stale" : "unchecked";
  // What was said of the fit is not said of another design.
  if (!isNew && now.kind === "done" && said.peek() === checkedWords(now))
    said.value = "The design has changed since the fit was checked.";
});

let run: FitRun | null = null;

export const askFit = async (): Promise<void> => {
  cancelFit();
  const of = texts.value;
  fit.value = { kind: "running", words: "reading the design" };
  const mine = runFit(sourcesOf(of), (words) => {
    if (run === mine) fit.value = { kind: "running", words };
  });
  run = mine;
  const reply = await mine.done;
  if (run !== mine) return;
  run = null;
  fit.value =
    reply.kind === "fitted"
      ? { kind: "done", of, findings: reply.findings, held: reply.held }
      : { kind: "failed", why: reply.kind === "failed" ? reply.why : "There is no console in it." };
  if (reply.kind === "fitted") said.value = checkedWords(reply);
};

export const cancelFit = (): void => {
  if (run === null) return;
  run.cancel();
  run = null;
  fit.value = { kind: "unasked" };
  said.value = "The fit was given up.";
};

type Found = Pick<Extract<Fit, { readonly kind: "done" }>, "findings" | "held">;

/** "Nothing found" is no word for panels that lie in each other. */
export const foundWords = ({ findings, held }: Found): string => {
  const count = findings.length;
  if (held.length === 0)
    return count === 0 ? "nothing found" : count === 1 ? "1 finding" : `${count} findings`;
  const more = count === 0 ? "nothing else found" : `${count} more found`;
  return `${heldBackWords(held)}; ${more}`;
};

const checkedWords = (found: Found): string => `The fit is checked: ${foundWords(found)}.`;

/** Marks what it speaks of and brings the camera there; a cut that hides it is taken away. */
export const chooseFinding = (found: FitFinding, from: CameraNow): void => {
  chosenFinding.value = found;
  const { bodies, ball, finding } = found;
  const words = findingWords(finding);
  const { cut } = look.value;
  changeLook({
    marks: bodies.map(({ group, id }) => ({ kind: "finding", group, body: id })),
    notes: ball === null ? [] : [{ kind: "finding", at: ball.middle, words, isOnIt: false }],
    stretch: null,
    cut: ball !== null && isCutAway(cut, ball.middle) ? null : cut,
  });
  if (ball !== null) wanted.value = goalOnBall(ball, from);
};
