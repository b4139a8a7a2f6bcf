// Tolerances of fit, by the operation that needs each, with the physical reason. Lengths in millimetres, volumes in mm³.

/** Two bodies that share more than this clash: a cube of 0.2 mm, less than a file takes off in a stroke. */
export const sharedVolume = 0.01;

/**
 * Two bodies that reach into one another no deeper than this, or lie no farther apart, touch: meshes hold their corners
 * to a grid of 2^-10 mm, half a step for each of the two.
 */
export const touchDepth = 1e-3;

/** Nearer than this two bodies are a fact, whatever the rules ask for: the usual ones ask for less. */
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

/**
 * A search that is given up has shown two pieces to be farther apart than asked for by more than this: who is just within
 * the length is told by the gap that the search ends with, and not by the arithmetic of a bound.
 */
export const beyondNoise = 1e-9;

/** Of a distance squared: two pieces that the search brings nearer than 1e-9 mm, a thousandth of what lengths are read to, meet. */
export const noDistance = 1e-18;

/** Of the product of two squared lengths: corners within an angle of a hundred-millionth lie in a line, and its edges answer. */
export const flatTriangle = 1e-16;

/** Of a body's volume: what another shares this much of lies wholly within it, but for the kernel's arithmetic on floats. */
export const wholeShare = 1 - 1e-6;

/**
 * What reaches into the room of a way, or stands before a panel that comes out, by less than 10 µm only touches it: a
 * hundredth of what a hand, a tool or an eye tells apart in a console.
 */
export const wayTouch = 0.01;

/** Panels that share an edge lie on one count of their bay: less than a micrometre apart is arithmetic. */
export const oneEdge = 0.001;

/** Bays that meet overlap by what their tilt makes of a rail's width: a few millimetres are one front edge. */
export const sameFrontEdge = 10;
