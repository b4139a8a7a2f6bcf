// The openings that a part asks for, against the part itself: what must go in goes in, what must cover covers,
// and a layer in front or behind clears nut, flange and body.

import { containsContour } from "../../geometry/containment.ts";
import { type Contour, circle, point } from "../../geometry/contour.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import type { Body, Part } from "../part.ts";
import type { Catalogue } from "../record.ts";
import type { ShapeAt } from "../shape.ts";
import { shapeContour, shapeSize } from "../shape-contour.ts";
import { type LintFault, unless } from "./lint-fault.ts";

export function openingFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  const { clamp, passes, covered } = part.openings;
  const hole = shapeContour(clamp);
  const widest = widestHole(part, catalogue);
  return [
    ...unless(
      containsContour(hole, shapeContour(passes)) && shapeSize(clamp) > shapeSize(passes),
      "openings.passes",
      "what must enter the hole does not",
    ),
    ...unless(
      covered >= widest,
      "openings.covered",
      `a hole of ${widest}, as the softest material needs it, is not covered`,
    ),
    ...coverFaults(part, catalogue),
    ...tabFaults(part, hole),
    ...frontFaults(part, catalogue),
    ...behindFaults(part, catalogue),
  ];
}

/** The widest hole that layout may make for it: the record's own, or the part with the loosest material's fit. */
const widestHole = (part: Part, catalogue: Catalogue): number => {
  const fits = [...catalogue.materials.values()].map((material) => material.bushFit);
  return Math.max(
    shapeSize(part.openings.clamp),
    shapeSize(part.openings.passes) + Math.max(0, ...fits),
  );
};

/** The cover is a real thing: a nut, washer or flange at least as wide as the record says. */
function coverFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  const covers = [...coverSizes(part, catalogue)];
  return unless(
    covers.some((size) => size >= part.openings.covered),
    "openings.covered",
    "nothing of the part is as wide as what it is said to cover",
  );
}

const COVERING: readonly Body["role"][] = ["flange", "case", "board", "glass"];

function coverSizes(part: Part, catalogue: Catalogue): readonly number[] {
  const own = part.bodies
    .filter((body) => COVERING.includes(body.role))
    .map((body) => shapeSize(body.shape));
  const { hold } = part;
  if (hold.kind !== "bush" || hold.seat === "front") return own;
  return nutAndWashers(part, catalogue).map((piece) => piece.flats);
}

function tabFaults(part: Part, hole: Contour): readonly LintFault[] {
  return part.openings.tabs.flatMap((tab, index) => {
    const { overlaps, gap } = contourDistance(contourAt(tab), hole);
    return unless(
      !overlaps && gap > 0,
      `openings.tabs.${index}`,
      "the hole for the tab runs into the hole",
    );
  });
}

/** A layer in front clears the nut of a bush, or the flange of what sits in front. */
function frontFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  const { front } = part.openings;
  if (front === null) return [];
  const opening = shapeContour(front);
  const through = part.hold.seat === "front" ? flanges(part) : nutContours(part, catalogue);
  return unless(
    through.every((contour) => containsContour(opening, contour)),
    "openings.front",
    "nut, washer or flange does not go through it",
  );
}

/** A sheet behind clears the case of what sits behind, or the nut of what sits in front. */
function behindFaults(part: Part, catalogue: Catalogue): readonly LintFault[] {
  const { behind } = part.openings;
  if (behind === null) return [];
  const opening = shapeContour(behind);
  const through = part.hold.seat === "front" ? nutContours(part, catalogue) : cases(part);
  return unless(
    through.every((contour) => containsContour(opening, contour)),
    "openings.behind",
    "nut or case does not go through it",
  );
}

const flanges = (part: Part): readonly Contour[] => contoursOf(part, ["flange"]);

const cases = (part: Part): readonly Contour[] => contoursOf(part, ["case", "flange", "board"]);

const contoursOf = (part: Part, roles: readonly Body["role"][]): readonly Contour[] =>
  part.bodies.filter((body) => roles.includes(body.role)).map(contourAt);

const nutContours = (part: Part, catalogue: Catalogue): readonly Contour[] =>
  nutAndWashers(part, catalogue).map((piece) => circle(point(0, 0), piece.corners / 2));

interface Turned {
  readonly flats: number;
  readonly corners: number;
}

const nutAndWashers = (part: Part, catalogue: Catalogue): readonly Turned[] =>
  part.hold.kind === "bush"
    ? [part.hold.nut, ...part.hold.washers].flatMap((id): readonly Turned[] => {
        const piece = catalogue.hardware.get(id);
        if (piece?.kind === "nut")
          return [{ flats: piece.acrossFlats, corners: piece.acrossCorners }];
        return piece?.kind === "washer" ? [{ flats: piece.outside, corners: piece.outside }] : [];
      })
    : [];

const contourAt = ({ shape, at }: ShapeAt): Contour =>
  placedContour(shapeContour(shape), placement(at.x, at.y));
