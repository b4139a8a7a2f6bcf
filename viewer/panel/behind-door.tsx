// What lies behind a door of the panel's room and is loaded when that is first opened, so that the page opens without it.

import { effect, type Signal, signal } from "@preact/signals";
import type { ComponentType, FunctionComponent } from "preact";
import { say } from "./board.ts";

/** Nothing while the door is shut; a room that can't be fetched shuts it again and is asked for at the next opening. */
export function behindDoor<Props extends object>(
  isOpen: Signal<boolean>,
  load: () => Promise<ComponentType<Props>>,
): FunctionComponent<Props> {
  const room = signal<ComponentType<Props> | null>(null);
  effect(() => {
    if (!isOpen.value || room.peek() !== null) return;
    load().then(
      (loaded) => {
        room.value = loaded;
      },
      () => {
        isOpen.value = false;
        say("Not opened: what lies behind it could not be fetched. Try again.");
      },
    );
  });
  return (props) => {
    const Room = room.value;
    return isOpen.value && Room !== null ? <Room {...props} /> : null;
  };
}
