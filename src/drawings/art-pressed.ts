// Buttons, keys, keypads, fuse holders, key switches and lamps.

import type { Contour } from "../geometry/contour.ts";
import { extent, extentCentre, extentHeight, extentWidth } from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { offsetContour } from "../geometry/offset.ts";
import { roundedRectangle } from "../geometry/shapes.ts";
import type { PlacedComponent } from "../layout/panel-layout.ts";
import { along, area, at, bar, disc, reachOf, type Scene, turned } from "./art-scene.ts";
import type { ArtPiece, Tone } from "./tone.ts";

export const pressedArt = (scene: Scene): readonly ArtPiece[] => {
  const { component } = scene;
  const rim = scene.body("flange");
  const top = scene.body("cap") ?? scene.body("lens") ?? scene.body("button");
  const shape = top?.footprint ?? component.face.at(-1) ?? null;
  const frame = rim === null ? [] : rimArt(rim.footprint);
  if (shape === null) return frame;
  switch (component.part.family) {
    case "keypad":
      return [...frame, ...keypadArt(shape, component.part.title)];
    case "fuse-holder":
      return [...frame, area("knob", shape), area("knob-top", slotAcross(scene, shape))];
    case "key-switch":
      return [...frame, area("metal-light", shape), area("well", slotAcross(scene, shape))];
    default:
      return [...frame, ...keyTop(shape, topTone(scene))];
  }
};

const rimArt = (rim: Contour): readonly ArtPiece[] => [
  area("metal", rim),
  area("metal-dark", shrunk(rim, 0.12)),
];

/** A lit key wears the colour of its legend's alert; others are plain. */
const topTone = (scene: Scene): Tone =>
  scene.body("lens") === null && (scene.component.legend?.alert ?? "none") === "none"
    ? "key"
    : alertTone(scene.component);

const keyTop = (shape: Contour, tone: Tone): readonly ArtPiece[] => [
  area("knob-rim", shape),
  area(tone, shrunk(shape, 0.07)),
  area("shine", shrunk(shape, 0.5)),
  area(tone, shrunk(shape, 0.53)),
];

/** "four rows of three": the record's title says how many; a plain grid where it does not. */
const COUNTS = ["one", "two", "three", "four", "five", "six"];

const keypadArt = (shape: Contour, title: string): readonly ArtPiece[] => {
  const said = /(\w+) rows of (\w+)/.exec(title);
  const rows = countOf(said?.[1], 4);
  const columns = countOf(said?.[2], 3);
  const box = contourExtent(shape);
  const across = extentWidth(box) / columns;
  const up = extentHeight(box) / rows;
  const keys = Array.from({ length: rows * columns }, (_, index) => {
    const x = box.minX + (index % columns) * across;
    const y = box.minY + Math.floor(index / columns) * up;
    const key = extent(x + 0.12 * across, y + 0.12 * up, x + 0.88 * across, y + 0.88 * up);
    return roundedRectangle(key, 0.12 * Math.min(across, up));
  });
  return [area("knob-rim", shape), area("key", ...keys)];
};

const countOf = (word: string | undefined, usual: number): number => {
  const index = COUNTS.indexOf(word ?? "");
  return index < 0 ? usual : index + 1;
};

export const lampArt = (scene: Scene, tone: Tone): readonly ArtPiece[] => {
  const rim = scene.body("flange");
  const lens = scene.body("lens")?.footprint ?? scene.component.face.at(-1);
  const frame =
    rim === null || scene.component.part.hold.kind === "behind" ? [] : rimArt(rim.footprint);
  if (lens === undefined) return frame;
  const radius = reachOf(lens);
  const centre = extentCentre(contourExtent(lens));
  if (lens.kind !== "circle")
    return scene.openings.length === 0 ? [] : [...frame, area(tone, lens)];
  return [
    ...frame,
    area("knob-rim", lens),
    area(tone, disc(centre, radius * 0.92)),
    area("shine", disc(along(centre, { x: -0.3, y: 0.34 }, radius), radius * 0.24)),
  ];
};

/** Colours of signals: warning red, caution amber, advisory green (MIL-STD-411F). */
export const alertTone = (component: PlacedComponent): Tone => {
  switch (component.legend?.alert ?? "none") {
    case "warning":
      return "lens-red";
    case "caution":
      return "lens-amber";
    case "advisory":
      return "lens-green";
    case "none":
      return "lens-white";
  }
};

const slotAcross = (scene: Scene, shape: Contour): Contour => {
  const radius = reachOf(shape);
  const toward = turned(scene, 0);
  return bar(
    along(at(scene), toward, -radius * 0.7),
    along(at(scene), toward, radius * 0.7),
    radius * 0.28,
  );
};

/** The shape drawn in by a share of its reach; a shape that cannot be drawn in stays as it is. */
export const shrunk = (shape: Contour, share: number): Contour => {
  const inner = offsetContour(shape, -share * reachOf(shape));
  return inner.kind === "offset" ? inner.contour : shape;
};
