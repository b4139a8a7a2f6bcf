// Ordinates: distances of many places from one zero, along an edge. Places that print alike are one; labels keep a pitch
// apart and are joined to their places by a bent line. What each label says comes back with its box.

import type { Path } from "../geometry/contour.ts";
import { path, point, vertex } from "../geometry/contour.ts";
import { type Extent, extent, joinedExtent } from "../geometry/extent.ts";
import { decimal } from "../geometry/number.ts";
import { degrees } from "../geometry/quantity.ts";
import type { Face } from "../lettering/face.ts";
import type { DrawingItem } from "./drawing.ts";
import { HAIR, stroked } from "./items.ts";
import { PLACES } from "./measure-line.ts";
import { spread } from "./spread.ts";
import { words } from "./words.ts";

export interface OrdinatePlace {
  readonly id: string;
  /** Distance from zero along the axis. */
  readonly value: number;
}

export interface Ordinate {
  readonly ids: readonly string[];
  readonly value: number;
  readonly text: string;
  readonly box: Extent;
}

export interface OrdinateRun {
  readonly items: readonly DrawingItem[];
  readonly ordinates: readonly Ordinate[];
  readonly box: Extent;
}

export interface OrdinateEdge {
  readonly side: "bottom" | "left" | "top" | "right";
  /** Where on the other axis the lines begin. */
  readonly edge: number;
}

const LABEL_HEIGHT = 1.9;
const PITCH = LABEL_HEIGHT * 1.45;
/** Out from the edge, along the bend, out again to the label. */
const STRAIGHT = 1.5;
const BEND = 4;
const TAIL = 0.8;
const GAP = 0.7;

export const ordinateRun = (
  face: Face | null,
  places: readonly OrdinatePlace[],
  at: OrdinateEdge,
): OrdinateRun => {
  const merged = mergedPlaces(places);
  const labels = spread(
    merged.map(({ value }) => value),
    PITCH,
  );
  const isAcross = at.side === "bottom" || at.side === "top";
  const out = at.side === "bottom" || at.side === "left" ? -1 : 1;
  const made = merged.map((entry, index) =>
    ordinate(face, entry, { ...at, isAcross, out, label: labels[index]! }),
  );
  const lines = made.map(({ line }) => line);
  const ordinates = made.map(({ said }) => said);
  const start = isAcross ? extent(0, at.edge, 0, at.edge) : extent(at.edge, 0, at.edge, 0);
  return {
    items: [
      stroked(lines, { ink: "dimension", width: HAIR }),
      ...made.flatMap(({ items }) => items),
    ],
    ordinates,
    box: ordinates.map(({ box }) => box).reduce(joinedExtent, start),
  };
};

interface Merged {
  readonly ids: readonly string[];
  readonly value: number;
  readonly text: string;
}

const mergedPlaces = (places: readonly OrdinatePlace[]): readonly Merged[] => {
  const byText = new Map<string, { value: number; ids: string[] }>();
  for (const { id, value } of places) {
    const text = decimal(value, PLACES);
    const found = byText.get(text);
    if (found === undefined) byText.set(text, { value, ids: [id] });
    else found.ids.push(id);
  }
  return [...byText]
    .map(([text, { value, ids }]) => ({ text, value, ids }))
    .toSorted((a, b) => a.value - b.value);
};

const ordinate = (
  face: Face | null,
  entry: Merged,
  at: OrdinateEdge & { readonly isAcross: boolean; readonly out: number; readonly label: number },
): { readonly said: Ordinate; readonly line: Path; readonly items: readonly DrawingItem[] } => {
  const { edge, isAcross, out, label } = at;
  const reach = (distance: number): number => edge + out * distance;
  const corner = (along: number, away: number) =>
    isAcross ? vertex(along, reach(away)) : vertex(reach(away), along);
  const line = path([
    corner(entry.value, 0),
    corner(entry.value, STRAIGHT),
    corner(label, STRAIGHT + BEND),
    corner(label, STRAIGHT + BEND + TAIL),
  ]);
  const foot = reach(STRAIGHT + BEND + TAIL + GAP);
  const half = LABEL_HEIGHT / 2;
  // Upright text on a level axis is read from the right: it ends where a label below begins.
  const isEnd = at.side === "bottom" || at.side === "left";
  const said = words(
    face,
    entry.text,
    isAcross ? point(label + half, foot) : point(foot, label - half),
    {
      capHeight: LABEL_HEIGHT,
      align: isEnd ? "end" : "start",
      ink: "dimension",
      turn: degrees(isAcross ? 90 : 0),
    },
  );
  return { said: { ...entry, box: said.box }, line, items: said.items };
};
