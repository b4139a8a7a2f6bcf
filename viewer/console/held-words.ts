// What is said of panels whose clashes are no findings of their own.

import type { HeldBack } from "./console-messages.ts";

/** Empty where nothing is held back. */
export const heldBackWords = (held: readonly HeldBack[]): string =>
  held
    .map(
      ({ a, b, clashes }) =>
        `${a} and ${b} want the same modules: ${clashes === 1 ? "1 clash between them belongs" : `${clashes} clashes between them belong`} to that fault`,
    )
    .join("; ");
