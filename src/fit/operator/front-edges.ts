// How far each control lies from the front edge of its console, along the surface of the panels.
//
// The front edge is the edge of the console's surfaces that is nearest to the operator. Of a desk that the operator sits
// before it is the edge ahead of the seat, and distances run forward; of a console beside the seat it is the long edge
// toward the seat, and distances run outward. Where surfaces lie behind one another (a desk and an upright part), the way
// runs over the nearer one, straight across the gap, and on over the next.

import { type Mm, mm } from "../../geometry/quantity.ts";
import { pointIn } from "../../geometry/space/frame.ts";
import { plus, spaceDistance, type Vector } from "../../geometry/space/vector.ts";
import type {
  ConsoleLayout,
  PlacedPanel,
  PosedOperator,
} from "../../layout/console/console-layout.ts";
import type { FrontEdgeFact } from "../fit-facts.ts";
import { sameFrontEdge } from "../fit-tolerance.ts";
import { touchedOf, touchPoint } from "../touched.ts";
import { edgesOfSurface, type Surface, type SurfaceEdge, surfacesOf } from "./surfaces.ts";

export const frontEdgeFacts = (
  operator: PosedOperator,
  layout: ConsoleLayout,
): readonly FrontEdgeFact[] => {
  const ways = surfacesOf(layout, operator).map((surface) => wayFrom(surface, operator));
  return layout.panels.flatMap((panel) => {
    const way = ways.find(({ surface }) => surface.name === surfaceName(panel));
    if (way === undefined) return [];
    const before = lengthBefore(way, ways);
    return touchedOf(panel).map((component) => {
      const at = touchPoint(component, panel);
      const distance = distanceAt(at, way, before);
      return {
        panel: panel.name,
        component: component.id,
        isImportant: component.common.important,
        distance,
        further: distanceAt(plus(at, panel.frame.y), way, before) - distance,
        span: component.placeSpan,
      };
    });
  });
};

const distanceAt = (at: Vector, { near, surface }: SurfaceWay, before: Mm): Mm =>
  mm(before + near.inward(pointIn(surface.frame, at)));

const surfaceName = ({ name, place }: PlacedPanel): string =>
  place.kind === "bay" ? place.bay : name;

/** A surface from the edge nearest to the operator to the one across from it. */
interface SurfaceWay {
  readonly surface: Surface;
  readonly near: SurfaceEdge;
  readonly far: SurfaceEdge;
}

const OPPOSITE = 2;

const wayFrom = (surface: Surface, operator: PosedOperator): SurfaceWay => {
  const edges = edgesOfSurface(surface);
  const away = ({ middle }: SurfaceEdge): number => awayFrom(operator, surface, middle);
  const nearest = edges.reduce(
    (best, edge, index) => (away(edge) < away(edges[best]!) ? index : best),
    0,
  );
  return {
    surface,
    near: edges[nearest]!,
    far: edges[(nearest + OPPOSITE) % edges.length]!,
  };
};

/** Forward of the seat back for what is sat at; aside from the middle of the seat for what stands beside. */
const awayFrom = ({ seat }: PosedOperator, surface: Surface, at: Vector): number =>
  surface.seat === "before" ? at.x - seat.x : Math.abs(at.y - seat.y);

/** From the console's front edge to this surface's own: over the surfaces that lie before it, and the gaps between. */
const lengthBefore = (way: SurfaceWay, ways: readonly SurfaceWay[]): Mm => {
  const before = ways.filter((other) => other !== way && liesBefore(other, way));
  // The one that ends nearest to where this one begins leads on; the others lie before that one, or beside.
  const [last] = before.toSorted(
    (a, b) =>
      spaceDistance(a.far.middle, way.near.middle) - spaceDistance(b.far.middle, way.near.middle),
  );
  if (last === undefined) return mm(0);
  const across = spaceDistance(last.near.middle, last.far.middle);
  return mm(lengthBefore(last, ways) + across + gapBetween(last, way));
};

/** Square to the edges: how far the one is shifted along the other is no way that a hand goes. */
const gapBetween = (nearer: SurfaceWay, further: SurfaceWay): Mm => {
  const [from, to] = [nearer.far.middle, further.near.middle];
  const across = nearer.surface.seat === "before" ? to.x - from.x : to.y - from.y;
  const up = to.z - from.z;
  return mm(Math.sqrt(across * across + up * up));
};

/** It ends before the other begins, and they lie side by side along the edge: what overlaps by nothing leads nowhere. */
const liesBefore = (nearer: SurfaceWay, further: SurfaceWay): boolean => {
  const { surface: a } = nearer;
  const { surface: b } = further;
  if (a.seat !== b.seat) return false;
  const [aBox, bBox] = [a.box, b.box];
  if (a.seat === "before")
    return (
      nearer.far.middle.x <= further.near.middle.x + sameFrontEdge &&
      nearer.near.middle.x < further.near.middle.x &&
      aBox.minY < bBox.maxY &&
      bBox.minY < aBox.maxY
    );
  const isOneSide = aBox.minY > bBox.maxY - sameFrontEdge || bBox.minY > aBox.maxY - sameFrontEdge;
  return isOneSide && outward(nearer, further) && aBox.minX < bBox.maxX && bBox.minX < aBox.maxX;
};

/** The further one is on the same side of the first, seen from the edge where the first begins. */
const outward = (nearer: SurfaceWay, further: SurfaceWay): boolean => {
  const across = nearer.far.middle.y - nearer.near.middle.y;
  const beyond = further.near.middle.y - nearer.far.middle.y;
  return across * beyond >= 0 && across !== 0;
};
