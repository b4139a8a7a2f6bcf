// The strip of the rear that a rail covers: nothing but the mount's own fasteners may be there.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { Contour } from "../../geometry/contour.ts";
import { type Extent, extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { lastRigidSheet } from "../../layout/stack.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/rail-strip",
  severity: "fault",
  title: "something where the rail is",
  why: "The panel's rear lies on a rail along each side. A body, a nut or a hole there keeps the panel from seating, or the rail shows through it.",
  example:
    "mount: console-rail\ncomponents:\n  a: { part: toggle-12, at: { left: 9 mm, top: 30 mm } }",
};

export const railStrip: Rule = {
  entry,
  judge: ({ layout }) => {
    const found = new Map<string, Finding>();
    for (const thing of rearThings(layout))
      for (const rail of layout.rails) {
        const box = contourExtent(thing.contour);
        if (found.has(thing.owner) || !extentsOverlap(box, rail)) continue;
        found.set(thing.owner, inStrip(thing, { rail, box, layout }));
      }
    return [...found.values()];
  },
};

interface RearThing {
  readonly owner: string;
  readonly what: string;
  readonly contour: Contour;
  readonly span: Finding["span"];
}

/** Holes in the sheet that lies on the rail, and whatever stands behind it. */
const rearThings = (layout: PanelLayout): readonly RearThing[] => {
  const seated = layout.layers[lastRigidSheet(layout.layers)];
  if (seated === undefined) return [];
  const holes = seated.cutOuts
    .filter(({ purpose }) => purpose !== "mount" && purpose !== "fixing" && purpose !== "dowel")
    .map((hole) => ({
      owner: hole.owner,
      what: "opening",
      contour: hole.contour,
      span: hole.span,
    }));
  const bodies = layout.components.flatMap((component) =>
    component.bodies
      .filter((body) => body.low < seated.rear)
      .map((body) => ({
        owner: component.id,
        what: body.role,
        contour: body.footprint,
        span: component.placeSpan,
      })),
  );
  const fixings = seated.cutOuts
    .filter(({ purpose }) => purpose === "fixing" || purpose === "dowel")
    .map((hole) => ({ owner: hole.owner, what: "fixing", contour: hole.contour, span: hole.span }));
  return [...holes, ...bodies, ...fixings];
};

const inStrip = (
  thing: RearThing,
  place: { readonly rail: Extent; readonly box: Extent; readonly layout: PanelLayout },
): Finding => {
  const { rail, box, layout } = place;
  const isLeft = rail.minX === layout.nominal.minX;
  const over = isLeft ? rail.maxX - box.minX : box.maxX - rail.minX;
  const width = rail.maxX - rail.minX;
  return finding(entry, {
    message: `${thing.owner}: its ${thing.what} reaches ${millimetres(over)} into the ${isLeft ? "left" : "right"} rail's strip, which is ${millimetres(width)} wide.`,
    span: thing.span,
    subjects: [thing.owner],
    measured: measureMm(over),
    limit: measureMm(0),
    source: { kind: "standard", name: `${layout.mount.title}: seat of ${millimetres(width)}` },
  });
};
