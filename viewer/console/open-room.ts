// Which room of the page is looked into: a panel, the console, or the job pack of either.

import { signal } from "@preact/signals";

export type Room = "panel" | "console" | "pack";

export const room = signal<Room>("panel");
