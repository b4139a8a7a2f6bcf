// Outlines as polygons on the integer grid of the polygon operations, and for each chord the edge that it came from,
// so that arcs and exact corners can be found again afterwards.

import type { Path64 } from "clipper2-ts";
import { type Contour, type Point, point } from "./contour.ts";
import { type Edge, edgesOf } from "./edges.ts";
import { chordStarts } from "./flatten.ts";
import { contourArea } from "./measure.ts";
import { booleanChord, booleanGrid } from "./tolerance.ts";

/** A chord in grid units, and its edge. */
export interface Chord {
  readonly edge: Edge;
  readonly fromX: number;
  readonly fromY: number;
  readonly toX: number;
  readonly toY: number;
}

export interface GridPoint {
  readonly x: number;
  readonly y: number;
}

export interface SourceIndex {
  /** The chord whose ends these two places are, either way round. */
  between(from: GridPoint, to: GridPoint): Chord | null;
  /** Chords that pass near a place. */
  near(x: number, y: number): readonly Chord[];
  /** The source's own vertex at a place of the grid. */
  vertexAt(x: number, y: number): Point | null;
}

const toGrid = (length: number): number => Math.round(length / booleanGrid);

export const fromGrid = (x: number, y: number): Point => point(x * booleanGrid, y * booleanGrid);

export type Winding = "left" | "right" | "as-drawn";

/** The contour as a polygon, run counter-clockwise (`left`), clockwise or as it stands; its chords go into `chords`. */
export const gridPath = (contour: Contour, winding: Winding, chords: Chord[]): Path64 => {
  const path: { x: number; y: number }[] = [];
  const edges = edgesOf(contour);
  const owners: Edge[] = [];
  for (const edge of edges) {
    for (const start of chordStarts(edge, booleanChord)) {
      path.push({ x: toGrid(start.x), y: toGrid(start.y) });
      owners.push(edge);
    }
  }
  for (const [index, from] of path.entries()) {
    const to = path[(index + 1) % path.length]!;
    const edge = owners[index]!;
    if (from.x !== to.x || from.y !== to.y)
      chords.push({ edge, fromX: from.x, fromY: from.y, toX: to.x, toY: to.y });
  }
  const isTurned = winding !== "as-drawn" && contourArea(contour) > 0 !== (winding === "left");
  return isTurned ? path.reverse() : path;
};

/** Cells of 1 mm; a chord is entered at steps of half a cell, so that a look into nine cells finds it. */
const cellSize = Math.round(1 / booleanGrid);

export const sourceIndex = (chords: readonly Chord[]): SourceIndex => {
  const starts = new Map<number, Chord[]>();
  const ends = new Map<number, Chord[]>();
  for (const chord of chords) {
    enter(starts, keyOf(chord.fromX, chord.fromY), chord);
    enter(ends, keyOf(chord.toX, chord.toY), chord);
  }
  let cells: Map<number, Chord[]> | null = null;
  return {
    between: (from, to) => {
      const forward = starts.get(keyOf(from.x, from.y))?.find((chord) => isChord(chord, from, to));
      if (forward !== undefined) return forward;
      return ends.get(keyOf(from.x, from.y))?.find((chord) => isChord(chord, to, from)) ?? null;
    },
    near: (x, y) => {
      cells ??= cellsOf(chords);
      return nearCells(cells, cellOf(x), cellOf(y));
    },
    vertexAt: (x, y) =>
      starts.get(keyOf(x, y))?.find((chord) => isStart(chord, x, y))?.edge.from ?? null,
  };
};

/** Two whole numbers as one, spread by two primes; different places may share a key and are told apart after. */
const keyOf = (x: number, y: number): number => Math.imul(x, 73856093) ^ Math.imul(y, 19349663);

const enter = (map: Map<number, Chord[]>, key: number, chord: Chord): void => {
  const found = map.get(key);
  if (found === undefined) map.set(key, [chord]);
  else if (found.at(-1) !== chord) found.push(chord);
};

const isChord = (chord: Chord, from: GridPoint, to: GridPoint): boolean =>
  chord.fromX === from.x && chord.fromY === from.y && chord.toX === to.x && chord.toY === to.y;

/** The chord starts where its edge does, at this place. */
const isStart = (chord: Chord, x: number, y: number): boolean =>
  chord.fromX === x &&
  chord.fromY === y &&
  toGrid(chord.edge.from.x) === x &&
  toGrid(chord.edge.from.y) === y;

const cellOf = (coordinate: number): number => Math.floor(coordinate / cellSize);

const cellsOf = (chords: readonly Chord[]): Map<number, Chord[]> => {
  const cells = new Map<number, Chord[]>();
  for (const chord of chords) {
    const dx = chord.toX - chord.fromX;
    const dy = chord.toY - chord.fromY;
    const steps = Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / (cellSize / 2));
    for (let step = 0; step <= steps; step += 1) {
      const x = cellOf(chord.fromX + (dx * step) / steps);
      const y = cellOf(chord.fromY + (dy * step) / steps);
      enter(cells, keyOf(x, y), chord);
    }
  }
  return cells;
};

const nearCells = (cells: Map<number, Chord[]>, x: number, y: number): readonly Chord[] => {
  const found: Chord[] = [];
  for (let column = x - 1; column <= x + 1; column += 1) {
    for (let row = y - 1; row <= y + 1; row += 1) {
      const cell = cells.get(keyOf(column, row));
      if (cell !== undefined) found.push(...cell);
    }
  }
  return found;
};
