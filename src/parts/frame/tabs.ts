// Where the tabs of an edge stand: evenly, a web from each end. Takes the edge's length and the sheet's thickness; gives spans along it.

import type { Span } from "./board.ts";
import { endWeb, TAB } from "./frame-practice.ts";

/** The shortest edge with room for a tab and its webs. */
export const shortestEdge = (thickness: number): number => TAB.shortest + 2 * endWeb(thickness);

/** Empty where the edge has no room for a tab and its webs. */
export const tabSpans = (length: number, thickness: number): readonly Span[] => {
  const web = endWeb(thickness);
  const room = length - 2 * web;
  if (room < TAB.shortest) return [];
  const count = Math.max(1, Math.round(room / TAB.pitch));
  const tab = count === 1 ? Math.min(room, 1.5 * TAB.length) : TAB.length;
  const first = count === 1 ? web + (room - tab) / 2 : web;
  const step = count === 1 ? 0 : (room - tab) / (count - 1);
  return Array.from({ length: count }, (_, index) => ({
    from: first + index * step,
    to: first + index * step + tab,
  }));
};
