// Everything solid about a component in panel coordinates: its own bodies, its nut and washers, and what is fitted to it.

import type { Boot, Guard, Hardware, Knob, Nut, Plug, Washer } from "../catalogue/hardware.ts";
import type { Hold, Part } from "../catalogue/part.ts";
import type { Catalogue } from "../catalogue/record.ts";
import type { ShapeAt } from "../catalogue/shape.ts";
import { shapeContour } from "../catalogue/shape-contour.ts";
import { type Contour, circle, point } from "../geometry/contour.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import { type Placement, placedContour, placement } from "../geometry/transform.ts";
import type { PlacedBody } from "./panel-layout.ts";

/** A part on its axis, before it is put anywhere: z from the seat. Shared by all members of an entry. */
export interface PartBodies {
  readonly bodies: readonly PlacedBody[];
  /** What a hand takes hold of; null for what is not touched. */
  readonly grasp: Contour | null;
  readonly face: readonly Contour[];
  /** Highest point above the seat that an operator must reach: lever, shaft, button, lens. */
  readonly tip: Mm | null;
}

export interface BodyOptions {
  readonly fitted: readonly Hardware[];
  readonly catalogue: Catalogue;
  /** Nominal thickness that it holds together: its nut lies on the other side of it. */
  readonly gripped: Mm;
}

export const partBodies = (part: Part, options: BodyOptions): PartBodies => {
  const own: readonly PlacedBody[] = part.bodies.map((body) => ({
    owner: "",
    role: body.role,
    footprint: shapeAtContour(body),
    low: body.from,
    high: body.to,
  }));
  const fastened = [...own, ...nutBodies(part.hold, options)];
  const bodies = [...fastened, ...fittedBodies(part, options, fastened)];
  return {
    bodies,
    grasp: graspOf(part, bodies),
    face: [...part.face.map(shapeAtContour), ...fittedFaces(options.fitted)],
    tip: tipOf(bodies),
  };
};

export const shapeAtContour = (shape: ShapeAt): Contour =>
  placedContour(shapeContour(shape.shape), placement(shape.at.x, shape.at.y));

/** Bodies moved to their place on the panel. */
export const placedBodies = (
  bodies: readonly PlacedBody[],
  options: { readonly owner: string; readonly at: Placement; readonly seat: Mm },
): readonly PlacedBody[] =>
  bodies.map((body) => ({
    ...body,
    owner: options.owner,
    footprint: placedContour(body.footprint, options.at),
    low: mm(body.low + options.seat),
    high: mm(body.high + options.seat),
  }));

/** Nut and washers of a bush: in front where the shoulder sits behind, behind where the flange sits in front. */
const nutBodies = (hold: Hold, options: BodyOptions): readonly PlacedBody[] => {
  if (hold.kind !== "bush") return [];
  const { hardware } = options.catalogue;
  const washers = hold.washers
    .map((id) => hardware.get(id))
    .filter((found): found is Washer => found?.kind === "washer");
  const nut = hardware.get(hold.nut);
  const stacked = nut?.kind === "nut" ? [...washers, nut] : washers;
  const sign = hold.seat === "behind" ? 1 : -1;
  let level = sign * options.gripped;
  return stacked.map((piece) => {
    const from = level;
    level += sign * piece.thickness;
    return turnedPiece(piece, Math.min(from, level), Math.max(from, level));
  });
};

const turnedPiece = (piece: Nut | Washer, low: number, high: number): PlacedBody => ({
  owner: "",
  role: piece.kind === "nut" ? "nut" : "washer",
  footprint: circle(point(0, 0), (piece.kind === "nut" ? piece.acrossCorners : piece.outside) / 2),
  low: mm(low),
  high: mm(high),
});

const fittedBodies = (
  part: Part,
  options: BodyOptions,
  fastened: readonly PlacedBody[],
): readonly PlacedBody[] =>
  options.fitted
    .map((hardware) => fittedBody(hardware, { part, gripped: options.gripped, fastened }))
    .filter((body): body is PlacedBody => body !== null);

