// The places that a marking of the design has: one, or one at each end of a line; none where it goes round other things.

import type { MarkingDesign } from "../design/panel-design.ts";
import type { OwnPlace } from "./panel-layout.ts";

export const markingPlaces = (
  marking: MarkingDesign,
): readonly Pick<OwnPlace, "end" | "place">[] => {
  switch (marking.kind) {
    case "legend":
    case "window":
      return [{ end: "at", place: marking.at }];
    case "line":
    case "arrow":
      return [
        { end: "from", place: marking.from },
        { end: "to", place: marking.to },
      ];
    case "border":
    case "bracket":
      return [];
  }
};
