// Where panels stand along their bays, in modules: at a module, after a neighbour, or after whatever was written before them.

import type { Span } from "../../diagnostics/finding.ts";
import { type Mm, mm } from "../../geometry/quantity.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { BareBay } from "./bays.ts";
import type { FreeRun } from "./console-layout.ts";

/** A use of a bay as written, with the size that its panel has along it. */
export interface BayUse {
  readonly name: string;
  readonly bay: BareBay;
  readonly module: number | null;
  readonly after: string | null;
  /** Nominal size along the bay. */
  readonly size: Mm;
  readonly span: Span;
}

export interface Stretch {
  readonly use: BayUse;
  readonly module: number;
  readonly from: Mm;
  readonly to: Mm;
}

export type Stretched =
  | { readonly kind: "placed"; readonly stretch: Stretch }
  /** What it follows has no place itself, and that has been said. */
  | { readonly kind: "follower" }
  | { readonly kind: "unknown-neighbour"; readonly use: BayUse }
  | { readonly kind: "circle"; readonly uses: readonly BayUse[] };

/** A panel that has been said to have no place, where it stands in the text: how much of the bay it takes is not known. */
export interface LostUse {
  readonly name: string;
  /** null: of any bay. */
  readonly bay: string | null;
  readonly start: number;
}

/** In text order. */
export const stretchesOf = (
  uses: readonly BayUse[],
  lost: readonly LostUse[],
): readonly Stretched[] => {
  const known = new Map<BayUse, Stretched>();
  const placing: BayUse[] = [];
  const placeOf = (use: BayUse): Stretched => {
    const before = known.get(use);
    if (before !== undefined) return before;
    if (placing.includes(use)) return { kind: "circle", uses: placing.slice(placing.indexOf(use)) };
    placing.push(use);
    const order = orderOf(use, { uses, lost });
    const found = order.kind === "after" ? behind(use, placeOf(order.use)) : order;
    placing.pop();
    known.set(use, found);
    return found;
  };
  return uses.map(placeOf);
};

/** Where it stands by its own words, or the use that it stands behind. */
const orderOf = (
  use: BayUse,
  { uses, lost }: { readonly uses: readonly BayUse[]; readonly lost: readonly LostUse[] },
): Stretched | { readonly kind: "after"; readonly use: BayUse } => {
  if (use.module !== null) return at(use, use.module);
  if (use.after === null) {
    const before = writtenBefore(use, uses);
    if (lost.some((one) => standsBetween(one, before, use))) return { kind: "follower" };
    return before === undefined ? at(use, 0) : { kind: "after", use: before };
  }
  const named = uses.find(({ name, bay }) => name === use.after && bay === use.bay);
  if (named !== undefined) return { kind: "after", use: named };
  return lost.some(({ name }) => name === use.after)
    ? { kind: "follower" }
    : { kind: "unknown-neighbour", use };
};

const behind = (use: BayUse, neighbour: Stretched): Stretched => {
  switch (neighbour.kind) {
    case "placed":
      return at(use, nextModule(neighbour.stretch));
    case "circle":
      return neighbour.uses.includes(use) ? neighbour : { kind: "follower" };
    case "follower":
    case "unknown-neighbour":
      return { kind: "follower" };
  }
};

/** What no stretch takes, from the beginning of the bay to its end. */
export const freeRuns = (bay: BareBay, taken: readonly Stretch[]): readonly FreeRun[] => {
  const runs: FreeRun[] = [];
  let free = 0;
  for (const stretch of taken.toSorted((a, b) => a.module - b.module)) {
    if (stretch.module > free + arithmeticNoise) runs.push(freeRun(bay, free, stretch.module));
    free = Math.max(free, nextModule(stretch));
  }
  if (free < bay.modules - arithmeticNoise) runs.push(freeRun(bay, free, bay.modules));
  return runs;
};

const freeRun = ({ pitch }: BareBay, from: number, to: number): FreeRun => ({
  from: mm(from * pitch),
  to: mm(to * pitch),
  modules: to - from,
});

const writtenBefore = (use: BayUse, uses: readonly BayUse[]): BayUse | undefined =>
  uses.slice(0, uses.indexOf(use)).findLast(({ bay }) => bay === use.bay);

/** Between two uses of a bay, by the order of the text. */
const standsBetween = (lost: LostUse, before: BayUse | undefined, use: BayUse): boolean =>
  (lost.bay === null || lost.bay === use.bay.id) &&
  lost.start < use.span.start &&
  (before === undefined || lost.start > before.span.start);

const at = (use: BayUse, module: number): Stretched => {
  const { pitch, mount } = use.bay;
  // A rack panel is a little less than its units: it lies in the middle of them.
  const from = module * pitch + mount.height.less / 2;
  const stretch = { use, module, from: mm(from), to: mm(from + use.size) };
  return { kind: "placed", stretch };
};

/** The next place where a panel's fasteners can stand: a whole pitch; a bay without one goes on where the panel ends. */
const nextModule = ({ use, module }: Stretch): number => {
  const { pitch, mount } = use.bay;
  const takes = (use.size + mount.height.less) / pitch;
  return module + (mount.height.unit === "mm" ? takes : Math.ceil(takes - arithmeticNoise));
};
