// A panel's file that stands more than once in a console: before the first edit of it is made the page asks what shall change,
// all of them, or this one in a file of its own. Said once a file, until another design is opened.

import { signal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import type { TextEdit } from "../../src/diagnostics/text-edit.ts";
import {
  askBefore,
  carryOut,
  consoleReading,
  designName,
  edit,
  panel,
  panels,
  texts,
} from "../desk.ts";
import { locks } from "../locks.ts";
import { say } from "./board.ts";
import type { PanelCopy } from "./panel-copy.ts";
import { toBoard } from "./to-board.ts";

interface Question {
  readonly file: string;
  /** As the console calls them. */
  readonly names: readonly string[];
  readonly edits: readonly TextEdit[];
  readonly what: string;
}

const question = signal<Question | null>(null);
/** Files of this design that may be changed wherever they stand. */
let allowed: { readonly design: string; readonly files: ReadonlySet<string> } = {
  design: "",
  files: new Set(),
};

askBefore((edits, what) => {
  const files = [...new Set(edits.map(({ file }) => file))];
  for (const file of files) {
    const names = panels.value.filter((one) => one.file === file).map(({ name }) => name);
    if (names.length < 2 || isAllowed(file)) continue;
    question.value = { file, names, edits, what };
    return true;
  }
  return false;
});

const isAllowed = (file: string): boolean =>
  allowed.design === designName.value && allowed.files.has(file);

/** Whether what was typed in this file waits for the person's word. */
export const isAskedAbout = (file: string): boolean => question.value?.file === file;

interface Typing {
  /** What has been typed in a file by now, as edits of it. */
  readonly edits: (file: string) => readonly TextEdit[];
  readonly end: () => void;
}

let typing: Typing = { edits: () => [], end: () => undefined };

/** What is typed stands in its field, and may go on, until the person has answered. */
export function askAboutTyping(hands: Typing): void {
  typing = hands;
}

const editsOf = ({ file, edits }: Question): readonly TextEdit[] => {
  const typed = typing.edits(file);
  return typed.length > 0 ? typed : edits;
};

export function TwiceQuestion(): JSX.Element | null {
  const box = useRef<HTMLElement>(null);
  const now = question.value;
  useEffect(() => {
    const isTyped = document.activeElement instanceof HTMLTextAreaElement;
    if (now !== null && !isTyped) box.current?.querySelector("button")?.focus();
  }, [now]);
  if (now === null) return null;
  const open = panel.value?.name;
  const copies = open !== undefined && now.names.includes(open) ? [open] : now.names;
  return (
    <section
      ref={box}
      class="offer asked"
      role="alertdialog"
      aria-label="This file stands more than once"
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        answer("Left as it was.");
      }}
    >
      <p>
        {now.file} stands {now.names.length} times: as {now.names.join(" and as ")}. Not done yet:{" "}
        {now.what}.
      </p>
      <button type="button" onClick={() => changeAll(now)}>
        {now.names.length === 2 ? "Change both" : "Change all"}
      </button>{" "}
      {copies.map((name) => (
        <button key={name} type="button" onClick={() => copyFor(name, now)}>
          Make an own copy for {name}
        </button>
      ))}{" "}
      <button type="button" onClick={() => answer("Left as it was.")}>
        Leave it
      </button>
    </section>
  );
}

function answer(words: string): void {
  question.value = null;
  typing.end();
  say(words);
  toBoard();
}

function changeAll(now: Question): void {
  const design = designName.value;
  const files = allowed.design === design ? allowed.files : [];
  allowed = { design, files: new Set([...files, now.file]) };
  const outcome = edit(editsOf(now), now.what);
  answer(outcome.kind === "refused" ? `Not done: ${outcome.why}.` : `Done: ${now.what}.`);
}

async function copyFor(name: string, now: Question): Promise<void> {
  const made = await copyOf(name, now).catch(
    (): PanelCopy => ({ kind: "refused", why: "what it takes could not be fetched. Try again" }),
  );
  // Answered otherwise meanwhile.
  if (question.value !== now) return;
  if (made.kind === "moves") carryOut(made.moves, `${now.what} in a copy, ${made.file}`);
  answer(
    made.kind === "moves"
      ? `${name} has a file of its own now: ${made.file}.`
      : `Not done: ${made.why}.`,
  );
}

async function copyOf(name: string, now: Question): Promise<PanelCopy> {
  const design = consoleReading.value?.design ?? null;
  if (design === null) return { kind: "refused", why: "no console is open" };
  const locked = locks.value.design ?? locks.value.files.get(design.file) ?? null;
  if (locked !== null) return { kind: "refused", why: locked };
  const { panelCopy } = await import("./panel-copy.ts");
  return panelCopy(texts.value, { file: now.file, edits: editsOf(now), panel: name, design });
}
