// The doors to the start: where to begin, and the guide. What lies behind is loaded when it is first shown.

import { signal, useSignalEffect } from "@preact/signals";
import type { ComponentType, JSX } from "preact";
import { PICTURE_FIRST } from "../after-picture.ts";
import { panels } from "../desk.ts";
import { store } from "../files/stored-state.ts";
import { beginGuide, guideStep, isStartOpen } from "./start-state.ts";

const room = signal<ComponentType | null>(null);
const guide = signal<ComponentType | null>(null);

export function StartBehindDoor(): JSX.Element {
  useSignalEffect(() => {
    if (!isStartOpen.value || room.value !== null) return;
    void import("./start-room.tsx").then(({ StartRoom }) => {
      room.value = StartRoom;
    });
  });
  const Room = room.value;
  return Room === null ? <p>A moment …</p> : <Room />;
}

export function GuideBehindDoor(): JSX.Element | null {
  useSignalEffect(() => {
    // After the first picture, which it points at.
    if (guideStep.value === null || panels.value.length === 0 || guide.value !== null) return;
    const timer = setTimeout(() => {
      void import("./guide.tsx").then(({ Guide }) => {
        guide.value = Guide;
      });
    }, PICTURE_FIRST);
    return () => clearTimeout(timer);
  });
  const Steps = guide.value;
  return Steps === null || panels.value.length === 0 ? null : <Steps />;
}

export function GuideButton(): JSX.Element | null {
  if (isStartOpen.value || store.value === null || panels.value.length === 0) return null;
  return (
    <button type="button" class="act" aria-pressed={guideStep.value !== null} onClick={beginGuide}>
      Show me round
    </button>
  );
}
