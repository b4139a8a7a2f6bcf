// How a part is held, against what holds it: thread and nut, washers, grip, screws.

import { circle } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { decimal } from "../../geometry/number.ts";
import { THREAD_DIAMETER } from "../../standards/metric-fasteners.ts";
import type { Hardware, Washer } from "../hardware.ts";
import type { Hold, Part } from "../part.ts";
import type { Catalogue } from "../record.ts";
import { shapeContour, shapeSize } from "../shape-contour.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function holdFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  const { hold } = part;
  switch (hold.kind) {
    case "bush":
      return [...gripFaults(hold.grip), ...bushFaults(part, hold, catalogue)];
    case "screws":
      return [...gripFaults(hold.grip), ...screwFaults(part, hold, catalogue)];
    case "snap":
      return gripFaults(hold.grip);
    case "behind":
      return [];
  }
}

type Bush = Hold & { readonly kind: "bush" };
type Screws = Hold & { readonly kind: "screws" };

const gripFaults = (grip: {
  readonly least: number;
  readonly most: number;
}): readonly LintFault[] =>
  unless(grip.least < grip.most, "hold.grip", "the least grip is not below the most");

function bushFaults(part: Part, hold: Bush, catalogue: Catalogue): readonly LintFault[] {
  const nut = catalogue.hardware.get(hold.nut);
  const washers = hold.washers.map((id) => catalogue.hardware.get(id));
  if (nut?.kind !== "nut") return [missing("hold.nut", hold.nut, "nut")];
  if (!washers.every((washer): washer is Washer => washer?.kind === "washer"))
    return [missing("hold.washers", hold.washers.join(", "), "washer")];
  const stacked = nut.thickness + sum(washers.map((washer) => washer.thickness));
  const left = hold.length - stacked - guardThickness(part, catalogue);
  const clamp = shapeSize(part.openings.clamp);
  return [
    ...unless(nut.thread === hold.thread, "hold.nut", `its thread is ${nut.thread}`),
    ...unless(
      hold.grip.most <= left,
      "hold.grip",
      `the thread leaves ${decimal(left, 3)} beside nut and washers`,
    ),
    ...unless(nut.acrossFlats > clamp, "hold.nut", "the nut falls through the hole"),
    ...unless(hold.spanner > nut.acrossCorners, "hold.spanner", "the nut itself needs more room"),
    ...unless(
      washers.every((washer) => washer.inside > hold.diameter),
      "hold.washers",
      "a washer does not go over the bush",
    ),
    ...unless(
      shapeSize(part.openings.passes) === hold.diameter,
      "openings.passes",
      "what must enter the hole is not the bush",
    ),
  ];
}

/** A guard's plate takes some of the thread. */
const guardThickness = (part: Part, catalogue: Catalogue): number =>
  sum(
    part.usual.map((id) => {
      const fitted = catalogue.hardware.get(id);
      return fitted?.kind === "guard" ? fitted.thickness : 0;
    }),
  );

function screwFaults(part: Part, hold: Screws, catalogue: Catalogue): readonly LintFault[] {
  const screw = catalogue.hardware.get(hold.screw);
  if (screw?.kind !== "screw") return [missing("hold.screw", hold.screw, "screw")];
  const thread = threadDiameter(screw);
  const clamp = shapeContour(part.openings.clamp);
  return hold.holes.flatMap((hole, index) => {
    const path = `hold.holes.${index}`;
    const { overlaps, gap } = contourDistance(circle(hole.at, hole.diameter / 2), clamp);
    return [
      ...unless(!overlaps && gap > 0, path, "the screw hole runs into the opening"),
      ...unless(hole.head > hole.diameter, path, "the head falls through its hole"),
      ...unless(thread === null || hole.diameter > thread, path, "the screw does not go in"),
    ];
  });
}

const threadDiameter = (screw: Hardware & { readonly kind: "screw" }): number | null =>
  Object.entries(THREAD_DIAMETER).find(([thread]) => thread === screw.thread)?.[1] ?? null;

const missing = (path: string, id: string, kind: string): LintFault => ({
  path,
  says: `there is no ${kind} called ${id}`,
});

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);
