// What colour the finished face is, and its legends: from the coats of the finish, or from the sheet itself. Colours are
// named in the design's own words; a word that is not known here is shown as grey.

import type { LayerLayout } from "../layout/panel-layout.ts";
import { namedColour } from "../standards/colour-words.ts";
import type { Ink } from "./drawing.ts";

export interface FaceLook {
  readonly face: Ink;
  readonly legend: Ink;
  /** What things standing on it cast. */
  readonly shade: Ink;
}

const LIGHT: readonly Ink[] = ["face-white", "face-opal", "face-aluminium"];

export const faceLook = (front: LayerLayout | undefined): FaceLook => {
  const face = faceInk(outsideColour(front));
  const isLight = LIGHT.includes(face);
  return {
    face,
    legend: legendInk(front, isLight),
    shade: isLight ? "shade-light" : "well",
  };
};

/** The last coat is what is seen; filled engraving leaves the sheet's own colour; laminate names its cap first. */
const outsideColour = (front: LayerLayout | undefined): string => {
  const finish = front?.finish ?? null;
  const sheet = front?.stock?.colour ?? "";
  if (finish === null || finish.order === "engrave-fill") return sheet;
  return finish.coats.at(-1) ?? sheet;
};

const faceInk = (colour: string): Ink => {
  const named = namedColour(colour);
  return named === null ? "face-grey" : `face-${named.name}`;
};

/** Filled engraving has the colour of its paint. Through opaque paint on a sheet that passes light, a legend glows; else it is plain. */
const legendInk = (front: LayerLayout | undefined, isLight: boolean): Ink => {
  const finish = front?.finish ?? null;
  const fill = finish?.order === "engrave-fill" ? finish.coats.at(-1) : undefined;
  if (fill !== undefined) return fillInk(faceInk(fill));
  const isLit = front?.stock?.light !== "opaque";
  if (isLight) return "legend";
  return isLit ? "legend-lit" : "legend-filled";
};

/** Black and white are the inks that legends have anyway. */
const fillInk = (ink: Ink): Ink =>
  ink === "face-black" ? "legend" : ink === "face-white" ? "legend-filled" : ink;
