// Bays in millimetres: their mounts looked up, their lengths counted out.

import type { Mount } from "../../catalogue/mount.ts";
import type { BayDesign } from "../../design/console-design.ts";
import { type Size, spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { UNKNOWN_MOUNT } from "../codes.ts";
import { unknownName } from "../context.ts";
import { bayFrame } from "./bay-frame.ts";
import type { BayWidths } from "./bay-widths.ts";
import { BAY_UNIT } from "./codes-of-console.ts";
import type { BayLayout } from "./console-layout.ts";

/** A bay before any panel stands in it. */
export type BareBay = Omit<BayLayout, "free" | keyof BayWidths>;

export const laidBays = (
  bays: readonly BayDesign[],
  mounts: ReadonlyMap<string, Mount>,
): { readonly bays: readonly BareBay[]; readonly findings: readonly Finding[] } => {
  const findings: Finding[] = [];
  const laid = bays.flatMap((design) => {
    const mount = mounts.get(design.mount);
    if (mount === undefined) {
      const options = { span: spanOf(design.written, "mount"), known: mounts.keys() };
      findings.push(unknownName(UNKNOWN_MOUNT, design.mount, options));
      return [];
    }
    const length = sizeInMm(design.length, mount);
    if (length === null) {
      findings.push(foreignUnit(design, mount));
      return [];
    }
    return [bareBay(design, mount, length)];
  });
  return { bays: laid, findings };
};

const bareBay = (design: BayDesign, mount: Mount, length: Mm): BareBay => ({
  id: design.id,
  design,
  mount,
  frame: bayFrame(design),
  pitch: mount.height.pitch,
  length,
  modules: design.length.kind === "pitches" ? design.length.count : length / mount.height.pitch,
  depth: design.depth,
});

/** In whole pitches: a rack's units, of which a panel is a little less, are all usable. */
const sizeInMm = (length: Size, { height }: Mount): Mm | null => {
  if (length.kind === "length") return length.mm;
  return length.unit === height.unit ? mm(length.count * height.pitch) : null;
};

const foreignUnit = ({ id, length, written }: BayDesign, mount: Mount): Finding => {
  const { unit: own, pitch } = mount.height;
  const counts =
    own === "mm" ? "has no pitch to count by" : `counts in ${own} of ${decimal(pitch, 4)} mm`;
  return finding(BAY_UNIT, {
    message: `Bay ${id} is ${counted(length)} long; its mount ${mount.id} ${counts}. A length in mm works too.`,
    span: spanOf(written, "length"),
    subjects: [id],
  });
};

const counted = (length: Size): string =>
  length.kind === "pitches" ? `${decimal(length.count, 3)} ${length.unit}` : "";
