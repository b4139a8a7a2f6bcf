// A worker that never answers, in place of the browser's, for tests of the page's state. Imported before what they test, which is
// loaded by `await import` behind it: the page starts its worker as it is loaded.

import { vi } from "vitest";

vi.stubGlobal(
  "Worker",
  class {
    readonly postMessage = (): void => undefined;
    readonly terminate = (): void => undefined;
    readonly addEventListener = (): void => undefined;
  },
);
