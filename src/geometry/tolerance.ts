// Every tolerance of the geometry, by the operation that needs it, with the physical reason for its size.
// Lengths in millimetres, angles in radians. Nothing else in this folder compares with a bare small number.

/**
 * Two places nearer than this are one place: lengths are read to 1 nm, and a sum or a turn of two such
 * lengths may be out by one more.
 */
export const samePlace = 2e-6;

/** Below this sagitta an arc is drawn straight: a thousandth of the 1 nm that lengths are read to. */
export const straightSagitta = 1e-12;

/** Noise of double arithmetic on coordinates of a few metres: 2^-52 x 4000 mm is 9e-13 mm. */
export const arithmeticNoise = 1e-11;

/**
 * Edges that meet within this angle run on smoothly. A tool of 3.175 mm leaves r a² / 8 = 0.02 µm
 * beside such a corner, a hundredth of what any cutter in a small workshop holds.
 */
export const smoothCorner = 0.01;

/** Directions closer than this are parallel for the sake of finding where their lines meet. */
export const parallel = 1e-12;

/** Pieces of an outline fitted to a curve of a letter stay this near to it: 2 µm, unseen at any cutter's 0.1 mm. */
export const curveFit = 0.002;

/** Chord height when arcs become chords for a polygon operation: overlaps thinner than 1 µm are not seen. */
export const booleanChord = 0.001;

/**
 * Grid of the polygon operations: 2^-16 mm is 15 nm, and edges up to 1.3 m stay within the integers
 * whose products a double holds exactly.
 */
export const booleanGrid = 1 / 65536;

/** Edges this short after a polygon operation are rounding at a crossing, not shape: 0.1 µm. */
export const booleanSliver = 1e-4;

/**
 * How far a vertex of a polygon operation may lie from the curve it came from: chord height, rounding to the
 * grid and the sliver above.
 */
export const booleanReach = booleanChord + booleanSliver + 4 * booleanGrid;

/** 0.1 added ten times falls short of 1 by the last bit: a step of a scale that lies this near counts. In steps. */
export const stepNoise = 1e-9;

/** Shifted copies agree to the rounding of their coordinates: 2^-52 x 1000 mm is 2e-13 mm, summed a few times. */
export const shiftNoise = 1e-9;

/** An offset loop may come this much nearer to its source than asked before it is refused: 0.01 µm of arithmetic. */
export const offsetNoise = 1e-5;

/** A mitred corner longer than this many times the offset is rounded instead: 2 keeps corners down to 60 degrees. */
export const miterLimit = 2;

/**
 * Three points that make a thinner triangle than this, in squares of their mean distance from the middle, are in line for
 * the sake of a map between planes: on a picture 1000 pixels wide they are a pixel from it, which is how well a mark is set.
 */
export const degenerateTriangle = 1e-3;

/**
 * Two points nearer than this share of the longest distance among them are one place for the sake of a map between planes: a
 * pixel on a picture 1000 pixels wide.
 */
export const coincidentShare = 1e-3;
