// A measured pair in words, and what each of its places is.

import { decimal } from "../../src/geometry/number.ts";
import type { MeasuredPair, MeasuredPlace, Snapped } from "./measured-pair.ts";

/** Shapes of the picture are coarser than a hundredth: one digit is what they are good for. */
const PLACES = 1;

export const measureWords = ({ distance, forward, aside, up }: MeasuredPair): string =>
  `${decimal(distance, PLACES)} mm: ${decimal(forward, PLACES)} forward, ${decimal(aside, PLACES)} aside, ${decimal(up, PLACES)} up`;

export const featureWords = (place: Snapped): string =>
  place.kind === "axis" ? `axis, ${decimal(place.across, PLACES)} mm across` : place.kind;

/** A sheet may be called what its place is called: "a face of face" says nothing. */
export const placeWords = (place: Snapped, thing: string): string => {
  switch (place.kind) {
    case "face":
      return `a place on the face of “${thing}”`;
    case "axis":
      return `the axis of a round edge, ${decimal(place.across, PLACES)} mm across, of “${thing}”`;
    case "corner":
      return `a corner of “${thing}”`;
    case "edge":
      return `an edge of “${thing}”`;
  }
};

/** Both ends by what they are, and the distance between them. */
export const pairWords = ({
  first,
  second,
  pair,
}: {
  readonly first: MeasuredPlace;
  readonly second: MeasuredPlace;
  readonly pair: MeasuredPair;
}): string =>
  `${measureWords(pair)}; from ${placeWords(first.at, first.thing)} to ${placeWords(second.at, second.thing)}`;
