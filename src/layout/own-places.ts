// Which of the places that were found belong to what thing: windows and free markings by their name, screws and dowels by
// their number, as their holes are named. Takes the design and the places found, in the order of asking.

import type { PanelDesign, PlaceDesign } from "../design/panel-design.ts";
import { markingPlaces } from "./marking-places.ts";
import type { OwnPlace } from "./panel-layout.ts";
import type { FoundPlace } from "./place-finder.ts";

export const ownPlaces = (
  { markings, fixings }: PanelDesign,
  found: readonly FoundPlace[],
): readonly OwnPlace[] => {
  const atOf = new Map(found.map(({ place, at }) => [place, at]));
  const owned = ({ id, end, place }: Omit<OwnPlace, "at">): readonly OwnPlace[] => {
    const at = atOf.get(place);
    return at === undefined ? [] : [{ id, end, place, at }];
  };
  return [
    ...markings.flatMap((marking) =>
      markingPlaces(marking).flatMap((each) => owned({ id: marking.id, ...each })),
    ),
    ...numbered(
      "fixing",
      (fixings?.at ?? []).filter((place) => atOf.has(place)),
    ).flatMap(owned),
    ...numbered(
      "dowel",
      (fixings?.dowelsAt ?? []).filter((place) => atOf.has(place)),
    ).flatMap(owned),
  ];
};

/** A screw that could not be placed takes no number: its hole has none either. */
const numbered = (name: string, places: readonly PlaceDesign[]): readonly Omit<OwnPlace, "at">[] =>
  places.map((place, index) => ({ id: `${name}.${index + 1}`, end: "at", place }));
