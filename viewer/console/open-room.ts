// Which room of the page is looked into: a panel, or the console.

import { signal } from "@preact/signals";

export const room = signal<"panel" | "console">("panel");
