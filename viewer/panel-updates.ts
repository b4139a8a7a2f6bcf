// What goes from the worker to the page of panels: whatever the reading before had the same is named, not sent. Copying a panel
// with its path data takes longer than judging it, and of a console an edit changes one panel in a dozen.

import type { PanelDesign } from "../src/design/panel-design.ts";
import type { PanelLayout } from "../src/layout/panel-layout.ts";
import type { PanelReading, PanelUpdate, PictureUpdate } from "./core-messages.ts";
import { changedData, dataChange } from "./data-change.ts";
import type { PanelPicture, PicturePiece, PictureShape } from "./panel/panel-picture.ts";

/** The worker's end. What is the same object as before is the same panel. */
export const panelUpdates = (
  now: readonly PanelReading[],
  before: readonly PanelReading[],
): readonly PanelUpdate[] =>
  now.map((reading): PanelUpdate => {
    const same = before.indexOf(reading);
    if (same >= 0) return { kind: "same", place: same };
    const { picture, name, title, file } = reading;
    const place = before.findIndex((last) => last.name === name && last.file === file);
    const last = before[place];
    return {
      kind: "changed",
      panel: { name, title, file },
      place,
      content: dataChange(contentOf(last), contentOf(reading)),
      picture: picture === null ? null : pictureUpdate(picture, last?.picture ?? null),
    };
  });

/** Pieces come and go, so that they are told by what they are of, not by their place. */
const pictureUpdate = (
  { pieces, ...rest }: PanelPicture,
  before: PanelPicture | null,
): PictureUpdate => {
  const { pieces: known, ...last } = before ?? NO_PICTURE;
  return { rest: dataChange(last, rest), pieces: updated(pieces, known) };
};

const NO_PICTURE = { pieces: [] };

interface PanelContent {
  readonly design: PanelDesign;
  readonly layout: Omit<PanelLayout, "design"> | null;
}

/** The design goes over once, and not with its layout again. */
const contentOf = (reading: PanelReading | undefined): PanelContent | null => {
  if (reading === undefined) return null;
  const { design, layout } = reading;
  if (layout === null) return { design, layout };
  const { design: _, ...rest } = layout;
  return { design, layout: rest };
};

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
  a === b ||
  (a.owner === b.owner &&
    a.shapes.length === b.shapes.length &&
    a.shapes.every((shape, index) => isSameShape(shape, b.shapes[index])));

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
    const { panel, place, content, picture } = update;
    const last = before[place];
    // What the worker's end has made of such a content is one.
    const { design, layout } = changedData(contentOf(last), content) as PanelContent;
    const whole = { ...panel, design, layout: layout === null ? null : { ...layout, design } };
    return { ...whole, picture: picture === null ? null : pictureAfter(picture, last) };
  });

const pictureAfter = (
  { pieces, rest }: PictureUpdate,
  last: PanelReading | undefined,
): PanelPicture => {
  const { pieces: known, ...before } = last?.picture ?? NO_PICTURE;
  // What the worker's end has made of a picture without its pieces is one.
  const whole = changedData(before, rest) as Omit<PanelPicture, "pieces">;
  return {
    ...whole,
    pieces: pieces.flatMap((piece) => (typeof piece === "number" ? (known[piece] ?? []) : piece)),
  };
};
