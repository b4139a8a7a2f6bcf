// What only the person can decide about files: changes that meet those of someone else, and edits of an earlier window
// that were not saved. And what can't be done with these files, plainly.

import { useSignal } from "@preact/signals";
import type { ComponentChildren, JSX } from "preact";
import { texts } from "../desk.ts";
import { locks } from "../locks.ts";
import { MOST_KEPT_BYTES } from "./kept-bytes.ts";
import { localTime } from "./local-time.ts";
import type { Conflict } from "./reconcile.ts";
import {
  dismiss,
  notKept,
  offered,
  type RecoveryCopy,
  recoveryTrouble,
  restore,
} from "./recovery.ts";
import { keepMine, takeTheirs } from "./saving.ts";
import { conflicts, stored, storeTroubles, unreadNow } from "./stored-state.ts";
import { TextDifferences } from "./text-differences.tsx";

export function Decisions(): JSX.Element | null {
  const words = plainWords();
  const count = conflicts.value.length + offered.value.length + words.length;
  if (count === 0) return null;
  return (
    <section class="decisions" aria-label="About the files">
      {words.map((each) => (
        <p key={each}>{each}</p>
      ))}
      {conflicts.value.map((conflict) => (
        <ConflictCard key={conflict.file} conflict={conflict} />
      ))}
      {offered.value.map((copy) => (
        <RecoveryCard key={copy.key} copy={copy} />
      ))}
    </section>
  );
}

const plainWords = (): readonly string[] => {
  const { design, files } = locks.value;
  const trouble = recoveryTrouble.value;
  return [
    ...(design === null ? [] : [`Nothing can be edited: ${design}.`]),
    ...(design === null ? [...files.values()].map((why) => `${why}: it can't be edited.`) : []),
    ...storeTroubles.value,
    ...[...unreadNow.value]
      .filter((file) => texts.value.has(file))
      .map((file) => `${file} can't be read now: what is shown of it is how it last stood.`),
    ...(notKept.value.length === 0
      ? []
      : [
          `Not in the recovery copy: ${notKept.value.join(", ")}. It holds ${MOST_KEPT_BYTES / 1_000_000} MB of shapes and photographs at most, where the browser has room for them.`,
        ]),
    ...(trouble === null ? [] : [`No recovery copies are kept: ${trouble}. Save often.`]),
  ];
};

function ConflictCard({ conflict }: { readonly conflict: Conflict }): JSX.Element {
  const { file, base, theirs } = conflict;
  const mine = texts.value.get(file) ?? null;
  const what =
    theirs === null
      ? "was changed here and deleted outside"
      : mine === null
        ? "was deleted here and changed outside"
        : "was changed here and outside, in the same lines";
  return (
    <Card
      words={`${file} ${what}.`}
      see="See both"
      about={file}
      acts={[
        { words: "Keep mine", act: () => keepMine(conflict) },
        { words: "Take theirs", act: () => takeTheirs(conflict) },
      ]}
    >
      <TextDifferences title="Changed here" before={base} after={mine} />
      <TextDifferences title="Changed outside" before={base} after={theirs} />
    </Card>
  );
}

function RecoveryCard({ copy }: { readonly copy: RecoveryCopy }): JSX.Element {
  const files = [...copy.texts].filter(([file, text]) => stored.value.get(file) !== text);
  const when = localTime(copy.when);
  return (
    <Card
      words={`Edits of ${when} were not saved: ${files.map(([file]) => file).join(", ") || "none that differ from what is stored"}.${leftOutWords(copy)}`}
      see="See what differs"
      about={when}
      acts={[
        { words: "Restore", act: () => void restore(copy) },
        { words: "Throw away", act: () => void dismiss(copy) },
      ]}
    >
      {files.map(([file, text]) => (
        <TextDifferences
          key={file}
          title={file}
          before={stored.value.get(file) ?? null}
          after={text}
        />
      ))}
    </Card>
  );
}

const leftOutWords = ({ leftOut }: RecoveryCopy): string =>
  leftOut.length === 0
    ? ""
    : ` Not kept with them: ${leftOut.join(", ")}. Choose the files again with these, and they are there.`;

interface CardProps {
  readonly words: string;
  readonly see: string;
  /** Tells the buttons of one card from those of another. */
  readonly about: string;
  readonly acts: readonly { readonly words: string; readonly act: () => void }[];
  readonly children: ComponentChildren;
}

function Card({ words, see, about, acts, children }: CardProps): JSX.Element {
  const isSeen = useSignal(false);
  return (
    <div class="decision">
      <p>{words}</p>
      {acts.map((each) => (
        <button
          key={each.words}
          type="button"
          class="act"
          aria-label={`${each.words}: ${about}`}
          onClick={() => {
            each.act();
            // The button goes with its card: the keyboard must stand somewhere.
            document.querySelector<HTMLElement>(".file-bar button")?.focus();
          }}
        >
          {each.words}
        </button>
      ))}
      <button
        type="button"
        class="act"
        aria-label={`${see}: ${about}`}
        aria-expanded={isSeen.value}
        onClick={() => {
          isSeen.value = !isSeen.value;
        }}
      >
        {see}
      </button>
      {isSeen.value && <div class="both">{children}</div>}
    </div>
  );
}
