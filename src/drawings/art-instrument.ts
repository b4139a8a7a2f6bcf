// Instruments with a needle of their own, and servo needles before a dial that is engraved on the panel.

import type { Contour } from "../geometry/contour.ts";
import { extentCentre, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { shrunk } from "./art-pressed.ts";
import { along, area, bar, disc, reachOf, type Scene, turned } from "./art-scene.ts";
import type { ArtPiece } from "./tone.ts";

/** A round gauge sweeps 270 degrees from the lower left; a square meter 90 about its foot: common practice. */
const ROUND_SWEEP = { first: 225, travel: 270, ticks: 10, radius: 0.86 };
const SQUARE_SWEEP = { first: 315, travel: 90, ticks: 10, radius: 1.15 };

export const instrumentArt = (scene: Scene): readonly ArtPiece[] => {
  const rim = scene.body("flange", "lens");
  const [outer] = scene.component.face;
  const frame = rim?.footprint ?? outer;
  if (frame === undefined) return [];
  const glass = scene.component.face[1] ?? shrunk(frame, 0.1);
  return [area("knob-rim", frame), area("knob", shrunk(frame, 0.04)), ...dialArt(scene, glass)];
};

const dialArt = (scene: Scene, glass: Contour): readonly ArtPiece[] => {
  const box = contourExtent(glass);
  const isRound = glass.kind === "circle";
  const sweep = isRound ? ROUND_SWEEP : SQUARE_SWEEP;
  const middle = extentCentre(box);
  const reach = Math.min(extentWidth(box), extentHeight(box)) / 2;
  const pivot = isRound ? middle : along(middle, turned(scene, 180), reach * 0.75);
  const radius = reach * sweep.radius;
  const ticks = Array.from({ length: sweep.ticks + 1 }, (_, index) => {
    const toward = turned(scene, sweep.first + (sweep.travel * index) / sweep.ticks);
    const inner = radius * (index % 5 === 0 ? 0.82 : 0.9);
    return bar(along(pivot, toward, inner), along(pivot, toward, radius), reach * 0.035);
  });
  const needle = turned(scene, sweep.first + sweep.travel * 0.3);
  return [
    area("dial", glass),
    area("pointer", ...ticks),
    area(
      "needle",
      bar(along(pivot, needle, -reach * 0.15), along(pivot, needle, radius * 0.8), reach * 0.05),
    ),
    area("metal-dark", disc(pivot, reach * 0.09)),
  ];
};

/** Needle and hub as they are: their bodies are in the record. */
export const servoArt = (scene: Scene): readonly ArtPiece[] => {
  const needle = scene.body("needle");
  const hub = scene.component.part.shaft;
  const radius = hub === null ? 2 : hub.diameter / 2;
  return [
    ...(needle === null ? [] : [area("needle", needle.footprint)]),
    area("knob-top", disc(scene.component.at, radius)),
    area("metal-dark", disc(scene.component.at, Math.min(radius, reachOfNeedle(scene)) * 0.5)),
  ];
};

const reachOfNeedle = (scene: Scene): number => {
  const needle = scene.body("needle");
  return needle === null ? Number.POSITIVE_INFINITY : Math.max(1.5, reachOf(needle.footprint));
};
