// The worker that reads a file with bodies in it: a console's model takes seconds, and the page stays at hand meanwhile.

import type { PackFile } from "../../src/pack/pack-file.ts";
import { readSolids, type SolidKind } from "./read-solids.ts";
import { type StageBodies, stageBodies } from "./stage-bodies.ts";

export interface SolidRequest {
  readonly kind: SolidKind;
  readonly file: PackFile;
}

export interface SolidReply extends StageBodies {
  readonly words: readonly string[];
}

self.addEventListener("message", ({ data }: MessageEvent<SolidRequest>) => {
  const read = readSolids(data.kind, data.file);
  const reply: SolidReply = { words: read.words, ...stageBodies(read) };
  const owned = reply.bodies.flatMap(({ corners, normals, lines }) => [
    corners.buffer,
    lines.buffer,
    ...(normals === null ? [] : [normals.buffer]),
  ]);
  self.postMessage(reply, { transfer: owned });
});
