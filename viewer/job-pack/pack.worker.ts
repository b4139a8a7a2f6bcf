// The job pack's own worker: makes a pack in its own time, so that the page stays at hand and the work can be ended at once.

import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { type Library, openLibrary, type PanelMemory } from "../../src/project.ts";
import type { PackReply, PackRequest } from "./pack-messages.ts";
import { wantedPack } from "./wanted-pack.ts";

let library: Promise<Library> | null = null;
let kernel: Promise<Kernel> | null = null;
let memory: PanelMemory = new Map();

self.addEventListener("message", ({ data }: MessageEvent<PackRequest>) => void answer(data));

const reply = (message: PackReply): void => self.postMessage(message);

async function answer({ number, want, texts, binaries }: PackRequest): Promise<void> {
  try {
    library ??= fetchLibrary();
    const bench = {
      library: await library,
      kernel: openKernel,
      memory,
      tell: (words: string) => reply({ kind: "progress", number, words }),
    };
    const wanted = await wantedPack(want, { texts, binaries }, bench);
    memory = wanted.memory;
    reply({ kind: "made", number, made: wanted.made });
  } catch (reason) {
    reply({ kind: "failed", number, why: reason instanceof Error ? reason.message : `${reason}` });
  }
}

async function fetchLibrary(): Promise<Library> {
  const found = await fetch(new URL("../library.json", self.location.href));
  if (!found.ok) throw new Error(`the library could not be loaded (${found.status})`);
  return openLibrary(await found.json());
}

/** Fetched when it is first asked for. */
function openKernel(): Promise<Kernel> {
  kernel ??= import("manifold-3d").then(async ({ default: open }) => {
    const made = await open();
    made.setup();
    return made;
  });
  return kernel;
}
