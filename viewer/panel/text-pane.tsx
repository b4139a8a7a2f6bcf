// The file's text beside the picture. What is typed becomes an edit when the hand rests; what is done in the picture is here
// at once. Findings stand at their lines, the selected component's lines are marked, the caret selects.

import { computed, signal, useSignalEffect } from "@preact/signals";
import type { JSX } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { difference } from "../../src/design/rewriting.ts";
import { source } from "../../src/design/source.ts";
import { MOST_CHARACTERS } from "../../src/design/text-caps.ts";
import {
  edit,
  findings,
  history,
  isCurrent,
  nextRedo,
  nextUndo,
  panel,
  pointAt,
  pointedAt,
  redo,
  selection,
  settleWith,
  texts,
  undo,
  unread,
} from "../desk.ts";
import { commandKey } from "../files/command-key.ts";
import { firstFiles } from "../first-files.ts";
import { type NumberedFinding, panelFindings, say, selectedThings, things } from "./board.ts";
import { useCaretInSight } from "./caret-sight.ts";
import { caretAfter, changeEnd, idsAt, linesOf } from "./text-places.ts";
import { askAboutTyping, isAskedAbout } from "./twice-used.tsx";

/** What is typed and not yet an edit: of which text, and what it is now. */
interface Draft {
  readonly file: string;
  readonly before: string;
  readonly now: string;
}

const draft = signal<Draft | null>(null);
/** A file that was asked for, by name or by what was picked, and the panel's that was seen then: with another panel it is let go. */
interface Chosen {
  readonly file: string;
  readonly beside: string | null;
}

const chosen = signal<Chosen | null>(null);
const panelFile = computed(() => panel.value?.file ?? null);
let rest: ReturnType<typeof setTimeout> | null = null;

/** Long enough for a word, short enough for the picture to follow. */
const REST = 250;
/** The height of a line, pixels: the style sheet has the same. */
const LINE = 19;

/** The file that the caret is in: while it is, no other one comes under the hand. */
const caretFile = signal<string | null>(null);

/** The file that is shown: the caret's, that of the finding that is pointed at, the chosen one, else the panel's, or a faulty one. */
const shownFile = (): string | null =>
  [
    caretFile.value,
    chosenFile(),
    panelFile.value,
    ...findings.value.map(({ finding }) => finding.span.file),
    ...firstFiles(texts.value),
    ...texts.value.keys(),
  ].find((file) => file != null && texts.value.has(file)) ?? null;

/** While no panel can be drawn it stays: the one that was seen may come again. */
function chosenFile(): string | null {
  const now = panelFile.value;
  const was = chosen.value;
  const isAnother = now !== null && was?.beside != null && was.beside !== now;
  return was === null || isAnother ? null : was.file;
}

const chooseFile = (file: string): void => {
  chosen.value = { file, beside: panelFile.value };
};

export function TextPane(): JSX.Element | null {
  const field = useRef<HTMLTextAreaElement>(null);
  const scroller = useRef<HTMLDivElement>(null);
  useFollowing(field, scroller);
  const file = shownFile();
  useCaretInSight({ field, scroller, line: LINE, file });
  if (file === null) return null;
  const typed = draft.value?.file === file ? draft.value.now : null;
  const text = typed ?? texts.value.get(file) ?? "";
  // Of a text that is not read nobody needs the lines, and making them would stop the page.
  const isTooLarge = text.length > MOST_CHARACTERS;
  const count = isTooLarge ? 0 : text.split("\n").length;
  useCaret(field, text);
  useLayoutEffect(() => {
    // The caret's own file has gone: what is typed on must not go into another one.
    if (caretFile.value !== null && caretFile.value !== file) field.current?.blur();
  }, [file]);
  return (
    <section class="text-pane" aria-label="The text">
      <FileChoice file={file} />
      {isTooLarge && <p class="too-large">{tooLargeWords(text)}</p>}
      <div class={isTooLarge ? "text-scroller too-large" : "text-scroller"} ref={scroller}>
        <div class="text-sheet">
          <Gutter count={count} file={file} />
          {!isTooLarge && <Bands file={file} text={text} />}
          <textarea
            ref={field}
            aria-label={`Text of ${file}`}
            spellcheck={false}
            autocomplete="off"
            wrap="off"
            rows={count + 1}
            value={text}
            onInput={(event) => type(file, event.currentTarget.value)}
            onBeforeInput={(event) => {
              // From a menu or a gesture: the field's own undo would know nothing of the picture.
              if (event.inputType !== "historyUndo" && event.inputType !== "historyRedo") return;
              event.preventDefault();
              stepInText(event.inputType === "historyUndo" ? "back" : "forth", file);
            }}
            onFocus={() => {
              caretFile.value = file;
            }}
            onBlur={() => {
              settleTyping();
              caretFile.value = null;
            }}
            onKeyDown={(event) => typedKey(event, file)}
            onKeyUp={(event) => followCaret(file, event.currentTarget)}
            onClick={(event) => followCaret(file, event.currentTarget)}
          />
        </div>
      </div>
    </section>
  );
}