const fittedBody = (
  hardware: Hardware,
  on: { readonly part: Part; readonly gripped: Mm; readonly fastened: readonly PlacedBody[] },
): PlacedBody | null => {
  const { part, gripped, fastened } = on;
  switch (hardware.kind) {
    case "knob":
      return knobBody(hardware, part);
    case "cap":
      return onTop(hardware.height, shapeContour(hardware.shape), { role: "cap", fastened });
    case "guard":
      return guardBody(hardware, gripped);
    case "bezel": {
      const ring = circle(point(0, 0), hardware.diameter / 2);
      return onTop(hardware.height, ring, { role: "flange", fastened });
    }
    case "boot":
      return bootBody(hardware, gripped);
    case "plug":
      return plugBody(hardware, part);
    case "nut":
    case "washer":
    case "standoff":
    case "screw":
    case "stud":
    case "retainer":
    case "receptacle":
      return null;
  }
};

/** A knob goes down on its shaft as far as its bore is deep. */
const knobBody = (knob: Knob, part: Part): PlacedBody => {
  const end = part.shaft?.length ?? mm(0);
  const foot = end - knob.boreDepth;
  return {
    owner: "",
    role: "knob",
    footprint: circle(point(0, 0), knob.diameter / 2),
    low: mm(foot),
    high: mm(foot + knob.height),
  };
};

const guardBody = (guard: Guard, gripped: Mm): PlacedBody => ({
  owner: "",
  role: "guard",
  footprint: shapeContour(guard.shape),
  low: gripped,
  high: mm(gripped + guard.height),
});

/** A boot stands on the layer and covers the lever: it is what a hand meets. */
const bootBody = (boot: Boot, gripped: Mm): PlacedBody => ({
  owner: "",
  role: "cap",
  footprint: circle(point(0, 0), boot.diameter / 2),
  low: gripped,
  high: mm(gripped + boot.height),
});

/** From the mouth where the part's own plug begins, with the bend of the cable; behind everything where it has none. */
const plugBody = (plug: Plug, part: Part): PlacedBody => {
  const room = plug.length + plug.bend;
  const mated = part.bodies.find(({ role }) => role === "plug");
  const inFront = mated !== undefined && mated.from >= 0;
  const mouth = mated?.to ?? Math.min(...part.bodies.map(({ from }) => from));
  return {
    owner: "",
    role: "plug",
    footprint: shapeContour(plug.shape),
    low: inFront ? mated.from : mm(mouth - room),
    high: inFront ? mm(mated.from + room) : mm(mouth),
  };
};

const onTop = (
  height: Mm,
  footprint: Contour,
  options: { readonly role: "cap" | "flange"; readonly fastened: readonly PlacedBody[] },
): PlacedBody => {
  const top = tipOf(options.fastened) ?? mm(0);
  return { owner: "", role: options.role, footprint, low: top, high: mm(top + height) };
};

const TIP_ROLES: readonly PlacedBody["role"][] = ["lever", "shaft", "button", "lens", "cap"];

const tipOf = (bodies: readonly PlacedBody[]): Mm | null => {
  const tips = bodies.filter((body) => TIP_ROLES.includes(body.role)).map((body) => body.high);
  return tips.length === 0 ? null : mm(Math.max(...tips));
};

/** What comes nearest to the hand counts: a guard round a lever, a knob on a shaft, a cap on a button. */
const GRASP_ORDER: readonly PlacedBody["role"][] = [
  "guard",
  "knob",
  "cap",
  "lever",
  "button",
  "shaft",
  "case",
];

const graspOf = (part: Part, bodies: readonly PlacedBody[]): Contour | null => {
  if (part.hand === "none") return null;
  for (const role of GRASP_ORDER) {
    const found = bodies.find((body) => body.role === role && body.high > 0);
    if (found !== undefined) return found.footprint;
  }
  return part.face[0] === undefined ? null : shapeAtContour(part.face[0]);
};

const fittedFaces = (fitted: readonly Hardware[]): readonly Contour[] =>
  fitted.flatMap((hardware): readonly Contour[] => {
    if (hardware.kind === "knob" || hardware.kind === "bezel")
      return [circle(point(0, 0), hardware.diameter / 2)];
    return hardware.kind === "cap" || hardware.kind === "guard"
      ? [shapeContour(hardware.shape)]
      : [];
  });
