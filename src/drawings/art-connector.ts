// Connectors by the shapes on their face, with a likeness of their contacts; and the holes of a speaker.

import type { Contour } from "../geometry/contour.ts";
import { point } from "../geometry/contour.ts";
import { extentCentre, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { along, area, around, disc, reachOf, type Scene, turned } from "./art-scene.ts";
import type { ArtPiece } from "./tone.ts";

export const connectorArt = (scene: Scene): readonly ArtPiece[] => {
  const { component } = scene;
  if (component.part.family === "speaker") return speakerArt(scene);
  const [outer, inner] = component.face;
  const isHeldInFront = component.part.hold.seat === "front";
  const shell = inner ?? outer;
  return [
    ...(isHeldInFront && outer !== undefined ? [area("metal", outer)] : []),
    ...(shell === undefined ? [] : [area("metal-light", shell), ...contactArt(scene, shell)]),
  ];
};

const contactArt = (scene: Scene, shell: Contour): readonly ArtPiece[] => {
  const count = scene.component.part.contacts.length;
  const box = contourExtent(shell);
  const middle = extentCentre(box);
  const reach = reachOf(shell);
  const inner = shell.kind === "circle" ? disc(middle, reach * 0.84) : shell;
  if (shell.kind === "circle") {
    const pins = Array.from({ length: Math.min(count, 12) }, (_, index) => {
      const toward = turned(scene, (360 * (index + 0.5)) / count);
      return disc(along(middle, toward, reach * (count < 3 ? 0 : 0.48)), reach * 0.12);
    });
    return [area("well", inner), area("metal-light", ...pins)];
  }
  const columns = Math.ceil(count / 2);
  const across = (extentWidth(box) * 0.8) / Math.max(1, columns);
  const up = extentHeight(box) * 0.22;
  const pins = Array.from({ length: count }, (_, index) => {
    const row = index < columns ? 0 : 1;
    const inRow = row === 0 ? columns : count - columns;
    const place = (row === 0 ? index : index - columns) - (inRow - 1) / 2;
    return disc(
      point(middle.x + place * across, middle.y + (row === 0 ? up : -up)),
      Math.min(0.6, across * 0.3),
    );
  });
  return [area("well", inner), area("metal-light", ...pins)];
};

/** Rings of holes within the opening. */
const speakerArt = (scene: Scene): readonly ArtPiece[] => {
  const [opening] = scene.openings.length > 0 ? scene.openings : scene.component.face;
  if (opening === undefined) return [];
  const reach = reachOf(opening);
  const centre = scene.component.at;
  const rings = [0, 1, 2, 3].flatMap((ring) =>
    Array.from({ length: ring === 0 ? 1 : ring * 6 }, (_, index) => {
      const toward = turned(scene, (index * 360) / (ring * 6 || 1));
      return around(along(centre, toward, (reach * 0.85 * ring) / 3), {
        radius: reach * 0.07,
        corners: 0,
        first: 0,
      });
    }),
  );
  return [area("knob-top", opening), area("well", ...rings)];
};
