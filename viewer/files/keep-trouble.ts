// Why the browser does not keep what the page gives it (W3C IndexedDB, its table of exceptions), in words, to stand within a sentence.

import { unstopped } from "./sentence.ts";

export function keepTrouble(reason: unknown): string {
  if (reason instanceof DOMException) return byName(reason.name);
  return reason instanceof Error ? unstopped(reason.message) : NOT_ALLOWED;
}

const NOT_ALLOWED = "the browser does not allow it";

function byName(name: string): string {
  switch (name) {
    case "QuotaExceededError":
      return "the browser has no room left for them";
    // A private window, or one that was told to keep nothing.
    case "SecurityError":
    case "InvalidStateError":
    case "NotAllowedError":
      return NOT_ALLOWED;
    default:
      return "the browser can't write what it keeps; the disk under it may be full";
  }
}
