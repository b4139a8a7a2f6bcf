// The solid kernel in Node: its code comes with the program, its wasm lies beside the library.

import Module from "manifold-3d";
import type { Kernel } from "../geometry/solid/kernel.ts";

let opened: Promise<Kernel> | null = null;

/** Opened once a run; `wasm` is the path of its file. */
export const openKernel = (wasm: string): Promise<Kernel> => {
  opened ??= Module({ locateFile: () => wasm }).then((kernel) => {
    kernel.setup();
    return kernel;
  });
  return opened;
};
