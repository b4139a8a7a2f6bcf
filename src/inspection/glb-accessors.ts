// Numbers of a glTF buffer: vectors of float32 with the bounds that the file states for them, and indices.
// Takes the file's JSON and its binary chunk; whatever lies outside the buffer or its own bounds is listed.

import { type Entry, entriesOf, numberIn, wordIn } from "./glb-entries.ts";

export interface AccessorReader {
  /** x, y, z one after the other; empty where it can't be read. */
  vectors(index: number | null, mustHaveBounds: boolean): readonly number[];
  indices(index: number | null): readonly number[];
}

/** Component types of the specification, 3.6.2.2, as bytes of one number. */
const SIZES: Readonly<Record<number, number>> = { 5123: 2, 5125: 4, 5126: 4 };
const FLOAT = 5126;

export const accessorReader = (
  root: Entry,
  binary: Uint8Array,
  strangers: string[],
): AccessorReader => {
  const accessors = entriesOf(root, "accessors");
  const views = entriesOf(root, "bufferViews");
  const read = (index: number | null, type: "VEC3" | "SCALAR"): Read | null => {
    const accessor = index === null ? undefined : accessors[index];
    const found = accessor === undefined ? null : located(accessor, views, type);
    if (accessor === undefined || found === null || found.end > binary.length) {
      strangers.push(`accessor ${index ?? "not named"} can't be read`);
      return null;
    }
    return { accessor, values: valuesOf(binary, found), isFloat: found.component === FLOAT };
  };
  return {
    vectors: (index, mustHaveBounds) => {
      const found = read(index, "VEC3");
      if (found === null) return [];
      if (!found.isFloat || !found.values.every(Number.isFinite))
        strangers.push(`accessor ${index}: a vector that is no number`);
      if (mustHaveBounds && !hasTrueBounds(found))
        strangers.push(`accessor ${index}: bounds that are not those of its corners`);
      return found.values;
    },
    indices: (index) => {
      const found = read(index, "SCALAR");
      if (found?.isFloat === true) strangers.push(`accessor ${index}: indices that are no counts`);
      return found?.values ?? [];
    },
  };
};

interface Read {
  readonly accessor: Entry;
  readonly values: readonly number[];
  readonly isFloat: boolean;
}

interface Located {
  readonly component: number;
  readonly size: number;
  readonly start: number;
  readonly end: number;
  readonly count: number;
}

/** Strided and sparse accessors are not written and not understood here. */
const located = (
  accessor: Entry,
  views: readonly Entry[],
  type: "VEC3" | "SCALAR",
): Located | null => {
  const view = views[numberIn(accessor, "bufferView") ?? -1];
  const component = numberIn(accessor, "componentType") ?? 0;
  const size = SIZES[component];
  const isPlain = !("sparse" in accessor) && !(view !== undefined && "byteStride" in view);
  if (view === undefined || size === undefined || !isPlain) return null;
  if (wordIn(accessor, "type") !== type) return null;
  const viewStart = numberIn(view, "byteOffset") ?? 0;
  const start = viewStart + (numberIn(accessor, "byteOffset") ?? 0);
  const count = (numberIn(accessor, "count") ?? 0) * (type === "VEC3" ? 3 : 1);
  const end = start + count * size;
  const isWithin = end <= viewStart + (numberIn(view, "byteLength") ?? 0);
  const isAligned = start % size === 0 && Number.isSafeInteger(start) && start >= 0;
  return isWithin && isAligned && count >= 0 ? { component, size, start, end, count } : null;
};

const valuesOf = (binary: Uint8Array, { component, size, start, count }: Located): number[] => {
  const view = new DataView(binary.buffer, binary.byteOffset, binary.byteLength);
  const end = start + count * size;
  // A console's model has four million: a call for each took half of its reading.
  const values: number[] = [];
  if (component === FLOAT)
    for (let at = start; at < end; at += size) values.push(view.getFloat32(at, true));
  else if (size === 2)
    for (let at = start; at < end; at += size) values.push(view.getUint16(at, true));
  else for (let at = start; at < end; at += size) values.push(view.getUint32(at, true));
  return values;
};

const hasTrueBounds = ({ accessor, values }: Read): boolean =>
  [0, 1, 2].every((axis) => {
    let [least, most] = [Infinity, -Infinity];
    for (let at = axis; at < values.length; at += 3) {
      least = Math.min(least, values[at] ?? 0);
      most = Math.max(most, values[at] ?? 0);
    }
    return boundIn(accessor, "min", axis) === least && boundIn(accessor, "max", axis) === most;
  });

const boundIn = (accessor: Entry, key: "min" | "max", axis: number): unknown => {
  const bounds = accessor[key];
  return Array.isArray(bounds) ? bounds[axis] : null;
};
