// A worker that fails: whoever waits for an answer of it is told, and waits no longer.

import { expect, test, vi } from "vitest";

let fail: (event: object) => void = () => undefined;

vi.stubGlobal(
  "Worker",
  class {
    readonly postMessage = (): void => undefined;
    readonly terminate = (): void => undefined;
    readonly addEventListener = (name: string, listener: (event: object) => void): void => {
      if (name === "error") fail = listener;
    };
  },
);

const { askOnConsole, askPanel, readDesign } = await import("../../viewer/core-client.ts");

test("a reading, a question of the panel's room and one of the console's are told why there is no answer", async () => {
  const sources = { texts: new Map<string, string>(), binaries: new Map<string, null>() };
  const answers = Promise.all([
    readDesign(sources),
    askPanel({ kind: "mounts" }),
    askOnConsole({ kind: "true-shapes" }),
  ]);
  fail({ message: "its program could not be fetched" });
  const why = "its program could not be fetched";
  expect(await answers).toMatchObject([
    { kind: "failed", why },
    { kind: "failed", why },
    { kind: "failed", why },
  ]);
});
