// The places of a panel that were read from a photograph, in the order of the text: components, markings,
// screws, dowels.

import type { PanelDesign, PlaceDesign, ScrewsDesign } from "../design/panel-design.ts";
import { patternCount } from "../design/pattern-count.ts";
import type { Mm } from "../geometry/quantity.ts";
import { markingPlaces } from "./marking-places.ts";

export interface PhotoPlace {
  /** The entry under `components` or `markings`; a screw or dowel by its number. */
  readonly id: string;
  readonly under: "components" | "markings" | "fixings";
  readonly place: PlaceDesign;
  readonly residual: Mm;
}

export const photoPlaces = ({
  components,
  markings,
  fixings,
}: Pick<PanelDesign, "components" | "markings" | "fixings">): readonly PhotoPlace[] => [
  ...components.flatMap((entry) =>
    entry.kind === "unreadable" ? [] : read(entry.id, "components", [entry.at]),
  ),
  ...markings.flatMap((marking) =>
    read(
      marking.id,
      "markings",
      markingPlaces(marking).map(({ place }) => place),
    ),
  ),
  ...screws(fixings?.at ?? []),
  ...(fixings?.dowelsAt ?? []).flatMap((place, index) =>
    read(`dowel.${index + 1}`, "fixings", [place]),
  ),
];

/** The first of a row or ring stands for all of it. */
const screws = (items: readonly ScrewsDesign[]): readonly PhotoPlace[] => {
  let before = 0;
  return items.flatMap(({ place, pattern }) => {
    const id = `fixing.${before + 1}`;
    before += patternCount(pattern);
    return read(id, "fixings", [place]);
  });
};

const read = (
  id: string,
  under: PhotoPlace["under"],
  places: readonly PlaceDesign[],
): readonly PhotoPlace[] =>
  places.flatMap((place) =>
    place.residual === null ? [] : [{ id, under, place, residual: place.residual }],
  );
