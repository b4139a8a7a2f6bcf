// Compiles a design and gives the hash of every file of every panel's pack, by panel and path. Runs unchanged in Node
// and in a browser: the two must give the same list.

import { sha256 } from "../../src/pack/sha256.ts";
import { compile, openLibrary, packOfProject } from "../../src/project.ts";

export interface DesignInput {
  readonly entry: string;
  readonly files: Readonly<Record<string, string>>;
  /** Panels whose drawings and papers are made too, beside the cut files of all; every one where nothing is said. */
  readonly whole?: readonly string[];
}

export function packHashes(
  design: DesignInput,
  library: unknown,
): Readonly<Record<string, string>> {
  const files = new Map(Object.entries(design.files));
  const project = compile({ entry: design.entry, files }, openLibrary(library));
  return Object.fromEntries(
    project.panels.flatMap((panel) => {
      const { files: packed } = packOfProject(project, panel, {
        only: design.whole?.includes(panel.name) === false ? "fascia" : "everything",
        card: true,
      });
      return packed.map(({ path, bytes }) => [`${panel.name}/${path}`, sha256(bytes)]);
    }),
  );
}
