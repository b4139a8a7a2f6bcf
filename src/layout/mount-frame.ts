// The panel's size from its mount: nominal and finished outline, mount holes, and the strips that the rails cover.

import type { Mount, MountHoles } from "../catalogue/mount.ts";
import type { PanelDesign } from "../design/panel-design.ts";
import { type Size, spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { type Contour, type Point, point } from "../geometry/contour.ts";
import { type Extent, extent, grownExtent } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { roundedRectangle } from "../geometry/shapes.ts";
import { rackHoleRows } from "../standards/rack.ts";
import { SIZE_MISSING, SIZE_UNIT } from "./codes.ts";
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
  const findings: Finding[] = [];
  const width = widthOf(design, mount, findings);
  const height = heightOf(design, mount, findings);
  if (width === null || height === null) return { frame: null, findings };
  const nominal = extent(0, 0, width, height);
  const finished = grownExtent(nominal, -mount.undersize);
  return {
    frame: {
      nominal,
      outline: roundedRectangle(finished, mount.corner),
      holes: mountHoles(mount, width, height),
      rails: railStrips(mount, width, height),
    },
    findings,
  };
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
export const sizeInMm = (size: Size, mount: Mount): Mm | null => {
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

const railStrips = (mount: Mount, width: number, height: number): readonly Extent[] =>
  mount.seat === 0
    ? []
    : [extent(0, 0, mount.seat, height), extent(width - mount.seat, 0, width, height)];

const mountHoles = (mount: Mount, width: number, height: number): readonly MountHole[] => {
  const { holes } = mount;
  switch (holes.kind) {
    case "columns":
      return columnHoles(holes, width, height);
    case "units":
      return twoColumns(holes.apart, { width, rows: rackRows(height, mount.height) });
    case "subrack":
      return subrackHoles(holes, width, height);
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

const subrackHoles = (
  holes: MountHoles & { readonly kind: "subrack" },
  width: number,
  height: number,
): readonly MountHole[] => {
  const edge = (height - holes.rowsApart) / 2;
  const last = lastOnPitch(holes, width);
  const columns: readonly number[] =
    last > holes.firstFromLeft ? [holes.firstFromLeft, last] : [holes.firstFromLeft];
  const spots: Point[] = columns.flatMap((x) => [point(x, edge), point(x, height - edge)]);
  return spots.map((at, index) => ({ id: `mount.${index + 1}`, at, column: "none" as const }));
};

/** The last hole that the pitch allows and that still leaves the first hole's edge distance at the right. */
const lastOnPitch = (holes: MountHoles & { readonly kind: "subrack" }, width: number): number => {
  const steps = Math.floor((width - 2 * holes.firstFromLeft) / holes.pitch);
  return holes.firstFromLeft + Math.max(0, steps) * holes.pitch;
};
