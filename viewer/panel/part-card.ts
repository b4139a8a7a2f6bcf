// A part of the catalogue as the parts drawer shows it: its face, its hole and its sizes, and the words that find it.

import type { Part } from "../../src/catalogue/part.ts";
import { shapeContour } from "../../src/catalogue/shape-contour.ts";
import type { Contour } from "../../src/geometry/contour.ts";
import { extent, extentHeight, extentWidth, joinedExtent } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { decimal } from "../../src/geometry/number.ts";
import { placedContour, placement } from "../../src/geometry/transform.ts";
import { contourData } from "../contour-path.ts";
import type { PartCard } from "./panel-messages.ts";

export function partCard(part: Part): PartCard {
  const seen = seenContours(part);
  const hole = shapeContour(part.openings.clamp);
  const box = [...seen, hole].map(contourExtent).reduce(joinedExtent, extent(0, 0, 0, 0));
  const holeBox = contourExtent(hole);
  const depth = Math.max(0, ...part.bodies.map(({ from, to }) => -Math.min(from, to)));
  const face = `${figure(extentWidth(box))} x ${figure(extentHeight(box))} mm`;
  const opening = `${figure(extentWidth(holeBox))} x ${figure(extentHeight(holeBox))} mm`;
  return {
    id: part.id,
    title: part.title,
    family: part.family,
    sizes: `seen ${face}, hole ${opening}, ${figure(depth)} mm behind`,
    words: [part.id, part.title, part.family.replaceAll("-", " "), face, opening, figure(depth)]
      .join(" ")
      .toLowerCase(),
    outline: seen.map(contourData).join(""),
    hole: contourData(hole),
    box,
    depth,
  };
}

/** Its face; where that is nothing, what stands in front of the seat. */
function seenContours(part: Part): readonly Contour[] {
  const shapes =
    part.face.length > 0 ? part.face : part.bodies.filter(({ from, to }) => Math.max(from, to) > 0);
  return shapes.map(({ shape, at }) => placedContour(shapeContour(shape), placement(at.x, at.y)));
}

const figure = (value: number): string => decimal(value, 1);

/** Every word must be found; a number is found by its digits: "12.2" finds a hole of 12.2 mm. What goes by the name comes first. */
export function matching(cards: readonly PartCard[], search: string): readonly PartCard[] {
  const wanted = search.toLowerCase().split(/\s+/).filter(Boolean);
  const name = wanted.join("-");
  const rank = ({ id }: PartCard): number => (id === name ? 0 : id.startsWith(name) ? 1 : 2);
  return cards
    .filter(({ words }) => wanted.every((word) => hasWord(words, word)))
    .toSorted((a, b) => rank(a) - rank(b));
}

const hasWord = (words: string, wanted: string): boolean =>
  /^\d/.test(wanted)
    ? words.split(/[^\d.]+/).some((figures) => figures === wanted) ||
      words.split(" ").includes(wanted)
    : words.includes(wanted);
