// How crowded a panel is: pairs of things whose boxes lie on each other. A slip in a pitch gives a dozen of them; thousands
// are a text that no floor above should have to look at pair by pair.

import { type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { type Extent, extentsOverlap } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { TOO_CROWDED } from "./codes.ts";
import type { CutOut, PlacedComponent, PlacedMarking } from "./panel-layout.ts";

/** A panel of sixty components at a quarter of their pitch has about as many. */
const MOST_PAIRS = 400;

interface Thing {
  readonly owner: string;
  readonly box: Extent;
  readonly span: Span;
}

/** One fault where there are more pairs than any slip gives; null where the panel can be judged. */
export const crowdedComponents = (
  components: readonly PlacedComponent[],
  cutOuts: readonly CutOut[],
): Finding | null => firstCrowd([...byLayer(cutOuts), bodiesOf(components)]);

/** The same for what is read on the face. */
export const crowdedMarkings = (markings: readonly PlacedMarking[]): Finding | null =>
  firstCrowd(byKind(markings));

const firstCrowd = (groups: readonly (readonly Thing[])[]): Finding | null => {
  for (const things of groups) {
    const pairs = overlappingPairs(things);
    const [first] = pairs;
    if (first !== undefined && pairs.length > MOST_PAIRS) return crowded(first);
  }
  return null;
};

const crowded = ([a, b]: readonly [Thing, Thing]): Finding =>
  finding(TOO_CROWDED, {
    message: `More than ${MOST_PAIRS} pairs of things lie on each other, ${a.owner} and ${b.owner} first: the panel is judged once they are apart.`,
    span: b.span,
    subjects: [a.owner, b.owner],
    limit: { value: MOST_PAIRS, unit: "count" },
    source: { kind: "geometry", name: "time to judge a panel" },
  });

const byLayer = (cutOuts: readonly CutOut[]): readonly (readonly Thing[])[] => {
  const layers = new Map<string, Thing[]>();
  for (const { layer, owner, contour, span } of cutOuts) {
    const things = layers.get(layer) ?? [];
    things.push({ owner, box: contourExtent(contour), span });
    layers.set(layer, things);
  }
  return [...layers.values()];
};

const bodiesOf = (components: readonly PlacedComponent[]): readonly Thing[] =>
  components.flatMap(({ id, bodies, span }) =>
    bodies.map(({ footprint }) => ({ owner: id, box: contourExtent(footprint), span })),
  );

/** Letters among letters and frames among frames: a border goes round letters all the time. */
const byKind = (markings: readonly PlacedMarking[]): readonly (readonly Thing[])[] => {
  const isFrame = ({ kind }: PlacedMarking): boolean => kind === "border" || kind === "bracket";
  const things = (of: readonly PlacedMarking[]): readonly Thing[] =>
    of.map(({ owner, box, span }) => ({ owner, box, span }));
  return [things(markings.filter((one) => !isFrame(one))), things(markings.filter(isFrame))];
};

/** Pairs of different owners, each pair of owners once; stops one beyond the most. */
const overlappingPairs = (things: readonly Thing[]): readonly (readonly [Thing, Thing])[] => {
  const sorted = things.toSorted((a, b) => a.box.minX - b.box.minX);
  const pairs = new Map<string, readonly [Thing, Thing]>();
  for (const [index, thing] of sorted.entries()) {
    for (const other of overlappingFrom(sorted, index)) {
      const key = [thing.owner, other.owner].sort().join("\n");
      if (!pairs.has(key)) pairs.set(key, [thing, other]);
      if (pairs.size > MOST_PAIRS) return [...pairs.values()];
    }
  }
  return [...pairs.values()];
};

/** Of those that begin further right, the ones that the thing at `index` lies on; one beyond the most is enough. */
const overlappingFrom = (sorted: readonly Thing[], index: number): readonly Thing[] => {
  const thing = sorted[index];
  const found: Thing[] = [];
  for (let next = index + 1; thing !== undefined && next < sorted.length; next += 1) {
    const other = sorted[next];
    if (other === undefined || other.box.minX >= thing.box.maxX) break;
    if (other.owner !== thing.owner && extentsOverlap(thing.box, other.box)) found.push(other);
  }
  return found;
};
