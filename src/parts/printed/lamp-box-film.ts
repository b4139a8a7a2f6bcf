// The label film of a lamp box: what is printed on a clear film between box and sheet. Black, with the words left open in
// the colour of their alert, each behind its window; they fall on engraved words of the face, or stand by themselves.

import type { LegendDesign } from "../../design/panel-design.ts";
import type { Contour, Path, Region } from "../../geometry/contour.ts";
import { type Extent, grownExtent } from "../../geometry/extent.ts";
import type { Mm } from "../../geometry/quantity.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { PanelLayout, PlacedComponent } from "../../layout/panel-layout.ts";
import type { LampBoxSizes } from "./lamp-box-sizes.ts";

export interface LabelFilm {
  readonly kind: "label-film";
  /** `alarms-window-film`. */
  readonly id: string;
  readonly panel: string;
  readonly title: string;
  readonly revision: string;
  /** The entry of the design that the windows belong to. */
  readonly owner: string;
  /** As it is cut out, in panel coordinates seen from the front. */
  readonly outline: Contour;
  readonly labels: readonly FilmLabel[];
  /** Characters that the font has no shape for. */
  readonly missing: readonly string[];
}

export interface FilmLabel {
  readonly window: string;
  readonly words: string;
  readonly alert: LegendDesign["alert"];
  readonly fills: readonly Region[];
  readonly strokes: readonly { readonly path: Path; readonly width: Mm }[];
}

/** A film that is a little smaller than its box does not stand out at an edge. */
const FILM_INSET = 0.5;

export const labelFilm = (
  layout: PanelLayout,
  members: readonly PlacedComponent[],
  sizes: LampBoxSizes,
): LabelFilm => {
  const owner = members[0]?.entry ?? "";
  const markings = members.map((member) => ({
    member,
    marking: legendOf(layout, member),
  }));
  return {
    kind: "label-film",
    id: `${layout.name}-${owner}-film`,
    panel: layout.name,
    title: `${layout.design.title}, label film of ${owner}`,
    revision: layout.design.revision,
    owner,
    outline: filmOutline(sizes.outside),
    labels: markings.flatMap(({ member, marking }) =>
      marking === undefined || member.legend === null
        ? []
        : [
            {
              window: member.id,
              words: member.legend.text,
              alert: member.legend.alert,
              fills: marking.fills,
              strokes: marking.strokes,
            },
          ],
    ),
    missing: [...new Set(markings.flatMap(({ marking }) => marking?.missing ?? []))],
  };
};

/** The word that stands on the window; words beside it stay on the face. */
export const legendOf = (
  { markings }: PanelLayout,
  { id }: PlacedComponent,
): PanelLayout["markings"][number] | undefined =>
  markings.find(({ owner, kind, side }) => owner === id && kind === "legend" && side === "on");

const filmOutline = (outside: Extent): Contour => rectangle(grownExtent(outside, -FILM_INSET));
