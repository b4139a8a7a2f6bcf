// How far a reading may be from what it must be, by kind of reading, each with its reason. Millimetres.

/** Last digit of a coordinate in the coarsest of the files. */
const fileDigit = 0.0001;

/** Promise of the files: every hole, size and place within a thousandth: ten of their last digits. */
export const placeAllowance = 10 * fileDigit;

/** Area may be off by half the size allowance along the whole line: what a line moved by that much would give. */
export const areaAllowance = (length: number): number => (length * placeAllowance) / 2 + fileDigit;

/**
 * Engraved areas are inset by polygon arithmetic with arcs put back afterwards: its line may stray by this much,
 * a fiftieth of a 0.15 mm spot (0.001 was measured on seven faces at 3.2 and 4.1 mm).
 */
export const engravedAllowance = 0.003;

/**
 * The box of engraved letters: the foot of a leaning stroke or the point of an arrow is worn back by more than half the
 * spot. A corner of angle a by 1 / sin(a / 2) of it: of 39 degrees, the sharpest that is allowed for, by three times, which
 * is twice more than the rest. Their lines are held to `engravedAllowance` all the same.
 */
export const wornCornerAllowance = (inset: number): number => 2 * inset;

/** Ends that lie nearer than this are joined: a last digit of the file on each side. */
export const closedGap = 3 * fileDigit;

/** One kerf holds for the whole file: readings from single lines agree this closely. */
export const kerfAllowance = 0.001;

/** Layers laid on each other: what a dowel with its running fit holds in register. */
export const registerAllowance = 0.05;

/** A mirrored reading must fit better by this much a line, on average, before a file is called mirrored. */
export const mirrorMargin = 0.02;

/** A whole-file scale is named where sizes agree with it to one part in a thousand. */
export const scaleAgreement = 0.001;

/** An edge that turns by less than this at a corner runs on smoothly: sine of half a degree. */
export const smoothSine = 0.0087;

/** Area of engraving: its line may wander by a fiftieth of a spot on the whole, more only here and there. */
export const engravedAreaAllowance = (length: number): number => length * 0.003 + 0.001;

/** Facets, the grid under them and float32 corners may take this share of a printed part's volume, or add it. */
export const volumeShare = 0.001;

/** Facets that keep a circle's area stand two thirds of their 0.01 beyond it; twice that, and the grid's step, is room. */
export const boxAllowance = 0.015;

/**
 * A STEP file has true arcs and nine decimals. Corners of neighbouring layers nearer than 0.000002 are one in it, wherever the
 * first of them stands: five times that.
 */
export const stepAllowance = 0.00001;

/** What that moves of a body's volume, if all of its surface lay off by as much. */
export const stepVolumeAllowance = (surface: number): number => surface * stepAllowance;

/** A triangle lower than this over its longest side has no direction: one step of a float32 at 128 mm. */
export const flatHeight = 1.5e-5;

/** A console's model is in float32 metres: at 4 m from the origin a step is 0.00024 mm, and the sum of roundings twice that. */
export const sceneBoxAllowance = 0.001;

/** What that step may move a body's faces, as a share of its box: a hundredth of a millimetre on a thing of ten. */
export const sceneVolumeShare = 0.0005;
