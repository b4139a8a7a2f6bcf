// How long a screw must be and may be: everything that it runs through at its thickest, paint included, and what it ends
// in. The check, the parts list and the papers take it from here, so that they can't differ.

import type { Nut, Screw, Washer } from "../catalogue/hardware.ts";
import type { Catalogue } from "../catalogue/record.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { samePlace } from "../geometry/tolerance.ts";
import { isHeadRoom } from "../layout/holes.ts";
import type { LayerLayout, PanelLayout, Range } from "../layout/panel-layout.ts";
import { sumOf } from "../layout/range.ts";
import { finishedThickness, lastRigidSheet } from "../layout/stack.ts";
import { type MetricThread, THREAD_DIAMETER } from "../standards/metric-fasteners.ts";
import type { LampBoxPart } from "./printed/lamp-box-facts.ts";
import type { BossFact } from "./printed/printed-facts.ts";
import type { PrintedPart } from "./printed/printed-part.ts";
import type { TrimPart } from "./printed/trim-facts.ts";

export interface ScrewNeed {
  readonly thread: string;
  readonly least: Mm;
  /** Where it would meet the bottom of its hole; null where it may stand out. */
  readonly most: Mm | null;
}

/** `insert`: it ends in a boss of that printed part. `nut`: behind all layers. */
export type StackScrewNeed = ScrewNeed &
  (
    | { readonly ends: "insert"; readonly owner: string; readonly boss: BossFact }
    | { readonly ends: "nut"; readonly nut: Nut | null }
  );

/** Thread that stands out of a nut: two turns of a coarse M3 (common practice). */
const BEYOND_NUT = 1;

/** Which printed part's inserts the screws of the stack end in; null where no stack is screwed. */
export const stackScrewNeed = (
  layout: PanelLayout,
  printedParts: readonly PrintedPart[],
  catalogue: Catalogue,
): StackScrewNeed | null => {
  const thread = layout.design.fixings?.screws;
  if (thread === undefined) return null;
  for (const part of printedParts) {
    const owner = layout.layers.find(({ id }) => id === part.owner);
    const boss = part.facts.bosses.find(({ kind }) => kind === "insert");
    if (owner === undefined || boss === undefined) continue;
    const ahead = layout.layers.filter(({ index }) => index < owner.index);
    return { ...insertNeed(ahead, boss, thread), ends: "insert", owner: part.owner, boss };
  }
  const nut = nutFor(thread, catalogue);
  return { ...nutNeed(layout.layers, thread, nut), ends: "nut", nut };
};

type Through = readonly Pick<LayerLayout, "thickness" | "paint" | "stock">[];

/** One diameter of thread holds (common practice), at the layers' thickest; not to the bottom at their thinnest. */
const insertNeed = (
  through: Through,
  { depth }: Pick<BossFact, "depth">,
  thread: MetricThread,
): ScrewNeed => {
  const all = sumOf(through.map(finishedThickness));
  return {
    thread,
    least: mm(all.high + THREAD_DIAMETER[thread]),
    most: mm(all.low + depth),
  };
};

const nutNeed = (through: Through, thread: string, nut: Nut | null, behind = 0): ScrewNeed => {
  const all = sumOf(through.map(finishedThickness));
  return { thread, least: mm(all.high + behind + (nut?.thickness ?? 0) + BEYOND_NUT), most: null };
};

/** `insert`: of an angled box. `rail`: behind a wooden rail, with a washer. `open`: what it ends in is not known; room for a nut. */
export type MountScrewNeed = ScrewNeed &
  (
    | { readonly ends: "insert" | "open" }
    | { readonly ends: "rail"; readonly nut: Nut | null; readonly washer: Washer | null }
  );

/**
 * What the mount's screws clamp: the last rigid sheet, and those before it that give their heads no room; and a wooden rail.
 * `rail`: how thick that is; null where the panel is on none.
 */
