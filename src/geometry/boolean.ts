// Outlines joined, cut from one another and intersected. The topology comes from polygons on an integer grid
// (clipper2-ts: exact there); the shapes are then turned back into the sources' own lines and arcs.
// Outlines that meet no other pass through untouched. Overlaps thinner than 1 µm are not seen.

import {
  Clipper64,
  ClipType,
  FillRule,
  type Paths64,
  PathType,
  type PolyPath64,
  PolyTree64,
} from "clipper2-ts";
import {
  type Chord,
  gridPath,
  type SourceIndex,
  sourceIndex,
  type Winding,
} from "./boolean-grid.ts";
import { recovered } from "./boolean-recovery.ts";
import { clustered } from "./cluster.ts";
import type { Contour, Region } from "./contour.ts";
import { extentsOverlap } from "./extent.ts";
import { contourArea, contourExtent, reversedContour } from "./measure.ts";
import { loopFaults } from "./simple.ts";

/** The area that any of the contours covers. */
export const union = (contours: readonly Contour[]): readonly Region[] =>
  unionRegions(contours.map((outline) => ({ outline, holes: [] })));

/** The area that any of the regions covers. */
export const unionRegions = (regions: readonly Region[]): readonly Region[] =>
  inOrder(
    clustered(regions, (region) => contourExtent(region.outline)).flatMap((cluster) =>
      cluster.length === 1 && isPlain(cluster[0]!)
        ? cluster.map(wellRun)
        : clipped(ClipType.Union, cluster, []),
    ),
  );

/** What is left of the regions outside all the contours. */
export const difference = (
  regions: readonly Region[],
  cutters: readonly Contour[],
): readonly Region[] => {
  const cutting = cutters.map((outline) => ({ outline, holes: [] }));
  return inOrder(
    regions.flatMap((region) => {
      const near = cutting.filter((cutter) => isNear(region, cutter));
      return near.length === 0 ? [wellRun(region)] : clipped(ClipType.Difference, [region], near);
    }),
  );
};

/** The area that regions of both lists cover. */
export const intersection = (a: readonly Region[], b: readonly Region[]): readonly Region[] => {
  const subjects = a.filter((region) => b.some((other) => isNear(region, other)));
  const others = b.filter((region) => a.some((other) => isNear(region, other)));
  return subjects.length === 0 ? [] : inOrder(clipped(ClipType.Intersection, subjects, others));
};

/**
 * The area that contours wind round a number of times other than 0, each taken in the direction in which it runs:
 * the rule by which the outlines of a letter are filled.
 */
export const woundRegions = (contours: readonly Contour[]): readonly Region[] => {
  const chords: Chord[] = [];
  const paths = contours.map((contour) => gridPath(contour, "as-drawn", chords));
  return inOrder(regionsOf(ran(ClipType.Union, paths, []), sourceIndex(chords)));
};

const isNear = (a: Region, b: Region): boolean =>
  extentsOverlap(contourExtent(a.outline), contourExtent(b.outline));

/** Nothing to work out: no holes, one simple loop. */
const isPlain = (region: Region): boolean =>
  region.holes.length === 0 && loopFaults(region.outline).length === 0;

/** Outline counter-clockwise, holes clockwise. */
const wellRun = (region: Region): Region => ({
  outline: turned(region.outline, 1),
  holes: region.holes.map((hole) => turned(hole, -1)),
});

const turned = (contour: Contour, sign: 1 | -1): Contour =>
  contour.kind === "circle" || contourArea(contour) * sign > 0 ? contour : reversedContour(contour);

const clipped = (
  operation: ClipType,
  subjects: readonly Region[],
  cutters: readonly Region[],
): readonly Region[] => {
  const chords: Chord[] = [];
  const subjectPaths = pathsOf(subjects, chords);
  const cutterPaths = pathsOf(cutters, chords);
  return regionsOf(ran(operation, subjectPaths, cutterPaths), sourceIndex(chords));
};

const pathsOf = (regions: readonly Region[], chords: Chord[]): Paths64 => {
  const wound = (contour: Contour, winding: Winding): Paths64[number] =>
    gridPath(contour, winding, chords);
  return regions.flatMap(({ outline, holes }) => [
    wound(outline, "left"),
    ...holes.map((hole) => wound(hole, "right")),
  ]);
};

const ran = (operation: ClipType, subjects: Paths64, cutters: Paths64): PolyTree64 => {
  const engine = new Clipper64();
  engine.addPaths(subjects, PathType.Subject);
  if (cutters.length > 0) engine.addPaths(cutters, PathType.Clip);
  const tree = new PolyTree64();
  engine.execute(operation, FillRule.NonZero, tree);
  return tree;
};

/** The tree holds outlines, in them holes, in those outlines again. */
const regionsOf = (tree: PolyTree64 | PolyPath64, sources: SourceIndex): readonly Region[] => {
  const regions: Region[] = [];
  for (const node of childrenOf(tree)) {
    const holeNodes = childrenOf(node);
    const outline = recovered(node.polygon ?? [], sources);
    const holes = holeNodes.map((hole) => recovered(hole.polygon ?? [], sources));
    if (outline !== null) regions.push({ outline, holes: holes.filter((hole) => hole !== null) });
    for (const hole of holeNodes) regions.push(...regionsOf(hole, sources));
  }
  return regions;
};

const childrenOf = (node: PolyTree64 | PolyPath64): readonly PolyPath64[] =>
  Array.from({ length: node.count }, (_, index) => node.child(index));

/** From left to right, then upward, then by area. */
const inOrder = (regions: readonly Region[]): readonly Region[] =>
  regions.toSorted((a, b) => {
    const boxA = contourExtent(a.outline);
    const boxB = contourExtent(b.outline);
    return (
      boxA.minX - boxB.minX ||
      boxA.minY - boxB.minY ||
      contourArea(a.outline) - contourArea(b.outline)
    );
  });
