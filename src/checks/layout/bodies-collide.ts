// Two components' bodies that want the same space, in front of the panel or behind it.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout, PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { onePerPair } from "../one-finding.ts";
import { eachNearPair } from "../pairs.ts";
import { type ContourParting, contourParting } from "../parting.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { inTextOrder, type WrittenThing } from "../text-order.ts";
import { lengthWords, measureMm } from "../words.ts";
import { shareHeight } from "./share-height.ts";

const entry: CodeEntry = {
  code: "checks/bodies-collide",
  severity: "fault",
  title: "two components want the same space",
  why: "The holes may lie well apart while the bodies behind them, the nuts, the plugs or the knobs in front do not. One of the two can't be mounted. Move it, or turn it about its axis.",
  example:
    "components:\n  a: { part: pot-16, at: { left: 40 mm, top: 30 mm } }\n  b: { part: pot-16, at: { right-of: a, centres: 16 mm } }",
};

export const bodiesCollide: Rule = {
  entry,
  move: "away",
  judge: (facts) =>
    onePerPair(
      [...worstMeetings(facts.layout).values()].map((meeting) => collision(meeting, facts)),
    ),
};

interface Standing {
  readonly component: PlacedComponent;
  readonly body: PlacedBody;
}

interface Meeting {
  /** Written first. */
  readonly a: Standing;
  readonly b: Standing;
  readonly parting: ContourParting;
}

/** Of each two components, the two bodies that have to part the farthest. */
const worstMeetings = (layout: PanelLayout): ReadonlyMap<string, Meeting> => {
  const boxed = layout.components.flatMap((component) =>
    component.bodies.map((body) => ({
      thing: { component, body },
      box: contourExtent(body.footprint),
    })),
  );
  const found = new Map<string, Meeting>();
  eachNearPair(boxed, 0, (first, second) => {
    if (first.component === second.component || !shareHeight(first.body, second.body)) return;
    if (!contourDistance(first.body.footprint, second.body.footprint).overlaps) return;
    const [a, b] = inTextOrder<Standing>(first, second, writtenAt);
    const key = `${a.component.id} ${b.component.id}`;
    const parting = contourParting(a.body.footprint, b.body.footprint);
    const before = found.get(key);
    if (before === undefined || short(parting) > short(before.parting))
      found.set(key, { a, b, parting });
  });
  return found;
};

const short = ({ apart, needed }: ContourParting): number => needed - apart;

const writtenAt = ({ component: { span, id } }: Standing): WrittenThing => ({ span, name: id });

const collision = ({ a, b, parting }: Meeting, facts: PanelFacts): Finding => {
  const [first, second] = [a.component, b.component];
  const more = short(parting);
  const words = lengthWords(facts, placingKeySpan(second));
  const where = Math.min(a.body.high, b.body.high) <= 0 ? "behind the face" : "in front";
  return finding(entry, {
    message: `${first.id}'s ${a.body.role} and ${second.id}'s ${b.body.role} want the same space ${where}: centres ${words(parting.apart, parting.needed)} apart${parting.way}, ${words(parting.needed, parting.apart)} would part them, ${words(more, 0)} more.`,
    span: second.placeSpan,
    related: [{ what: first.id, span: first.placeSpan }],
    subjects: [second.id, first.id],
    measured: measureMm(parting.apart),
    limit: measureMm(parting.needed),
    source: { kind: "geometry", name: "the body of the other component" },
  });
};

/** The number that places it, for its unit. */
const placingKeySpan = ({ place }: PlacedComponent): Finding["span"] | undefined =>
  place.written.keys["centres"] ??
  place.written.keys["gap"] ??
  Object.values(place.written.keys)[0];
