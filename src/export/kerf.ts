// Kerf, applied here and nowhere else: an operation at cut size becomes the line that the middle of the beam or tool runs on.
// Openings shrink and pieces grow by half the kerf's width; engraved areas shrink by half the spot; drilled holes and
// strokes stay. Left to the cutter, everything stays as it is: whoever compensates, it happens once.

import type { LaserDesign, MachineDesign } from "../design/workshop-design.ts";
import type { Region } from "../geometry/contour.ts";
import { offsetContour } from "../geometry/offset.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { KerfSetting, Operation, SetUp } from "../parts/sheet-part.ts";
import { freshInset, type Inset } from "./shared-insets.ts";

/** Why a set-up can't be written; the caller makes it a fault. */
export interface Refusal {
  readonly kind: "refusal";
  readonly reason: "kerf-offset" | "engraving-vanishes" | "same-line" | "off-the-sheet";
  readonly feature: string;
  readonly why: string;
}

export type Compensated = { readonly kind: "compensated"; readonly operation: Operation } | Refusal;

export const compensate = (
  operation: Operation,
  setUp: Pick<SetUp, "kerf" | "machine">,
  inset: Inset = freshInset,
): Compensated => {
  if (setUp.kerf.kind === "left-to-cutter") return { kind: "compensated", operation };
  switch (operation.kind) {
    case "cut":
      return compensatedCut(operation, setUp.kerf);
    case "fill":
      return compensatedFill(operation, engravingSpot(setUp), inset);
    case "stroke":
      return { kind: "compensated", operation };
  }
};

/** The width that engraved areas are inset for: the laser's spot, 0 for tools that follow the outline themselves. */
export const engravingSpot = (setUp: Pick<SetUp, "kerf" | "machine">): Mm =>
  setUp.kerf.kind === "in-file" && isLaser(setUp.machine) ? setUp.machine.spot : mm(0);

/** What a mean kerf leaves undone on edges square to x and square to y, each side; both 0 where the axes agree. */
export const kerfResidual = (kerf: KerfSetting): { readonly x: Mm; readonly y: Mm } =>
  kerf.kind === "in-file"
    ? { x: mm((kerf.x - kerf.kerf) / 2), y: mm((kerf.y - kerf.kerf) / 2) }
    : { x: mm(0), y: mm(0) };

type Cut = Extract<Operation, { readonly kind: "cut" }>;
type Fill = Extract<Operation, { readonly kind: "fill" }>;
type InFile = Extract<KerfSetting, { readonly kind: "in-file" }>;

const isLaser = (machine: MachineDesign): machine is LaserDesign =>
  machine.kind === "co2-laser" || machine.kind === "diode-laser";

const compensatedCut = (cut: Cut, kerf: InFile): Compensated => {
  const distance = cutSide(cut) * (kerf.kerf / 2);
  if (distance === 0) return { kind: "compensated", operation: cut };
  // A mitred line leaves the same corner in the part as a rounded one and keeps a rectangle a rectangle in the file.
  const line = offsetContour(cut.contour, distance, "miter");
  if (line.kind === "refused")
    return refusal(
      "kerf-offset",
      cut.feature,
      `no line ${Math.abs(distance)} mm ${distance > 0 ? "outside" : "inside"} it: ${line.why}`,
    );
  return { kind: "compensated", operation: { ...cut, contour: line.contour } };
};

const cutSide = (cut: Cut): number => {
  switch (cut.process) {
    case "cut-inner":
      return -1;
    case "cut-outer":
      return 1;
    case "drill":
      return 0;
  }
};

const compensatedFill = (fill: Fill, spot: Mm, inset: Inset): Compensated => {
  if (spot === 0) return { kind: "compensated", operation: fill };
  const regions: Region[] = [];
  for (const region of fill.regions) {
    const left = inset(region, spot / 2);
    if (left.length === 0)
      return refusal(
        "engraving-vanishes",
        fill.feature,
        `a shape in it is nowhere wider than the spot of ${spot} mm`,
      );
    regions.push(...left);
  }
  return { kind: "compensated", operation: { ...fill, regions } };
};

const refusal = (reason: Refusal["reason"], feature: string, why: string): Refusal => ({
  kind: "refusal",
  reason,
  feature,
  why,
});
