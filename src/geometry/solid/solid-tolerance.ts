// How finely solids become facets, and how small a thing a mesh may hold. Millimetres, each with its reason.

/**
 * Chord height of a curve that nothing must pass: a tenth of a 0.1 mm layer, the finest that a printer in a workshop lays.
 * The facets stray half to either side, so that the area stays that of the curve.
 */
export const chordHeight = 0.01;

/**
 * How far outside its curve the corner of a circumscribed facet may lie. A wall w thick whose one side is faceted so loses
 * a third of it, and 0.7 µm for the grid: 0.1 % at 2.4 mm. Half of it (0.1 % at 1.5 mm) was measured at 1.4 times the
 * triangles and 1.7 times the time.
 */
export const clearHeight = 0.005;

/**
 * Corners of contours are put on this grid before a mesher sees them, so that walls meant to be one are one:
 * without it 17 of 20 layered solids came back with slivers, with it none. A power of two: exact as a float32 up to 16 m.
 */
export const meshGrid = 2 ** -10;

/**
 * The kernel joins what lies nearer than this after an operation: half the grid, so that nothing drawn is lost.
 */
export const joinDistance = meshGrid / 2;

/**
 * A triangle lower than this over its longest edge is a sliver: four steps of a float32 between 128 and 256 mm.
 */
export const sliverHeight = 2 ** -14;

/** Bulges of a loft's sections agree this closely: a thousandth of the chord height on an arc of 1 m. */
export const sameBulge = 1e-8;
