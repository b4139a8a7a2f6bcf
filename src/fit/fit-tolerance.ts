// Tolerances of fit, by the operation that needs each, with the physical reason. Lengths in millimetres, volumes in mm³.

/** Two bodies that share more than this clash: a cube of 0.2 mm, less than a file takes off in a stroke. */
export const sharedVolume = 0.01;

/**
 * Two bodies that reach into one another no deeper than this, or lie no farther apart, touch: meshes hold their corners
 * to a grid of 2^-10 mm, half a step for each of the two.
 */
export const touchDepth = 1e-3;

/** Nearer than this two bodies are a fact, whatever the rules say of it: more than the largest room of any of them. */
export const searchLength = 5;

/**
 * Chord height of a curve in a convex piece: its corners lie on the curve, so that a round body that touches is no clash,
 * and a gap beside it comes out larger by no more than this.
 */
export const hullChord = 0.004;

/** A place this near to an outline is on it: the air under a chord, and the arithmetic of two turned frames. */
export const onOutline = 0.005;

/** A search for nearest points ends when another step would gain no more than this share of their distance squared. */
export const searchGain = 1e-12;

/** Corners turn right here at most by arithmetic: an outline is still convex. In mm² of the two edges beside the corner. */
export const convexNoise = 1e-9;
