// What was measured on a printer's test piece, turned into its profile: what holes and pegs need by size, how far the first
// layer spreads, the clearance a side of each class of fit, and from how many lines a wall of the stock is opaque.

import type { ClearanceClasses, SizeAllowance } from "../../design/workshop-design.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { HEAT_SET_PILOTS } from "../../standards/heat-set.ts";
import { tooFineReadings, worked } from "../caliper.ts";
import {
  PRINTER_TEST_FEATURES,
  TEST_CLEARANCES,
  TEST_HOLES,
  TEST_PEGS,
  TEST_PILOTS,
  TEST_WALLS,
} from "./printer-test-piece-features.ts";

export interface PrinterReadings {
  readonly holes: readonly SizeAllowance[];
  readonly pegs: readonly SizeAllowance[];
  /** null where it was not read. */
  readonly firstLayer: Mm | null;
  readonly clearances: ClearanceClasses | null;
  readonly opaqueLines: number | null;
}

export type ReadPrinter =
  | { readonly kind: "read"; readonly readings: PrinterReadings }
  | { readonly kind: "refused"; readonly why: readonly string[] };

type Measured = Readonly<Record<string, number>>;

/** No printer in a workshop strays more: a larger difference is a slip of the caliper. */
const MOST = 1;

const FITS = ["press", "snug", "sliding", "loose"] as const;

/** `measured` by the names of the measuring page; every hole and peg that was read makes a row of its table. */
export const readPrinter = (measured: Measured): ReadPrinter => {
  const why = [
    ...unknownNames(measured),
    ...unlikely(measured),
    ...notOnLadder(measured),
    ...halfRead(measured),
    ...tooFineReadings(measured),
  ];
  if (Object.keys(measured).length === 0) why.push("nothing was read");
  if (why.length > 0) return { kind: "refused", why };
  const [foot, above] = [measured["foot"], measured["above"]];
  const [press, snug, sliding, loose] = FITS.map((fit) => measured[fit]);
  return {
    kind: "read",
    readings: {
      holes: holeRows(measured),
      pegs: rows(measured, "peg", TEST_PEGS),
      firstLayer: foot === undefined || above === undefined ? null : worked((foot - above) / 2),
      clearances:
        press === undefined || snug === undefined || sliding === undefined || loose === undefined
          ? null
          : { press: mm(press), snug: mm(snug), sliding: mm(sliding), loose: mm(loose) },
      opaqueLines: measured["opaque"] ?? null,
    },
  };
};

const rows = (
  measured: Measured,
  what: "hole" | "peg",
  sizes: readonly number[],
): readonly SizeAllowance[] =>
  sizes.flatMap((size) => {
    const value = measured[`${what}-${size}`];
    return value === undefined ? [] : [{ to: mm(size), add: worked(size - value) }];
  });

/** What an insert went into well holds for its pilot, before what the caliper says of that hole. */
const holeRows = (measured: Measured): readonly SizeAllowance[] => {
  const own = rows(measured, "hole", TEST_HOLES);
  const insert = measured["insert"];
  if (insert === undefined) return own;
  const others = own.filter(({ to }) => to !== HEAT_SET_PILOTS.m3);
  return [...others, { to: HEAT_SET_PILOTS.m3, add: mm(insert) }].toSorted((a, b) => a.to - b.to);
};

const NAMES: readonly string[] = PRINTER_TEST_FEATURES.map(({ id }) => id);

const unknownNames = (measured: Measured): readonly string[] =>
  Object.keys(measured)
    .filter((name) => !NAMES.includes(name))
    .map((name) => `${name} is not on the test piece (${NAMES.join(", ")})`);

const unlikely = (measured: Measured): readonly string[] =>
  PRINTER_TEST_FEATURES.flatMap(({ id, nominal }) => {
    const value = measured[id];
    if (value === undefined || nominal === null) return [];
    const off = worked(value - nominal);
    return Math.abs(off) <= MOST
      ? []
      : [`${id}: ${value} mm on a nominal ${nominal} mm would be ${off} mm out`];
  });

const notOnLadder = (measured: Measured): readonly string[] => {
  const ladders: readonly (readonly [string, readonly number[]])[] = [
    ...FITS.map((fit) => [fit, TEST_CLEARANCES] as const),
    ["opaque", TEST_WALLS],
    ["insert", TEST_PILOTS],
  ];
  return ladders.flatMap(([id, steps]) => {
    const value = measured[id];
    return value === undefined || steps.includes(value)
      ? []
      : [`${id}: ${value} does not stand on the piece (${steps.join(", ")})`];
  });
};

/** Fits belong together, from tight to loose; a foot means nothing without the width above it. */
const halfRead = (measured: Measured): readonly string[] => {
  const fits = FITS.map((fit) => measured[fit]);
  const read = fits.filter((value) => value !== undefined);
  const isPart = read.length > 0 && read.length < FITS.length;
  const isTurned = read.some((value, index) => index > 0 && value < read[index - 1]!);
  const hasFoot = measured["foot"] !== undefined;
  const hasAbove = measured["above"] !== undefined;
  return [
    ...(isPart ? [`the fits belong together: ${FITS.join(", ")}`] : []),
    ...(isTurned ? ["a looser fit has no less clearance than a tighter one"] : []),
    ...(hasFoot === hasAbove ? [] : ["foot and above belong together"]),
    ...(hasFoot && hasAbove && measured["foot"]! < measured["above"]!
      ? ["a first layer spreads: foot is no less than above"]
      : []),
  ];
};
