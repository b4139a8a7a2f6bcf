// The places that a marking of the design has: one, or one at each end of a line; none where it goes round other things.

import type { MarkingDesign, PatternDesign } from "../design/panel-design.ts";
import type { OwnPlace } from "./panel-layout.ts";

export interface MarkingPlace extends Pick<OwnPlace, "end" | "place"> {
  /** What it sets out from there. */
  readonly pattern: PatternDesign | null;
}

export const markingPlaces = (marking: MarkingDesign): readonly MarkingPlace[] => {
  switch (marking.kind) {
    case "legend":
    case "window":
      return [{ end: "at", place: marking.at, pattern: marking.pattern }];
    case "line":
    case "arrow":
      return [
        { end: "from", place: marking.from, pattern: marking.pattern },
        { end: "to", place: marking.to, pattern: marking.pattern },
      ];
    case "border":
    case "bracket":
      return [];
  }
};
