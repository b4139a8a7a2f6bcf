// A body that would stand in the material of a layer: a nut wider than the opening in front of it, a case too wide for
// the sheet behind.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import { contourDistance } from "../../geometry/distance.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type {
  CutOut,
  LayerLayout,
  PlacedBody,
  PlacedComponent,
} from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/fouls-layer",
  severity: "fault",
  title: "a nut or body that fouls a layer",
  why: "The layer's opening is smaller than what must pass through it or lie in it at that depth. A nut that lies on the layer in front holds nothing; a body that stands on the sheet behind lifts the stack.",
  example:
    "components:\n  a: { part: toggle-12, clamps: [backing], at: { left: 40 mm, top: 30 mm }, measured: { openings.front.diameter: 6 mm } }",
};

/** Layers pressed together may share this much without a body being in the way: a tenth of a paint coat. */
const CONTACT = 0.01;

export const bodyInLayer: Rule = {
  entry,
  judge: ({ layout }) =>
    layout.components.flatMap((component) => {
      const found = layout.layers
        .filter((layer) => layer.kind === "sheet")
        .flatMap((layer) => fouled(component, layer));
      return found.slice(0, 1);
    }),
};

const fouled = (component: PlacedComponent, layer: LayerLayout): readonly Finding[] => {
  const own = layer.cutOuts.filter(({ owner }) => owner === component.id);
  return component.bodies
    .filter((body) => body.low < layer.front - CONTACT && body.high > layer.rear + CONTACT)
    .filter((body) => !isHiddenThread(body, component, layer) && !passesThrough(body, own))
    .map((body) => fouling(component, body, { layer, own }));
};

/** A bush's thread runs in the hole that it clamps: the gauge of that hole judges it. */
const isHiddenThread = (
  body: PlacedBody,
  component: PlacedComponent,
  layer: LayerLayout,
): boolean =>
  body.role === "bush" &&
  layer.index >= component.clamped.first &&
  layer.index <= component.clamped.last;

const passesThrough = (body: PlacedBody, openings: readonly CutOut[]): boolean =>
  openings.some(
    ({ contour }) =>
      containsContour(contour, body.footprint) ||
      (!contourDistance(contour, body.footprint).overlaps ? false : isCoincident(contour, body)),
  );

/** A body drawn to its opening's own size fits it: the gauge of the hole judges that fit. */
const isCoincident = (opening: CutOut["contour"], body: PlacedBody): boolean => {
  const hole = contourExtent(opening);
  const box = contourExtent(body.footprint);
  return (
    box.minX >= hole.minX - CONTACT &&
    box.maxX <= hole.maxX + CONTACT &&
    box.minY >= hole.minY - CONTACT &&
    box.maxY <= hole.maxY + CONTACT
  );
};

const fouling = (
  component: PlacedComponent,
  body: PlacedBody,
  at: { readonly layer: LayerLayout; readonly own: readonly CutOut[] },
): Finding => {
  const box = contourExtent(body.footprint);
  const needed = Math.max(extentWidth(box), extentHeight(box));
  const openings = at.own.map(({ contour }) => contourExtent(contour));
  const opened = Math.max(
    0,
    ...openings.map((hole) => Math.min(extentWidth(hole), extentHeight(hole))),
  );
  const room = opened === 0 ? "has no opening there" : `opens by ${millimetres(opened)}`;
  return finding(entry, {
    message: `${component.id}: its ${body.role}, ${millimetres(needed)} across, would stand in ${at.layer.id}, which ${room}.`,
    span: component.span,
    related: [{ what: at.layer.id, span: at.layer.design.written.span }],
    subjects: [component.id, at.layer.id],
    measured: measureMm(opened),
    limit: measureMm(needed),
    source: { kind: "datasheet", name: component.part.figures.source },
  });
};
