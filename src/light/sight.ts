// Straight ways from lamps to the outside of the assembled stack: facts, one an opening, with the nearest lamp that is seen
// through it. Light that has to turn a corner is not looked for: it ends in black plastic.

import { type Point, point } from "../geometry/contour.ts";
import { type Cell, cellAt, type Slice, slicesOf } from "./air-cell.ts";
import { type Blocker, blockerBetween, type Place } from "./blocker.ts";
import type { Lamp } from "./lamp.ts";
import type { LightScene } from "./light-scene.ts";
import { type Opening, type OpeningKind, openingsFrom } from "./opening.ts";

export interface Sight {
  readonly lamp: Lamp;
  readonly through: OpeningKind;
  readonly owner: string;
  /** Where the way leaves. */
  readonly at: Point;
}

/** In the order of the chambers; what opens in front and behind is told once, by its front. */
export const sightsOf = (scene: LightScene): readonly Sight[] => {
  const known = kept.get(scene);
  if (known !== undefined) return known;
  const slices = slicesOf(scene);
  const found = new Map<string, Sight>();
  for (const chamber of chambersOf(scene.lamps, slices))
    for (const opening of openingsFrom(chamber, slices, scene)) {
      const key = `${opening.reach} ${opening.owner}`;
      const sight = found.has(key) ? null : firstSight(opening, chamber.lamps, scene);
      if (sight !== null) found.set(key, sight);
    }
  const sights = [...found.values()];
  kept.set(scene, sights);
  return sights;
};

const kept = new WeakMap<LightScene, readonly Sight[]>();

interface Chamber {
  readonly slice: Slice;
  readonly cell: Cell;
  readonly lamps: readonly Lamp[];
}

/** Lamps that share a free room. */
const chambersOf = (lamps: readonly Lamp[], slices: readonly Slice[]): readonly Chamber[] => {
  const chambers: { slice: Slice; cell: Cell; lamps: Lamp[] }[] = [];
  for (const lamp of lamps) {
    const slice = slices.find(({ low, high }) => lamp.at.z >= low && lamp.at.z < high);
    if (slice === undefined) continue;
    const cell = cellAt(slice, point(lamp.at.x, lamp.at.y));
    const known = chambers.find((one) => one.cell === cell);
    if (known === undefined) chambers.push({ slice, cell, lamps: [lamp] });
    else known.lamps.push(lamp);
  }
  return chambers;
};

/** The nearest lamp first: it is the one that dazzles. */
const firstSight = (
  opening: Opening,
  lamps: readonly Lamp[],
  { blockers }: LightScene,
): Sight | null => {
  const near = lamps.toSorted((a, b) => apart(a, opening.at) - apart(b, opening.at));
  const { kind: through, owner } = opening;
  for (const lamp of near) {
    const at = opening.targets.find((target) => isFree(lamp.at, target, { opening, blockers }));
    if (at !== undefined) return { lamp, through, owner, at: point(at.x, at.y) };
  }
  return null;
};

const apart = ({ at }: Lamp, to: Point): number =>
  (at.x - to.x) * (at.x - to.x) + (at.y - to.y) * (at.y - to.y);

const isFree = (
  from: Place,
  target: Place,
  { opening, blockers }: { readonly opening: Opening; readonly blockers: readonly Blocker[] },
): boolean => {
  const to = opening.reach === "into" ? target : beyond(from, target);
  return blockerBetween(from, to, blockers) === null;
};

/** Far enough to be clear of every knob and plug: 0.3 m past the opening. */
const PAST = 300;

const beyond = (from: Place, target: Place): Place => {
  const [dx, dy, dz] = [target.x - from.x, target.y - from.y, target.z - from.z];
  const scale = 1 + PAST / Math.sqrt(dx * dx + dy * dy + dz * dz);
  return { x: from.x + dx * scale, y: from.y + dy * scale, z: from.z + dz * scale };
};
