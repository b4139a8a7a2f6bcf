// A body of a component, or another print, that wants the space of a printed part.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Contour, Region } from "../../geometry/contour.ts";
import { contoursOverlap } from "../../geometry/distance.ts";
import { leastInset } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { type Slab, slabsOf } from "../../geometry/solid/solid-slabs.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { PlacedBody } from "../../layout/panel-layout.ts";
import type { PrintedPart } from "../../parts/printed/printed-part.ts";
import { type Parting, partingOf } from "../parting.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { spanOfOwner } from "./seen-lamps.ts";

const entry: CodeEntry = {
  code: "checks/print-collides",
  severity: "fault",
  title: "a printed part and a component want the same space",
  why: "Printed parts are made round the bodies of the panel's components where they can be: a post stands at each screw of the stack, whatever hangs there. What it meets can't be fitted. Move the component or the screw.",
  example: `stack:
  - { layer: face, sheet: aluminium-2 }
  - { layer: tray, behind: 18 mm, boards: [] }
fixings: { screws: m3, dowels: 3 mm, at: [{ x: 14 mm, y: 30 mm }, { x: 106 mm, y: 30 mm }, { x: 60 mm, y: 52.5 mm }] }
components:
  a: { part: pot-16, at: { x: 60 mm, y: 40 mm } }`,
};

export const printCollides: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    facts.printedParts
      .filter(({ role }) => role !== "test-piece")
      .flatMap((part) => collisions(part, facts)),
};

const NO_THING: readonly PlacedBody["role"][] = ["spanner", "cable", "plug"];

/** One finding for each component that is met. */
const collisions = (part: PrintedPart, facts: PanelFacts): readonly Finding[] => {
  const slabs = part.bodies.flatMap(({ solid }) => slabsOf(solid));
  return facts.layout.components
    .filter(({ id, entry: name }) => part.owner !== id && part.owner !== name)
    .flatMap((component) => {
      const body = component.bodies
        .filter(({ role }) => !NO_THING.includes(role))
        .find((one) => slabs.some((slab) => meetsSlab(one, slab)));
      if (body === undefined) return [];
      const { said, measured, limit } = meetingOf(body, slabs);
      return [
        finding(entry, {
          message: `${component.id}'s ${body.role} stands in the ${part.role.replaceAll("-", " ")} of ${part.owner}: ${said}.`,
          span: component.placeSpan,
          related: [{ what: part.owner, span: spanOfOwner(part.owner, facts) }],
          subjects: [component.id, part.owner],
          measured: measureMm(measured),
          limit: measureMm(limit),
          source: { kind: "geometry", name: "the surface of the printed part" },
        }),
      ];
    });
};

interface Meeting {
  readonly said: string;
  readonly measured: number;
  readonly limit: number;
}

/** Beside a post or a wall they part in the plan; in a plate that reaches all round, only in depth. */
const meetingOf = (body: PlacedBody, slabs: readonly Slab[]): Meeting => {
  const box = contourExtent(body.footprint);
  const met = slabs.filter((slab) => meetsSlab(body, slab));
  const parting = met
    .flatMap(({ regions }) => regions)
    .filter((region) => meetsRegion(body.footprint, region))
    .map(({ outline }) => contourExtent(outline))
    .filter((region) => leastInset(region, box) < 0)
    .map((region) => partingOf(region, box))
    .reduce<Parting | null>((worst, one) => (short(one) > short(worst) ? one : worst), null);
  if (parting === null) return inDepth(body, met);
  const { apart, needed } = parting;
  return {
    said: `centres ${millimetres(apart, needed)} apart, ${millimetres(needed, apart)} would part them, ${millimetres(needed - apart, 0)} more`,
    measured: apart,
    limit: needed,
  };
};

const short = (parting: Parting | null): number =>
  parting === null ? 0 : parting.needed - parting.apart;

const inDepth = ({ low, high }: PlacedBody, slabs: readonly Slab[]): Meeting => {
  const from = Math.max(low, Math.min(...slabs.map((slab) => slab.from)));
  const to = Math.min(high, Math.max(...slabs.map((slab) => slab.to)));
  return {
    said: `they share ${millimetres(to - from, 0)} of depth, and none is free`,
    measured: to - from,
    limit: 0,
  };
};

const meetsSlab = ({ footprint, low, high }: PlacedBody, { from, to, regions }: Slab): boolean =>
  low < to - samePlace &&
  high > from + samePlace &&
  regions.some((region) => meetsRegion(footprint, region));

const meetsRegion = (footprint: Contour, { outline, holes }: Region): boolean =>
  contoursOverlap(outline, footprint) && !holes.some((hole) => containsContour(hole, footprint));
