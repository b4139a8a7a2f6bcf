// Where the holes of a bay's rails stand, in the bay's own plane: on the pitch of its mount; in units as the standard has them;
// or where the screws of its panels come, which is as the panels themselves are drilled.

import { shapeSize } from "../../catalogue/shape-contour.ts";
import type { FrameDesign } from "../../design/frame-design.ts";
import { type Point, point } from "../../geometry/contour.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { rackUprightHoles } from "../../standards/rack.ts";
import { wholePitch } from "./frame-tolerance.ts";

export interface RailHoles {
  /** From where the bay begins. */
  readonly left: readonly Point[];
  readonly right: readonly Point[];
  /** From the bay's middle to the innermost and the outermost; null where there is none. */
  readonly reach: { readonly inner: number; readonly outer: number } | null;
  /** As wide as the panel's own. */
  readonly size: number;
  /** Of one rail: the least between the middles of two holes; null where there are no two. */
  readonly apart: number | null;
}

export const railHoles = (layout: BayLayout): RailHoles => {
  const places = placesOf(layout);
  const left = inOrder(places.filter(({ x }) => x < 0));
  const right = inOrder(places.filter(({ x }) => x > 0));
  const out = [...left, ...right].map(({ x }) => Math.abs(x));
  const gaps = [left, right].flatMap(gapsOf);
  return {
    left,
    right,
    reach: out.length === 0 ? null : { inner: Math.min(...out), outer: Math.max(...out) },
    size: shapeSize(layout.mount.holes.hole),
    apart: gaps.length === 0 ? null : Math.min(...gaps),
  };
};

/** As the frame's text says, or the panel's own. */
export const railHoleSize = ({ rails }: FrameDesign, { size }: Pick<RailHoles, "size">): number =>
  rails.hole ?? size;

const placesOf = ({ mount, length, modules, screws }: BayLayout): readonly Point[] => {
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

const inOrder = (places: readonly Point[]): readonly Point[] =>
  places.toSorted((a, b) => a.y - b.y || a.x - b.x);

/** Between neighbours along the rail. */
const gapsOf = (places: readonly Point[]): readonly number[] =>
  places.slice(1).map(({ x, y }, index) => {
    const [across, along] = [x - places[index]!.x, y - places[index]!.y];
    return Math.sqrt(across * across + along * along);
  });
