// The page's end of the job pack's worker. One pack is made at a time; giving it up ends the worker with all that it holds, and
// the next one begins anew, as it does where one has failed. A worker that came to its end is kept, with what it remembers.

import type { DesignSources } from "../core-messages.ts";
import type { MadePack, PackReply, PackWant } from "./pack-messages.ts";

export type PackOutcome =
  | { readonly kind: "made"; readonly made: MadePack }
  | { readonly kind: "failed"; readonly why: string };

export interface PackRun {
  /** Never comes where the run was given up. */
  readonly done: Promise<PackOutcome>;
  readonly cancel: () => void;
}

let idle: Worker | null = null;
let latest = 0;

export const runPack = (
  want: PackWant,
  { texts, binaries }: DesignSources,
  tell: (words: string) => void,
): PackRun => {
  const worker =
    idle ?? new Worker(new URL("./pack.worker.ts", import.meta.url), { type: "module" });
  idle = null;
  latest += 1;
  const number = latest;
  const done = new Promise<PackOutcome>((settle) => {
    worker.onmessage = ({ data }: MessageEvent<PackReply>) => {
      if (data.number !== number) return;
      if (data.kind === "progress") tell(data.words);
      else {
        // A browser may keep what a worker failed to load, so that the same one would fail again.
        if (data.kind === "made") idle = worker;
        else worker.terminate();
        settle(data);
      }
    };
    worker.onerror = ({ message }) => settle({ kind: "failed", why: message });
  });
  worker.postMessage({ number, want, texts, binaries });
  return { done, cancel: () => worker.terminate() };
};
