// A second opinion on an STL, written from the format's description alone: a binary file's triangles, welded by their exact
// float32 numbers, and what is wrong with the surface. Shares no code with the product.

export interface StlReading {
  readonly triangles: number;
  /** Sentences; empty for a closed, oriented surface without flat triangles. */
  readonly faults: readonly string[];
  readonly shells: number;
  /** mm³ by the divergence theorem about the box's middle. */
  readonly volume: number;
  readonly low: readonly number[];
  readonly high: readonly number[];
}

type Corner = readonly [number, number, number];
type Triangle = readonly [Corner, Corner, Corner];

export function readStlStrictly(bytes: Uint8Array): StlReading {
  const triangles = trianglesOf(Buffer.from(bytes));
  const corners = triangles.flat();
  const axes = [0, 1, 2].map((axis) => corners.map((corner) => corner[axis]!));
  const low = axes.map((values) => values.reduce((a, b) => Math.min(a, b), Infinity));
  const high = axes.map((values) => values.reduce((a, b) => Math.max(a, b), -Infinity));
  const middle = low.map((value, axis) => (value + high[axis]!) / 2);
  return {
    triangles: triangles.length,
    faults: [...numberFaults(triangles), ...flatFaults(triangles), ...edgeFaults(triangles)],
    shells: shellsOf(triangles),
    volume: triangles.reduce((sum, triangle) => sum + wedge(triangle, middle), 0),
    low,
    high,
  };
}

function trianglesOf(file: Buffer): readonly Triangle[] {
  if (file.subarray(0, 5).toString() === "solid") throw new Error("a text STL");
  const count = file.readUInt32LE(80);
  if (file.length !== 84 + 50 * count) throw new Error("length and count disagree");
  return Array.from({ length: count }, (_, index) => {
    const corner = (at: number): Corner => {
      const start = 84 + 50 * index + at;
      return [file.readFloatLE(start), file.readFloatLE(start + 4), file.readFloatLE(start + 8)];
    };
    return [corner(12), corner(24), corner(36)];
  });
}

const numberFaults = (triangles: readonly Triangle[]): readonly string[] =>
  triangles.some((triangle) => triangle.flat().some((value) => !Number.isFinite(value)))
    ? ["a number that is none"]
    : [];

/** Twice the area of a triangle on its longest side, or two corners in one place. */
function flatFaults(triangles: readonly Triangle[]): readonly string[] {
  const flat = triangles.filter(([a, b, c]) => {
    const sides = [distance(a, b), distance(b, c), distance(c, a)].sort((p, q) => p - q);
    const [short, middle, long] = [sides[0]!, sides[1]!, sides[2]!];
    // Kahan's form of Heron's formula, which does not cancel for needles.
    const product =
      (long + (middle + short)) *
      (short - (long - middle)) *
      (short + (long - middle)) *
      (long + (middle - short));
    return !(Math.sqrt(Math.max(0, product)) / 2 / long > 1e-6);
  });
  return flat.length > 0 ? [`${flat.length} flat triangles`] : [];
}

/** Each edge as text: there must be exactly one the other way for each one way. */
function edgeFaults(triangles: readonly Triangle[]): readonly string[] {
  const balance = new Map<string, { along: number; against: number }>();
  for (const [a, b, c] of triangles) {
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      const [start, end] = [String(from), String(to)];
      const isAlong = start < end;
      const name = isAlong ? `${start}|${end}` : `${end}|${start}`;
      const uses = balance.get(name) ?? { along: 0, against: 0 };
      if (isAlong) uses.along += 1;
      else uses.against += 1;
      balance.set(name, uses);
    }
  }
  const odd = [...balance.values()].filter(({ along, against }) => along !== 1 || against !== 1);
  return odd.length > 0 ? [`${odd.length} edges not used once each way`] : [];
}

/** Flood over corners. */
function shellsOf(triangles: readonly Triangle[]): number {
  const around = new Map<string, number[]>();
  for (const [index, triangle] of triangles.entries())
    for (const corner of triangle) {
      const name = String(corner);
      around.set(name, [...(around.get(name) ?? []), index]);
    }
  const seen = new Set<number>();
  let shells = 0;
  for (const start of triangles.keys()) {
    if (seen.has(start)) continue;
    shells += 1;
    const waiting = [start];
    while (waiting.length > 0) {
      const next = waiting.pop()!;
      if (seen.has(next)) continue;
      seen.add(next);
      for (const corner of triangles[next]!) waiting.push(...around.get(String(corner))!);
    }
  }
  return shells;
}

const distance = (a: Corner, b: Corner): number =>
  Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

function wedge([a, b, c]: Triangle, middle: readonly number[]): number {
  const [p, q, r] = [a, b, c].map((corner) => corner.map((value, axis) => value - middle[axis]!));
  return (
    (p![0]! * (q![1]! * r![2]! - q![2]! * r![1]!) +
      p![1]! * (q![2]! * r![0]! - q![0]! * r![2]!) +
      p![2]! * (q![0]! * r![1]! - q![1]! * r![0]!)) /
    6
  );
}
