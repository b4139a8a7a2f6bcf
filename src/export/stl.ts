// A mesh as a binary STL, written by @jscad/stl-serializer. STL has no unit: the pack's file names give the size in mm.
// Its binary writer is taken without the front door, which first rounds every corner to a hundred-thousandth of the part's
// size: the STL would hold other corners than the 3MF, and than the mesh that was checked.

import modeling from "@jscad/modeling";
import serializer from "@jscad/stl-serializer/CSGToStlb.js";
import type { Mesh } from "../geometry/solid/mesh.ts";

export const stlFile = (mesh: Mesh): Uint8Array => {
  const chunks = serializer.serializeBinary([jscadSolid(mesh)], {});
  const bytes = new Uint8Array(chunks.reduce((total, chunk) => total + chunk.byteLength, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(new Uint8Array(chunk), at);
    at += chunk.byteLength;
  }
  return bytes;
};

const jscadSolid = ({
  positions,
  triangles,
}: Mesh): ReturnType<typeof modeling.geometries.geom3.create> => {
  const corner = (at: number): [number, number, number] => {
    const first = 3 * triangles[at]!;
    return [positions[first]!, positions[first + 1]!, positions[first + 2]!];
  };
  return modeling.geometries.geom3.create(
    Array.from({ length: triangles.length / 3 }, (_, index) =>
      modeling.geometries.poly3.create([
        corner(3 * index),
        corner(3 * index + 1),
        corner(3 * index + 2),
      ]),
    ),
  );
};
