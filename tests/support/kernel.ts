// The solid kernel, opened once for a test file in Node, with a gauge on its memory.

import Module from "manifold-3d";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";

export interface GaugedKernel {
  readonly kernel: Kernel;
  /** How large the kernel's own memory has grown, in bytes: it never shrinks. */
  memorySize(): number;
}

let opened: Promise<GaugedKernel> | null = null;

export const openKernel = async (): Promise<Kernel> => (await openGaugedKernel()).kernel;

export const openGaugedKernel = (): Promise<GaugedKernel> => {
  opened ??= openWithGauge();
  return opened;
};

/** The module keeps its memory to itself: the gauge looks at what it instantiates. */
async function openWithGauge(): Promise<GaugedKernel> {
  const memories: WebAssembly.Memory[] = [];
  const { instantiate } = WebAssembly;
  const watched = async (...given: Parameters<typeof instantiate>): Promise<unknown> => {
    const made: unknown = await instantiate(...given);
    const { instance } = made as { readonly instance: WebAssembly.Instance };
    for (const found of Object.values(instance.exports))
      if (found instanceof WebAssembly.Memory) memories.push(found);
    return made;
  };
  Object.assign(WebAssembly, { instantiate: watched });
  try {
    const kernel = await Module();
    kernel.setup();
    if (memories.length !== 1) throw new Error("the kernel has one memory");
    return { kernel, memorySize: () => memories[0]!.buffer.byteLength };
  } finally {
    Object.assign(WebAssembly, { instantiate });
  }
}
