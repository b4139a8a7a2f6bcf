// Who says a figure of a record: the exception that covers its path most closely, else the source of the whole record.
// An exception for "shaft" covers "shaft.length".

import type { Figures, SourceKind } from "./part.ts";

export interface FigureSource {
  readonly source: string;
  readonly kind: SourceKind;
}

export function figureSource(figures: Figures, path: string): FigureSource {
  const segments = path.split(".");
  for (let length = segments.length; length > 0; length -= 1) {
    const exception = figures.exceptions[segments.slice(0, length).join(".")];
    if (exception !== undefined) return exception;
  }
  return { source: figures.source, kind: figures.kind };
}
