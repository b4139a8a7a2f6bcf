// Knobs, nuts, washers, screws, mounts and materials against themselves and against the standards that they name.

import { decimal } from "../../geometry/number.ts";
import {
  ISO_4032,
  ISO_4762,
  ISO_7089,
  ISO_7380_1,
  ISO_10642,
} from "../../standards/metric-fasteners.ts";
import type { Hardware, Nut, Screw, Washer } from "../hardware.ts";
import type { Mount } from "../mount.ts";
import { type Catalogue, MACHINE_KINDS, type MaterialRecord } from "../record.ts";
import { shapeSize } from "../shape-contour.ts";
import { type LintFault, unless } from "./lint-fault.ts";
import { shapeFaults } from "./lint-shape.ts";

export function hardwareFaults(hardware: Hardware): readonly LintFault[] {
  switch (hardware.kind) {
    case "knob":
      return [
        ...unless(hardware.bore < hardware.diameter, "bore", "the bore is wider than the knob"),
        ...unless(hardware.boreDepth < hardware.height, "boreDepth", "the bore goes right through"),
      ];
    case "cap":
      return shapeFaults(hardware.shape, "shape");
    case "guard":
      return [
        ...shapeFaults(hardware.shape, "shape"),
        ...unless(
          hardware.openHeight > hardware.height,
          "openHeight",
          "it is lower open than closed",
        ),
      ];
    case "boot":
      return unless(
        hardware.thickness < hardware.height,
        "thickness",
        "its foot is as tall as the whole boot",
      );
    case "plug":
      return shapeFaults(hardware.shape, "shape");
    case "nut":
      return nutFaults(hardware);
    case "washer":
      return washerFaults(hardware);
    case "screw":
      return screwFaults(hardware);
    case "stud":
      return [
        ...unless(hardware.hole > hardware.body, "hole", "the stud does not go in"),
        ...unless(hardware.head > hardware.hole, "head", "the head falls through its hole"),
        ...hardware.grips.flatMap((grip, index) =>
          unless(grip.least < grip.most, `grips.${index}`, "the least grip is not below the most"),
        ),
      ];
    case "bezel":
    case "standoff":
    case "retainer":
    case "receptacle":
      return [];
  }
}

/** Across corners of a hexagon is across flats / cos 30°, that is 2 / √3. */
const HEXAGON = 2 / Math.sqrt(3);
/** Records give hundredths. */
const HUNDREDTH = 0.011;

function nutFaults(nut: Nut): readonly LintFault[] {
  const corners = nut.acrossFlats * HEXAGON;
  const standard = tableRow(ISO_4032, nut.thread);
  return [
    ...unless(
      Math.abs(nut.acrossCorners - corners) <= HUNDREDTH,
      "acrossCorners",
      `a hexagon of ${nut.acrossFlats} is ${decimal(corners, 2)} across its corners`,
    ),
    ...unless(
      nut.figures.kind !== "standard" ||
        (standard?.acrossFlats === nut.acrossFlats && standard.thickness === nut.thickness),
      "figures",
      "ISO 4032 has other numbers",
    ),
  ];
}

function washerFaults(washer: Washer): readonly LintFault[] {
  const standard = Object.values(ISO_7089).find((row) => row.inside === washer.inside);
  return [
    ...unless(washer.inside < washer.outside, "inside", "the hole is wider than the washer"),
    ...unless(
      washer.figures.kind !== "standard" ||
        (standard?.outside === washer.outside && standard.thickness === washer.thickness),
      "figures",
      "ISO 7089 has other numbers",
    ),
  ];
}

const HEADS: Readonly<
  Record<string, Readonly<Record<string, { diameter: number; height: number }>>>
> = { "ISO 4762": ISO_4762, "ISO 7380-1": ISO_7380_1, "ISO 10642": ISO_10642 };

function screwFaults(screw: Screw): readonly LintFault[] {
  const standard = HEADS[screw.norm]?.[screw.thread];
  return [
    ...unless(
      screw.figures.kind !== "standard" ||
        (standard?.diameter === screw.headDiameter && standard.height === screw.headHeight),
      "figures",
      `${screw.norm} has other numbers`,
    ),
    ...unless(
      screw.lengths.every((length, index) => length > (screw.lengths[index - 1] ?? 0)),
      "lengths",
      "the lengths do not rise",
    ),
  ];
}

const tableRow = <Row>(table: Readonly<Record<string, Row>>, thread: string): Row | undefined =>
  table[thread];

export function mountFaults(mount: Mount, catalogue: Catalogue): readonly LintFault[] {
  const fastener = catalogue.hardware.get(mount.fastener);
  const sound = shapeFaults(mount.holes.hole, "holes.hole");
  if (sound.length > 0) return sound;
  return [
    ...unless(
      fastener?.kind === "stud" || fastener?.kind === "screw",
      "fastener",
      `there is no stud or screw called ${mount.fastener}`,
    ),
    ...unless(
      mount.counts === "height" || mount.fixedHeight !== null,
      "fixedHeight",
      "a mount that counts widths has a height of its own",
    ),
    ...unless(
      mount.clearWidth === null || mount.width === null || mount.clearWidth < mount.width,
      "clearWidth",
      "the panel falls between its rails",
    ),
    ...unless(mount.web <= webOf(mount), "web", "its own holes leave less"),
  ];
}

/** Nominal web at the side, where the mount fixes it; endless where it does not. */
function webOf({ holes, width }: Mount): number {
  const size = shapeSize(holes.hole) / 2;
  if (holes.kind === "corners") return holes.inset - size;
  return holes.kind === "columns" && width !== null
    ? (width - holes.apart) / 2 - size
    : Number.POSITIVE_INFINITY;
}

export function materialFaults(material: MaterialRecord): readonly LintFault[] {
  const starts = material.tolerance.map((row) => row.from);
  return [
    ...unless(starts[0] === 0, "tolerance", "thin sheet has no range"),
    ...unless(
      starts.every((from, index) => from > (starts[index - 1] ?? -1)),
      "tolerance",
      "the ranges do not rise",
    ),
    ...unless(
      MACHINE_KINDS.every((kind) => material.byMachine[kind] !== undefined),
      "byMachine",
      "a kind of machine has no verdict",
    ),
  ];
}
