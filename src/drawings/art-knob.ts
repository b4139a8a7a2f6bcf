// Knobs: skirt, body with its grips, cap, and a pointer that stands where it stands at the first stop.
// A selector's knob or handle is a bar; a bare shaft shows its flat.

import { circle } from "../geometry/contour.ts";
import { degrees, mm } from "../geometry/quantity.ts";
import { slotContour } from "../geometry/shapes.ts";
import { along, area, at, bar, disc, reachOf, type Scene, turned } from "./art-scene.ts";
import type { ArtPiece } from "./tone.ts";

/** Parts of a knob's radius: a likeness, common practice for turned and moulded knobs. */
const BODY_SHARE = 0.82;
const TOP_SHARE = 0.66;
const GRIPS = 24;
/** Widest and narrowest that a pointer line is painted. */
const POINTER_SHARE = 0.11;

/** Light falls from the upper left. */
const LIGHT = { x: -0.6, y: 0.8 };

export const knobArt = (scene: Scene): readonly ArtPiece[] => {
  const knob = scene.body("knob");
  if (knob === null) return shaftArt(scene);
  const radius = reachOf(knob.footprint);
  return scene.component.part.turning?.step != null && radius > 14
    ? barKnob(scene, radius)
    : roundKnob(scene, radius);
};

const roundKnob = (scene: Scene, radius: number): readonly ArtPiece[] => {
  const centre = at(scene);
  const toward = turned(scene, pointerClock(scene));
  const body = radius * BODY_SHARE;
  const grips = Array.from({ length: GRIPS }, (_, index) => {
    const out = turned(scene, (index * 360) / GRIPS);
    return bar(along(centre, out, radius * TOP_SHARE), along(centre, out, body), radius * 0.05);
  });
  const width = Math.max(0.6, radius * POINTER_SHARE);
  return [
    area("knob-rim", disc(centre, radius)),
    area("knob", disc(centre, body)),
    area("knob-rim", ...grips),
    area("knob-top", disc(centre, radius * TOP_SHARE)),
    area("knob-shine", disc(along(centre, LIGHT, radius * 0.1), radius * 0.48)),
    area("knob-top", disc(along(centre, LIGHT, radius * -0.02), radius * 0.46)),
    area(
      "pointer",
      bar(along(centre, toward, radius * 0.3), along(centre, toward, radius * 0.96), width),
    ),
  ];
};

/** The bar lies along the pointer's line; the end that reads carries the line. */
const barKnob = (scene: Scene, radius: number): readonly ArtPiece[] => {
  const centre = at(scene);
  const clock = pointerClock(scene);
  const toward = turned(scene, clock);
  const turn = degrees(90 - clock + scene.component.turn);
  const slot = (length: number, width: number) =>
    slotContour(centre, { length: mm(length), width: mm(width), turn });
  return [
    area("knob-rim", disc(centre, radius * 0.78)),
    area("knob", slot(2 * radius, radius * 0.62)),
    area("knob-shine", slot(1.9 * radius, radius * 0.4)),
    area("knob-top", slot(1.9 * radius, radius * 0.36)),
    area(
      "pointer",
      bar(along(centre, toward, radius * 0.35), along(centre, toward, radius * 0.93), radius * 0.1),
    ),
  ];
};

const shaftArt = (scene: Scene): readonly ArtPiece[] => {
  const { shaft } = scene.component.part;
  if (shaft === null) return handleArt(scene);
  const centre = at(scene);
  const radius = shaft.diameter / 2;
  const toward = turned(scene, shaft.flatAt ?? 0);
  return [
    area("metal-light", circle(centre, radius)),
    area("metal-dark", bar(centre, along(centre, toward, radius), radius * 0.3)),
  ];
};

/** A selector whose handle is its own: rim, turning disc, and a bar that stands at the first position. */
const handleArt = (scene: Scene): readonly ArtPiece[] => {
  const rim = scene.body("flange");
  const handle = scene.body("button");
  if (handle === null) return [];
  const radius = reachOf(handle.footprint);
  return [...(rim === null ? [] : [area("metal", rim.footprint)]), ...barKnob(scene, radius)];
};

/** As the scale reads it: the shaft's flat and the knob's angle from flat to pointer, or the part's own first stop. */
const pointerClock = ({ component }: Scene): number => {
  const knob = component.fitted.find(({ kind }) => kind === "knob");
  const { shaft, turning } = component.part;
  if (shaft?.flatAt != null && knob?.kind === "knob") return shaft.flatAt + knob.pointer;
  return turning?.first ?? 0;
};
