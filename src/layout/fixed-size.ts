// A size that the mount settles and the design writes all the same: it may say what the mount says, or it is a mistake
// that must not be dropped in silence. Takes design and mount; gives a finding for the width or height that disagrees.

import type { Mount } from "../catalogue/mount.ts";
import type { PanelDesign } from "../design/panel-design.ts";
import { type Size, spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { decimal } from "../geometry/number.ts";
import type { Mm } from "../geometry/quantity.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { RACK } from "../standards/rack.ts";
import { SIZE_FIXED } from "./codes.ts";

export const fixedSizeFindings = (design: PanelDesign, mount: Mount): readonly Finding[] =>
  disagreement(design, mount, mount.counts === "height" ? "width" : "height");

const disagreement = (
  design: PanelDesign,
  mount: Mount,
  key: "width" | "height",
): readonly Finding[] => {
  const size = design[key];
  const settled = key === "width" ? mount.width : mount.fixedHeight;
  if (size === null || settled === null || saysTheSame(size, settled, key)) return [];
  const measured = size.kind === "length" ? { value: size.mm, unit: "mm" as const } : undefined;
  return [
    finding(SIZE_FIXED, {
      message: `The ${key} is written as ${inWords(size)}; the mount ${mount.id} makes every panel ${decimal(settled, 3)} mm ${key === "width" ? "wide" : "high"}. Leave it as it is or take another mount.`,
      span: spanOf(design.written, key),
      ...(measured === undefined ? {} : { measured }),
      limit: { value: settled, unit: "mm" },
      source: { kind: "standard", name: mount.title },
    }),
  ];
};

/** A height of 3 U names a panel that is a little lower than three units of the rack, for its rails' sake. */
const saysTheSame = (size: Size, settled: Mm, key: "width" | "height"): boolean => {
  if (size.kind === "length") return Math.abs(size.mm - settled) <= samePlace;
  return key === "height" && size.unit === "U" && size.count === Math.ceil(settled / RACK.unit);
};

const inWords = (size: Size): string =>
  size.kind === "length" ? `${decimal(size.mm, 3)} mm` : `${decimal(size.count, 3)} ${size.unit}`;
