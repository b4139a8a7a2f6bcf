// Which of the places that were found belong to what thing: windows and free markings by their name, screws and dowels by
// their number, as their holes are named; of a pattern each member. Takes the design, the places found, and the fixings placed.

import type { PanelDesign, PlaceDesign } from "../design/panel-design.ts";
import type { Point } from "../geometry/contour.ts";
import { markingPlaces } from "./marking-places.ts";
import { memberIds } from "./member-ids.ts";
import type { OwnPlace, PlacedFixing } from "./panel-layout.ts";
import type { FoundPlace } from "./place-finder.ts";

export const ownPlaces = (
  { markings, fixings }: PanelDesign,
  found: readonly FoundPlace[],
  placed: readonly PlacedFixing[],
): readonly OwnPlace[] => {
  const atsOf = new Map(found.map(({ place, ats }) => [place, ats]));
  const screws = (fixings?.at ?? []).map(({ place }) => place);
  return [
    ...markings.flatMap((marking) =>
      markingPlaces(marking).flatMap(({ end, place, pattern }) => {
        const ats = atsOf.get(place) ?? [];
        return memberIds(marking.id, pattern).flatMap((id, index) => {
          const at = ats[index];
          return at === undefined ? [] : [{ id, entry: marking.id, end, place, at }];
        });
      }),
    ),
    ...fixingPlaces(
      placed.filter(({ kind }) => kind === "screw"),
      screws,
      atsOf,
    ),
    ...fixingPlaces(
      placed.filter(({ kind }) => kind !== "screw"),
      fixings?.dowelsAt ?? [],
      atsOf,
    ),
  ];
};

/** A screw that could not be placed takes no number: its hole has none either. */
const fixingPlaces = (
  placed: readonly PlacedFixing[],
  places: readonly PlaceDesign[],
  atsOf: ReadonlyMap<PlaceDesign, readonly Point[]>,
): readonly OwnPlace[] => {
  const found = places.flatMap((place) => (atsOf.get(place) ?? []).map((at) => ({ place, at })));
  return placed.flatMap(({ id, entry }, index): readonly OwnPlace[] => {
    const own = found[index];
    return own === undefined ? [] : [{ id, entry, end: "at", ...own }];
  });
};
