// Whether the menu of what can be opened is open.

import { signal } from "@preact/signals";

export const isMenuOpen = signal(false);
