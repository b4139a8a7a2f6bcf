// Everything that lies over the face, seen straight on: what is fitted there, where a lever or a needle comes in its travel,
// and the heads of screws. A lever turns about the plane that its part is seated on, and a needle over its dial or its travel.

import type { Span } from "../../diagnostics/finding.ts";
import { type Contour, circle, loop, vertex } from "../../geometry/contour.ts";
import type { Extent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import { pointDistance } from "../../geometry/point.ts";
import { degrees, mm } from "../../geometry/quantity.ts";
import { slotContour } from "../../geometry/shapes.ts";
import { placedPoint, placement } from "../../geometry/transform.ts";
import { clockDirection, tangent, toRadians } from "../../geometry/trigonometry.ts";
import { leverTravel } from "../../layout/lever-travel.ts";
import type { PanelLayout, PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { ISO_4762 } from "../../standards/metric-fasteners.ts";

export interface FaceCover {
  readonly owner: string;
  readonly span: Span;
  /** `knob`, or `lever, thrown 13° from upright,`. */
  readonly what: string;
  readonly contour: Contour;
  readonly box: Extent;
  /** Marks that it is meant to pass over: a needle's own dial. */
  readonly passesOwnDial: boolean;
}

export const faceCovers = (layout: PanelLayout): readonly FaceCover[] => [
  ...layout.components.flatMap(componentCovers),
  ...fixingHeads(layout),
];

const STILL: readonly PlacedBody["role"][] = ["knob", "cap", "guard", "flange", "washer", "nut"];

const componentCovers = (component: PlacedComponent): readonly FaceCover[] => {
  const { id: owner, span } = component;
  const still = component.bodies
    .filter((body) => STILL.includes(body.role) && body.high > 0)
    .map((body) => ({ what: body.role, contour: body.footprint }));
  const moving = [leverSweep(component), needleSweep(component)].filter((one) => one !== null);
  return [...still, ...moving, ...screwHeads(component)].map(({ what, contour }) => ({
    owner,
    span,
    what,
    contour,
    box: contourExtent(contour),
    passesOwnDial: what.startsWith("needle"),
  }));
};

interface Shape {
  readonly what: string;
  readonly contour: Contour;
}

/** From one end of its travel to the other, as wide as its tip. */
const leverSweep = ({ part, fitted, at, turn }: PlacedComponent): Shape | null => {
  const travel = leverTravel(part, fitted);
  if (travel === null) return null;
  return {
    what: `lever, thrown ${decimal(travel.throw, 1)}° from upright,`,
    contour: slotContour(at, {
      length: mm(2 * travel.reach),
      width: travel.width,
      turn: degrees(UPRIGHT - (travel.line - turn)),
    }),
  };
};

/** Of a clock angle of 0, counted as directions are. */
const UPRIGHT = 90;

/** The sector that the needle's point passes; all round where it turns without a stop. */
const needleSweep = (component: PlacedComponent): Shape | null => {
  const needle = component.bodies.find(({ role, high }) => role === "needle" && high > 0);
  if (needle === undefined) return null;
  const { at, part, turn, common } = component;
  const { turning } = part;
  const radius = farthest(needle.footprint, at);
  const travel = common.dial?.sweep ?? turning?.travel ?? null;
  const what = "needle, in its travel,";
  if (travel === null || travel >= FULL) return { what, contour: circle(at, radius) };
  const middle = (turning?.travel == null ? 0 : turning.first + turning.travel / 2) - turn;
  const end = (clock: number) => {
    const way = clockDirection(degrees(clock));
    return { x: at.x + way.x * radius, y: at.y + way.y * radius };
  };
  const [last, first] = [end(middle + travel / 2), end(middle - travel / 2)];
  const bulge = tangent(toRadians(degrees(travel / 4)));
  return {
    what,
    contour: loop([
      vertex(at.x, at.y, 0),
      vertex(last.x, last.y, bulge),
      vertex(first.x, first.y, 0),
    ]),
  };
};

const FULL = 360;

const farthest = (contour: Contour, from: PlacedComponent["at"]): number =>
  contour.kind === "circle"
    ? contour.radius + pointDistance(contour.centre, from)
    : Math.max(...contour.vertices.map((corner) => pointDistance(corner, from)));

/** Screws that hold the part have their heads on the operator's side: on the face where it is held by the face. */
const screwHeads = ({ part, at, turn, clamped }: PlacedComponent): readonly Shape[] =>
  part.hold.kind !== "screws" || clamped.first > 0
    ? []
    : part.hold.holes.map(({ at: hole, head }) => ({
        what: "screw head",
        contour: circle(placedPoint(hole, placement(at.x, at.y, turn)), head / 2),
      }));

/** The stack's screws, where they come through the face. */
const fixingHeads = ({ fixings, layers, design }: PanelLayout): readonly FaceCover[] => {
  const thread = design.fixings?.screws;
  const head = thread === undefined ? undefined : ISO_4762[thread];
  if (head === undefined) return [];
  const through = layers[0]?.cutOuts ?? [];
  return fixings
    .filter(({ id, kind }) => kind === "screw" && through.some(({ owner }) => owner === id))
    .map(({ id, at, span }) => {
      const contour = circle(at, head.diameter / 2);
      const box = contourExtent(contour);
      return { owner: id, span, what: "screw head", contour, box, passesOwnDial: false };
    });
};
