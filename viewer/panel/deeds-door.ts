// The door to the deeds with what is picked, and to its ticket: they are loaded soon after the first picture, or with the first
// pick, so that the page opens without them.

import { effect, type ReadonlySignal, signal } from "@preact/signals";
import { afterPicture } from "../after-picture.ts";
import { selection } from "../desk.ts";
import { inLine } from "../when-current.ts";
import { say } from "./board.ts";

export type Deeds = Awaited<ReturnType<typeof fetched>>;

const room = signal<Deeds | null>(null);
/** null until they are there. */
export const deeds: ReadonlySignal<Deeds | null> = room;
let loading: Promise<Deeds> | null = null;

/** At once, or as soon as they are there, in the order in which it was asked for; where they can't be had, that is said, and `lost` is told. */
export function withDeeds(act: (deeds: Deeds) => void, lost: () => void = () => undefined): void {
  if (room.value !== null) act(room.value);
  else
    inLine(
      load().then(
        (loaded) => () => act(loaded),
        () => () => {
          say("Not done: what it takes could not be fetched. Try again.");
          lost();
        },
      ),
    );
}

function load(): Promise<Deeds> {
  loading ??= fetched().then(
    (loaded) => {
      room.value = loaded;
      return loaded;
    },
    (reason: unknown) => {
      // The next deed asks for it again.
      loading = null;
      throw reason;
    },
  );
  return loading;
}

async function fetched() {
  const { deeds: loaded } = await import("./deeds-room.ts");
  return loaded;
}

/** Whoever asks for a deed is told why it can't be had. */
const loadAhead = (): void => void load().catch(() => undefined);

afterPicture(loadAhead);
effect(() => {
  if (selection.value.length > 0 && room.value === null) loadAhead();
});
