// The door to the photograph under a panel: what lies behind it is loaded when it is opened, or when a panel has one.

import { effect, signal } from "@preact/signals";
import type { ComponentType, JSX } from "preact";
import { isPhotoOpen, photo, photoPath } from "./photo-state.ts";

const drawer = signal<ComponentType<{ readonly toSheet: () => void }> | null>(null);
const under = signal<ComponentType | null>(null);

effect(() => {
  if (photoPath.value !== null || isPhotoOpen.value) void load();
});

let isLoading = false;

async function load(): Promise<void> {
  if (isLoading) return;
  isLoading = true;
  const { PhotoDrawer, PhotoUnder, keepPicture } = await import("./photo-room.ts");
  keepPicture();
  drawer.value = PhotoDrawer;
  under.value = PhotoUnder;
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

export function PhotoBehindDoor(props: { readonly toSheet: () => void }): JSX.Element | null {
  const Behind = drawer.value;
  return !isPhotoOpen.value || Behind === null ? null : <Behind {...props} />;
}

export function PhotoUnderSheet(): JSX.Element | null {
  const Under = under.value;
  return photo.value === null || Under === null ? null : <Under />;
}
