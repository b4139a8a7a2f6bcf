// Levers and the covers over them. A lever is shown thrown to its first position.

import { loop, vertex } from "../geometry/contour.ts";
import { extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { sine, toRadians } from "../geometry/trigonometry.ts";
import { along, area, at, bar, disc, type Scene, turned } from "./art-scene.ts";
import type { ArtPiece } from "./tone.ts";

export const toggleArt = (scene: Scene): readonly ArtPiece[] => {
  const { lever, hold } = scene.component.part;
  if (lever === null || scene.body("guard") !== null) return [];
  const root = at(scene);
  const radius = lever.tip / 2;
  const tip = along(root, turned(scene, lever.line), lever.length * sine(toRadians(lever.throw)));
  const bush = hold.kind === "bush" ? hold.diameter / 2 : lever.tip;
  const collar = scene.component.part.hand === "lever-lock-toggle";
  return [
    area("well", disc(root, bush * 0.72)),
    area("metal", tapered(root, tip, { from: radius * 0.7, to: radius * 0.95 })),
    area("metal-light", disc(tip, radius)),
    ...(collar ? [area("metal-dark", disc(tip, radius * 0.68))] : []),
    area("shine", disc(along(tip, { x: -0.3, y: 0.3 }, radius), radius * 0.3)),
  ];
};

/** A hinged cover, closed: its lid with ribs, the hinge at the top. */
export const guardArt = (scene: Scene): readonly ArtPiece[] => {
  const guard = scene.body("guard");
  if (guard === null) return [];
  const box = contourExtent(guard.footprint);
  const across = extentWidth(box);
  const up = turned(scene, 0);
  const side = turned(scene, 90);
  const isUpright = Math.abs(up.y) > Math.abs(up.x);
  const long = isUpright ? extentHeight(box) : across;
  const wide = isUpright ? across : extentHeight(box);
  const centre = { x: box.minX, y: box.minY };
  const middle = along(
    along({ ...centre }, { x: 1, y: 0 }, across / 2),
    { x: 0, y: 1 },
    extentHeight(box) / 2,
  );
  const rib = (share: number) => {
    const line = along(middle, up, long * share);
    return bar(along(line, side, -wide * 0.34), along(line, side, wide * 0.34), long * 0.022);
  };
  const hinge = along(middle, up, long * 0.46);
  return [
    area("guard", guard.footprint),
    area(
      "guard-rib",
      bar(along(hinge, side, -wide * 0.5), along(hinge, side, wide * 0.5), long * 0.05),
    ),
    area("guard-rib", ...[-0.38, -0.31, -0.24, -0.17].map(rib)),
  ];
};

const tapered = (
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
  half: { readonly from: number; readonly to: number },
) => {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0)
    return loop([vertex(from.x - half.from, from.y, 1), vertex(from.x + half.from, from.y, 1)]);
  const sideX = -dy / length;
  const sideY = dx / length;
  return loop([
    vertex(from.x + sideX * half.from, from.y + sideY * half.from, 1),
    vertex(from.x - sideX * half.from, from.y - sideY * half.from),
    vertex(to.x - sideX * half.to, to.y - sideY * half.to, 1),
    vertex(to.x + sideX * half.to, to.y + sideY * half.to),
  ]);
};
