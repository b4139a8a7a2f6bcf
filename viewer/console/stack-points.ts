// The corners of everything that a panel is drawn as, where its levels stand apart or it is turned round: what a view of it must
// hold. Pure.

import { pointOut } from "../../src/geometry/space/frame.ts";
import { type Vector, vector } from "../../src/geometry/space/vector.ts";
import type { SceneGroup, SceneLot, ScenePanel } from "./console-messages.ts";
import { LIFT, type Look } from "./look.ts";

/** `group`: with its shapes as they were last sent. Sweeps count while they are shown. */
export const stackPoints = (
  { frame, lots }: SceneGroup,
  { name, width, levels }: ScenePanel,
  look: Pick<Look, "chosen" | "turned" | "apart" | "showSweeps">,
): readonly Vector[] => {
  const apart = look.chosen === name ? look.apart : 0;
  return (lots ?? [])
    .filter(({ tone }) => tone !== "sweep" || look.showSweeps)
    .flatMap((lot) => cornersOf(lot, (levels.length - 1 - lot.level) * apart))
    .map(({ x, y, z }) =>
      pointOut(frame, look.turned === name ? vector(width - x, y, LIFT - z) : vector(x, y, z)),
    );
};

const cornersOf = ({ positions }: SceneLot, lift: number): readonly Vector[] => {
  if (positions.length === 0) return [];
  const low = [0, 1, 2].map((axis) => extreme(positions, axis, Math.min));
  const high = [0, 1, 2].map((axis) => extreme(positions, axis, Math.max));
  return [low[0]!, high[0]!].flatMap((x) =>
    [low[1]!, high[1]!].flatMap((y) => [low[2]!, high[2]!].map((z) => vector(x, y, z + lift))),
  );
};

const extreme = (
  positions: Float32Array,
  axis: number,
  of: (a: number, b: number) => number,
): number => {
  let found = positions[axis]!;
  for (let at = axis; at < positions.length; at += 3) found = of(found, positions[at]!);
  return found;
};
