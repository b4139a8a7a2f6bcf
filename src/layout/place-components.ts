// Instances put on the panel: what each holds together, its bodies, its depth, what the hand meets.

import type { Catalogue } from "../catalogue/record.ts";
import { spanOf } from "../design/written.ts";
import type { Finding } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
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
    const fitted = fittedEntry(entry, { layers, catalogue });
    findings.push(...fitted.findings);
    return placedEntry(fitted, { x: datum.x, y: datum.y });
  });
  return { components, findings };
};

/** What an entry is in this stack, wherever it stands. */
interface Fitted {
  readonly entry: Entry;
  readonly clamped: Clamped;
  readonly layers: readonly BareLayer[];
  readonly bodies: PartBodies;
  readonly depth: DepthFacts;
  readonly findings: readonly Finding[];
}

/** The panel that a component is put into, as far as it matters to it. */
export interface Stacked {
  readonly layers: readonly BareLayer[];
  readonly catalogue: Catalogue;
}

const fittedEntry = madeOnceWith((entry: Entry, { layers, catalogue }: Stacked): Fitted => {
  const { clamped, findings } = clampedLayers(entry.common, layers, {
    id: entry.id,
    span: spanOf(entry.written, "clamps"),
  });
  const gripped = thicknessBetween(layers, clamped.first, clamped.last).nominal;
  const bodies = partBodies(entry.part, { fitted: entry.fitted, catalogue, gripped });
  const depth = depthFacts(entry.part, { bodies, clamped, layers, catalogue });
  return { entry, clamped, layers, bodies, depth, findings };
});

/** The members of an entry with its datum at a place. */
const placedEntry = madeOnceWith((fitted: Fitted, { x, y }: Point): readonly PlacedComponent[] =>
  withLampBox(
    fitted.entry.members.map((member) => placed(member, fitted, point(x, y))),
    fitted.layers,
  ),
);

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

const placed = (member: Member, fitted: Fitted, datum: Point): PlacedComponent => {
  const { entry, clamped, layers, bodies, depth } = fitted;
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
