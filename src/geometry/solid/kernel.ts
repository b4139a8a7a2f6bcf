// The solid kernel as it is passed in, and an owner for what it makes: its objects live in memory of its own, which
// nothing gives back but their delete().

import type { ManifoldToplevel } from "manifold-3d";

/** manifold-3d's module, opened (`await Module()`) and set up (`setup()`) by whoever calls. */
export type Kernel = Pick<ManifoldToplevel, "Manifold" | "Mesh" | "triangulate">;

interface Deletable {
  delete(): void;
}

/** Takes an object into care and gives it back. */
export type Keep = <Thing extends Deletable>(thing: Thing) => Thing;

/** Runs `work`, then deletes whatever it has kept, whether it ended well or not. */
export const withKept = <Result>(work: (keep: Keep) => Result): Result => {
  const kept: Deletable[] = [];
  try {
    return work((thing) => {
      kept.push(thing);
      return thing;
    });
  } finally {
    for (const thing of kept.reverse()) thing.delete();
  }
};
