// Tolerances of the frame, by the operation that needs each. Places are held against one another by `samePlace` of the geometry.

/** Sine of the angle by which a bay may leave the plane of the others: 0.006 degrees, 0.1 mm in a metre. */
export const offPlane = 1e-4;

/** Of a pitch: a run of whole pitches is not one short for the last digit of a length read to a nanometre. */
export const wholePitch = 1e-6;

/** Sine of an angle off the vertical that is none: arithmetic on unit vectors leaves 1e-15, what a builder writes a millionth. */
export const upright = 1e-9;

/** Of a way along an edge: areas are worked out on a grid of a thousandth of a millimetre, and an edge that is shared is none. */
export const onEdge = 1e-2;

/**
 * Sine of 15 degrees: lines that turn off less from one another meet about four times as far away as they lie apart, beyond the
 * ends of the bays that they run along; no board stands there.
 */
export const nearlySideBySide = 0.26;

/**
 * Strips whose lengths differ by no more are as long as one another: each is trimmed in half millimetres and by the gaps at its ends,
 * and a builder sees no difference in a top of hundreds of millimetres.
 */
export const noLonger = 5;
