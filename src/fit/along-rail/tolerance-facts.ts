// The sum of tolerances along each bay. Panels that their own fasteners hold on the fixed pitch of the rail pass no error
// on: each is where its holes are, and there is nothing to sum. Panels that are butted one against the next add theirs up.
//
// A panel's size along the bay may be off by ISO 2768-1 class m; where that table gives nothing (over 1000 mm), by the
// mount's undersize at each of its two ends. The bay's own length is what was measured as usable, and is not summed.

import type { Mount } from "../../catalogue/mount.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import type { BayLayout, ConsoleLayout, PlacedPanel } from "../../layout/console/console-layout.ts";
import { generalTolerance } from "../../standards/general-tolerance.ts";
import type { ToleranceFact } from "../fit-facts.ts";
import { type ToleranceShare, toleranceSum } from "./tolerance-sum.ts";

export const toleranceFacts = (layout: ConsoleLayout): readonly ToleranceFact[] =>
  layout.bays.flatMap((bay) => {
    const sizes = layout.panels.flatMap((panel) => sizeIn(bay, panel) ?? []);
    if (sizes.length === 0) return [];
    const finished = sizes.reduce((sum, { size }) => sum + size, 0);
    const taken = isLocated(bay.mount) ? [] : sizes.flatMap(sharesOf);
    return [{ bay: bay.id, free: mm(bay.length - finished), ...toleranceSum(taken) }];
  });

/** Holes on a fixed pitch place each panel for itself; screws near its corners are drilled where it came to lie. */
const isLocated = ({ holes }: Mount): boolean => {
  switch (holes.kind) {
    case "columns":
    case "units":
    case "subrack":
      return true;
    case "corners":
      return false;
  }
};

interface SizeAlong {
  readonly panel: PlacedPanel;
  /** Finished: nominal less the mount's undersize at both ends. */
  readonly size: Mm;
}

const sizeIn = (bay: BayLayout, panel: PlacedPanel): SizeAlong | null => {
  const { place } = panel;
  if (place.kind !== "bay" || place.bay !== bay.id) return null;
  return { panel, size: mm(place.to - place.from - 2 * bay.mount.undersize) };
};

const sharesOf = ({ panel, size }: SizeAlong): readonly ToleranceShare[] => {
  const what = panel.name;
  const general = generalTolerance(size, "m");
  if (general !== null) return [{ what, plusMinus: general, by: "general" }];
  const end = { what, plusMinus: panel.layout.mount.undersize, by: "undersize" } as const;
  return [end, end];
};
