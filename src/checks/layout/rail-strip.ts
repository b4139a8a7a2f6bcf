// The strip of the rear that a rail covers: nothing but the mount's own fasteners may be there.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { Contour } from "../../geometry/contour.ts";
import { type Extent, extentHeight, extentsOverlap, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { seatedLayer } from "../../layout/seated-layer.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";
import { placingSpan } from "./placing-span.ts";
import { rearBodies } from "./rear.ts";

const entry: CodeEntry = {
  code: "checks/rail-strip",
  severity: "fault",
  title: "something where the rail is",
  why: "The panel's rear lies on a rail along each side. A body, a nut or a hole there keeps the panel from seating, or the rail shows through it.",
  example: "mount: console-rail\ncomponents:\n  a: { part: led-5, at: { left: 9 mm, top: 30 mm } }",
};

export const railStrip: Rule = {
  entry,
  move: "inward",
  judge: (facts) =>
    onePerOwner(rearThings(facts.layout), (thing) => {
      const box = contourExtent(thing.contour);
      const rail = facts.layout.rails.find((strip) => extentsOverlap(box, strip));
      return rail === undefined ? null : inStrip(thing, { rail, box, facts });
    }),
};

interface RearThing {
  readonly cutOut: { readonly owner: string; readonly span: Finding["span"] };
  readonly what: string;
  readonly contour: Contour;
}

/** Holes in the sheet that lies on the rail, and whatever stands behind it. */
const rearThings = (layout: PanelLayout): readonly RearThing[] => {
  if (layout.rails.length === 0) return [];
  const holes = (seatedLayer(layout)?.cutOuts ?? [])
    .filter(({ purpose }) => purpose !== "mount")
    .map((cutOut) => ({
      cutOut,
      what: cutOut.purpose === "fixing" || cutOut.purpose === "dowel" ? "hole" : "opening",
      contour: cutOut.contour,
    }));
  const bodies = rearBodies(layout).map(({ component, body }) => ({
    cutOut: { owner: component.id, span: component.placeSpan },
    what: body.role,
    contour: body.footprint,
  }));
  return [...holes, ...bodies];
};

const inStrip = (
  thing: RearThing,
  place: { readonly rail: Extent; readonly box: Extent; readonly facts: PanelFacts },
): Finding => {
  const { rail, box, facts } = place;
  const { nominal, mount } = facts.layout;
  const { owner } = thing.cutOut;
  const { edge, fromEdge, strip } = alongRail(rail, box, nominal);
  const span = placingSpan(facts.layout, thing.cutOut);
  const words = lengthWords(facts, span);
  return finding(entry, {
    message: `${owner}: its ${thing.what} begins ${words(fromEdge, strip)} from the ${edge} edge, where the ${mount.holes.kind === "corners" ? "wall" : "rail"} covers ${words(strip, fromEdge)}; ${words(strip - fromEdge, 0)} more are wanted.`,
    span,
    subjects: [owner],
    measured: measureMm(fromEdge),
    limit: measureMm(strip),
    source: { kind: "standard", name: `${mount.title}: seat` },
  });
};

/** Which edge the strip follows, how wide it is, and how far from that edge the thing begins. */
const alongRail = (
  rail: Extent,
  box: Extent,
  nominal: Extent,
): { readonly edge: string; readonly fromEdge: number; readonly strip: number } => {
  const isUpright = extentHeight(rail) === extentHeight(nominal);
  const strip = isUpright ? extentWidth(rail) : extentHeight(rail);
  if (isUpright)
    return rail.minX === nominal.minX
      ? { edge: "left", fromEdge: box.minX - nominal.minX, strip }
      : { edge: "right", fromEdge: nominal.maxX - box.maxX, strip };
  return rail.minY === nominal.minY
    ? { edge: "lower", fromEdge: box.minY - nominal.minY, strip }
    : { edge: "upper", fromEdge: nominal.maxY - box.maxY, strip };
};
