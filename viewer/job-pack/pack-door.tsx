// The door to the room of the job pack: what lies behind it is loaded when somebody enters.

import { signal } from "@preact/signals";
import type { ComponentType, JSX } from "preact";
import { room } from "../console/open-room.ts";
import { panels } from "../desk.ts";

const loaded = signal<{ readonly PackRoom: ComponentType } | null>(null);

export const isPackOpen = (): boolean => room.value === "pack" && panels.value.length > 0;

export const openPackRoom = (): void => {
  if (loaded.value === null)
    void import("./pack-room.tsx").then(({ PackRoom }) => {
      loaded.value = { PackRoom };
    });
};

export function PackBehindDoor(): JSX.Element {
  const behind = loaded.value;
  return behind === null ? <p>Opening the job pack …</p> : <behind.PackRoom />;
}
