// Several things set in order, each deed as one step of the history: lined up, spaced, set out in a row, a column or a ring.
// Things that are alike become one entry of the text; what the text has no row for gets a place each.

import { lengthIn } from "../../src/design/length-text.ts";
import { separateMoves } from "../../src/layout/separate-moves.ts";
import { selection } from "../desk.ts";
import {
  type ArrangedThing,
  type Arrangement,
  arrangedThings,
  equallyGapped,
  evenlySpaced,
  type LineUp,
  linedUp,
  setOut,
} from "./arrangements.ts";
import { componentEntries, offer, say, selectedEntries, selectedThings, unit } from "./board.ts";
import { onePatternWords } from "./one-pattern.ts";
import { type Open, open } from "./open-panel.ts";
import { named, selectEntries } from "./panel-names.ts";
import { noPattern, type Pattern, patternOf } from "./pattern-edits.ts";
import type { PatternKind } from "./regular-places.ts";
import { setOutPattern } from "./set-out-edits.ts";
import { groupsAlong } from "./sheet-things.ts";
import { take, takeEdit } from "./told-edit.ts";

const LINE_WORDS: Readonly<Record<LineUp, string>> = {
  left: "Left edges in one line",
  right: "Right edges in one line",
  top: "Upper edges in one line",
  bottom: "Lower edges in one line",
  level: "Level with",
  "in-line": "In line with",
};

export function lineUpSelection(how: LineUp): void {
  const on = open();
  if (on === null) return;
  const things = picked(on);
  const arranged = linedUp(things, how);
  if (arranged === null) {
    sayTooFew(on, "Lining up takes two things or more.");
    return;
  }
  const { minX, minY } = on.layout.nominal;
  const { axis, measure } = arranged;
  const at = `${axis} ${lengthIn(unit.value, measure - (axis === "x" ? minX : minY))}`;
  const leader = how === "level" || how === "in-line" ? ` ${things[0]?.entry}` : "";
  carryOut(on, arranged, {
    what: `line up ${named(selectedEntries.value)}`,
    words: `${LINE_WORDS[how]}${leader}, ${at}`,
  });
}

export function spaceSelection(): void {
  const on = open();
  if (on === null) return;
  const arranged = evenlySpaced(picked(on));
  if (arranged === null) {
    sayTooFew(on, "Spacing evenly takes three things or more.");
    return;
  }
  carryOut(on, arranged, {
    what: `space ${named(selectedEntries.value)}`,
    words: `Spaced evenly, ${lengthIn(unit.value, arranged.measure)} from centre to centre`,
  });
}

export function gapSelection(): void {
  const on = open();
  if (on === null) return;
  const arranged = equallyGapped(picked(on));
  if (arranged === null) {
    sayTooFew(on, "Equal gaps take three things or more.");
    return;
  }
  const gap = lengthIn(unit.value, Math.abs(arranged.measure));
  if (arranged.measure < 0) {
    say(`Not done: between the outermost two they would overlap by ${gap} each.`);
    return;
  }
  carryOut(on, arranged, {
    what: `gaps of ${named(selectedEntries.value)}`,
    words: `Equal gaps, ${gap} from edge to edge`,
  });
}

/** One entry of the text where all are alike but for their places and words; else a place for each. */
export function makePattern(kind: PatternKind): void {
  const on = open();
  if (on === null) return;
  const made = patternMade(on, kind);
  const { edit, says, names, offer: more } = made;
  const what = `make a ${kind}`;
  if (edit.kind === "refused") setOutSelection(on, kind, edit.why);
  else if (more !== null) {
    offer.value = { ...more, edits: [edit.edit], what };
    say(`Not done yet: ${more.why}. Offered: ${more.title}.`);
  } else if (takeEdit(edit, what, `Made a ${says}`)) selectEntries(names);
}

function patternMade({ from, layout }: Open, kind: PatternKind): Pattern {
  const entries = selectedEntries.value;
  const components = componentEntries.value.length;
  if (components === entries.length) return patternOf(from, kind, { entries, layout });
  return components > 0
    ? noPattern("they are of different kinds")
    : setOutPattern(from, kind, { entries, layout });
}

/** Each by a place of its own, and why there is no entry for all of them. */
function setOutSelection(on: Open, kind: PatternKind, why: string): void {
  const things = picked(on);
  const arranged = setOut(things, kind);
  if (arranged.kind === "refused") {
    say(`Not done: ${arranged.why}.`);
    return;
  }
  const measure = `${kind === "ring" ? "radius" : "pitch"} ${lengthIn(unit.value, arranged.measure)}`;
  carryOut(on, arranged, {
    what: `set out a ${kind}`,
    words: `Set out in a ${kind} of ${things.length}, ${measure}, each by its own place: ${why}`,
  });
}

const sayTooFew = ({ layout }: Open, words: string): void =>
  say(onePatternWords(selectedThings.value, layout) ?? words);

/** In the order of picking; without the borders whose components are picked with them. */
function picked({ layout }: Open): readonly ArrangedThing[] {
  const ids = new Set(selection.value);
  const along = groupsAlong(ids, layout);
  const things = selectedThings.value
    .filter(({ id }) => !along.includes(id))
    .toSorted((a, b) => selection.value.indexOf(a.id) - selection.value.indexOf(b.id));
  return arrangedThings(things);
}

interface Told {
  readonly what: string;
  readonly words: string;
}

function carryOut(
  { layout, from }: Open,
  { shifts }: Pick<Arrangement, "shifts">,
  { what, words }: Told,
): void {
  const outcome = separateMoves(shifts, layout, from);
  offer.value = null;
  switch (outcome.kind) {
    case "still":
      say(`${words}: they stand so already.`);
      return;
    case "refused":
      say(`Not done: ${outcome.why}.`);
      return;
    case "edits":
      take(outcome.edits, what, words);
      return;
    case "choice":
      offer.value = { why: outcome.why, title: outcome.title, edits: outcome.free, what };
      say(`Not done yet: ${outcome.why}. Offered: ${outcome.title}.`);
  }
}
