// Controls too close for a hand: edge to edge, by how each of the two is taken hold of.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { type Separation, separation } from "../../standards/separation.ts";
import { handSource } from "../hand-source.ts";
import { isUnder } from "../limits.ts";
import { onePerPair } from "../one-finding.ts";
import { eachNearPair } from "../pairs.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { inTextOrder, type WrittenThing } from "../text-order.ts";
import { lengthWords, measureMm } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/hands",
  severity: "query",
  title: "controls too close for a hand",
  why: "A finger that reaches for one control must not move its neighbour. The published tables give the least free distance between the edges of two controls for a bare hand; gloves want more. Keys of one keypad count as one component.",
  example:
    "components:\n  a: { part: toggle-6, at: { left: 40 mm, top: 30 mm } }\n  b: { part: toggle-6, at: { right-of: a, centres: 18 mm } }",
};

/** The largest figure of the table. */
const REACH = 25;

type Held = PlacedComponent & { readonly grasp: NonNullable<PlacedComponent["grasp"]> };

export const hands: Rule = {
  entry,
  move: "away",
  judge: (facts) => {
    const held = facts.layout.components.filter(
      (component): component is Held => component.grasp !== null,
    );
    const boxed = held.map((thing) => ({ thing, box: contourExtent(thing.grasp) }));
    const found: Finding[] = [];
    eachNearPair(boxed, REACH, (first, second) => {
      const rule = separation(first.part.hand, second.part.hand);
      if (rule === null) return;
      const { gap, overlaps } = contourDistance(first.grasp, second.grasp);
      if (overlaps || !isUnder(gap, rule.least)) return;
      found.push(tooClose(inTextOrder<Held>(first, second, writtenAt), { gap, rule, facts }));
    });
    return onePerPair(found);
  },
};

const writtenAt = ({ span, id }: Held): WrittenThing => ({ span, name: id });

const tooClose = (
  [a, b]: readonly [Held, Held],
  of: { readonly gap: number; readonly rule: Separation; readonly facts: PanelFacts },
): Finding => {
  const { gap, rule, facts } = of;
  const { keys } = b.place.written;
  const words = lengthWords(facts, keys["centres"] ?? keys["gap"] ?? Object.values(keys)[0]);
  const more = rule.least - gap;
  return finding(entry, {
    message: `${a.id} and ${b.id} leave ${words(gap, rule.least)} between them for a hand; a ${holdOf(a)} beside a ${holdOf(b)} wants ${words(rule.least, gap)}, ${words(more, 0)} more.`,
    span: b.placeSpan,
    related: [{ what: a.id, span: a.placeSpan }],
    subjects: [b.id, a.id],
    measured: measureMm(gap),
    limit: measureMm(rule.least),
    source: handSource(rule.source),
  });
};

const holdOf = (component: PlacedComponent): string => component.part.hand.replaceAll("-", " ");
