// The solid kernel, opened once for a test file in Node.

import Module from "manifold-3d";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";

let opened: Promise<Kernel> | null = null;

export const openKernel = (): Promise<Kernel> => {
  opened ??= Module().then((module) => {
    module.setup();
    return module;
  });
  return opened;
};
