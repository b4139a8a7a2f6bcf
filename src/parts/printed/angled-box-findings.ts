// What an angled box has to say: a face too small for its panel, bosses in a wall, a component without room.

import { spanOf } from "../../design/written.ts";
import { type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import { type Contour, circle, type Loop } from "../../geometry/contour.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { ANGLED_BOX_FACE, ANGLED_BOX_ROOM } from "./angled-box-codes.ts";
import type { AngledBoxPlan, AngledBoxScene } from "./angled-box-plan.ts";

export const angledBoxFindings = (
  scene: AngledBoxScene,
  plan: AngledBoxPlan,
): readonly Finding[] => {
  const face = faceFinding(scene, plan);
  return face === null ? roomFindings(scene, plan) : [face];
};

/** Walls stay upright, so that further behind the face they lie nearer to the operator. */
const wallsBehind = (loop: Loop, depth: number, plan: AngledBoxPlan): Contour =>
  placedContour(loop, placement(0, -depth * plan.slope.tangent));

const faceFinding = (scene: AngledBoxScene, plan: AngledBoxPlan): Finding | null => {
  const { layout, design } = scene;
  const why = whyNoFace(scene, plan);
  if (why === null) return null;
  const face = contourExtent(plan.faceOuter);
  return finding(ANGLED_BOX_FACE, {
    message: `The face of the box measures ${decimal(extentWidth(face), 2)} x ${decimal(extentHeight(face), 2)} mm over its walls, and ${layout.name} ${decimal(extentWidth(layout.nominal), 2)} x ${decimal(extentHeight(layout.nominal), 2)} mm: ${why}. Write a larger footprint.`,
    span: spanOf(design.written, "footprint"),
    subjects: [layout.name],
  });
};

const whyNoFace = ({ layout }: AngledBoxScene, plan: AngledBoxPlan): string | null => {
  const { underside, bossEnd } = plan.heights;
  if (!containsContour(plan.face, layout.outline)) return "the panel stands out over the face";
  if (extentWidth(plan.opening) <= 0 || extentHeight(plan.opening) <= 0)
    return "its seat and bosses leave no opening";
  if (!containsContour(plan.faceInner, plan.openingContour))
    return "its opening would go through a wall";
  const isFree = layout.mountHoles.every(({ at }) => {
    const boss = circle(at, plan.boss.outside / 2);
    return [0, underside - bossEnd].every((depth) =>
      containsContour(wallsBehind(plan.faceInner, depth, plan), boss),
    );
  });
  return isFree ? null : "the boss of a screw would stand in a wall";
};

const roomFindings = (scene: AngledBoxScene, plan: AngledBoxPlan): readonly Finding[] =>
  scene.layout.components.flatMap((component) => {
    const why = component.bodies
      .filter(({ low }) => low < plan.heights.front)
      .map((body) => whyNoRoom(body, plan))
      .find((said) => said !== null);
    return why === undefined || why === null ? [] : [noRoom(component, why, scene)];
  });

const whyNoRoom = (body: PlacedBody, plan: AngledBoxPlan): string | null => {
  const { front, underside } = plan.heights;
  const passesFace = body.low < front && body.high > underside;
  if (passesFace && !containsContour(plan.openingContour, body.footprint))
    return "does not go through the opening of the face";
  const box = contourExtent(body.footprint);
  const above = heightOnConsole(box.minY, body.low, plan);
  if (above < 0) return `reaches ${decimal(-above, 2)} mm below the console's surface`;
  const depths = [body.high, body.low].map((z) => Math.max(0, underside - z));
  const isFree =
    body.low >= underside ||
    depths.every((depth) =>
      containsContour(wallsBehind(plan.faceInner, depth, plan), body.footprint),
    );
  return isFree ? null : "stands in a wall of the box";
};

/** Of a place behind the panel. */
const heightOnConsole = (y: number, z: number, plan: AngledBoxPlan): number => {
  const { middle, heights, slope, undersideAt } = plan;
  return (
    undersideAt(middle.console.y) +
    (y - middle.panel.y) * slope.sine +
    (z - heights.underside) * slope.cosine
  );
};

const noRoom = (component: PlacedComponent, why: string, { design }: AngledBoxScene): Finding =>
  finding(ANGLED_BOX_ROOM, {
    message: `${component.id} ${why}. Move it, or give the box a higher rise or a larger footprint.`,
    span: component.placeSpan,
    subjects: [component.id],
    related: [{ what: "the box is written here", span: design.written.span }],
  });
