// Why a thing came out in the wrong size: each mistake of units or printing leaves a ratio of its own, so that
// one reading of a ruler names it. Takes the ratio measured / expected; gives the causes that the reading allows.

export interface ScaleCause {
  /** measured / expected. */
  readonly ratio: number;
  readonly why: string;
  /** What to set right. */
  readonly cure: string;
}

interface ScaleError extends ScaleCause {
  /** A range where there is no single ratio. */
  readonly to?: number;
}

// Pixels an inch: CSS 2.1, 4.3.2 (96); PostScript Language Reference, 4.3 (72 units); 90 was the habit of
// vector drawing programs before CSS settled on 96 (common practice). An inch is 25.4 mm (ISO 31-1, annex A).
const PER_INCH = 25.4;
const CSS = 96;
const OLD_DRAWING = 90;
const POSTSCRIPT = 72;

const perInch = (written: number, read: number): ScaleError => ({
  ratio: written / read,
  why: `written at ${written} units an inch and read at ${read}`,
  cure: `import it at ${written} units an inch, or take the DXF, which says that it is in millimetres`,
});

const unitTaken = (written: string, read: string, ratio: number): ScaleError => ({
  ratio,
  why: `written in ${written} and read as ${read}`,
  cure: `set the import's unit to ${written}`,
});

const SCALE_ERRORS: readonly ScaleError[] = [
  perInch(POSTSCRIPT, CSS),
  perInch(CSS, POSTSCRIPT),
  perInch(OLD_DRAWING, CSS),
  perInch(CSS, OLD_DRAWING),
  perInch(POSTSCRIPT, OLD_DRAWING),
  perInch(OLD_DRAWING, POSTSCRIPT),
  unitTaken("points", "millimetres", POSTSCRIPT / PER_INCH),
  unitTaken("millimetres", "points", PER_INCH / POSTSCRIPT),
  unitTaken("pixels", "millimetres", CSS / PER_INCH),
  unitTaken("millimetres", "pixels", PER_INCH / CSS),
  unitTaken("millimetres", "inches", PER_INCH),
  unitTaken("inches", "millimetres", 1 / PER_INCH),
  unitTaken("millimetres", "centimetres", 10),
  unitTaken("centimetres", "millimetres", 0.1),
  unitTaken("millimetres", "metres", 1000),
  unitTaken("metres", "millimetres", 0.001),
  // Common practice: margins of A4 and Letter printers take 2 to 6 % off a page that is made to fit.
  {
    ratio: 0.94,
    to: 0.98,
    why: `printed with "fit to page"`,
    cure: `print again at actual size (100 %), scaling switched off`,
  },
];

/** The causes whose ratio lies within `reading` (a share of the expected size) of the one measured, nearest first. */
export const causesOfScale = (ratio: number, reading: number): readonly ScaleCause[] =>
  SCALE_ERRORS.map((cause) => ({ cause, away: distanceTo(cause, ratio) }))
    .filter(({ away }) => away <= reading)
    .sort((a, b) => a.away - b.away)
    .map(({ cause: { ratio, why, cure } }) => ({ ratio, why, cure }));

const distanceTo = ({ ratio, to = ratio }: ScaleError, measured: number): number =>
  Math.max(ratio - measured, measured - to, 0);
