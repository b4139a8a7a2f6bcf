// What lies at one height of a layered solid: the spans that the walls below and above stand on, and the level faces, up
// where material ends and down where it begins. Gives a reason where more than two faces would meet along an edge.

import { arcBulge } from "../geometry/arc.ts";
import { containsPoint } from "../geometry/containment.ts";
import { type Contour, loop, vertex } from "../geometry/contour.ts";
import { contourArea } from "../geometry/measure.ts";
import type { Places } from "./step-places.ts";
import {
  type DirectedSpan,
  endOf,
  type LayerShape,
  type Span,
  spansOfEdge,
  spanTable,
  startOf,
} from "./step-spans.ts";
import { nextBound } from "./step-turn.ts";

export interface Level {
  /** Spans of each edge of the layer that ends here, in its edges' order. */
  readonly below: readonly (readonly DirectedSpan[])[];
  readonly above: readonly (readonly DirectedSpan[])[];
  readonly caps: readonly Cap[];
}

/** A level face: its outline first, then its holes, each with the face on its left as seen from above. */
export interface Cap {
  readonly faces: "up" | "down";
  readonly loops: readonly (readonly DirectedSpan[])[];
}

export type Levelled =
  | { readonly kind: "levelled"; readonly level: Level }
  | { readonly kind: "refused"; readonly why: string };

export const levelBetween = (
  below: LayerShape | null,
  above: LayerShape | null,
  places: Places,
): Levelled => {
  const table = spanTable(places);
  const spansOf = (
    own: LayerShape | null,
    other: LayerShape | null,
  ): readonly (readonly DirectedSpan[])[] =>
    (own?.edges ?? []).map((edge) => spansOfEdge(edge, other?.edges ?? [], { places, table }));
  const belowSpans = spansOf(below, above);
  const aboveSpans = spansOf(above, below);
  const rows = sidesOf(belowSpans.flat(), aboveSpans.flat(), { below, above });
  if (rows.some(isCrowded))
    return { kind: "refused", why: "parts of two layers touch along an edge only" };
  const up = loopsOf(
    rows.flatMap((row) => boundOf(row, "up")),
    places,
  );
  const down = loopsOf(
    rows.flatMap((row) => boundOf(row, "down")),
    places,
  );
  if (up === null || down === null)
    return { kind: "refused", why: "the outlines of a layer overlap" };
  const caps = [...capsOf(up, "up", places), ...capsOf(down, "down", places)];
  return { kind: "levelled", level: { below: belowSpans, above: aboveSpans, caps } };
};

/** Material on the left and right of a span, below and above the level, and whether walls stand on it. */
interface Sides {
  readonly span: Span;
  readonly below: Side;
  readonly above: Side;
}

interface Side {
  readonly left: boolean;
  readonly right: boolean;
}

const sidesOf = (
  below: readonly DirectedSpan[],
  above: readonly DirectedSpan[],
  layers: { readonly below: LayerShape | null; readonly above: LayerShape | null },
): readonly Sides[] => {
  const walls = { below: directions(below), above: directions(above) };
  const spans = new Set([...walls.below.keys(), ...walls.above.keys()]);
  return [...spans].map((span) => ({
    span,
    below: sideOf(span, walls.below.get(span), layers.below),
    above: sideOf(span, walls.above.get(span), layers.above),
  }));
};

const directions = (spans: readonly DirectedSpan[]): ReadonlyMap<Span, boolean> =>
  new Map(spans.map(({ span, isForward }) => [span, isForward]));

const sideOf = (span: Span, isForward: boolean | undefined, layer: LayerShape | null): Side => {
  if (isForward !== undefined) return { left: isForward, right: !isForward };
  const inside = layer?.hasMaterialAt(span.middle) ?? false;
  return { left: inside, right: inside };
};

const isWall = ({ left, right }: Side): boolean => left !== right;

/** Two walls that stand on one span with their material on opposite sides: four faces would meet. */
const isCrowded = ({ below, above }: Sides): boolean =>
  isWall(below) && isWall(above) && below.left !== above.left;

/** The span as it bounds the faces that look this way: with the face on its left. */
const boundOf = ({ span, below, above }: Sides, faces: Cap["faces"]): readonly DirectedSpan[] => {
  const isFace = (side: "left" | "right"): boolean =>
    faces === "up" ? below[side] && !above[side] : above[side] && !below[side];
  const left = isFace("left");
  return left === isFace("right") ? [] : [{ span, isForward: left }];
};

/**
 * Where several bounds leave one corner, the loop goes on along that which leaves no other between. null where a bound
 * leads nowhere: regions of one layer overlap.
 */
const loopsOf = (
  bounds: readonly DirectedSpan[],
  places: Places,
): readonly (readonly DirectedSpan[])[] | null => {
  const leaving = new Map<number, DirectedSpan[]>();
  for (const bound of bounds) {
    const known = leaving.get(startOf(bound));
    if (known === undefined) leaving.set(startOf(bound), [bound]);
    else known.push(bound);
  }
  const used = new Set<DirectedSpan>();
  const loops: DirectedSpan[][] = [];
  for (const first of bounds) {
    const run: DirectedSpan[] = [];
    for (let next = first; !used.has(next); ) {
      used.add(next);
      run.push(next);
      const onward = leaving.get(endOf(next));
      if (onward === undefined) return null;
      next = nextBound(next, onward, places);
    }
    if (run.length > 0) loops.push(run);
  }
  return loops;
};

interface BoundLoop {
  readonly run: readonly DirectedSpan[];
  readonly contour: Contour;
  readonly area: number;
}

/** Each hole goes to the smallest outline round it. */
const capsOf = (
  runs: readonly (readonly DirectedSpan[])[],
  faces: Cap["faces"],
  places: Places,
): readonly Cap[] => {
  const loops = runs.map((run): BoundLoop => {
    const contour = contourOf(run, places);
    return { run, contour, area: contourArea(contour) };
  });
  const outlines = loops.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area);
  const holes = loops.filter(({ area }) => area < 0);
  const owners = holes.map((hole) =>
    outlines.find(({ contour }) => containsPoint(contour, hole.run[0]!.span.middle)),
  );
  return outlines.map((outline) => ({
    faces,
    loops: [
      outline.run,
      ...holes.filter((_, index) => owners[index] === outline).map(({ run }) => run),
    ],
  }));
};

const contourOf = (run: readonly DirectedSpan[], places: Places): Contour =>
  loop(
    run.map((directed) => {
      const from = places.at(startOf(directed));
      const to = places.at(endOf(directed));
      const { edge } = directed.span;
      const turnsLeft = edge.kind === "arc" && edge.turnsLeft === directed.isForward;
      const bulge = edge.kind === "line" ? 0 : arcBulge(edge.centre, from, to, turnsLeft);
      return vertex(from.x, from.y, bulge);
    }),
  );
