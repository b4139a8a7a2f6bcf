// The job pack's own worker: makes a pack in its own time, so that the page stays at hand and the work can be ended at once.

import { reasonWords } from "../../src/diagnostics/reason-words.ts";
import type { PanelMemory } from "../../src/project.ts";
import { openedKernel, openedLibrary } from "../worker-library.ts";
import type { PackReply, PackRequest } from "./pack-messages.ts";
import { wantedPack } from "./wanted-pack.ts";

let memory: PanelMemory = new Map();

self.addEventListener("message", ({ data }: MessageEvent<PackRequest>) => void answer(data));

const reply = (message: PackReply): void => self.postMessage(message);

async function answer({ number, want, texts, binaries }: PackRequest): Promise<void> {
  try {
    const bench = {
      library: await openedLibrary(),
      kernel: openedKernel,
      memory,
      tell: (words: string) => reply({ kind: "progress", number, words }),
    };
    const wanted = await wantedPack(want, { texts, binaries }, bench);
    memory = wanted.memory;
    reply({ kind: "made", number, made: wanted.made });
  } catch (reason) {
    reply({ kind: "failed", number, why: reasonWords(reason) });
  }
}
