// Places in the plane, each known by one number however often and however nearly it is named: corners and crossings of
// neighbouring layers become one vertex.

import { type Point, point } from "../geometry/contour.ts";
import { samePlace } from "../geometry/tolerance.ts";

export interface Places {
  /** The number of the place; a place within the tolerance of a known one is that one. */
  numberOf(at: Point): number;
  at(number: number): Point;
}

export const places = (): Places => {
  const known: Point[] = [];
  const cells = new Map<string, number[]>();
  return {
    numberOf: (at) => {
      const found = nearOf(cells, at).find((number) => isSame(known[number]!, at));
      if (found !== undefined) return found;
      const cell = cellName(cellOf(at.x), cellOf(at.y));
      const number = known.length;
      known.push(point(at.x, at.y));
      cells.set(cell, [...(cells.get(cell) ?? []), number]);
      return number;
    },
    at: (number) => known[number]!,
  };
};

/** Far larger than the tolerance, so that nine cells hold everything near; far smaller than any feature. */
const cellSize = 0.01;

const cellOf = (coordinate: number): number => Math.floor(coordinate / cellSize);

const cellName = (column: number, row: number): string => `${column},${row}`;

const nearOf = (cells: ReadonlyMap<string, readonly number[]>, at: Point): readonly number[] => {
  const found: number[] = [];
  for (let column = cellOf(at.x - tolerance); column <= cellOf(at.x + tolerance); column += 1)
    for (let row = cellOf(at.y - tolerance); row <= cellOf(at.y + tolerance); row += 1)
      found.push(...(cells.get(cellName(column, row)) ?? []));
  return found;
};

/** A crossing may be out by the tolerance on either edge. */
const tolerance = 2 * samePlace;

const isSame = (a: Point, b: Point): boolean => {
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return dx * dx + dy * dy <= tolerance * tolerance;
};
