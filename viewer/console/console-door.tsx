// The doors to the rooms: what lies behind one is loaded when somebody opens it first. The console's is there where there is one.

import { signal } from "@preact/signals";
import type { ComponentType, JSX } from "preact";
import { consoleFile, consoleReading, panels } from "../desk.ts";
import { openPackRoom } from "../job-pack/pack-door.tsx";
import { type Room, room } from "./open-room.ts";
import "./console-door.css";

interface Behind {
  readonly ConsoleRoom: ComponentType;
  readonly ConsoleSide: ComponentType;
}

const loaded = signal<Behind | null>(null);

export function ConsoleDoor(): JSX.Element | null {
  if (consoleReading.value === null && panels.value.length === 0) return null;
  const rooms: readonly Room[] = !hasConsole() ? ["panel", "pack"] : ["panel", "console", "pack"];
  return (
    <p class="rooms">
      {rooms.map((each) => (
        <button
          key={each}
          type="button"
          aria-pressed={room.value === each}
          onClick={() => enter(each)}
        >
          {ROOM_NAMES[each]}
        </button>
      ))}
    </p>
  );
}

const ROOM_NAMES: Readonly<Record<Room, string>> = {
  panel: "Panel",
  console: "Console",
  pack: "Job pack",
};

const enter = (next: Room): void => {
  room.value = next;
  if (next === "pack") openPackRoom();
  if (next === "console" && loaded.value === null)
    void import("./console-room.tsx").then(({ ConsoleRoom, ConsoleSide }) => {
      loaded.value = { ConsoleRoom, ConsoleSide };
    });
};

/** Whether the console's room is the one that is looked into. */
export const isConsoleOpen = (): boolean => room.value === "console" && hasConsole();

/** One that can't be read for the moment keeps its room, as its panels keep their drawings. */
const hasConsole = (): boolean =>
  consoleReading.value !== null || (consoleFile.value !== null && panels.value.length > 0);

export function ConsoleBehindDoor(): JSX.Element {
  const behind = loaded.value;
  return behind === null ? <p>Opening the console …</p> : <behind.ConsoleRoom />;
}

export function ConsoleBesideDoor(): JSX.Element | null {
  const behind = loaded.value;
  return behind === null ? null : <behind.ConsoleSide />;
}
