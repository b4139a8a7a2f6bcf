// The triangles of a print file, as the program's own reader finds them in its bytes: every body of a 3MF or glTF, the one of an
// STL. A STEP holds faces and no triangles: the STL beside it is drawn in its place, and the words say so.

import { readGlb } from "../../src/inspection/glb-reader.ts";
import type { SolidBody } from "../../src/inspection/solid-file.ts";
import { readStl } from "../../src/inspection/solid-stl.ts";
import { readThreeMf } from "../../src/inspection/solid-three-mf.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";

/** Kinds of files with bodies in them. */
export type SolidKind = "print-3mf" | "print-stl" | "print-step" | "console-model";

export interface ReadSolid {
  readonly bodies: readonly SolidBody[];
  readonly words: string;
}

export const solidMeshes = (
  kind: SolidKind,
  file: PackFile,
  files: readonly PackFile[],
): ReadSolid => {
  switch (kind) {
    case "print-stl":
      return told(readStl(file.bytes, file.path).bodies, "");
    case "print-3mf":
      return told(readThreeMf(file.bytes).bodies, "");
    case "console-model":
      return told(
        readGlb(file.bytes).groups.flatMap(({ bodies }) => bodies),
        "",
      );
    case "print-step": {
      const stem = file.path.replace(/\.step$/, "");
      const stl = files.find(({ path }) => path === `${stem}.stl`);
      const bodies = stl === undefined ? [] : readStl(stl.bytes, stl.path).bodies;
      return told(
        bodies,
        stl === undefined
          ? " This page has no reader of STEP files: save it and open it in a CAD program."
          : ` What you see is ${stem}.stl, the STL of the same solid: this page has no reader of STEP files, whose arcs are true ones.`,
      );
    }
  }
};

const told = (bodies: readonly SolidBody[], more: string): ReadSolid => {
  const count = bodies.length === 1 ? "One solid piece" : `${bodies.length} solid pieces`;
  return { bodies, words: `${count}.${more}` };
};
