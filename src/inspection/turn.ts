// A whole turn in radians, for what is read from a solid: circles and the sweeps of arcs.

export const TURN = 2 * Math.PI;
