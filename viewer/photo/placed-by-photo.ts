// What is placed or moved while "from the photograph" is ticked says so in the same edit: how far off it may be.

import type { Path } from "../../src/design/edit.ts";
import { pathAt } from "../../src/design/path-at.ts";
import { takenFromPhoto, type WrittenPlace } from "../../src/design/photo-taken.ts";
import { placePath } from "../../src/design/place-edit.ts";
import { difference } from "../../src/design/rewriting.ts";
import { type Source, source } from "../../src/design/source.ts";
import { applyEdits, type TextEdit } from "../../src/diagnostics/text-edit.ts";
import { movableThings } from "../../src/layout/movable-things.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { leadsOf } from "../../src/layout/place-moves.ts";
import { isOverPhoto, isTaking, photo, residualNow } from "./photo-state.ts";

export interface PlacedByPhoto {
  readonly edits: readonly TextEdit[];
  /** Behind what is said of the deed; empty where nothing was ticked. */
  readonly words: string;
}

/** Where the places of things stand in the text that the layout is of; a line has two, a row one for all its members. */
export function placesIn(
  layout: Pick<PanelLayout, "components" | "ownPlaces">,
  from: Source,
  entries: readonly string[],
): readonly WrittenPlace[] {
  const things = movableThings(layout);
  return entries.flatMap((name): readonly WrittenPlace[] => {
    const component = placePath(from, name);
    if (component !== null) return [{ name, path: component }];
    const own = leadsOf(name, things);
    const paths = own.map(({ place }): Path | null => pathAt(from, place.written.span));
    return paths.length === 0 ? [{ name, path: null }] : paths.map((path) => ({ name, path }));
  });
}

/** The place of a component that an edit adds. */
export const placeAdded = (name: string): WrittenPlace => ({
  name,
  path: ["components", name, "at"],
});

/** The edits of one file that place these, with what the photograph says of them. Their paths outlive the edits. */
export function placedByPhoto(
  edits: readonly TextEdit[],
  from: Source,
  places: readonly WrittenPlace[],
): PlacedByPhoto {
  if (photo.value === null) return { edits, words: "" };
  // Over a photograph one places by it more often than not: who has not said so is told.
  if (!isTaking.value) return { edits, words: isOverPhoto.value ? UNMARKED : "" };
  const residual = residualNow();
  if (residual.kind === "unknown") return { edits, words: unsaidWords(residual.why) };
  const moved = applyEdits(from.text, edits);
  if (moved.kind !== "edited") return { edits, words: "" };
  const said = saidOfPlaces(places, source(from.file, moved.text), residual.text);
  const whole = applyEdits(moved.text, said.edits);
  return whole.kind === "edited" && said.edits.length > 0
    ? { edits: [difference(from, whole.text)], words: said.words }
    : { edits, words: said.words };
}

/** The edit that says it of those that can; no edit where none can. */
export function saidOfPlaces(
  places: readonly WrittenPlace[],
  from: Source,
  residual: string,
): PlacedByPhoto {
  const { edit, said, unsaid } = takenFromPhoto(from, places, residual);
  if (edit?.kind === "refused") return { edits: [], words: unsaidWords(edit.why) };
  const names = [...new Set(said)].join(", ");
  const done = edit === null ? "" : `, from the photograph ± ${residual}: ${names}`;
  const reasons = [...new Set(unsaid.map(({ name, why }) => `${name}: ${why}`))].join("; ");
  return {
    edits: edit === null ? [] : [edit.edit],
    words: unsaid.length === 0 ? done : `${done}${unsaidWords(reasons)}`,
  };
}

const UNMARKED = "; not marked as from the photograph: there is a tick for it above the sheet";

const unsaidWords = (why: string): string => `; not said to be from the photograph: ${why}`;
