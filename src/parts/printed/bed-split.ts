// Where a part that is larger than the bed is split: at straight bands that no window, boss or collar stands in. Each band
// becomes solid, so that the joint in it never meets the light.

import type { PrinterDesign } from "../../design/workshop-design.ts";
import type { Contour } from "../../geometry/contour.ts";
import { type Extent, extent, extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";

export interface SplitBand {
  /** `x`: the joint is a line of constant x. */
  readonly across: "x" | "y";
  readonly at: Mm;
  /** The whole band, over the part's box. */
  readonly box: Extent;
}

export type SplitPlan =
  | { readonly kind: "whole" }
  | { readonly kind: "split"; readonly bands: readonly SplitBand[] }
  | { readonly kind: "refused"; readonly why: string };

/** Left free along each edge of a bed, for a brim: common practice. */
export const BED_MARGIN = 5;

/** Overlap of the two halves of a joint: room for a screw's boss of 9.2 mm and a locator (common practice). */
export const LAP = 12;

/** Joints are tried this far apart. */
const STEP = 0.5;

/** A piece shorter than this is no piece: it would be all joint. */
const LEAST_PIECE = 3 * LAP;

export interface SplitOptions {
  readonly printer: PrinterDesign | null;
  /** From front to rear. */
  readonly depth: number;
  readonly wall: number;
  /** Whatever a joint must not go through. */
  readonly keepOut: readonly Contour[];
}

export const splitPlan = (outline: Contour, options: SplitOptions): SplitPlan => {
  const { printer, depth, wall } = options;
  if (printer === null) return { kind: "whole" };
  const box = contourExtent(outline);
  const size = { x: extentWidth(box), y: extentHeight(box) };
  const bed = [printer.bed[0] - 2 * BED_MARGIN, printer.bed[1] - 2 * BED_MARGIN] as const;
  const long = Math.max(...bed);
  const short = Math.min(...bed);
  if (depth > printer.bed[2]) return { kind: "refused", why: "it is taller than the printer" };
  if (Math.max(size.x, size.y) <= long && Math.min(size.x, size.y) <= short)
    return { kind: "whole" };
  const across = size.x >= size.y ? "x" : "y";
  const other = across === "x" ? size.y : size.x;
  if (other > long) return { kind: "refused", why: "it is wider than the bed both ways" };
  const most = other <= short ? long : short;
  const found = joints(box, { across, most, half: LAP / 2 + wall, options });
  if (found === null)
    return { kind: "refused", why: "no straight strip is free of windows, bosses and collars" };
  return {
    kind: "split",
    bands: found.map((at) => bandAt(at, across, { box, half: LAP / 2 + wall })),
  };
};

interface JointSearch {
  readonly across: "x" | "y";
  /** The longest that a piece may be, tongues included. */
  readonly most: number;
  readonly half: number;
  readonly options: SplitOptions;
}

/** From the low end, each joint as near as it can be to an even share of what is left. */
const joints = (box: Extent, search: JointSearch): readonly number[] | null => {
  const [low, high] = ends(box, search.across);
  const blocked = search.options.keepOut.map((contour) => {
    const [from, to] = ends(contourExtent(contour), search.across);
    return {
      from: from - search.options.wall - search.half,
      to: to + search.options.wall + search.half,
    };
  });
  const found: number[] = [];
  let start = low;
  while (high - start + LAP / 2 > search.most) {
    const pieces = Math.ceil((high - start) / (search.most - LAP));
    const wanted = start + (high - start) / Math.max(2, pieces);
    const last = start + search.most - (found.length === 0 ? LAP / 2 : LAP);
    const at = nearestFree(wanted, {
      low: start + LEAST_PIECE,
      high: Math.min(last, high - LEAST_PIECE),
      blocked,
    });
    if (at === null) return null;
    found.push(at);
    start = at;
  }
  return found;
};

const ends = (box: Extent, across: "x" | "y"): readonly [number, number] =>
  across === "x" ? [box.minX, box.maxX] : [box.minY, box.maxY];

const nearestFree = (
  wanted: number,
  field: {
    readonly low: number;
    readonly high: number;
    readonly blocked: readonly { readonly from: number; readonly to: number }[];
  },
): number | null => {
  const steps = Math.ceil(Math.max(wanted - field.low, field.high - wanted) / STEP);
  for (let step = 0; step <= steps; step += 1) {
    for (const at of [wanted - step * STEP, wanted + step * STEP]) {
      const isFree = field.blocked.every(({ from, to }) => at <= from || at >= to);
      if (at >= field.low && at <= field.high && isFree) return at;
    }
  }
  return null;
};

const bandAt = (
  at: number,
  across: "x" | "y",
  { box, half }: { readonly box: Extent; readonly half: number },
): SplitBand => ({
  across,
  at: mm(at),
  box:
    across === "x"
      ? extent(at - half, box.minY, at + half, box.maxY)
      : extent(box.minX, at - half, box.maxX, at + half),
});
