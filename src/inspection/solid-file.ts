// A print file as read: its bodies as triangles over corners, each place once, and what was strange about it. Corners that
// have the same float32 numbers are one corner: so a slicer sees them.

export interface SolidFile {
  /** What the file says one unit is; STL says nothing. */
  readonly unit: string | null;
  readonly title: string | null;
  readonly bodies: readonly SolidBody[];
  /** What can't be read, or is not understood here. */
  readonly strangers: readonly string[];
}

export interface SolidBody {
  readonly name: string;
  /** x, y, z of each corner. */
  readonly corners: readonly number[];
  /** Three corners a triangle. */
  readonly triangles: readonly number[];
  /** Triangles whose stated normal looks the other way; formats without normals have none. */
  readonly turnedNormals: number;
}

/** Joins corners by place. */
export interface CornerTable {
  cornerAt(x: number, y: number, z: number): number;
  readonly corners: readonly number[];
}

export const cornerTable = (): CornerTable => {
  const corners: number[] = [];
  const known = new Map<string, number>();
  return {
    corners,
    cornerAt: (x, y, z) => {
      const place = [x, y, z].map((value) => Math.fround(value) + 0);
      const name = place.join(" ");
      const found = known.get(name);
      if (found !== undefined) return found;
      const corner = corners.length / 3;
      corners.push(...place);
      known.set(name, corner);
      return corner;
    },
  };
};
