// What can be done to the open panel, each as one step of the history: the edits are worked out from the text and the
// layout, handed to the desk, and told in words.

import { namer } from "../../src/arrange/unit-names.ts";
import { type Edit, replaceValue } from "../../src/design/edit.ts";
import { lengthIn } from "../../src/design/length-text.ts";
import { rewritten } from "../../src/design/rewriting.ts";
import { type Source, source } from "../../src/design/source.ts";
import type { Remedy } from "../../src/diagnostics/finding.ts";
import type { TextEdit } from "../../src/diagnostics/text-edit.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PanelReading } from "../core-messages.ts";
import { edit, isCurrent, panel, selection, texts } from "../desk.ts";
import { inHand, offer, say, selectedComponents, selectedEntries, unit } from "./board.ts";
import {
  componentAdded,
  componentCopied,
  componentsRemoved,
  componentTurned,
} from "./component-edits.ts";
import type { PartCard } from "./panel-messages.ts";
import { type PatternKind, patternOf } from "./pattern-edits.ts";
import type { Shift } from "./snap.ts";
import { spacedEvenly } from "./spacing-edits.ts";

interface Open {
  readonly panel: PanelReading;
  readonly layout: PanelLayout;
  readonly from: Source;
}

/** null where there is nothing to work on, or where the picture is not yet that of the text. */
function open(): Open | null {
  const now = panel.value;
  const text = now === null ? undefined : texts.value.get(now.file);
  if (now === null || now.layout === null || text === undefined) return null;
  if (!isCurrent.value) {
    say("Still reading the last change: a moment.");
    return null;
  }
  return { panel: now, layout: now.layout, from: source(now.file, text) };
}

export function moveSelection(shift: Shift): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const outcome = moveEdits({ entries, ...shift }, on.layout, on.from);
  const what = `move ${named(entries)}`;
  offer.value = null;
  switch (outcome.kind) {
    case "still":
      return;
    case "refused":
      say(`Not moved: ${outcome.why}.`);
      return;
    case "edits":
      take(outcome.edits, what, `${named(entries)}: ${outcome.says}`);
      return;
    case "choice":
      offer.value = { why: outcome.why, title: outcome.title, edits: outcome.free, what };
      say(`Not moved: ${outcome.why}. Offered: ${outcome.title}.`);
  }
}

export function takeOffer(): void {
  const now = offer.value;
  offer.value = null;
  if (now !== null) take(now.edits, now.what, now.title);
}

export function turnSelection(by: number): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const turnOf = (entry: string): number =>
    selectedComponents.value.find((one) => one.entry === entry)?.turn ?? 0;
  const steps = entries.map(
    (entry) => (now: Source) => componentTurned(now, entry, turnOf(entry) + by),
  );
  takeEdit(rewritten(on.from, steps), `turn ${named(entries)}`);
}

export function removeSelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const { edit: made, freed } = componentsRemoved(on.from, entries, on.layout);
  const kept = freed.length === 0 ? "" : `; ${named(freed)} keeps its place by its own numbers`;
  selection.value = [];
  takeEdit(made, `take off ${named(entries)}`, `Taken off: ${named(entries)}${kept}`);
}

/** Between a component and its copy, mm. */
const COPY_GAP = 5;

export function copySelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const nameOf = freshNames(on.panel);
  const names: string[] = [];
  const steps = entries.map((entry) => (now: Source) => {
    const own = on.layout.components.filter((one) => one.entry === entry);
    const boxes = own.flatMap(({ id }) => on.panel.picture?.boxes[id] ?? []);
    const right = Math.max(...boxes.map(({ maxX }) => maxX));
    const left = Math.min(...boxes.map(({ minX }) => minX));
    const [first] = own;
    const name = nameOf(null, entry.replace(/-\d+$/, ""));
    names.push(name);
    const low = {
      x: Math.min(...own.map(({ at }) => at.x)),
      y: Math.min(...own.map(({ at }) => at.y)),
    };
    const x = rounded(low.x + right - left + COPY_GAP);
    return first === undefined
      ? { kind: "refused" as const, why: `${entry} is not on the panel` }
      : componentCopied(now, entry, { name, x, y: low.y });
  });
  if (takeEdit(rewritten(on.from, steps), `copy ${named(entries)}`, `Copied as ${named(names)}`))
    selectEntries(names);
}

