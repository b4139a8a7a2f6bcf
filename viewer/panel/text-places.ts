// Between the text and the picture: which component's lines an offset lies in, and where its lines are. Pure.

import { lineAndColumn } from "../../src/diagnostics/position.ts";
import type { PlacedComponent } from "../../src/layout/panel-layout.ts";

export interface Lines {
  /** From 1, both with. */
  readonly first: number;
  readonly last: number;
}

/** The entry's own stretch of the text, its name included. */
function stretchOf(
  component: PlacedComponent,
  text: string,
): { readonly start: number; readonly end: number } {
  const { start, end } = component.written.span;
  const name = text.lastIndexOf(`${component.entry}:`, start);
  const written = text.slice(start, end).trimEnd().length;
  return { start: name < 0 ? start : name, end: start + written };
}

export function entryAt(
  components: readonly PlacedComponent[],
  { file, text, offset }: { readonly file: string; readonly text: string; readonly offset: number },
): string | null {
  const found = components.find((component) => {
    if (component.written.span.file !== file) return false;
    const { start, end } = stretchOf(component, text);
    return offset >= start && offset <= end;
  });
  return found?.entry ?? null;
}

export function linesOf(component: PlacedComponent, text: string): Lines {
  const { start, end } = stretchOf(component, text);
  return { first: lineAndColumn(text, start).line, last: lineAndColumn(text, end).line };
}
