// Two things in the order in which the design's text writes them: what is said of a pair names the first one first.

import type { Span } from "../diagnostics/finding.ts";

export interface WrittenThing {
  readonly span: Span;
  /** Decides between members of one row, which stand at one place of the text. */
  readonly name: string;
}

export const inTextOrder = <Thing>(
  first: Thing,
  second: Thing,
  writtenOf: (thing: Thing) => WrittenThing,
): readonly [Thing, Thing] => {
  const [a, b] = [writtenOf(first), writtenOf(second)];
  const order = a.span.start - b.span.start;
  const isFirst = order === 0 ? a.name < b.name : order < 0;
  return isFirst ? [first, second] : [second, first];
};
