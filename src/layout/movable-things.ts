// What on a panel stands by a place that the design gives: components, windows, free markings, screws and dowels. A mover
// asks here what can be moved, and by which statement; a line is here twice, once for each end.

import type { PlaceDesign } from "../design/panel-design.ts";
import type { Point } from "../geometry/contour.ts";
import type { OwnPlace, PanelLayout } from "./panel-layout.ts";

export interface MovableThing {
  /** Instance id. */
  readonly id: string;
  /** What is moved with one statement: `warn` for `warn.3`. */
  readonly entry: string;
  readonly end: OwnPlace["end"];
  readonly at: Point;
  readonly place: PlaceDesign;
}

export const movableThings = ({
  components,
  ownPlaces,
}: Pick<PanelLayout, "components" | "ownPlaces">): readonly MovableThing[] => [
  ...components.map(({ id, entry, at, place }) => ({ id, entry, at, place, end: "at" as const })),
  ...ownPlaces,
];
