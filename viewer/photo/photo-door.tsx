// The door to the photograph under a panel: what lies behind it is loaded when it is opened, or when a panel has one.

import { effect, signal } from "@preact/signals";
import type { ComponentType, JSX } from "preact";
import { isPhotoOpen, isTaking, paperKey, photo, photoPath } from "./photo-state.ts";

const drawer = signal<ComponentType<{ readonly toSheet: () => void }> | null>(null);
const under = signal<ComponentType | null>(null);
const paper = signal<ComponentType<{ readonly scale: number }> | null>(null);

effect(() => {
  if (photoPath.value !== null || isPhotoOpen.value) void load();
});

let isLoading = false;

async function load(): Promise<void> {
  if (isLoading) return;
  isLoading = true;
  const room = await import("./photo-room.ts");
  const { PaperOnPanel, PhotoDrawer, PhotoUnder } = room;
  room.keepPicture();
  room.keepPaper();
  drawer.value = PhotoDrawer;
  under.value = PhotoUnder;
  paper.value = PaperOnPanel;
}

export function PhotoButton(): JSX.Element {
  return (
    <button
      type="button"
      aria-expanded={isPhotoOpen.value}
      onClick={() => {
        isPhotoOpen.value = !isPhotoOpen.value;
      }}
    >
      Photograph
    </button>
  );
}

/** Beside the sheet, where one places and moves: only of a panel that has a photograph. */
export function TakingTick(): JSX.Element | null {
  if (photo.value === null) return null;
  return (
    <label>
      <input
        type="checkbox"
        checked={isTaking.value}
        onChange={(event) => {
          isTaking.value = event.currentTarget.checked;
        }}
      />{" "}
      What I place and move is from the photograph
    </label>
  );
}

export function PhotoBehindDoor(props: { readonly toSheet: () => void }): JSX.Element | null {
  const Behind = drawer.value;
  return !isPhotoOpen.value || Behind === null ? null : <Behind {...props} />;
}

export function PhotoUnderSheet(): JSX.Element | null {
  const Under = under.value;
  return photo.value === null || Under === null ? null : <Under />;
}

/** Over the drawing, while it is held there. */
export function PaperOnSheet(props: { readonly scale: number }): JSX.Element | null {
  const Paper = paper.value;
  return paperKey.value === null || Paper === null ? null : <Paper {...props} />;
}
