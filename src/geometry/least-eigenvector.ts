// The eigenvector of a symmetric matrix's least eigenvalue, by Jacobi's cyclic rotations (Golub and Van Loan, Matrix
// Computations, 4th edition, 8.5.3). Takes rows, gives a vector of length 1. For small matrices: each sweep costs n³.

import { invariant } from "./invariant.ts";

type Rows = readonly (readonly number[])[];

export const leastEigenvector = (matrix: Rows): readonly number[] => {
  const size = matrix.length;
  const rows = matrix.map((row) => [...row]);
  const vectors = rows.map((_, i) => rows.map((_row, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS && !isDiagonal(rows); sweep += 1)
    for (let p = 0; p < size; p += 1)
      for (let q = p + 1; q < size; q += 1) rotate(rows, vectors, { p, q });
  const least = rows.reduce((best, _, i) => (rows[i]![i]! < rows[best]![best]! ? i : best), 0);
  return vectors.map((row) => row[least]!);
};

/** The off-diagonal part shrinks by its square at each sweep once it is small: eight are the usual number. */
const MOST_SWEEPS = 50;

const isDiagonal = (rows: Rows): boolean => {
  let off = 0;
  let on = 0;
  for (const [i, row] of rows.entries())
    for (const [j, value] of row.entries())
      if (i === j) on += value * value;
      else off += value * value;
  invariant(Number.isFinite(on + off), "a matrix is of finite numbers");
  return off <= on * Number.EPSILON * Number.EPSILON;
};

interface Plane {
  readonly p: number;
  readonly q: number;
}

/** Turns rows and columns p and q so that the value where they cross is gone. */
const rotate = (rows: number[][], vectors: number[][], { p, q }: Plane): void => {
  const crossing = rows[p]![q]!;
  if (crossing === 0) return;
  const ratio = (rows[q]![q]! - rows[p]![p]!) / (2 * crossing);
  const tangent = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.sqrt(ratio * ratio + 1));
  const cosine = 1 / Math.sqrt(tangent * tangent + 1);
  const sine = tangent * cosine;
  for (const row of rows) turn(row, { p, q }, { cosine, sine });
  const [above, below] = [rows[p]!, rows[q]!];
  for (const k of above.keys()) {
    const [x, y] = [above[k]!, below[k]!];
    above[k] = cosine * x - sine * y;
    below[k] = sine * x + cosine * y;
  }
  for (const row of vectors) turn(row, { p, q }, { cosine, sine });
};

const turn = (
  row: number[],
  { p, q }: Plane,
  { cosine, sine }: { readonly cosine: number; readonly sine: number },
): void => {
  const [x, y] = [row[p]!, row[q]!];
  row[p] = cosine * x - sine * y;
  row[q] = sine * x + cosine * y;
};
