// The nearest place on the sheet where copies of things stand clear of everything: of bodies, openings, screws, rails, markings,
// hands and edges. Each two pieces that must keep apart bar a rectangle of shifts; what no rectangle covers is free. Pieces are
// taken by their boxes, so that what is found is clear, and a place that only a round thing has room for may be passed over.
// Pure: a layout and ids in, a shift in mm out.

import { LEAST_RIM, LEAST_WEB } from "../../src/design/usual-values.ts";
import {
  type Extent,
  extent,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import type {
  CutOut,
  LayerLayout,
  PanelLayout,
  PlacedComponent,
  PlacedMarking,
} from "../../src/layout/panel-layout.ts";
import { seatedLayer } from "../../src/layout/seated-layer.ts";
import type { Shift } from "../../src/layout/separate-moves.ts";
import { type HandKind, separation } from "../../src/standards/separation.ts";
import { type Cells, nearestClear } from "./nearest-clear.ts";

export interface FreePlace {
  readonly shift: Shift;
  /** False where the sheet has no free place: the shift is one that shows the copies beside what they are copies of. */
  readonly isFree: boolean;
  /** All that is copied, as it lies on the sheet with its hands' room left out. */
  readonly box: Extent;
}

/** `ids`: instances. Shifts are whole steps, so that what stood on the grid stands on it again. Null where nothing of them lies on the sheet. */
export function freePlace(
  ids: ReadonlySet<string>,
  layout: PanelLayout,
  step: number,
): FreePlace | null {
  const all = piecesOf(layout);
  const own = all.filter(({ owner }) => ids.has(owner));
  const solid = own.filter(({ kind }) => kind !== "grasp").map(({ box }) => box);
  if (solid.length === 0) return null;
  const box = solid.reduce(joinedExtent);
  const field = rangeOf(own, layout, step);
  const free = nearestClear(field, barredShifts(own, all, { step, field }));
  return free === null
    ? { shift: besideIt(box, layout.nominal, step), isFree: false, box }
    : { shift: { x: free.x * step, y: free.y * step }, isFree: true, box };
}

/** How many pairs of pieces a search looks at: its time grows with them. */
export function piecePairs(ids: ReadonlySet<string>, layout: PanelLayout): number {
  const all = piecesOf(layout);
  return all.length * all.filter(({ owner }) => ids.has(owner)).length;
}

interface Piece {
  readonly owner: string;
  readonly kind: "body" | "opening" | "fixing" | "rail" | "marking" | "grasp";
  readonly box: Extent;
  /** Between which heights it keeps others off. */
  readonly low: number;
  readonly high: number;
  readonly hand: HandKind;
}

/** A marking lies on the front face, and nothing that stands on the face may cover it. */
const ON_FACE = { low: 0, high: 0.1 };
const ALL_HEIGHTS = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };

function piecesOf(layout: PanelLayout): readonly Piece[] {
  const rear = seatedLayer(layout)?.rear ?? 0;
  const names = new Map(layout.markings.map(({ id, owner }) => [id, owner]));
  return [
    ...layout.components.flatMap(componentPieces),
    ...layout.layers.flatMap((layer) =>
      layer.cutOuts.map((cutOut) => openingPiece(cutOut, layer, names)),
    ),
    ...layout.markings.flatMap(markingPieces),
    ...layout.rails.map((box, index): Piece => {
      const heights = { low: Number.NEGATIVE_INFINITY, high: rear + SEAT };
      return { owner: `rail ${index + 1}`, kind: "rail", box, hand: "none", ...heights };
    }),
  ];
}

/**
 * The sheet on the rails has no openings over them. Heights that only touch don't meet, so that a rail is taken to reach into the
 * sheet: by less than any sheet is thick, mm.
 */
const SEAT = 0.1;

const componentPieces = ({
  id: owner,
  part: { hand },
  bodies,
  face,
  grasp,
}: PlacedComponent): readonly Piece[] => [
  ...bodies.map(
    ({ footprint, low, high }): Piece => ({
      ...{ owner, kind: "body", hand, low, high },
      box: contourExtent(footprint),
    }),
  ),
  ...face.map(
    (contour): Piece => ({
      ...{ owner, kind: "body", hand, ...ON_FACE },
      box: contourExtent(contour),
    }),
  ),
  ...(grasp === null
    ? []
    : [{ owner, kind: "grasp", hand, ...ALL_HEIGHTS, box: contourExtent(grasp) } as const]),
];

const FIXED: readonly CutOut["purpose"][] = ["fixing", "dowel", "mount"];

/** What opens behind a word is the word's owner's. A screw has its head before the sheet and its nut behind. */
function openingPiece(
  { owner, purpose, contour }: CutOut,
  { front, rear, index }: LayerLayout,
  names: ReadonlyMap<string, string>,
): Piece {
  const isFixed = FIXED.includes(purpose);
  return {
    owner: names.get(owner) ?? owner,
    kind: isFixed ? "fixing" : "opening",
    box: contourExtent(contour),
    hand: "none",
    ...(isFixed ? ALL_HEIGHTS : { low: rear, high: index === 0 ? front + ON_FACE.high : front }),
  };
}

/** Of a border its line and its title: there is room inside it. By boxes alone, since the page has no letters' and lines' own shapes. */
function markingPieces(marking: PlacedMarking): readonly Piece[] {
  const { owner, kind, words, box, strokeWidth } = marking;
  const boxes = kind === "border" ? [...words, ...bandsOf(box, words[0], strokeWidth)] : [box];
  return boxes.map(
    (one): Piece => ({ owner, kind: "marking", box: one, hand: "none", ...ON_FACE }),
  );
}

