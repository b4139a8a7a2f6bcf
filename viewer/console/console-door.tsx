// The door to the console's room: shut until somebody opens it, and only then is what lies behind it loaded.

import { signal } from "@preact/signals";
import type { ComponentType, JSX } from "preact";
import { consoleReading } from "../desk.ts";
import { room } from "./open-room.ts";
import "./console-door.css";

interface Behind {
  readonly ConsoleRoom: ComponentType;
  readonly ConsoleSide: ComponentType;
}

const loaded = signal<Behind | null>(null);

export function ConsoleDoor(): JSX.Element | null {
  if (consoleReading.value === null) return null;
  return (
    <p class="rooms">
      {(["panel", "console"] as const).map((each) => (
        <button
          key={each}
          type="button"
          aria-pressed={room.value === each}
          onClick={() => enter(each)}
        >
          {each === "panel" ? "Panel" : "Console"}
        </button>
      ))}
    </p>
  );
}

const enter = (next: "panel" | "console"): void => {
  room.value = next;
  if (next === "console" && loaded.value === null)
    void import("./console-room.tsx").then(({ ConsoleRoom, ConsoleSide }) => {
      loaded.value = { ConsoleRoom, ConsoleSide };
    });
};

/** Whether the console's room is the one that is looked into. */
export const isConsoleOpen = (): boolean =>
  room.value === "console" && consoleReading.value !== null;

export function ConsoleBehindDoor(): JSX.Element {
  const behind = loaded.value;
  return behind === null ? <p>Opening the console …</p> : <behind.ConsoleRoom />;
}

export function ConsoleBesideDoor(): JSX.Element | null {
  const behind = loaded.value;
  return behind === null ? null : <behind.ConsoleSide />;
}
