// What is said of a frame, with what its sheet and its machine settle: how far the cheeks stand beyond what they close where nobody
// has written it.

import type { FrameDesign } from "../../design/frame-design.ts";
import type { MachineDesign } from "../../design/workshop-design.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { widestRelief } from "./relief.ts";

export interface SizedFrame extends FrameDesign {
  readonly beyond: Mm;
}

export interface SizedFor {
  readonly thickness: number;
  readonly machine: MachineDesign | null;
  readonly bays: readonly Pick<BayLayout, "frame">[];
}

export const sizedFrame = (design: FrameDesign, sized: SizedFor): SizedFrame => ({
  ...design,
  beyond: design.beyond ?? usualBeyond(design, sized),
});

/** Common practice: about a sheet's thickness; in a thick one as much as leaves a web as wide as that beside a slot with its clearance and reliefs. */
const usualBeyond = ({ clearance }: FrameDesign, { thickness, machine, bays }: SizedFor): Mm => {
  const relief = machine === null ? 0 : widestRelief(machine) * BESIDE;
  // Over the level strip at the end of a bay that slopes the cheek stands as high as it does there over the bay: less, by the cosine.
  const level = Math.min(1, ...bays.map(({ frame }) => levelShare(frame)));
  const least = (thickness + clearance / 2 + relief) / level;
  return mm(Math.max(USUAL, upToTenth(least)));
};

/** Cosine of a bay's slope; one steeper than 45 degrees has the strip before it as a step. */
const levelShare = ({ y }: BayLayout["frame"]): number => {
  const share = Math.sqrt(Math.max(0, 1 - y.z * y.z));
  return share < Math.SQRT1_2 - samePlace ? 1 : share;
};

const USUAL = 15;

/** What a relief round a square corner takes beside it, of the tool's radius. */
const BESIDE = 1 - Math.SQRT1_2;
