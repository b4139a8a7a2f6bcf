// What goes from the worker to the page of panels: whatever the reading before had the same is named, not sent. Copying a panel
// with its path data takes longer than judging it, and of a console an edit changes one panel in a dozen.

import type { PanelReading, PanelUpdate, PictureUpdate } from "./core-messages.ts";
import type { PicturePiece, PictureShape } from "./panel/panel-picture.ts";

/** The worker's end. What is the same object as before is the same panel. */
export const panelUpdates = (
  now: readonly PanelReading[],
  before: readonly PanelReading[],
): readonly PanelUpdate[] =>
  now.map((reading): PanelUpdate => {
    const same = before.indexOf(reading);
    if (same >= 0) return { kind: "same", place: same };
    const { picture, ...panel } = reading;
    const place = before.findIndex(({ name, file }) => name === panel.name && file === panel.file);
    const known = before[place]?.picture?.pieces ?? [];
    return {
      kind: "changed",
      panel,
      picture:
        picture === null ? null : { ...picture, place, pieces: updated(picture.pieces, known) },
    };
  });

const updated = (
  pieces: readonly PicturePiece[],
  known: readonly PicturePiece[],
): PictureUpdate["pieces"] => {
  const places = new Map(known.map((piece, place) => [keyOf(piece), place]));
  return pieces.map((piece) => {
    const place = places.get(keyOf(piece));
    const before = place === undefined ? undefined : known[place];
    return place !== undefined && before !== undefined && isSame(before, piece) ? place : piece;
  });
};

const keyOf = ({ kind, id }: PicturePiece): string => `${kind} ${id}`;

const isSame = (a: PicturePiece, b: PicturePiece): boolean =>
  a.owner === b.owner &&
  a.shapes.length === b.shapes.length &&
  a.shapes.every((shape, index) => isSameShape(shape, b.shapes[index]));

const isSameShape = (a: PictureShape, b: PictureShape | undefined): boolean =>
  b !== undefined &&
  a.data === b.data &&
  a.x === b.x &&
  a.y === b.y &&
  a.ink === b.ink &&
  a.width === b.width &&
  a.dashed === b.dashed;

/** The page's end: whatever did not change is the very object that it was, and is not drawn again. */
export const panelsAfter = (
  updates: readonly PanelUpdate[],
  before: readonly PanelReading[],
): readonly PanelReading[] =>
  updates.flatMap((update) => {
    if (update.kind === "same") return before[update.place] ?? [];
    const { panel, picture } = update;
    if (picture === null) return { ...panel, picture: null };
    const { place, pieces, ...rest } = picture;
    const known = before[place]?.picture?.pieces ?? [];
    const whole = pieces.flatMap((piece) =>
      typeof piece === "number" ? (known[piece] ?? []) : piece,
    );
    return { ...panel, picture: { ...rest, pieces: whole } };
  });