const tooLargeWords = (text: string): string =>
  `${text.length} characters; a design has at most ${MOST_CHARACTERS}. The text is kept here to be shortened, without numbers of its lines.`;

function FileChoice({ file }: { readonly file: string }): JSX.Element {
  const files = [...texts.value.keys()].sort();
  return (
    <label class="file-name">
      File{" "}
      <select
        value={file}
        onChange={(event) => {
          settleTyping();
          chooseFile(event.currentTarget.value);
        }}
      >
        {files.map((path) => (
          <option key={path} value={path}>
            {path}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Line numbers, with the numbers of the findings that stand there. */
function Gutter(props: { readonly count: number; readonly file: string }): JSX.Element {
  const marks = new Map<number, NumberedFinding>();
  for (const numbered of panelFindings.value) {
    const { finding, line } = numbered.placed;
    if (finding.span.file === props.file && !marks.has(line)) marks.set(line, numbered);
  }
  return (
    <ol class="gutter">
      {Array.from({ length: props.count }, (_, index) => {
        const mark = marks.get(index + 1);
        if (mark === undefined) return plainLine(index);
        return <MarkedLine key={index} index={index} mark={mark} />;
      })}
    </ol>
  );
}

function MarkedLine(props: {
  readonly index: number;
  readonly mark: NumberedFinding;
}): JSX.Element {
  const { index, mark } = props;
  return (
    <li>
      <button
        type="button"
        class={`line-mark ${mark.placed.finding.severity}`}
        tabIndex={-1}
        title={mark.placed.finding.message}
        aria-label={`Finding ${mark.number} in line ${index + 1}`}
        onClick={() => pointAt(mark.placed)}
      >
        {mark.number}
      </button>
      {index + 1}
    </li>
  );
}

/** Not kept from drawing to drawing: an element holds on to the page that it was first drawn in. */
const plainLine = (index: number): JSX.Element => <li key={index}>{index + 1}</li>;

/** Behind the text: the lines of what is selected. */
function Bands(props: { readonly file: string; readonly text: string }): JSX.Element {
  const { file, text } = props;
  // Of a text that can't be read nobody knows which lines they are now.
  const bands = new Map(
    (unread.value === null ? selectedThings.value : [])
      .filter(({ span }) => span.file === file)
      .map((thing) => linesOf(thing, text))
      // One over the other, those of many screws in one line would hide its words.
      .map((lines) => [`${lines.first}-${lines.last}`, lines]),
  );
  return (
    <div class="bands" aria-hidden="true">
      {[...bands].map(([lines, { first, last }]) => (
        <div
          key={lines}
          class="band-lines"
          style={{ top: `${(first - 1) * LINE}px`, height: `${(last - first + 1) * LINE}px` }}
        />
      ))}
    </div>
  );
}

function type(file: string, now: string): void {
  const before = draft.value?.file === file ? draft.value.before : (texts.value.get(file) ?? "");
  draft.value = { file, before, now };
  if (rest !== null) clearTimeout(rest);
  rest = setTimeout(settleTyping, REST);
}

/** What was typed becomes an edit; where the file has changed under the hand it is put onto the new text if it can be. */
function settleTyping(): void {
  if (rest !== null) clearTimeout(rest);
  rest = null;
  const typed = draft.value;
  if (typed !== null && isAskedAbout(typed.file)) return;
  draft.value = null;
  if (typed === null || typed.before === typed.now) return;
  const made = difference(source(typed.file, typed.before), typed.now);
  const outcome = edit([made], `type in ${typed.file}`);
  if (outcome.kind === "asked") draft.value = typed;
  if (outcome.kind === "refused") say(`What was typed is not taken: ${outcome.why}.`);
}

askAboutTyping({
  edits: (file) => {
    const typed = draft.value;
    return typed === null || typed.file !== file
      ? []
      : [difference(source(file, typed.before), typed.now)];
  },
  // The panel may have another file now.
  end: () => {
    draft.value = null;
    chosen.value = null;
    caretFile.value = null;
  },
});

settleWith(settleTyping);

/** One history for picture and text: the field's own would know nothing of the picture. */
function typedKey(event: KeyboardEvent, file: string): void {
  const command = commandKey(event);
  if (command !== "undo" && command !== "redo") return;
  event.preventDefault();
  event.stopPropagation();
  stepInText(command === "undo" ? "back" : "forth", file);
}

/** Whether the caret goes to what has changed, as it does after undo and redo. */
let goesToChange = false;

/** A step of another file brings that file here: nobody undoes what he does not see. */
function stepInText(way: "back" | "forth", file: string): void {
  settleTyping();
  const what = way === "back" ? nextUndo.value : nextRedo.value;
  if (what === null) {
    say(way === "back" ? "Nothing to undo." : "Nothing to redo.");
    return;
  }
  const before = history.value;
  goesToChange = true;
  if (way === "back") undo();
  else redo();
  if (history.value === before) return;
  const step = way === "back" ? history.value.undone[0] : history.value.done.at(-1);
  const files = step?.moves.flatMap((move) => (move.kind === "bytes" ? [] : [move.file])) ?? [];
  if (files[0] !== undefined && !files.includes(file)) {
    chooseFile(files[0]);
    caretFile.value = files[0];
  }
  say(`${way === "back" ? "Undone" : "Done again"}: ${what}.`);
}

/** A text that changes under the caret leaves it where it was in the words, not in the count of letters. */
function useCaret(field: { readonly current: HTMLTextAreaElement | null }, text: string): void {
  const now = field.current;
  const before =
    now === null ? null : { text: now.value, from: now.selectionStart, to: now.selectionEnd };
  useLayoutEffect(() => {
    if (before === null || field.current === null || before.text === text) return;
    const at = (caret: number): number =>
      goesToChange ? changeEnd(before.text, text) : caretAfter(before.text, text, caret);
    field.current.setSelectionRange(at(before.from), at(before.to));
    goesToChange = false;
  }, [text]);
}

function followCaret(file: string, field: HTMLTextAreaElement): void {
  if (draft.value !== null || !isCurrent.value || unread.value !== null) return;
  const ids = idsAt(things.value, { file, text: field.value, offset: field.selectionStart });
  if (ids.length > 0 && ids.join() !== selection.value.join()) selection.value = ids;
}

/** Brings the lines of what is selected, or of the finding that is pointed at, into sight; never under a hand that types. */
function useFollowing(
  field: { readonly current: HTMLTextAreaElement | null },
  scroller: { readonly current: HTMLDivElement | null },
): void {
  useSignalEffect(() => {
    const wanted = wantedPlace();
    if (wanted === null) return;
    chooseFile(wanted.file);
    const view = scroller.current;
    if (view === null || document.activeElement === field.current) return;
    const top = (wanted.line - 1) * LINE;
    if (top < view.scrollTop || top > view.scrollTop + view.clientHeight - 2 * LINE)
      view.scrollTop = Math.max(0, top - view.clientHeight / 3);
  });
}

function wantedPlace(): { readonly file: string; readonly line: number } | null {
  const pointed = pointedAt.value;
  if (pointed !== null && texts.peek().has(pointed.finding.span.file))
    return { file: pointed.finding.span.file, line: pointed.line };
  const [first] = selectedThings.value;
  if (first === undefined || unread.value !== null) return null;
  const { file } = first.span;
  return { file, line: linesOf(first, texts.peek().get(file) ?? "").first };
}
