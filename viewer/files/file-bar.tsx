// Undo, redo and save, and what stands there unsaved. A button that has nothing to do stays in its place and says so.

import type { JSX } from "preact";
import { nextRedo, nextUndo, progress, redo, refusedStep, undo } from "../desk.ts";
import { inTurn } from "../when-current.ts";
import { save } from "./saving.ts";
import { asSentence, unstopped } from "./sentence.ts";
import { fileNews, gone, lostStore, store, unsaved } from "./stored-state.ts";

export function FileBar(): JSX.Element | null {
  if (store.value === null || progress.value.kind === "empty") return null;
  return (
    <div class="file-bar">
      <Act words="Undo" about={nextUndo.value} keys="Control+Z" act={() => inTurn(undo)} />
      <Act words="Redo" about={nextRedo.value} keys="Control+Shift+Z" act={() => inTurn(redo)} />
      <Act
        words={store.value.saving}
        about={unsaved.value.length === 0 ? null : unsaved.value.join(", ")}
        keys="Control+S"
        act={() => void save()}
      />
      <p class={unsaved.value.length + gone.value.length === 0 ? "saved" : "unsaved"}>
        {standWords()}
      </p>
      <p class={`file-news ${fileNews.value?.kind ?? ""}`} role="status">
        {newsWords()}
      </p>
    </div>
  );
}

const standWords = (): string =>
  [
    ...(unsaved.value.length === 0 ? [] : [`Not saved: ${unsaved.value.join(", ")}`]),
    ...(gone.value.length === 0 ? [] : [`Deleted outside: ${gone.value.join(", ")}`]),
  ].join("; ") || "Nothing unsaved";

interface ActProps {
  readonly words: string;
  /** What it would act on; null: nothing. */
  readonly about: string | null;
  readonly keys: string;
  readonly act: () => void;
}

function Act({ words, about, keys, act }: ActProps): JSX.Element {
  const full = about === null ? words : `${words}: ${about}`;
  return (
    <button
      type="button"
      class="act"
      aria-label={full}
      aria-disabled={about === null}
      aria-keyshortcuts={keys}
      title={`${full} (${keys.replace("Control", "Ctrl")})`}
      onClick={() => {
        if (about !== null) act();
      }}
    >
      {words}
    </button>
  );
}

function newsWords(): string {
  const lost = lostStore.value;
  const news = fileNews.value?.words ?? null;
  // What was refused for the same reason has said it.
  const isSaid = lost !== null && (news?.includes(unstopped(lost)) ?? false);
  const refused = refusedStep.value;
  return [
    lost === null || isSaid ? null : asSentence(lost),
    refused === null ? null : `Not done: ${unstopped(refused)}.`,
    news,
  ]
    .filter((words) => words !== null)
    .join(" ");
}
