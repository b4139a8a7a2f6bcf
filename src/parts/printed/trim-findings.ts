// What a trim has to say where its wall has no room, or where it has nothing to stand in: then it is not made.

import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { TRIM_WALL_ROOM } from "../../layout/trim-plan.ts";
import { NO_OPAQUE_WALL } from "./codes.ts";
import { TRIM_LOOSE } from "./trim-codes.ts";
import type { TrimScene, TrimSizes } from "./trim-sizes.ts";

/** A trim that can't be held has no other trouble worth telling. */
export const trimFindings = (scene: TrimScene, sizes: TrimSizes): readonly Finding[] => {
  const notHeld = loose(scene, sizes);
  return notHeld.length > 0 ? notHeld : thinWall(scene, sizes);
};

const loose = ({ component, design }: TrimScene, { heights }: TrimSizes): readonly Finding[] =>
  heights.hasBody || design.fixing === "glue"
    ? []
    : [
        finding(TRIM_LOOSE, {
          message: `${component.id} is clamped to the front sheet, and its trim can't be held by a ${design.fixing}: no sheet lies in front of it. Write fixing: glue, or clamp the display to a sheet behind the face.`,
          span: spanOf(design.written, "fixing"),
          subjects: [component.id],
        }),
      ];

const thinWall = (
  { component, design, stock }: TrimScene,
  { wall, wallLines }: TrimSizes,
): readonly Finding[] => {
  if (wallLines >= wall.lines) return [];
  const thickness = wallLines * wall.line;
  return [
    finding(NO_OPAQUE_WALL, {
      message: `The trim of ${component.id} has ${decimal(TRIM_WALL_ROOM, 2)} mm between its display and the fascia: room for ${decimal(thickness, 2)} mm (${wallLines} lines of ${decimal(wall.line, 2)} mm). A wall of ${stock.id} keeps light in from ${decimal(wall.thickness, 2)} mm. Print it from a blacker stock.`,
      span: design.written.span,
      subjects: [component.id],
      measured: { value: thickness, unit: "mm" },
      limit: { value: wall.thickness, unit: "mm" },
      source: { kind: "workshop", name: `${stock.id}: opaque-from` },
    }),
  ];
};
