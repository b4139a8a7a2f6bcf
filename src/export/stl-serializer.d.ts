// What is used of @jscad/stl-serializer, which carries no types of its own.

declare module "@jscad/stl-serializer/CSGToStlb.js" {
  import type { geometries } from "@jscad/modeling";

  /** Header, count and triangles of a binary STL, in this order. */
  const serializer: {
    serializeBinary(
      objects: readonly ReturnType<typeof geometries.geom3.create>[],
      options: object,
    ): readonly ArrayBuffer[];
  };
  export = serializer;
}
