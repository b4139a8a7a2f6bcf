// Instances put on the panel: what each holds together, its bodies, its depth, what the hand meets.

import type { Catalogue } from "../catalogue/record.ts";
import { spanOf } from "../design/written.ts";
import type { Finding } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { mm } from "../geometry/quantity.ts";
import { placedContour, placement } from "../geometry/transform.ts";
import { type PartBodies, partBodies, placedBodies } from "./bodies.ts";
import { type Clamped, clampedLayers, seatPlane, thicknessBetween } from "./clamping.ts";
import { depthFacts } from "./depth.ts";
import type { Entry, Member } from "./instances.ts";
import { lampBoxBodies, lampBoxPlan } from "./lamp-box-plan.ts";
import type { DepthFacts, PlacedComponent } from "./panel-layout.ts";
import type { BareLayer } from "./stack.ts";
import { trimBodies, trimFace } from "./trim-face.ts";

export const placeComponents = (
  entries: readonly Entry[],
  options: {
    readonly places: ReadonlyMap<string, Point>;
    readonly layers: readonly BareLayer[];
    readonly catalogue: Catalogue;
  },
): { readonly components: readonly PlacedComponent[]; readonly findings: readonly Finding[] } => {
  const { places, layers, catalogue } = options;
  const findings: Finding[] = [];
  const components = entries.flatMap((entry) => {
    const datum = places.get(entry.id);
    if (datum === undefined) return [];
    const clamp = clampedLayers(entry.common, layers, {
      id: entry.id,
      span: spanOf(entry.written, "clamps"),
    });
    findings.push(...clamp.findings);
    const { clamped } = clamp;
    const gripped = thicknessBetween(layers, clamped.first, clamped.last).nominal;
    const bodies = partBodies(entry.part, { fitted: entry.fitted, catalogue, gripped });
    const depth = depthFacts(entry.part, { bodies, clamped, layers, catalogue });
    const shared = { entry, clamped, layers, bodies, depth, datum };
    return withLampBox(
      entry.members.map((member) => placed(member, shared)),
      layers,
    );
  });
  return { components, findings };
};

/** The windows of a lamp box have its tiles behind them. */
const withLampBox = (
  members: readonly PlacedComponent[],
  layers: readonly BareLayer[],
): readonly PlacedComponent[] => {
  const design = members[0]?.common.lampBox ?? null;
  if (design === null) return members;
  const bodies = lampBoxBodies(lampBoxPlan(members, design, layers));
  return members.map((member) => ({ ...member, bodies: bodies.get(member.id) ?? member.bodies }));
};

interface Shared {
  readonly entry: Entry;
  readonly clamped: Clamped;
  readonly layers: readonly BareLayer[];
  readonly bodies: PartBodies;
  readonly depth: DepthFacts;
  readonly datum: Point;
}

const placed = (member: Member, shared: Shared): PlacedComponent => {
  const { entry, clamped, layers, bodies, depth, datum } = shared;
  const at = point(datum.x + member.offset.x, datum.y + member.offset.y);
  const place = placement(at.x, at.y, entry.common.turn);
  const seat = seatPlane(entry.part, clamped, layers);
  return {
    id: member.id,
    entry: entry.id,
    part: entry.part,
    fitted: entry.fitted,
    common: entry.common,
    legend: member.legend,
    at,
    turn: entry.common.turn,
    clamped,
    seat,
    bodies: [
      ...placedBodies(bodies.bodies, { owner: member.id, at: place, seat }),
      ...trimBodies(entry, { owner: member.id, at: place, seat: mm(0) }),
    ],
    grasp: bodies.grasp === null ? null : placedContour(bodies.grasp, place),
    face: [...trimFace(entry), ...bodies.face].map((contour) => placedContour(contour, place)),
    depth,
    place: entry.place,
    written: entry.written,
    span: entry.span,
    placeSpan: entry.place.written.span,
  };
};
