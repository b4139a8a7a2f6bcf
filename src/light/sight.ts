// Straight ways from lamps to the outside of the assembled stack: facts, one an opening, with the nearest lamp that is seen
// through it. Light that has to turn a corner is not looked for: it ends in black plastic.

import { type Point, point } from "../geometry/contour.ts";
import { type Extent, extent } from "../geometry/extent.ts";
import { type Cell, cellAt, type Slice, slicesOf } from "./air-cell.ts";
import { type Blocker, blockersToward, freeWay, type Place } from "./blocker.ts";
import { cellOpenings } from "./cell-opening.ts";
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
  const look = (opening: Opening, lamps: readonly Lamp[]): void => {
    const key = `${opening.reach} ${opening.owner}`;
    const sight = found.has(key) ? null : firstSight(opening, lamps, scene);
    if (sight !== null) found.set(key, sight);
  };
  for (const chamber of chambersOf([...scene.lamps, ...scene.componentLamps], slices))
    for (const opening of openingsFrom(chamber, slices, scene)) look(opening, chamber.lamps);
  for (const { lamps, openings } of cellOpenings(scene))
    for (const opening of openings) look(opening, lamps);
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
const firstSight = (opening: Opening, lamps: readonly Lamp[], scene: LightScene): Sight | null => {
  const near = lamps
    .filter((lamp) => !isMeant(lamp, opening) && mayPass(lamp.at, opening))
    .toSorted((a, b) => apart(a, opening.at) - apart(b, opening.at));
  if (near.length === 0) return null;
  const { kind: through, owner } = opening;
  const targets = opening.targets();
  if (targets.length === 0) return null;
  const zone = zoneOf(targets);
  for (const lamp of near) {
    const blockers = blockersOf(lamp, scene.blockers);
    const isFreeBeyond = freeWay(blockers);
    const isFreeTo = freeWay(blockersToward(lamp.at, zone.box, zone, blockers));
    const at = targets.find(
      (target) =>
        isFreeTo(lamp.at, target) &&
        (opening.reach === "into" || isFreeBeyond(target, beyond(lamp.at, target))),
    );
    if (at !== undefined) return { lamp, through, owner, at: point(at.x, at.y) };
  }
  return null;
};

/**
 * A lamp of its own is seen through its own hole, and what glows round it in a bare sheet is chosen with the sheet: only
 * other components' openings count.
 */
const isMeant = ({ of }: Lamp, { owner, kind }: Opening): boolean =>
  of.kind === "component" && (of.id === owner || !OF_COMPONENTS.includes(kind));

const OF_COMPONENTS: readonly OpeningKind[] = [
  "lever",
  "shaft",
  "nut",
  "button",
  "lens",
  "display",
  "part",
];

const blockersOf = ({ clear }: Lamp, blockers: readonly Blocker[]): readonly Blocker[] =>
  clear.length === 0 ? blockers : blockers.filter(({ owner }) => !clear.includes(owner));

/** A way that leans too much is stopped by the far wall of what it has to pass between. */
const mayPass = (lamp: Place, { throat, at }: Opening): boolean => {
  if (throat === null) return true;
  const dx = at.x - lamp.x;
  const dy = at.y - lamp.y;
  const aside = Math.sqrt(dx * dx + dy * dy) - throat.width / 2;
  return (aside * (throat.high - throat.low)) / (throat.high - lamp.z) <= throat.width;
};

const apart = ({ at }: Lamp, to: Point): number =>
  (at.x - to.x) * (at.x - to.x) + (at.y - to.y) * (at.y - to.y);

interface Zone {
  readonly box: Extent;
  readonly low: number;
  readonly high: number;
}

const zoneOf = (places: readonly Place[]): Zone => {
  const [x, y, z] = [places.map((at) => at.x), places.map((at) => at.y), places.map((at) => at.z)];
  return {
    box: extent(Math.min(...x), Math.min(...y), Math.max(...x), Math.max(...y)),
    low: Math.min(...z),
    high: Math.max(...z),
  };
};

/** Far enough to be clear of every knob and plug: 0.3 m past the opening. */
const PAST = 300;

const beyond = (from: Place, target: Place): Place => {
  const [dx, dy, dz] = [target.x - from.x, target.y - from.y, target.z - from.z];
  const scale = 1 + PAST / Math.sqrt(dx * dx + dy * dy + dz * dz);
  return { x: from.x + dx * scale, y: from.y + dy * scale, z: from.z + dz * scale };
};
