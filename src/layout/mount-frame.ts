// The panel's size from its mount: nominal and finished outline, mount holes, and the strips that the rails cover.

import type { Mount, MountHoles } from "../catalogue/mount.ts";
import type { PanelDesign } from "../design/panel-design.ts";
import { LONGEST_PANEL } from "../design/size-fields.ts";
import { type Size, spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { type Contour, type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, extentHeight, extentWidth, grownExtent } from "../geometry/extent.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { roundedRectangle } from "../geometry/shapes.ts";
import { arithmeticNoise } from "../geometry/tolerance.ts";
import { rackHoleRows } from "../standards/rack.ts";
import { SIZE_MISSING, SIZE_TOO_LARGE, SIZE_TOO_SMALL, SIZE_UNIT } from "./codes.ts";
import { fixedSizeFindings } from "./fixed-size.ts";
import type { MountHole } from "./panel-layout.ts";

export interface MountFrame {
  readonly nominal: Extent;
  readonly outline: Contour;
  readonly holes: readonly MountHole[];
  readonly rails: readonly Extent[];
}

/** The frame, or null with the reason where a size is missing or counted in a foreign unit. */
export const mountFrame = (
  design: PanelDesign,
  mount: Mount,
): { readonly frame: MountFrame | null; readonly findings: readonly Finding[] } => {
  const findings: Finding[] = [...fixedSizeFindings(design, mount)];
  if (findings.length > 0) return { frame: null, findings };
  const width = widthOf(design, mount, findings);
  const height = heightOf(design, mount, findings);
  if (width === null || height === null) return { frame: null, findings };
  const finished = grownExtent(extent(0, 0, width, height), -mount.undersize);
  if (Math.max(width, height) > LONGEST_PANEL)
    return {
      frame: null,
      findings: [
        ...findings,
        tooLarge(design, width > height ? "width" : "height", Math.max(width, height)),
      ],
    };
  if (Math.min(extentWidth(finished), extentHeight(finished)) <= 2 * mount.corner)
    return { frame: null, findings: [...findings, tooSmall(design, mount, finished)] };
  return { frame: frameOfSize(mount, { width, height }), findings };
};

const frameOfSize = madeOnceWith(
  (mount: Mount, { width, height }: { readonly width: Mm; readonly height: Mm }): MountFrame => {
    const nominal = extent(0, 0, width, height);
    return {
      nominal,
      outline: roundedRectangle(grownExtent(nominal, -mount.undersize), mount.corner),
      holes: mountHoles(mount, width, height),
      rails: railStrips(mount, width, height),
    };
  },
);

const tooLarge = (design: PanelDesign, key: "width" | "height", size: number): Finding =>
  finding(SIZE_TOO_LARGE, {
    message: `The ${key} is ${decimal(size, 3)} mm; a panel has ${LONGEST_PANEL} mm at most.`,
    span: spanOf(design.written, key),
    measured: { value: size, unit: "mm" },
    limit: { value: LONGEST_PANEL, unit: "mm" },
    source: { kind: "geometry", name: "the longest sheets that are sold" },
  });

const tooSmall = (design: PanelDesign, mount: Mount, finished: Extent): Finding => {
  const key = extentHeight(finished) <= 2 * mount.corner ? "height" : "width";
  const left = key === "height" ? extentHeight(finished) : extentWidth(finished);
  return finding(SIZE_TOO_SMALL, {
    message: `The ${key} leaves ${left > 0 ? `${decimal(left, 3)} mm` : "nothing"} once the mount ${mount.id} has taken ${decimal(mount.undersize, 3)} mm off each side; its corners alone, of radius ${decimal(mount.corner, 3)} mm, take ${decimal(2 * mount.corner, 3)} mm.`,
    span: spanOf(design.written, key),
    measured: { value: left, unit: "mm" },
    limit: { value: 2 * mount.corner, unit: "mm" },
    source: { kind: "geometry", name: "the corners of the outline" },
  });
};

const widthOf = (design: PanelDesign, mount: Mount, findings: Finding[]): Mm | null => {
  if (mount.counts === "width") return counted(design, { key: "width", mount, findings });
  if (mount.width !== null) return mount.width;
  return counted(design, { key: "width", mount: { ...mount, counts: "width" }, findings });
};

const heightOf = (design: PanelDesign, mount: Mount, findings: Finding[]): Mm | null =>
  mount.counts === "width" && mount.fixedHeight !== null
    ? mount.fixedHeight
    : counted(design, { key: "height", mount, findings });

const counted = (
  design: PanelDesign,
  options: {
    readonly key: "width" | "height";
    readonly mount: Mount;
    readonly findings: Finding[];
  },
): Mm | null => {
  const { key, mount, findings } = options;
  const size = design[key];
  const span = spanOf(design.written, key);
  if (size === null) {
    const message = `The mount ${mount.id} leaves the ${key} to the design, and there is none. Write ${key}: 120 mm.`;
    findings.push(finding(SIZE_MISSING, { message, span }));
    return null;
  }
  const length = sizeInMm(size, mount);
  if (length === null) findings.push(foreignUnit(size, mount, { key, span }));
  return length;
};

/** A size in mm by the mount's pitch; null where the unit is another mount's. */
const sizeInMm = (size: Size, mount: Mount): Mm | null => {
  if (size.kind === "length") return size.mm;
  if (size.unit !== mount.height.unit) return null;
  return mm(roundedToNanometre(size.count * mount.height.pitch - mount.height.less));
};

// 13 modules are 123.825, not 123.82499999999999: the reader's one rounding, done where the pitch is known.
const roundedToNanometre = (value: number): number => Math.round(value * 1e6) / 1e6;

const foreignUnit = (
  size: Size,
  mount: Mount,
  options: { readonly key: string; readonly span: Finding["span"] },
): Finding => {
  const written = size.kind === "pitches" ? `${decimal(size.count, 3)} ${size.unit}` : "";
  const own =
    mount.height.unit === "mm"
      ? "mm"
      : `${mount.height.unit} of ${decimal(mount.height.pitch, 4)} mm`;
  return finding(SIZE_UNIT, {
    message: `The ${options.key} is written as ${written}; the mount ${mount.id} counts in ${own}. A length in mm works too.`,
    span: options.span,
  });
};

/** Rails run up both sides; the walls of a box, all the way round. */
const railStrips = (mount: Mount, width: number, height: number): readonly Extent[] => {
  const { seat } = mount;
  if (seat === 0) return [];
  const sides = [extent(0, 0, seat, height), extent(width - seat, 0, width, height)];
  if (!isSeatedAllRound(mount)) return sides;
  return [...sides, extent(0, 0, width, seat), extent(0, height - seat, width, height)];
};

/** Width of the strips that are covered at the sides, and at the ends. */
export const railWidth = (
  rails: readonly Extent[],
  nominal: Extent,
): { readonly x: number; readonly y: number } => {
  const widths = rails.map((rail) => ({ x: extentWidth(rail), y: extentHeight(rail) }));
  return {
    x: Math.max(0, ...widths.filter(({ x }) => x < extentWidth(nominal)).map(({ x }) => x)),
    y: Math.max(0, ...widths.filter(({ y }) => y < extentHeight(nominal)).map(({ y }) => y)),
  };
};

/** Screws in all four corners stand on a wall at each side; columns of holes on a rail at two. */
const isSeatedAllRound = (mount: Mount): boolean =>
  mount.seat > 0 && mount.holes.kind === "corners";

const mountHoles = (mount: Mount, width: number, height: number): readonly MountHole[] => {
  const { holes } = mount;
  switch (holes.kind) {
    case "columns":
      return columnHoles(holes, width, height);
    case "units":
      return twoColumns(holes.apart, { width, rows: rackRows(height, mount.height) });
    case "subrack":
      return subrackHoles(holes, { width: width + mount.height.less, height });
    case "corners":
      return twoColumns(width - 2 * holes.inset, {
        width,
        rows: [holes.inset, height - holes.inset],
      });
  }
};

const columnHoles = (
  holes: MountHoles & { readonly kind: "columns" },
  width: number,
  height: number,
): readonly MountHole[] => {
  const steps = Math.round((height - 2 * holes.first) / holes.pitch);
  const gaps = Math.max(1, Math.ceil((steps * holes.pitch) / holes.span));
  const rows = new Set<number>();
  for (let gap = 0; gap <= gaps; gap += 1)
    rows.add(holes.first + Math.round((steps * gap) / gaps) * holes.pitch);
  return twoColumns(holes.apart, { width, rows: [...rows] });
};

/** Whole units use the rail's own holes; any other height the same distance from its edges. */
const rackRows = (height: number, count: Mount["height"]): readonly number[] =>
  edgeAndMirror(
    rackHoleRows(Math.max(1, Math.round((height + count.less) / count.pitch)))[0],
    height,
  );

const edgeAndMirror = (fromEdge: number | undefined, height: number): readonly number[] =>
  fromEdge === undefined ? [] : [fromEdge, height - fromEdge];

const twoColumns = (
  apart: number,
  options: { readonly width: number; readonly rows: readonly number[] },
): readonly MountHole[] => {
  const left = (options.width - apart) / 2;
  return options.rows.flatMap((y, row) => [
    { id: `mount.${row + 1}.left`, at: point(left, y), column: "left" as const },
    { id: `mount.${row + 1}.right`, at: point(left + apart, y), column: "right" as const },
  ]);
};

/** `width` is the whole of its pitches: the panel itself is a little narrower. */
const subrackHoles = (
  holes: MountHoles & { readonly kind: "subrack" },
  size: { readonly width: number; readonly height: number },
): readonly MountHole[] => {
  const edge = (size.height - holes.rowsApart) / 2;
  const last = lastOnPitch(holes, size.width);
  const columns: readonly number[] =
    last > holes.firstFromLeft ? [holes.firstFromLeft, last] : [holes.firstFromLeft];
  const spots: Point[] = columns.flatMap((x) => [point(x, edge), point(x, size.height - edge)]);
  return spots.map((at, index) => ({ id: `mount.${index + 1}`, at, column: "none" as const }));
};

/**
 * The last hole that the pitch allows: as far from the right end of the pitches as the first is from the left, or a little
 * more. On a panel of n pitches it lies n - 3 of them from the first (IEC 60297-3-101; agreeing secondary copies).
 */
const lastOnPitch = (holes: MountHoles & { readonly kind: "subrack" }, width: number): number => {
  const steps = Math.floor((width - 2 * holes.firstFromLeft) / holes.pitch + arithmeticNoise);
  return holes.firstFromLeft + Math.max(0, steps) * holes.pitch;
};
