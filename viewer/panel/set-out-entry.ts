// Where an entry of the design stands in the text, as the page changes it: a component by its name, a marking by where it is
// written, screws by their item of the list. Pure.

import type { Path } from "../../src/design/edit.ts";
import { pathAt } from "../../src/design/path-at.ts";
import type { Source } from "../../src/design/source.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";

type Scene = Pick<PanelLayout, "design" | "ownPlaces">;

/** To the map with its keys; of a single screw to its place. null where the text does not say it. */
export function entryPath(from: Source, entry: string, { design, ownPlaces }: Scene): Path | null {
  if (design.components.some(({ id }) => id === entry)) return ["components", entry];
  const marking = design.markings.find(({ id }) => id === entry);
  if (marking !== undefined) return pathAt(from, marking.written.span);
  const own = ownPlaces.find((one) => one.entry === entry);
  return own === undefined ? null : itemPath(pathAt(from, own.place.written.span));
}

/** `fixings`, its list, the number in it: a place in a row stands deeper. */
const itemPath = (path: Path | null): Path | null => path?.slice(0, 3) ?? null;
