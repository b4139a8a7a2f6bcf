// The door of this floor's full grade: bodies prepared once for the solid kernel, then what can be said of them and of the
// console round them. A prepared set holds memory of the kernel's own until it is deleted.

import type { Kernel } from "../geometry/solid/kernel.ts";
import type { ConsoleLayout } from "../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../parts/frame/frame-part.ts";
import { type BodyGroup, bodyGroups } from "./body-groups.ts";
import { isBorne, isLyingOn } from "./by-design.ts";
import type { ConsoleBody } from "./console-body.ts";
import { consoleInside } from "./console-inside.ts";
import { depthFacts } from "./depth-facts.ts";
import type { FitFacts, PairFact } from "./fit-facts.ts";
import { searchLength } from "./fit-tolerance.ts";
import { hullRelation } from "./hull-relation.ts";
import { type KernelShapes, kernelShapes } from "./kernel-shapes.ts";
import { hasLatch, isLatch, latchFacts } from "./latch-facts.ts";
import { nearPairs } from "./near-pairs.ts";
import { outsideFacts } from "./outside-facts.ts";
import { byIds } from "./pair-order.ts";
import { pairRelation } from "./pair-relation.ts";

export interface PreparedBodies {
  readonly bodies: readonly ConsoleBody[];
  readonly groups: readonly BodyGroup[];
  readonly shapes: KernelShapes;
  readonly delete: () => void;
}

/**
 * Shapes go into the kernel when a verdict first asks for them, one for each recipe. `from`: a set prepared before, whose
 * shapes are shared from then on: one of the two is to be deleted, when both are done with.
 */
export const prepareBodies = (
  bodies: readonly ConsoleBody[],
  kernel: Kernel,
  from: PreparedBodies | null = null,
): PreparedBodies => {
  const shapes = from?.shapes ?? kernelShapes(kernel);
  return { bodies, groups: bodyGroups(bodies), shapes, delete: shapes.delete };
};

export type Verdict = Pick<FitFacts, "pairs" | "outside" | "latches" | "depths">;

/**
 * Clash: two bodies share more than 0.01 mm³, deeper than 0.001 mm; touching: no more than that, and no gap over 0.001 mm;
 * apart: the least distance, where it is less than `within`. Bodies of one panel are not held against one another, but
 * for the room of a latch: the panel's own checks do that. Nor is a panel that lies on its rails a fact.
 */
export const verdict = (
  prepared: PreparedBodies,
  layout: ConsoleLayout,
  of: { readonly frame?: ConsoleFrame | null; readonly within?: number } = {},
): Verdict => {
  const { frame = null, within = searchLength } = of;
  const byPanel = new Map(prepared.groups.map(({ panel, bodies }) => [panel, bodies]));
  const panels = layout.panels.flatMap((panel) => {
    const bodies = byPanel.get(panel.name);
    return bodies === undefined ? [] : [{ panel, bodies }];
  });
  const outsideOf = (bodiesOf: typeof panels): Verdict["outside"] =>
    outsideFacts(bodiesOf, (panel) => consoleInside(layout, frame, panel), prepared.shapes);
  const isOutside = (latch: ConsoleBody): boolean => {
    const panel = layout.panels.find(({ name }) => name === latch.panel);
    return panel !== undefined && outsideOf([{ panel, bodies: [latch] }]).length > 0;
  };
  const clashes = (latch: ConsoleBody, other: ConsoleBody): boolean =>
    pairRelation(latch, other, { shapes: prepared.shapes, within: 0 })?.kind === "clash";
  const pairs = pairFacts(prepared, within);
  const solid = panels.map(({ panel, bodies }) => ({
    panel,
    bodies: bodies.filter((body) => !isLatch(body)),
  }));
  return {
    pairs: pairs.filter((pair) => !hasLatch(pair)),
    outside: outsideOf(solid),
    latches: latchFacts({
      pairs: pairs.filter(hasLatch),
      bodies: prepared.bodies,
      clashes,
      isOutside,
    }),
    depths: depthFacts(solid, layout.bays),
  };
};

const pairFacts = ({ groups, shapes }: PreparedBodies, within: number): readonly PairFact[] =>
  nearPairs(groups, within)
    .flatMap(([a, b]): readonly PairFact[] => {
      // Most panels lie on their rails: only where the two reach into one another is the kernel worth its time.
      const isLying = isLyingOn(a, b);
      if (isLying && hullRelation(a, b, 0)?.kind !== "meet") return [];
      const relation = pairRelation(a, b, { shapes, within });
      return relation === null ||
        (isLying && relation.kind !== "clash") ||
        (isBorne(a, b) && relation.kind === "touching")
        ? []
        : [{ a, b, relation }];
    })
    .sort(byIds);
