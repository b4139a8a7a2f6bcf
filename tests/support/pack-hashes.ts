// Compiles a design and gives the hash of every file of every panel's pack, by panel and path. Runs unchanged in Node
// and in a browser: the two must give the same list.

import { sha256 } from "../../src/pack/sha256.ts";
import { compile, openLibrary, type PackOptions, packOfProject } from "../../src/project.ts";

export interface DesignInput {
  readonly entry: string;
  readonly files: Readonly<Record<string, string>>;
  readonly only?: PackOptions["only"];
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
        only: design.only ?? "everything",
        card: true,
      });
      return packed.map(({ path, bytes }) => [`${panel.name}/${path}`, sha256(bytes)]);
    }),
  );
}
