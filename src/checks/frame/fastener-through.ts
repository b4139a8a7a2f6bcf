// How wide the fasteners of a mount are where they go through a rail: a stud's body, a screw's thread. Takes the mount and the
// catalogue; null where neither is known.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import type { Mount } from "../../catalogue/mount.ts";
import type { Catalogue } from "../../catalogue/record.ts";
import type { LimitSource } from "../../diagnostics/finding.ts";
import { metricThread } from "../../parts/screw-need.ts";
import { THREAD_DIAMETER } from "../../standards/metric-fasteners.ts";

export interface FastenerThrough {
  /** `stud-console`. */
  readonly id: string;
  readonly diameter: number;
  readonly source: LimitSource;
}

export const fastenerThrough = (
  { fastener }: Pick<Mount, "fastener">,
  { hardware }: Catalogue,
): FastenerThrough | null => {
  const found = hardware.get(fastener);
  const id = fastener;
  if (found?.kind === "stud")
    return { id, diameter: found.body, source: limitOfFigures(found.figures) };
  const thread = found?.kind === "screw" ? metricThread(found.thread) : null;
  return thread === null
    ? null
    : {
        id,
        diameter: THREAD_DIAMETER[thread],
        source: { kind: "standard", name: `the diameter of the thread ${thread.toUpperCase()}` },
      };
};
