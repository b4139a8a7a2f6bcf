// Ribs, walls and obstacles of a console as bodies: they stand where the layout has put them.

import { meshExtent } from "../../geometry/solid/mesh.ts";
import { recipeExtent } from "../../geometry/solid/recipe-extent.ts";
import { boxOut } from "../../geometry/space/space-box.ts";
import type { ObstacleLayout } from "../../layout/console/console-layout.ts";
import type { ConsoleBody } from "../console-body.ts";

/** The second of two alike names gets a number. */
export const obstacleBodies = (obstacles: readonly ObstacleLayout[]): readonly ConsoleBody[] =>
  obstacles.map((obstacle, index) => {
    const { role, name } = obstacle;
    const alike = obstacles
      .slice(0, index)
      .filter((other) => other.role === role && other.name === name).length;
    const id = alike === 0 ? `${role} ${name}` : `${role} ${name}.${alike + 1}`;
    return obstacleBody(obstacle, id);
  });

const obstacleBody = (obstacle: ObstacleLayout, id: string): ConsoleBody => {
  const { name, role, shape, frame, span } = obstacle;
  const extent = shape.kind === "recipe" ? recipeExtent(shape.solid) : meshExtent(shape.mesh);
  const box = boxOut(frame, extent);
  const thing = role === "obstacle" || name.startsWith(role) ? name : `${role} ${name}`;
  return { id, role, panel: null, bay: null, thing, what: "", shape, frame, box, span };
};
