// A panel's width on the command line: a length, or a count of the mount's own pitch where the mount counts widths.

import type { Mount } from "../catalogue/mount.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { type WrongUse, wrongUse } from "./command.ts";
import { lengthArgument, noLength } from "./length-argument.ts";

export interface Width {
  /** null for the mount's own. */
  readonly width: Mm | null;
}

export const widthArgument = (
  written: string | undefined,
  mount: Mount | undefined,
): Width | WrongUse => {
  if (written === undefined) return { width: null };
  const [, count, word = ""] = /^(\d+)\s*(modules?|U|HP)$/.exec(written.trim()) ?? [];
  if (count === undefined) {
    const width = lengthArgument(written);
    return width === null ? wrongUse(noLength(written)) : { width };
  }
  const unit = word === "module" ? "modules" : word;
  if (mount === undefined) return { width: null };
  const { pitch, less, unit: own } = mount.height;
  if (mount.counts !== "width")
    return wrongUse(
      `${mount.id} counts no widths: write a length, 100mm or "3 3/4 in".${mount.width === null ? "" : ` Its own is ${mount.width} mm.`}`,
    );
  if (own !== unit)
    return wrongUse(`${mount.id} counts its width in ${own}, not in ${unit}: ${count} ${own}.`);
  return Number(count) > 0
    ? { width: mm(Number(count) * pitch - less) }
    : wrongUse(noLength(written));
};
