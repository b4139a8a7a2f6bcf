// A cut-out or a body that is in the way of a stack fixing, a dowel or a mount hole.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { CutOut } from "../../layout/panel-layout.ts";
import { seatedLayer } from "../../layout/seated-layer.ts";
import { houseLimit } from "../house-rule.ts";
import { onePerPair } from "../one-finding.ts";
import { contourParting } from "../parting.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { cutOutPairs, isFixed } from "./cut-out-pairs.ts";
import { placingSpan } from "./placing-span.ts";
import { rearBodies } from "./rear.ts";
import { WEB } from "./web-limit.ts";

const entry: CodeEntry = {
  code: "checks/over-fixing",
  severity: "fault",
  title: "a cut-out or body over a fixing, dowel or mount hole",
  why: "The screw, dowel or stud has nothing left to hold, or its nut stands under a case. Move the component, or give the fixing another place with `fixings: { at: ... }`; mount holes stay where the mount puts them.",
  example:
    "mount: corner-screws\ncomponents:\n  a: { part: led-5, at: { left: 8 mm, bottom: 9 mm } }",
};

export const overFixing: Rule = {
  entry,
  move: "away",
  judge: (facts) => onePerPair([...openingsOver(facts), ...bodiesOver(facts)]),
};

const openingsOver = (facts: PanelFacts): readonly Finding[] =>
  cutOutPairs(facts.layout)
    .filter(({ a, b, distance }) => distance.overlaps && (isFixed(a) || isFixed(b)))
    .map(({ a, b, layer }) => {
      const [fixed, other] = isFixed(a) ? [a, b] : [b, a];
      return inTheWay({ ...other, what: "opening", where: `in ${layer.id}` }, { fixed, facts });
    });

/** Behind the seated sheet a fixing's nut or standoff needs the place of its hole at least. */
const bodiesOver = (facts: PanelFacts): readonly Finding[] => {
  const fixings = (seatedLayer(facts.layout)?.cutOuts ?? [])
    .filter(isFixed)
    .map((fixed) => ({ fixed, box: contourExtent(fixed.contour) }));
  const seen = new Set<string>();
  return rearBodies(facts.layout).flatMap(({ component, body, box }) => {
    const under = fixings.filter(
      (fixing) =>
        extentsOverlap(fixing.box, box) &&
        !seen.has(`${component.id} ${fixing.fixed.id}`) &&
        contourDistance(body.footprint, fixing.fixed.contour).overlaps,
    );
    return under.map(({ fixed }) => {
      seen.add(`${component.id} ${fixed.id}`);
      const { id: owner, at: centre, span } = component;
      const other = { owner, centre, contour: body.footprint, span };
      return inTheWay({ ...other, what: body.role, where: "behind the panel" }, { fixed, facts });
    });
  });
};

const inTheWay = (
  other: Pick<CutOut, "owner" | "centre" | "contour" | "span"> & {
    readonly what: string;
    readonly where: string;
  },
  of: { readonly fixed: CutOut; readonly facts: PanelFacts },
): Finding => {
  const { fixed, facts } = of;
  const web = houseLimit(facts, WEB).limit;
  const { apart, needed, way } = contourParting(fixed.contour, other.contour, web);
  const span = placingSpan(facts.layout, other);
  const words = lengthWords(facts, span);
  return finding(entry, {
    message: `${other.owner}: its ${other.what} runs into ${fixed.owner} ${other.where}: centres ${words(apart, needed)} apart${way}; ${words(needed, apart)} would clear it, ${words(needed - apart, 0)} more.`,
    span,
    related: [{ what: fixed.owner, span: fixed.span }],
    subjects: [other.owner, fixed.owner],
    measured: measureMm(apart),
    limit: measureMm(needed),
    source: { kind: "geometry", name: "the material that a fixing needs round it" },
  });
};