/** The four sides of a border; its title stands with its middle on the upper one. */
function bandsOf(
  { minX, minY, maxX, maxY }: Extent,
  title: Extent | undefined,
  width: number,
): readonly Extent[] {
  const top = title === undefined ? maxY : Math.min(maxY, (title.minY + title.maxY + width) / 2);
  return [
    extent(minX, minY, minX + width, top),
    extent(maxX - width, minY, maxX, top),
    extent(minX, minY, maxX, minY + width),
    extent(minX, top - width, maxX, top),
  ];
}

/** Between bodies, and between a marking and whatever else: a little more than nothing, so that each is seen by itself. */
const BODIES_APART = 2;
const MARKING_APART = 1.5;
/** Openings of two things: twice the least web, as one would set them out. */
const OPENINGS_APART = 2 * LEAST_WEB;

/** How far two pieces keep apart; null where neither minds the other. */
function apart(a: Piece, b: Piece): number | null {
  if (a.kind === "grasp" || b.kind === "grasp")
    return a.kind === b.kind ? (separation(a.hand, b.hand)?.least ?? null) : null;
  if (a.low >= b.high || b.low >= a.high) return null;
  const kinds = [a.kind, b.kind];
  if (kinds.includes("rail")) return kinds.includes("marking") ? null : 0;
  if (kinds.includes("marking")) return MARKING_APART;
  return kinds.includes("body") ? BODIES_APART : OPENINGS_APART;
}

/** The shifts, in whole steps, that leave everything on the sheet, openings with a rim. */
function rangeOf(own: readonly Piece[], layout: PanelLayout, step: number): Cells {
  const sheet = contourExtent(layout.outline);
  const rims = own.filter(({ kind }) => kind !== "grasp");
  const room = (of: (box: Extent, sheet: Extent) => number): number =>
    Math.min(
      ...rims.map(({ kind, box }) =>
        of(kind === "opening" || kind === "fixing" ? grownExtent(box, LEAST_RIM) : box, sheet),
      ),
    );
  const steps = (length: number): number => Math.floor(length / step + SHARE);
  return {
    minX: -steps(room((box, on) => box.minX - on.minX)),
    maxX: steps(room((box, on) => on.maxX - box.maxX)),
    minY: -steps(room((box, on) => box.minY - on.minY)),
    maxY: steps(room((box, on) => on.maxY - box.maxY)),
  };
}

/** Of a step: what arithmetic may lose of a shift that fits exactly. */
const SHARE = 1e-6;

/**
 * The shifts that lay one of the pieces on, or too near to, something else. Whether two mind each other is asked once of all that are
 * alike, and a shift that is not wanted is not kept: sixty lamps among 140 are 1.5 million pairs of pieces, and 176,000 bars.
 */
function barredShifts(
  own: readonly Piece[],
  others: readonly Piece[],
  on: { readonly step: number; readonly field: Cells },
): readonly Cells[] {
  const barred: Cells[] = [];
  const kinds = alike(others);
  for (const pieces of alike(own))
    for (const against of kinds) {
      const gap = apart(pieces[0]!, against[0]!);
      if (gap !== null) addBarred(barred, { pieces, against }, { ...on, gap });
    }
  return barred;
}

function addBarred(
  to: Cells[],
  { pieces, against }: { readonly pieces: readonly Piece[]; readonly against: readonly Piece[] },
  { step, field, gap }: { readonly step: number; readonly field: Cells; readonly gap: number },
): void {
  for (const { box } of pieces)
    for (const other of against) {
      const cells = barredBy(box, other.box, { gap, step });
      if (isMet(cells, field)) to.push(cells);
    }
}

/** What keeps others off alike. */
function alike(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const key = `${piece.kind} ${piece.hand} ${piece.low} ${piece.high}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [piece]);
    else group.push(piece);
  }
  return [...groups.values()];
}

/** The shifts of one box that lay it nearer than that to another, in whole steps. On the very edge it touches and does not overlap. */
const barredBy = (
  box: Extent,
  other: Extent,
  { gap, step }: { readonly gap: number; readonly step: number },
): Cells => ({
  minX: Math.floor((other.minX - gap - box.maxX) / step + SHARE) + 1,
  maxX: Math.ceil((other.maxX + gap - box.minX) / step - SHARE) - 1,
  minY: Math.floor((other.minY - gap - box.maxY) / step + SHARE) + 1,
  maxY: Math.ceil((other.maxY + gap - box.minY) / step - SHARE) - 1,
});

const isMet = (cells: Cells, field: Cells): boolean =>
  cells.minX <= field.maxX &&
  cells.maxX >= field.minX &&
  cells.minY <= field.maxY &&
  cells.maxY >= field.minY;

/** Between what is copied and its copy where neither is clear of all else, mm. */
const BESIDE = 5;

/** To the right, below, to the left or above, wherever the sheet shows it whole; else by a little, so that both are seen. */
function besideIt(box: Extent, sheet: Extent, step: number): Shift {
  const onGrid = (size: number): number => Math.round((size + BESIDE) / step) * step;
  const [across, up] = [onGrid(extentWidth(box)), onGrid(extentHeight(box))];
  if (box.maxX + across <= sheet.maxX) return { x: across, y: 0 };
  if (box.minY - up >= sheet.minY) return { x: 0, y: -up };
  if (box.minX - across >= sheet.minX) return { x: -across, y: 0 };
  if (box.maxY + up <= sheet.maxY) return { x: 0, y: up };
  return { x: onGrid(0), y: -onGrid(0) };
}
