// An entry of the design as the page changes it: where its text stands, and what it sets out. Components go by their name, markings
// by where they are written, screws by their item of the list. Pure.

import type { Path } from "../../src/design/edit.ts";
import type { PatternDesign } from "../../src/design/panel-design.ts";
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

/** null for one by itself. */
export function entryPattern(entry: string, { design, ownPlaces }: Scene): PatternDesign | null {
  const component = design.components.find(({ id }) => id === entry);
  if (component !== undefined) return component.kind === "pattern" ? component.pattern : null;
  const marking = design.markings.find(({ id }) => id === entry);
  if (marking !== undefined) return "pattern" in marking ? marking.pattern : null;
  const own = ownPlaces.find((one) => one.entry === entry);
  const start = own?.place.written.span.start;
  const item = design.fixings?.at?.find(({ place }) => place.written.span.start === start);
  return item?.pattern ?? null;
}
