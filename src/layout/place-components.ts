// Instances put on the panel: what each holds together, its bodies, its depth, what the hand meets.

import type { Catalogue } from "../catalogue/record.ts";
import { originOf } from "../design/moved-words.ts";
import { spanOf } from "../design/written.ts";
import type { Finding } from "../diagnostics/finding.ts";
import { type Point, point } from "../geometry/contour.ts";
import { madeOnceAs, madeOnceWith } from "../geometry/made-once.ts";
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
    if (!fitted.isClampedAsWritten) findings.push(...clampedIn(entry, layers).findings);
    const components = placedEntry({ entry, fitted }, { x: datum.x, y: datum.y });
    return withItsWords(entry, { components });
  });
  return { components, findings };
};

/** What an entry is in this stack, wherever it stands. */
interface Fitted {
  readonly clamped: Clamped;
  readonly isClampedAsWritten: boolean;
  readonly layers: readonly BareLayer[];
  readonly bodies: PartBodies;
  readonly depth: DepthFacts;
}

/** The panel that a component is put into, as far as it matters to it. */
export interface Stacked {
  readonly layers: readonly BareLayer[];
  readonly catalogue: Catalogue;
}

const clampedIn = (entry: Entry, layers: readonly BareLayer[]) =>
  clampedLayers(entry.common, layers, { id: entry.id, span: spanOf(entry.written, "clamps") });

const fittedEntry = madeOnceAs(originOf, (entry: Entry, { layers, catalogue }: Stacked): Fitted => {
  const { clamped, findings } = clampedIn(entry, layers);
  const gripped = thicknessBetween(layers, clamped.first, clamped.last).nominal;
  const bodies = partBodies(entry.part, { fitted: entry.fitted, catalogue, gripped });
  const depth = depthFacts(entry.part, { bodies, clamped, layers, catalogue });
  return { clamped, isClampedAsWritten: findings.length === 0, layers, bodies, depth };
});

/** The members of an entry with its datum at a place. Where its words have been moved since, they are still the old ones. */
const placedEntry = madeOnceAs(
  ({ fitted }: { readonly entry: Entry; readonly fitted: Fitted }) => fitted,
  ({ entry, fitted }, { x, y }: Point): readonly PlacedComponent[] =>
    withLampBox(
      entry.members.map((member) => placed(member, { ...fitted, entry, datum: point(x, y) })),
      fitted.layers,
    ),
);

/** The members with what the entry says now, and where in the text. */
const withItsWords = madeOnceWith(
  (
    entry: Entry,
    { components }: { readonly components: readonly PlacedComponent[] },
  ): readonly PlacedComponent[] =>
    components.every(({ written }) => written === entry.written)
      ? components
      : entry.members.flatMap((member, index) => {
          const component = components[index];
          return component === undefined ? [] : { ...component, ...wordsOf(entry, member) };
        }),
);

const wordsOf = ({ part, fitted, common, place, written, span }: Entry, { legend }: Member) => ({
  part,
  fitted,
  common,
  legend,
  place,
  written,
  span,
  placeSpan: place.written.span,
});

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

interface Placing extends Fitted {
  readonly entry: Entry;
  readonly datum: Point;
}

const placed = (member: Member, placing: Placing): PlacedComponent => {
  const { entry, clamped, layers, bodies, depth, datum } = placing;
  const at = point(datum.x + member.offset.x, datum.y + member.offset.y);
  const place = placement(at.x, at.y, entry.common.turn);
  const seat = seatPlane(entry.part, clamped, layers);
  return {
    ...wordsOf(entry, member),
    id: member.id,
    entry: entry.id,
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
  };
};
