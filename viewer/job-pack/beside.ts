// Whether text and findings stand beside the files of a pack: these have the room until the others are asked for.

import { signal } from "@preact/signals";

export const isBesideShown = signal(false);