export function spaceSelection(): void {
  const on = open();
  if (on === null) return;
  const spacing = spacedEvenly(on.from, selectedEntries.value, on.layout);
  if (spacing === null) {
    say("Spacing evenly takes three components or more.");
    return;
  }
  const pitch = lengthIn(unit.value, spacing.pitch);
  takeEdit(
    spacing.edit,
    `space ${named(selectedEntries.value)}`,
    `Spaced evenly, ${pitch} from centre to centre`,
  );
}

export function makePattern(kind: PatternKind): void {
  const on = open();
  if (on === null) return;
  const made = patternOf(on.from, kind, { entries: selectedEntries.value, layout: on.layout });
  if (takeEdit(made.edit, `make a ${kind}`, `Made a ${made.says}`)) selectEntries([made.name]);
}

export function placePart(card: PartCard, at: Shift): void {
  const on = open();
  if (on === null) return;
  const name = freshNames(on.panel)(null, card.family);
  const made = componentAdded(on.from, { name, part: card.id, ...at });
  if (!takeEdit(made, `place ${name}`, `Placed ${name}, a ${card.title}`)) return;
  inHand.value = { kind: "nothing" };
  selectEntries([name]);
}

export function applyRemedy(remedy: Remedy): void {
  take(remedy.edits, remedy.title, `Done: ${remedy.title}`);
}

/** A number as typed in place of the one that the design states; the reader judges it. */
export function stateNumber(entry: string, key: string, typed: string): void {
  const on = open();
  const component = on?.layout.components.find((one) => one.entry === entry);
  const span = component?.place.written.keys[key];
  if (on === null || span === undefined) return;
  const text = typed.trim();
  if (LENGTH.test(text)) take([replaceValue(on.from, span, text)], `${entry}: ${key} ${text}`);
  else say(`${key}: "${text}" is no length; write 12.5 mm or 3/8 in.`);
}

/** A length as the reader takes it; nothing else may come into the text from a field. */
const LENGTH = /^[+-]?(?:\d*\.?\d+|(?:\d+[ -])?\d+\/\d+) ?(?:mm|cm|m|in|")?$/;

const rounded = (value: number): number => Math.round(value * 2) / 2;

/** The new reading knows the entries; until then their ids are those of single components. */
function selectEntries(entries: readonly string[]): void {
  selection.value = entries.flatMap((entry) => [entry, `${entry}.1`]);
}

function freshNames({ layout, design }: PanelReading): ReturnType<typeof namer> {
  return namer([
    ...design.components.map(({ id }) => id),
    ...(layout?.lost ?? []),
    ...design.markings.map(({ id }) => id),
  ]);
}

const named = (names: readonly string[]): string =>
  names.length <= 3 ? names.join(", ") : `${names.length} components`;

function takeEdit(made: Edit, what: string, words: string = what): boolean {
  if (made.kind === "refused") {
    say(`Not done: ${made.why}.`);
    return false;
  }
  return take([made.edit], what, words);
}

function take(edits: readonly TextEdit[], what: string, words: string = what): boolean {
  const outcome = edit(edits, what);
  say(outcome.kind === "done" ? sentence(words) : `Not done: ${outcome.why}.`);
  return outcome.kind === "done";
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** Where the middle of what is selected lies, and how large it is: for those who can't see it. */
export function selectionWords(): string {
  const [first, ...others] = selectedComponents.value;
  if (first === undefined) return "nothing selected";
  if (others.length > 0) return `${others.length + 1} selected`;
  const box = panel.value?.picture?.boxes[first.id];
  const size =
    box === undefined
      ? ""
      : `, ${lengthIn(unit.value, extentWidth(box))} by ${lengthIn(unit.value, extentHeight(box))}`;
  return `${first.id}, ${first.part.title}${size}`;
}
