// Windows that nobody wrote: where lamps lie behind an opaque sheet and words stand on a sheet before it that lets light
// through, the opaque sheet opens behind each legend, title and figure. Neighbours too close for a web become one. Where something is in
// the way there is none, and the layout says what.

import { WINDOW_CORNER } from "../design/usual-values.ts";
import type { Contour } from "../geometry/contour.ts";
import { contourDistance } from "../geometry/distance.ts";
import {
  type Extent,
  extentCentre,
  extentHeight,
  extentsOverlap,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { roundedRectangle } from "../geometry/shapes.ts";
import { contourCutOut } from "./cut-outs.ts";
import type { ClosedWindow, CutOut, PlacedMarking, WindowObstacle } from "./panel-layout.ts";
import type { BareLayer } from "./stack.ts";
import {
  type Blocking,
  firstInTheWay,
  gapTo,
  leastWeb,
  type WindowScene,
  windowObstacles,
} from "./window-obstacles.ts";

export interface LegendWindows {
  readonly cutOuts: readonly CutOut[];
  readonly closed: readonly ClosedWindow[];
}

export const legendWindows = (
  markings: readonly PlacedMarking[],
  scene: WindowScene,
): LegendWindows => {
  const opened = scene.layers.flatMap((layer) => {
    const margin = windowMargin(layer);
    const words = margin === null ? [] : litThrough(layer, markings, scene.layers);
    return margin === null || words.length === 0
      ? []
      : [windowsInLayer(words, { layer, margin, scene })];
  });
  return {
    cutOuts: opened.flatMap(({ cutOuts }) => cutOuts),
    closed: opened.flatMap(({ closed }) => closed),
  };
};

/** null where the sheet opens behind no legend. */
const windowMargin = ({ design, stock }: BareLayer): Mm | null =>
  design.kind === "sheet" && design.windows === "legends" && stock?.light === "opaque"
    ? design.windowMargin
    : null;

/** What is read before the layer through a sheet that passes light, with lamps behind it. */
const litThrough = (
  layer: BareLayer,
  markings: readonly PlacedMarking[],
  layers: readonly BareLayer[],
): readonly Word[] => {
  const isLit = layers.some(
    ({ design, index }) =>
      index > layer.index && design.kind === "spacer" && design.lighting !== null,
  );
  if (!isLit) return [];
  return markings
    .filter(({ side, layer: on }) => {
      const face = layers.find(({ id }) => id === on);
      const isBefore = face !== undefined && face.index < layer.index;
      return side !== "on" && isBefore && face.stock?.light !== "opaque";
    })
    .flatMap((marking) =>
      marking.words.map((box, index) => ({
        name: marking.words.length > 1 ? `${marking.id}.${index + 1}` : marking.id,
        marking,
        box,
      })),
    );
};

/** One text of a marking. */
interface Word {
  readonly name: string;
  readonly marking: PlacedMarking;
  readonly box: Extent;
}

interface LayerScene {
  readonly layer: BareLayer;
  readonly margin: Mm;
  readonly scene: WindowScene;
}

/** One window, and the words that are read through it. */
interface Behind {
  readonly words: readonly Word[];
  readonly contour: Contour;
}

const windowsInLayer = (
  words: readonly Word[],
  { layer, margin, scene }: LayerScene,
): LegendWindows => {
  const obstacles = windowObstacles(layer, scene);
  const written = scene.cutOuts.filter(
    (cutOut) => cutOut.layer === layer.id && cutOut.purpose === "window",
  );
  const closed: ClosedWindow[] = [];
  const close = (word: Word, others: readonly Behind[]): void => {
    const against = [...obstacles, ...others.map((other) => asObstacle(other, leastWeb(scene)))];
    const obstacle = obstacleOf(word.box, { layer, margin, against });
    if (obstacle !== null)
      closed.push({ marking: word.marking.id, word: word.box, layer: layer.id, obstacle });
  };
  let windows: readonly Behind[] = [];
  for (const word of words) {
    // A window that the design draws behind it is the builder's own answer.
    if (written.some(({ contour }) => extentsOverlap(contourExtent(contour), word.box))) continue;
    const contour = windowBehind(word.box, layer, margin);
    if (firstInTheWay(contour, obstacles) !== null) {
      close(word, []);
      continue;
    }
    const merged = mergedWith({ words: [word], contour }, windows, { layer, margin, scene });
    if (firstInTheWay(merged.window.contour, obstacles) === null)
      windows = [...merged.apart, merged.window];
    else close(word, windows);
  }
  return { cutOuts: windows.map((window) => cutOutOf(window, layer)), closed };
};

const asObstacle = ({ words, contour }: Behind, clear: Mm): Blocking => ({
  owner: words[0]?.name ?? "",
  what: "window",
  contour,
  clear,
  isRim: false,
});

/** Joined with every window that would leave too thin a web, and again with what comes too near then. */
const mergedWith = (
  window: Behind,
  others: readonly Behind[],
  place: LayerScene,
): { readonly window: Behind; readonly apart: readonly Behind[] } => {
  const web = leastWeb(place.scene);
  const near = others.find((other) => {
    const { gap, overlaps } = contourDistance(other.contour, window.contour);
    return overlaps || gap < web;
  });
  if (near === undefined) return { window, apart: others };
  const words = [...near.words, ...window.words];
  const box = words.map((word) => word.box).reduce(joinedExtent);
  const joined = { words, contour: windowBehind(box, place.layer, place.margin) };
  return mergedWith(
    joined,
    others.filter((other) => other !== near),
    place,
  );
};

interface Attempt {
  readonly layer: BareLayer;
  readonly margin: Mm;
  readonly against: readonly Blocking[];
}

const obstacleOf = (box: Extent, attempt: Attempt): WindowObstacle | null => {
  const { layer, margin, against } = attempt;
  const found = firstInTheWay(windowBehind(box, layer, margin), against);
  if (found === null) return null;
  const least = gapTo(windowBehind(box, layer, NO_MARGIN), found);
  const { owner, what, clear: wanted } = found;
  return { owner, what, gap: least, wanted, margin, works: marginThatWorks(box, attempt) };
};

const NO_MARGIN = mm(0);
/** A tenth less at a time: finer than anybody would write. */
const MARGIN_STEP = 0.1;

const marginThatWorks = (box: Extent, { layer, margin, against }: Attempt): Mm | null => {
  const steps = Math.ceil(margin / MARGIN_STEP) - 1;
  for (let step = steps; step >= 0; step -= 1) {
    const less = mm(Math.round(step * MARGIN_STEP * 1e6) / 1e6);
    if (firstInTheWay(windowBehind(box, layer, less), against) === null) return less;
  }
  return null;
};

/** The box of what is read, grown by the margin, with the corners that the layer's machine leaves. */
const windowBehind = (box: Extent, layer: BareLayer, margin: Mm): Contour => {
  const corner = cornerFor(box, layer, margin);
  const shorter = Math.min(extentWidth(box), extentHeight(box));
  const grown = Math.max(margin, corner / CORNER_OVER_MARGIN, corner - shorter / 2);
  const window = grownExtent(box, grown);
  return roundedRectangle(
    window,
    Math.min(corner, extentWidth(window) / 2, extentHeight(window) / 2),
  );
};

/** A corner of this many margins just touches the corner of the box inside: r (1 - 1/sqrt 2) = m. */
const CORNER_OVER_MARGIN = 2 + Math.SQRT2;

/** A router's largest tool that gets into the corners; its finest makes the window larger where none does. */
const cornerFor = (box: Extent, { machine }: BareLayer, margin: Mm): number => {
  if (machine?.kind !== "router") return WINDOW_CORNER;
  const shorter = Math.min(extentWidth(box), extentHeight(box)) + 2 * margin;
  const most = Math.min(margin * CORNER_OVER_MARGIN, shorter / 2);
  const radii = machine.tools.map(({ diameter }) => diameter / 2).sort((a, b) => b - a);
  return radii.find((radius) => radius <= most) ?? radii.at(-1) ?? WINDOW_CORNER;
};

/** Named for its first word; `+2` where two more are read through it. */
const cutOutOf = ({ words, contour }: Behind, layer: BareLayer): CutOut => {
  const [first] = words;
  const more = words.length > 1 ? `+${words.length - 1}` : "";
  return contourCutOut(`${first?.name ?? ""}${more}`, {
    centre: extentCentre(contourExtent(contour)),
    contour,
    purpose: "window",
    layer: layer.id,
    span: first?.marking.span ?? layer.design.written.span,
    gauge: null,
  });
};
