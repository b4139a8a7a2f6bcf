// Between the text and the picture: which thing's lines an offset lies in, and where its lines are. Pure.

import { difference } from "../../src/design/rewriting.ts";
import { source } from "../../src/design/source.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import type { SheetThing } from "./sheet-things.ts";

export interface Lines {
  /** From 1, both with. */
  readonly first: number;
  readonly last: number;
}

type Written = Pick<SheetThing, "kind" | "entry" | "span">;

/** The thing's own stretch of the text, a component's name included. */
function stretchOf(
  { kind, entry, span: { start, end } }: Written,
  text: string,
): { readonly start: number; readonly end: number } {
  const name = kind === "component" ? text.lastIndexOf(`${entry}:`, start) : start;
  const written = text.slice(start, end).trimEnd().length;
  return { start: name < 0 ? start : name, end: start + written };
}

/** Ids of what is written round an offset: all members of a pattern, all screws that one rule sets. */
export function idsAt(
  things: readonly SheetThing[],
  { file, text, offset }: { readonly file: string; readonly text: string; readonly offset: number },
): readonly string[] {
  const found = things.find((thing) => {
    if (thing.span.file !== file) return false;
    const { start, end } = stretchOf(thing, text);
    return offset >= start && offset <= end;
  });
  return found === undefined
    ? []
    : things.filter(({ span }) => span.start === found.span.start).map(({ id }) => id);
}

export function linesOf(thing: Written, text: string): Lines {
  const { start, end } = stretchOf(thing, text);
  return { first: lineAndColumn(text, start).line, last: lineAndColumn(text, end).line };
}

/** Where a caret stands when the text round it has changed: before the change where it was, behind it shifted, in it at its end. */
export function caretAfter(before: string, after: string, caret: number): number {
  const { start, end, text } = difference(source("", before), after);
  if (caret <= start) return caret;
  return caret >= end ? caret + text.length - (end - start) : start + text.length;
}

/** The end of what differs, in the new text. */
export function changeEnd(before: string, after: string): number {
  const { start, text } = difference(source("", before), after);
  return start + text.length;
}
