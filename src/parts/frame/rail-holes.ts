// Where the holes of a bay's rails stand, in the bay's own plane: on the pitch of its mount; in units as the standard has them;
// or where the screws of its panels come, which is as the panels themselves are drilled.

import { shapeSize } from "../../catalogue/shape-contour.ts";
import type { FrameDesign } from "../../design/frame-design.ts";
import { type Point, point } from "../../geometry/contour.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout, BayScrew } from "../../layout/console/console-layout.ts";
import { rackUprightHoles } from "../../standards/rack.ts";
import { wholePitch } from "./frame-tolerance.ts";

/** `name`: the panel's own hole that it lies under (`mount.1.left of winch`), or its number on its rail. */
export type RailHole = BayScrew;

export interface RailHoles {
  /** From where the bay begins. */
  readonly left: readonly RailHole[];
  readonly right: readonly RailHole[];
  /** The innermost and the outermost from the bay's middle, as far as they are from it; null where there is none. */
  readonly reach: { readonly inner: number; readonly outer: number } | null;
  readonly innermost: RailHole | null;
  readonly outermost: RailHole | null;
  /** As wide as the panel's own. */
  readonly size: number;
  /** Of one rail: the two whose middles stand nearest to one another; null where there are no two. */
  readonly nearest: RailHolePair | null;
}

export interface RailHolePair {
  readonly apart: number;
  readonly names: readonly [string, string];
}

export const railHoles = (layout: BayLayout): RailHoles => {
  const places = placesOf(layout);
  const left = numbered(inOrder(places.filter(({ x }) => x < 0)), "left");
  const right = numbered(inOrder(places.filter(({ x }) => x > 0)), "right");
  const out = [...left, ...right].toSorted((a, b) => Math.abs(a.x) - Math.abs(b.x));
  const [innermost = null] = out;
  const outermost = out.find(({ x }) => Math.abs(x) === Math.abs(out.at(-1)?.x ?? 0)) ?? null;
  return {
    left,
    right,
    reach:
      innermost === null || outermost === null
        ? null
        : { inner: Math.abs(innermost.x), outer: Math.abs(outermost.x) },
    innermost,
    outermost,
    size: shapeSize(layout.mount.holes.hole),
    nearest: nearestOf([left, right].flatMap(pairsOf)),
  };
};

/** As the frame's text says, or the panel's own. */
export const railHoleSize = ({ rails }: FrameDesign, { size }: Pick<RailHoles, "size">): number =>
  rails.hole ?? size;

type RailPlace = Point & Partial<Pick<RailHole, "name">>;

/** As the holes of the bar are called where no panel's own names them. */
const numbered = (places: readonly RailPlace[], side: "left" | "right"): readonly RailHole[] =>
  places.map((place, index) => ({
    ...place,
    name: place.name ?? `rail-hole.${index + 1} (${side})`,
  }));

const placesOf = ({ mount, length, modules, screws }: BayLayout): readonly RailPlace[] => {
  const { holes } = mount;
  switch (holes.kind) {
    case "columns": {
      const count = Math.floor((length - 2 * holes.first) / holes.pitch + wholePitch) + 1;
      const rows = Array.from(
        { length: Math.max(0, count) },
        (_, index) => holes.first + index * holes.pitch,
      );
      return columns(holes.apart, rows);
    }
    case "units":
      return columns(holes.apart, rackUprightHoles(Math.floor(modules + wholePitch)));
    case "corners":
    case "subrack":
      return screws;
  }
};

const columns = (apart: number, rows: readonly number[]): readonly Point[] =>
  rows.flatMap((y) => [point(-apart / 2, y), point(apart / 2, y)]);

const inOrder = (places: readonly RailPlace[]): readonly RailPlace[] =>
  places.toSorted((a, b) => a.y - b.y || a.x - b.x);

/** Between neighbours along the rail. */
/** Of those that are equally near the first. */
const nearestOf = (pairs: readonly RailHolePair[]): RailHolePair | null => {
  const least = Math.min(...pairs.map(({ apart }) => apart));
  return pairs.find(({ apart }) => apart <= least + samePlace) ?? null;
};

const pairsOf = (places: readonly RailHole[]): readonly RailHolePair[] =>
  places.slice(1).map(({ x, y, name }, index) => {
    const before = places[index]!;
    const [across, along] = [x - before.x, y - before.y];
    return {
      apart: Math.sqrt(across * across + along * along),
      names: [before.name, name],
    };
  });
