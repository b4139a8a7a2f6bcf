// Controls too close for a hand: edge to edge, by how each of the two is taken hold of.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PlacedComponent } from "../../layout/panel-layout.ts";
import { separation } from "../../standards/separation.ts";
import { isUnder } from "../limits.ts";
import { eachNearPair } from "../pairs.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { pairRemedies } from "./pair-remedies.ts";

const entry: CodeEntry = {
  code: "checks/hands",
  severity: "query",
  title: "controls too close for a hand",
  why: "A finger that reaches for one control must not move its neighbour. The published tables give the least free distance between the edges of two controls for a bare hand; gloves want more. Keys of one keypad count as one component.",
  example:
    "components:\n  a: { part: toggle-12, at: { left: 40 mm, top: 30 mm } }\n  b: { part: toggle-12, at: { right-of: a, centres: 15 mm } }",
};

/** The largest figure of the table. */
const REACH = 25;

type Held = PlacedComponent & { readonly grasp: NonNullable<PlacedComponent["grasp"]> };

export const hands: Rule = {
  entry,
  judge: (facts) => {
    const held = facts.layout.components.filter(
      (component): component is Held => component.grasp !== null,
    );
    const boxed = held.map((thing) => ({ thing, box: contourExtent(thing.grasp) }));
    const found: ReturnType<Rule["judge"]>[number][] = [];
    eachNearPair(boxed, REACH, (first, second) => {
      const rule = separation(first.part.hand, second.part.hand);
      if (rule === null) return;
      const { gap, overlaps } = contourDistance(first.grasp, second.grasp);
      if (overlaps || !isUnder(gap, rule.least)) return;
      const [a, b] = ordered(first, second);
      const need = rule.least - gap;
      found.push(
        finding(entry, {
          message: `${a.id} and ${b.id} leave ${millimetres(gap)} between them for a hand; a ${words(a)} beside a ${words(b)} wants ${millimetres(rule.least)}, ${millimetres(need)} more.`,
          span: b.placeSpan,
          related: [{ what: a.id, span: a.placeSpan }],
          subjects: [b.id, a.id],
          measured: measureMm(gap),
          limit: measureMm(rule.least),
          source: { kind: "standard", name: rule.source },
          remedies: pairRemedies({ owner: a.id }, { owner: b.id }, { need, facts }),
        }),
      );
    });
    return oneOfEachEntry(found);
  },
};

const words = (component: PlacedComponent): string => component.part.hand.replaceAll("-", " ");

const ordered = (a: Held, b: Held): readonly [Held, Held] =>
  a.span.start < b.span.start || (a.span.start === b.span.start && a.id < b.id) ? [a, b] : [b, a];

/** A row with too small a pitch is one cause: its members are counted, not listed. */
const oneOfEachEntry = (
  found: readonly ReturnType<Rule["judge"]>[number][],
): ReturnType<Rule["judge"]> => {
  const kept = new Map<string, ReturnType<Rule["judge"]>[number]>();
  for (const one of found) {
    const key = one.subjects.map((id) => id.split(".")[0]).join(" ");
    const first = kept.get(key);
    kept.set(key, first === undefined ? one : { ...first, suppressed: first.suppressed + 1 });
  }
  return [...kept.values()];
};
