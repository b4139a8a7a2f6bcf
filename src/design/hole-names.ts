// What the layout calls the holes that are a panel's own, each with its number behind a dot: screws, dowels, those of the mount.
// The first of a row named `fixing` would be fixing.1, as the first screw is.

export const HOLE_NAMES: readonly string[] = ["fixing", "dowel", "mount"];
