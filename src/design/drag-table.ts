// What a drag of a placed thing edits, by what the design says of it: one statement of a place in, the key and number that
// follow the thing out, or what holds it. Every mover asks this table: the page's pointer and arrow keys, and remedies.

import { type Mm, mm } from "../geometry/quantity.ts";
import type { AxisPlace, MarkingDesign } from "./panel-design.ts";

export type Drag =
  | {
      readonly kind: "number";
      /** The key whose value follows: left, top, x, centres, gap ... */
      readonly key: string;
      readonly value: Mm;
      /** Which way the thing goes where the number grows: right and up are 1. */
      readonly sign: 1 | -1;
      /** What the reader of the key takes. */
      readonly bound: "any" | "from-zero" | "above-zero";
    }
  | { readonly kind: "held"; readonly by: "middle" | "edge" }
  /** It keeps a neighbour's line: the neighbour's drag takes it along. */
  | { readonly kind: "held"; readonly by: "neighbour"; readonly neighbour: string }
  /** A border or a bracket: it goes round these, and moves where they do. */
  | { readonly kind: "held"; readonly by: "members"; readonly members: readonly string[] }
  /** A screw or a dowel whose place the design leaves to the rule that sets them. */
  | { readonly kind: "held"; readonly by: "rule" };

/** What a drag of a marking without a place of its own meets; null where it has one: ask `dragOf` for that. */
export const dragOfMarking = (marking: MarkingDesign): Drag | null => {
  switch (marking.kind) {
    case "border":
    case "bracket":
      return { kind: "held", by: "members", members: marking.around };
    case "legend":
    case "line":
    case "arrow":
    case "window":
      return null;
  }
};

/** Screws and dowels that the design does not place. */
export const DRAG_BY_RULE: Drag & { readonly kind: "held" } = { kind: "held", by: "rule" };

export const dragOf = (place: AxisPlace): Drag => {
  switch (place.kind) {
    case "from-low": {
      const bound = place.key === "x" || place.key === "y" ? "any" : "from-zero";
      return { kind: "number", key: place.key, value: place.distance, sign: 1, bound };
    }
    case "from-high":
      return {
        kind: "number",
        key: place.key,
        value: place.distance,
        sign: -1,
        bound: "from-zero",
      };
    case "beside":
      return {
        kind: "number",
        key: place.measure,
        value: place.distance,
        sign: place.toward === "high" ? 1 : -1,
        bound: place.measure === "gap" ? "from-zero" : "above-zero",
      };
    case "centre":
      return { kind: "held", by: "middle" };
    case "low-edge":
    case "high-edge":
      return { kind: "held", by: "edge" };
    case "in-line":
      return { kind: "held", by: "neighbour", neighbour: place.neighbour };
  }
};

/** The number after a shift to the right or up; null where its key does not take it. */
export const draggedValue = (
  drag: Drag & { readonly kind: "number" },
  shift: number,
): Mm | null => {
  const value = drag.value + shift * drag.sign;
  const isTaken = drag.bound === "any" || (drag.bound === "from-zero" ? value >= 0 : value > 0);
  return isTaken ? mm(value) : null;
};
