// The photograph of an old panel beside the sheet: chosen, marked where its places are known, and laid under the drawing.

import type { JSX } from "preact";
import { choosePicture } from "./choose-picture.ts";
import type { Known } from "./known-marks.ts";
import { MarkList } from "./mark-list.tsx";
import { sayKnown, takeFromPhoto } from "./photo-acts.ts";
import {
  drawingStrength,
  isLocked,
  isPhotoOpen,
  isPhotoShown,
  marks,
  photo,
  photoPath,
  photoStrength,
  picture,
  pictureTrouble,
  straightTrouble,
} from "./photo-state.ts";
import { Magnifier, PictureView } from "./picture-view.tsx";
import "./photo.css";

export function PhotoDrawer({ toSheet }: { readonly toSheet: () => void }): JSX.Element {
  const close = (): void => {
    isPhotoOpen.value = false;
    toSheet();
  };
  return (
    <section
      class="photo-drawer"
      aria-label="Photograph"
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        close();
      }}
    >
      <p class="photo-head">
        <ChoosePicture />
        <span>{photo.value?.file ?? ""}</span>
        <button type="button" onClick={close}>
          Close
        </button>
      </p>
      <Inside toSheet={toSheet} />
    </section>
  );
}

function ChoosePicture(): JSX.Element {
  return (
    <label class="file-choice">
      {photo.value === null ? "Choose a picture" : "Another picture"}
      <input
        type="file"
        accept="image/jpeg,image/png,image/webp"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file !== undefined) void choosePicture(file);
        }}
      />
    </label>
  );
}

function Inside({ toSheet }: { readonly toSheet: () => void }): JSX.Element {
  const shown = picture.value;
  if (photo.value === null)
    return (
      <p>
        A photograph of the panel that this one replaces, or copies: from as far as the camera still
        sees it well, so that its lens bends nothing. What is marked must lie in the plane of the
        face. The picture is kept beside the design's text.
      </p>
    );
  if (pictureTrouble.value !== null)
    return (
      <p class="mark-verdict trouble" role="status">
        {photoPath.value ?? photo.value.file} can't be laid under the panel: {pictureTrouble.value}.
      </p>
    );
  if (shown === null)
    return (
      <p role="status">
        {photoPath.value ?? photo.value.file} is not there, or still on its way. The panel is whole
        without it.
      </p>
    );
  return (
    <>
      {straightTrouble.value !== null && (
        <p class="mark-verdict trouble" role="status">
          It can't be laid under the panel: {straightTrouble.value}.
        </p>
      )}
      <PictureView picture={shown} />
      <div class="photo-below">
        <div class="photo-side">
          <Magnifier picture={shown} />
          <p id="photo-keys" class="hint">
            Draw the marks onto their spots, or pick one by its number and move it by the arrow
            keys: a pixel, with Shift ten, with Alt a tenth. + and - or the wheel enlarge, 0 shows
            all.
          </p>
        </div>
        <KnownChoice />
        <MarkList toSheet={toSheet} />
        <Looks />
      </div>
    </>
  );
}

const KNOWN: readonly { readonly known: Known; readonly words: string }[] = [
  { known: "panel", words: "Four corners of the panel" },
  { known: "paper", words: "Corners of a sheet of paper" },
  { known: "points", words: "Points of my own" },
];

function KnownChoice(): JSX.Element {
  const isPaper = marks.value?.kind === "sheet";
  return (
    <fieldset class="known">
      <legend>What the marks are</legend>
      {KNOWN.map(({ known, words }) => (
        <button
          key={known}
          type="button"
          disabled={(known === "paper") === isPaper && known !== "panel"}
          onClick={() => sayKnown(known)}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
}

function Looks(): JSX.Element {
  return (
    <fieldset class="looks">
      <legend>Under the drawing</legend>
      <Tick words="Show" state={isPhotoShown} />
      <Tick words="Lock the marks" state={isLocked} />
      <Slide words="Photograph" state={photoStrength} least={0} />
      <Slide words="Drawing over it" state={drawingStrength} least={0.1} />
      <button type="button" onClick={takeFromPhoto}>
        Selected: taken from the photograph
      </button>
    </fieldset>
  );
}

function Tick(props: { readonly words: string; readonly state: { value: boolean } }): JSX.Element {
  const { words, state } = props;
  return (
    <label>
      <input
        type="checkbox"
        checked={state.value}
        onChange={(event) => {
          state.value = event.currentTarget.checked;
        }}
      />{" "}
      {words}
    </label>
  );
}

function Slide(props: {
  readonly words: string;
  readonly state: { value: number };
  readonly least: number;
}): JSX.Element {
  const { words, state, least } = props;
  return (
    <label>
      {words}{" "}
      <input
        type="range"
        min={least * 100}
        max={100}
        value={Math.round(state.value * 100)}
        aria-valuetext={`${Math.round(state.value * 100)} per cent`}
        onInput={(event) => {
          state.value = Number(event.currentTarget.value) / 100;
        }}
      />
    </label>
  );
}
