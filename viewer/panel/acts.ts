// What can be done to the open panel, each as one step of the history: the edits are worked out from the text and the
// layout, handed to the desk, and told in words.

import { namer } from "../../src/arrange/unit-names.ts";
import { type Edit, replaceValue } from "../../src/design/edit.ts";
import { isLengthText, lengthIn } from "../../src/design/length-text.ts";
import { pathAt } from "../../src/design/path-at.ts";
import { rewritten } from "../../src/design/rewriting.ts";
import { type Source, source } from "../../src/design/source.ts";
import type { Written } from "../../src/design/written.ts";
import type { Remedy } from "../../src/diagnostics/finding.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { moveEdits } from "../../src/layout/move-edits.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PanelReading } from "../core-messages.ts";
import { isCurrent, panel, selection, texts, unread } from "../desk.ts";
import { unreadWords } from "../kept-panels.ts";
import { placeAdded, placedByPhoto, placesIn } from "../photo/placed-by-photo.ts";
import {
  componentEntries,
  inHand,
  offer,
  say,
  selectedEntries,
  selectedThings,
  unit,
} from "./board.ts";
import { componentAdded, componentCopied, turned } from "./component-edits.ts";
import { componentRenamed } from "./naming-edits.ts";
import type { PartCard } from "./panel-messages.ts";
import { type PatternKind, patternOf } from "./pattern-edits.ts";
import { thingsRemoved } from "./removal-edits.ts";
import type { Shift } from "./snap.ts";
import { spacedEvenly } from "./spacing-edits.ts";
import { take, takeEdit } from "./told-edit.ts";

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
  if (isUnread()) return null;
  return { panel: now, layout: now.layout, from: source(now.file, text) };
}

/** Whether the picture is an older one than the text, which is said then: nothing is done in it. */
export function isUnread(): boolean {
  const why = unread.value;
  if (why !== null) say(`Not done: ${unreadWords(why, panel.value?.file ?? "")}.`);
  return why !== null;
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
    case "edits": {
      const { edits, words } = placedByPhoto(
        outcome.edits,
        on.from,
        placesIn(on.layout, on.from, entries),
      );
      take(edits, what, `${named(entries)}: ${outcome.says}${words}`);
      return;
    }
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
  const steps = entries.map((entry) => (now: Source) => turnedBy(now, entry, { by, on }));
  takeEdit(rewritten(on.from, steps), `turn ${named(entries)}`);
}

function turnedBy(
  from: Source,
  entry: string,
  { by, on }: { readonly by: number; readonly on: Open },
): Edit {
  const component = on.layout.components.find((one) => one.entry === entry);
  if (component !== undefined)
    return turned(from, ["components", entry], component.common.turn + by);
  const marking = on.layout.design.markings.find(({ id }) => id === entry);
  const path = marking === undefined ? null : pathAt(on.from, marking.written.span);
  return marking?.kind !== "legend" || path === null
    ? { kind: "refused", why: `${entry} has no way to be turned` }
    : turned(from, path, marking.legend.turn + by);
}

/** At once where nothing else changes; what names it changes only with the person's word. */
export function removeSelection(): void {
  const on = open();
  const entries = selectedEntries.value;
  if (on === null || entries.length === 0) return;
  const { edit: made, says } = thingsRemoved(on.from, entries, on.layout);
  const what = `take off ${named(entries)}`;
  if (made.kind === "edit" && says.length > 0) {
    const title = `Take off ${named(entries)} all the same`;
    offer.value = { why: says.join("; "), title, edits: [made.edit], what };
    say(`Not yet taken off: ${says.join("; ")}.`);
    return;
  }
  if (takeEdit(made, what, `Taken off: ${named(entries)}`)) selection.value = [];
}

/** Everywhere in the panel's file, as one step. */
export function renameComponent(entry: string, typed: string): void {
  const on = open();
  const name = typed.trim();
  if (on === null || name === entry) return;
  const made = componentRenamed(on.from, entry, { name, taken: namesOn(on.panel) });
  if (made.kind === "refused") {
    say(`Not renamed: ${made.why}.`);
    return;
  }
  const isDone = take(made.edits, `rename ${entry} to ${name}`, `renamed: ${entry} is now ${name}`);
  if (isDone) selectEntries([name]);
}

/** Between a component and its copy, mm. */
const COPY_GAP = 5;

export function copySelection(): void {
  const on = open();
  const entries = componentEntries.value;
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
  const made = patternOf(on.from, kind, { entries: componentEntries.value, layout: on.layout });
  if (takeEdit(made.edit, `make a ${kind}`, `Made a ${made.says}`)) selectEntries([made.name]);
}

export function placePart(card: PartCard, at: Shift): void {
  const on = open();
  if (on === null) return;
  const name = freshNames(on.panel)(null, card.family);
  const made = componentAdded(on.from, { name, part: card.id, ...at });
  const edits = made.kind === "edit" ? [made.edit] : [];
  const placed = placedByPhoto(edits, on.from, [placeAdded(name)]);
  const words = `Placed ${name}: ${card.title}${placed.words}`;
  if (made.kind === "refused") say(`Not done: ${made.why}.`);
  if (made.kind === "refused" || !take(placed.edits, `place ${name}`, words)) return;
  inHand.value = { kind: "nothing" };
  selectEntries([name]);
}

export function applyRemedy(remedy: Remedy): void {
  take(remedy.edits, remedy.title, `Done: ${remedy.title}`);
}

/** A number as typed in place of the one that the design states; the reader judges it. */
export function stateNumber(
  { entry, written }: { readonly entry: string; readonly written: Written },
  key: string,
  typed: string,
): void {
  const on = open();
  const span = written.keys[key];
  if (on === null || span === undefined) return;
  const text = typed.trim();
  if (isLengthText(text)) take([replaceValue(on.from, span, text)], `${entry}: ${key} ${text}`);
  else say(`${key}: "${text}" is no length; write 12.5 mm or 3/8 in.`);
}

const rounded = (value: number): number => Math.round(value * 2) / 2;

/** The new reading knows the entries; until then their ids are those of single components. */
function selectEntries(entries: readonly string[]): void {
  selection.value = entries.flatMap((entry) => [entry, `${entry}.1`]);
}

const freshNames = (reading: PanelReading): ReturnType<typeof namer> => namer(namesOn(reading));

const namesOn = ({ layout, design }: PanelReading): readonly string[] => [
  ...design.components.map(({ id }) => id),
  ...(layout?.lost ?? []),
  ...design.markings.map(({ id }) => id),
];

const named = (names: readonly string[]): string =>
  names.length <= 3 ? names.join(", ") : `${names.length} things`;

/** Where the middle of what is selected lies, and how large it is: for those who can't see it. */
export function selectionWords(): string {
  const [first] = selectedThings.value;
  if (first === undefined) return "nothing selected";
  // As the ticket counts them: members of one row are one.
  const { length } = selectedEntries.value;
  if (length > 1) return `${length} selected`;
  const { id, words, box } = first;
  const [width, height] = [extentWidth(box), extentHeight(box)];
  return `${id}, ${words}, ${lengthIn(unit.value, width)} by ${lengthIn(unit.value, height)}`;
}
