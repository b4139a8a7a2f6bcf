// The places of a panel that were read from a photograph, in the order of the text: components, then markings.

import type { MarkingDesign, PanelDesign, PlaceDesign } from "../design/panel-design.ts";
import type { Mm } from "../geometry/quantity.ts";

export interface PhotoPlace {
  /** The entry under `components` or `markings`. */
  readonly id: string;
  readonly under: "components" | "markings";
  readonly place: PlaceDesign;
  readonly residual: Mm;
}

export const photoPlaces = ({
  components,
  markings,
}: Pick<PanelDesign, "components" | "markings">): readonly PhotoPlace[] => [
  ...components.flatMap((entry) =>
    entry.kind === "unreadable" ? [] : read(entry.id, "components", [entry.at]),
  ),
  ...markings.flatMap((marking) => read(marking.id, "markings", placesOf(marking))),
];

const read = (
  id: string,
  under: PhotoPlace["under"],
  places: readonly PlaceDesign[],
): readonly PhotoPlace[] =>
  places.flatMap((place) =>
    place.residual === null ? [] : [{ id, under, place, residual: place.residual }],
  );

const placesOf = (marking: MarkingDesign): readonly PlaceDesign[] => {
  switch (marking.kind) {
    case "legend":
    case "window":
      return [marking.at];
    case "line":
    case "arrow":
      return [marking.from, marking.to];
    case "border":
    case "bracket":
      return [];
  }
};
