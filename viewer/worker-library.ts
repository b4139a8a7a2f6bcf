// The library and the solid kernel as each worker of the page opens them: fetched when they are first asked for, and once. A
// fetch that failed is tried again with the next question.

import type { Kernel } from "../src/geometry/solid/kernel.ts";
import { type Library, openLibrary } from "../src/project.ts";
import { kept } from "./kept.ts";

export const openedLibrary: () => Promise<Library> = kept(async () => {
  // A worker lies in a folder beside the data when it is built.
  const answer = await fetch(new URL("../library.json", self.location.href));
  if (!answer.ok) throw new Error(`the library could not be loaded (${answer.status})`);
  return openLibrary(await answer.json());
});

/** The bundle puts the kernel's wasm beside its code and knows its address. */
export const openedKernel: () => Promise<Kernel> = kept(async () => {
  const { default: open } = await import("manifold-3d");
  const made = await open();
  made.setup();
  return made;
});
