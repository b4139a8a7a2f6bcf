// A worker that keeps what it is asked and answers when the test says so, in place of the browser's. Imported before what is
// tested, which is loaded by `await import` behind it: the page starts its worker as it is loaded.

import { vi } from "vitest";
import type { DesignTexts } from "../../viewer/core-messages.ts";

interface Asked {
  readonly number: number;
  readonly texts: DesignTexts;
}

export const asked: Asked[] = [];
let listening: (data: object) => void = () => undefined;

/** As if the worker had posted it. */
export const answer = (data: object): void => listening(data);

vi.stubGlobal(
  "Worker",
  class {
    readonly postMessage = (question: Asked): void => void asked.push(question);
    readonly terminate = (): void => undefined;
    readonly addEventListener = (name: string, listener: (event: object) => void): void => {
      if (name === "message") listening = (data) => listener({ data });
    };
  },
);