export const mountScrewNeed = (
  {
    layout,
    printedParts,
    rail,
  }: {
    readonly layout: PanelLayout;
    readonly printedParts: readonly PrintedPart[];
    readonly rail: Mm | null;
  },
  screw: Screw,
  catalogue: Catalogue,
): MountScrewNeed => {
  const through = clampedByMount(layout);
  const box = printedParts.find(({ role }) => role === "angled-box");
  const boss = box?.facts.bosses.find(({ kind }) => kind === "insert");
  const thread = metricThread(screw.thread);
  if (boss !== undefined && thread !== null)
    return { ...insertNeed(through, boss, thread), ends: "insert" };
  const nut = nutFor(screw.thread, catalogue);
  if (rail === null) return { ...nutNeed(through, screw.thread, nut), ends: "open" };
  const washer = plainWasher(screw.thread, catalogue);
  const behind = rail + (washer?.thickness ?? 0);
  return { ...nutNeed(through, screw.thread, nut, behind), ends: "rail", nut, washer };
};

/** What the mount's fasteners hold, paint included. */
export const mountGrip = (layout: PanelLayout): Range =>
  sumOf(clampedByMount(layout).map(finishedThickness));

const clampedByMount = (layout: PanelLayout): readonly LayerLayout[] => {
  const held = lastRigidSheet(layout.layers);
  return layout.layers.filter(
    (layer) => layer.index <= held && !isHeadRoom(layer, layout.mount, held),
  );
};

export const metricThread = (name: string): MetricThread | null =>
  METRIC.find((thread) => thread === name.toLowerCase()) ?? null;

const METRIC: readonly MetricThread[] = ["m2", "m2.5", "m3", "m4", "m5", "m6", "m8"];

const nutFor = (thread: string, { hardware }: Catalogue): Nut | null =>
  [...hardware.values()].find(
    (record): record is Nut =>
      record.kind === "nut" && record.thread.toLowerCase() === thread.toLowerCase(),
  ) ?? null;

/** The catalogue calls plain washers by their thread; those that come in a part's bag have its own. */
const plainWasher = (thread: string, { hardware }: Catalogue): Washer | null => {
  const found = hardware.get(`washer-${thread.toLowerCase().replace(".", "-")}`);
  return found?.kind === "washer" ? found : null;
};

/** The lid of a lamp box on the inserts of its ears; null where nothing is screwed. */
export const lidScrewNeed = ({ facts, lampBox }: LampBoxPart): ScrewNeed | null => {
  const boss = facts.bosses.find(({ kind }) => kind === "insert");
  const thread = boss?.thread == null ? null : metricThread(boss.thread);
  if (boss === undefined || thread === null) return null;
  const { thickness } = lampBox.lid;
  const least = mm(thickness + THREAD_DIAMETER[thread]);
  return { thread, least, most: mm(thickness + boss.depth) };
};

/** A trim is screwed on from behind, through the sheets that its display is clamped to; null where it is not screwed. */
export const trimScrewNeed = (part: TrimPart, layout: PanelLayout): ScrewNeed | null => {
  const boss = part.facts.bosses.find(({ kind }) => kind === "thread-forming");
  const clamped = layout.components.find(({ id }) => id === part.owner)?.clamped;
  const thread = boss?.thread == null ? null : metricThread(boss.thread);
  if (boss === undefined || clamped === undefined || thread === null) return null;
  const through = layout.layers.filter(
    ({ index }) => index >= clamped.first && index <= clamped.last,
  );
  return insertNeed(through, boss, thread);
};

export interface SoldScrew {
  readonly screw: Screw;
  readonly length: Mm;
}

/** By length, then by id. A countersunk head would wedge acrylic apart and is left out. */
export const soldScrews = (thread: string, { hardware }: Catalogue): readonly SoldScrew[] =>
  [...hardware.values()]
    .filter(
      (record): record is Screw =>
        record.kind === "screw" &&
        record.thread.toLowerCase() === thread.toLowerCase() &&
        record.head !== "countersunk",
    )
    .flatMap((screw) => screw.lengths.map((length) => ({ screw, length })))
    .sort((a, b) => a.length - b.length || (a.screw.id < b.screw.id ? -1 : 1));

/** The shortest that is sold and long enough; null where none is, or where it would meet the bottom. */
export const screwFor = (need: ScrewNeed, sold: readonly SoldScrew[]): SoldScrew | null => {
  const { least, most } = need;
  return (
    sold.find(
      ({ length }) => length >= least - samePlace && (most === null || length <= most + samePlace),
    ) ?? null
  );
};
