// Whether one stretch of a design's text lies within another: what is wrong there belongs to what stands round it.

import type { Span } from "./finding.ts";

export const isWithin = (inner: Span, outer: Span): boolean =>
  inner.file === outer.file && outer.start <= inner.start && inner.end <= outer.end;
