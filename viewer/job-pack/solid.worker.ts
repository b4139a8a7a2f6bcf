// The worker that reads a file with bodies in it: a console's model takes seconds, and the page stays at hand meanwhile.

import type { PackFile } from "../../src/pack/pack-file.ts";
import { readSolids, type SolidKind } from "./read-solids.ts";
import { type StageBodies, stageBodies } from "./stage-bodies.ts";

export interface SolidRequest {
  readonly kind: SolidKind;
  readonly file: PackFile;
}

export type SolidReply =
  | { readonly kind: "step"; readonly step: SolidStep }
  | { readonly kind: "read"; readonly solids: ShownSolids };

/** `done` of its bodies have their edges. */
export interface SolidStep {
  readonly done: number;
  readonly of: number;
}

export interface ShownSolids extends StageBodies {
  readonly words: readonly string[];
}

/** Between two counts, ms: nobody reads them faster. */
const COUNTED = 100;

self.addEventListener("message", ({ data }: MessageEvent<SolidRequest>) => {
  const read = readSolids(data.kind, data.file);
  let last = Number.NEGATIVE_INFINITY;
  const solids: ShownSolids = {
    words: read.words,
    ...stageBodies(read, (done, of) => {
      const now = performance.now();
      if (now - last < COUNTED) return;
      last = now;
      tell({ kind: "step", step: { done, of } });
    }),
  };
  const { corners, normals, lines } = solids;
  tell({ kind: "read", solids }, [corners.buffer, normals.buffer, lines.buffer]);
});

const tell = (reply: SolidReply, transfer: ArrayBufferLike[] = []): void =>
  self.postMessage(reply, { transfer });
