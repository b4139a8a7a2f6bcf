// Two components' bodies that want the same space, in front of the panel or behind it.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { PanelLayout, PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { eachNearPair } from "../pairs.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { pairRemedies } from "./pair-remedies.ts";

const entry: CodeEntry = {
  code: "checks/bodies-collide",
  severity: "fault",
  title: "two components want the same space",
  why: "The holes may lie well apart while the bodies behind them, the nuts, the plugs or the knobs in front do not. One of the two can't be mounted. Move it, or turn it about its axis.",
  example:
    "components:\n  a: { part: pot-24, at: { left: 40 mm, top: 30 mm } }\n  b: { part: pot-24, at: { right-of: a, centres: 16 mm } }",
};

interface Meeting {
  readonly a: PlacedBody;
  readonly b: PlacedBody;
}

export const bodiesCollide: Rule = {
  entry,
  judge: (facts) =>
    [...firstMeetings(facts.layout).values()].map((meeting) => collision(meeting, facts)),
};

/** The first meeting of each two owners. */
const firstMeetings = (layout: PanelLayout): ReadonlyMap<string, Meeting> => {
  const bodies = layout.components.flatMap((component) => component.bodies);
  const boxed = bodies.map((thing) => ({ thing, box: contourExtent(thing.footprint) }));
  const found = new Map<string, Meeting>();
  eachNearPair(boxed, 0, (a, b) => {
    const key = a.owner < b.owner ? `${a.owner} ${b.owner}` : `${b.owner} ${a.owner}`;
    if (a.owner === b.owner || found.has(key) || !shareHeight(a, b)) return;
    if (contourDistance(a.footprint, b.footprint).overlaps) found.set(key, { a, b });
  });
  return found;
};

const shareHeight = (a: PlacedBody, b: PlacedBody): boolean =>
  a.low < b.high - samePlace && b.low < a.high - samePlace;

const collision = (meeting: Meeting, facts: PanelFacts): Finding => {
  const { components } = facts.layout;
  const find = (id: string): PlacedComponent | undefined =>
    components.find((component) => component.id === id);
  const isOrdered =
    (find(meeting.a.owner)?.span.start ?? 0) <= (find(meeting.b.owner)?.span.start ?? 0);
  const [a, b] = isOrdered ? [meeting.a, meeting.b] : [meeting.b, meeting.a];
  const first = find(a.owner);
  const second = find(b.owner);
  const need = overlapDepth(a, b, { first, second });
  const where = Math.min(a.high, b.high) <= 0 ? "behind the face" : "in front";
  return finding(entry, {
    message: `${a.owner}'s ${a.role} and ${b.owner}'s ${b.role} overlap by ${millimetres(need)} ${where}.`,
    span: second?.placeSpan ?? facts.layout.design.written.span,
    related: first === undefined ? [] : [{ what: a.owner, span: first.placeSpan }],
    subjects: [b.owner, a.owner],
    measured: measureMm(-need),
    limit: measureMm(0),
    source: { kind: "geometry", name: "bodies of two components lie apart" },
    remedies: pairRemedies(a, b, { need, facts }),
  });
};

/** How far the two must part along the axis that their centres lie apart on. */
const overlapDepth = (
  a: PlacedBody,
  b: PlacedBody,
  of: { readonly first: PlacedComponent | undefined; readonly second: PlacedComponent | undefined },
): number => {
  const boxA = contourExtent(a.footprint);
  const boxB = contourExtent(b.footprint);
  const across = Math.min(boxA.maxX - boxB.minX, boxB.maxX - boxA.minX);
  const along = Math.min(boxA.maxY - boxB.minY, boxB.maxY - boxA.minY);
  if (of.first === undefined || of.second === undefined) return Math.min(across, along);
  const dx = Math.abs(of.second.at.x - of.first.at.x);
  const dy = Math.abs(of.second.at.y - of.first.at.y);
  return dx >= dy ? across : along;
};
