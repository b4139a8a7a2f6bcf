// Recipes of solids: plain data, arcs kept, enough for a volume sum, a bounding box and a STEP file; a mesh is made of
// one in a second step. Heights run along +z. Everything in millimetres.

import type { Contour, Loop, Point, Region } from "../contour.ts";
import { invariant } from "../invariant.ts";
import { type Degrees, degrees, type Mm, mm } from "../quantity.ts";

export type Solid = LayeredSolid | RevolvedSolid | LoftedSolid | ComposedSolid | PlacedSolid;

/**
 * What facets do beside a curve. `clear`: something must pass, so the facets stay on the material's side of the curve;
 * `exact`: they stray to both sides and keep the area.
 */
export type Clearance = "clear" | "exact";

export interface SolidContour {
  readonly contour: Contour;
  readonly clearance: Clearance;
}

/** Material with holes. Holes lie inside the outline and apart from one another. */
export interface SolidRegion {
  readonly outline: SolidContour;
  readonly holes: readonly SolidContour[];
}

/** One shape from height to height. Its regions lie apart; a region may stand in another's hole. */
export interface SolidLayer {
  readonly from: Mm;
  readonly to: Mm;
  readonly regions: readonly SolidRegion[];
}

/** Layers that touch, the lowest first. The only recipe with a STEP file. */
export interface LayeredSolid {
  readonly kind: "layered";
  readonly layers: readonly SolidLayer[];
}

/** A profile (x is the radius, never negative; y is the height) turned once round the vertical axis at a point. */
export interface RevolvedSolid {
  readonly kind: "revolved";
  readonly at: Point;
  readonly profile: Loop;
  readonly clearance: Clearance;
}

/**
 * Sections joined by straight lines from corner to corner, the lowest first: a bevelled ring, a tapered boss. All have the
 * same contours with the same number of vertices and the same bulges; an arc may shrink to a point.
 */
export interface LoftedSolid {
  readonly kind: "lofted";
  readonly sections: readonly LoftSection[];
}

export interface LoftSection {
  readonly height: Mm;
  readonly outline: Contour;
  readonly holes: readonly Contour[];
}

/**
 * Pieces put together, then pieces taken out. Added pieces touch at most; pieces taken out lie within what was added
 * (faces may be flush) and apart from one another: so the volumes add up.
 */
export interface ComposedSolid {
  readonly kind: "composed";
  readonly add: readonly Solid[];
  readonly cut: readonly Solid[];
}

/** A solid turned about x, then y, then z through the origin, then moved. */
export interface PlacedSolid {
  readonly kind: "placed";
  readonly solid: Solid;
  readonly turn: { readonly x: Degrees; readonly y: Degrees; readonly z: Degrees };
  readonly to: { readonly x: Mm; readonly y: Mm; readonly z: Mm };
}

export interface RegionClearances {
  readonly outline: Clearance;
  readonly holes: Clearance;
}

/** As most regions are meant: things pass through holes, nothing fits round the outline. */
const usualClearances: RegionClearances = { outline: "exact", holes: "clear" };

export const solidRegion = (
  region: Region,
  clearances: Partial<RegionClearances> = {},
): SolidRegion => {
  const { outline, holes } = { ...usualClearances, ...clearances };
  return {
    outline: { contour: region.outline, clearance: outline },
    holes: region.holes.map((contour) => ({ contour, clearance: holes })),
  };
};

export const solidLayer = (
  from: number,
  to: number,
  regions: readonly SolidRegion[],
): SolidLayer => ({ from: mm(from), to: mm(to), regions });

export const layered = (layers: readonly SolidLayer[]): LayeredSolid => ({
  kind: "layered",
  layers,
});

/** One region from height to height. */
export const prism = (from: number, to: number, region: SolidRegion): LayeredSolid =>
  layered([solidLayer(from, to, [region])]);

/** What a screw, shaft or plug passes: an opening of at least this shape, to be cut out of something. */
export const opening = (from: number, to: number, contour: Contour): LayeredSolid =>
  prism(from, to, solidRegion({ outline: contour, holes: [] }, { outline: "clear" }));

export const revolved = (
  at: Point,
  profile: Loop,
  clearance: Clearance = "exact",
): RevolvedSolid => ({ kind: "revolved", at, profile, clearance });

export const lofted = (sections: readonly LoftSection[]): LoftedSolid => ({
  kind: "lofted",
  sections,
});

export const composed = (add: readonly Solid[], cut: readonly Solid[] = []): ComposedSolid => ({
  kind: "composed",
  add,
  cut,
});

export const placed = (
  solid: Solid,
  to: { readonly x: number; readonly y: number; readonly z: number },
  turn: { readonly x?: number; readonly y?: number; readonly z?: number } = {},
): PlacedSolid => {
  invariant(Number.isFinite(to.x + to.y + to.z), "a solid is moved by finite lengths");
  return {
    kind: "placed",
    solid,
    turn: { x: degrees(turn.x ?? 0), y: degrees(turn.y ?? 0), z: degrees(turn.z ?? 0) },
    to: { x: mm(to.x), y: mm(to.y), z: mm(to.z) },
  };
};

/** Has a STEP file of its own. */
export const isLayeredPrism = (solid: Solid): solid is LayeredSolid => solid.kind === "layered";
