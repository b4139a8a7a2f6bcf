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

export interface SourceIndex {
  /** Chords that pass near a place. */
  near(x: number, y: number): readonly Chord[];
  /** The source's own vertex at a place of the grid. */
  vertexAt(x: number, y: number): Point | null;
}

export const toGrid = (length: number): number => Math.round(length / booleanGrid);

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
  const cells = new Map<string, Chord[]>();
  const vertices = new Map<string, Point>();
  for (const chord of chords) {
    enterChord(cells, chord);
    vertices.set(`${toGrid(chord.edge.from.x)},${toGrid(chord.edge.from.y)}`, chord.edge.from);
  }
  return {
    near: (x, y) => nearCells(cells, cellOf(x), cellOf(y)),
    vertexAt: (x, y) => vertices.get(`${x},${y}`) ?? null,
  };
};

const cellOf = (coordinate: number): number => Math.floor(coordinate / cellSize);

const enterChord = (cells: Map<string, Chord[]>, chord: Chord): void => {
  const dx = chord.toX - chord.fromX;
  const dy = chord.toY - chord.fromY;
  const steps = Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / (cellSize / 2));
  for (let step = 0; step <= steps; step += 1) {
    const x = cellOf(chord.fromX + (dx * step) / steps);
    const y = cellOf(chord.fromY + (dy * step) / steps);
    const key = `${x},${y}`;
    const cell = cells.get(key);
    if (cell === undefined) cells.set(key, [chord]);
    else if (cell.at(-1) !== chord) cell.push(chord);
  }
};

const nearCells = (cells: Map<string, Chord[]>, x: number, y: number): readonly Chord[] => {
  const found: Chord[] = [];
  for (let column = x - 1; column <= x + 1; column += 1) {
    for (let row = y - 1; row <= y + 1; row += 1) {
      const cell = cells.get(`${column},${row}`);
      if (cell !== undefined) found.push(...cell);
    }
  }
  return found;
};
