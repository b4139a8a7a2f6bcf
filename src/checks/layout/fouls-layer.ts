// A body that would stand in the material of a layer: a nut wider than the opening in front of it, a case too wide for
// the sheet behind.

import { limitOfFigures } from "../../catalogue/limit-of-figures.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import { extentHeight, extentWidth } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { decimal } from "../../geometry/number.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import type {
  CutOut,
  LayerLayout,
  PlacedBody,
  PlacedComponent,
} from "../../layout/panel-layout.ts";
import { onePerEntry } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { type OpeningLack, openingLack } from "./opening-lack.ts";

const entry: CodeEntry = {
  code: "checks/fouls-layer",
  severity: "fault",
  title: "a nut or body that fouls a layer",
  why: "The layer's opening is smaller than what must pass through it or lie in it at that depth. A nut that lies on the layer in front holds nothing; a body that stands on the sheet behind lifts the stack.",
  example:
    "components:\n  a: { part: toggle-6, clamps: backing, at: { left: 40 mm, top: 30 mm }, measured: { openings.front.diameter: 7 mm, dated: 2026-01-31 } }",
};

/** Layers pressed together may share this much without a body being in the way: a tenth of a paint coat. */
const CONTACT = 0.01;

export const foulsLayer: Rule = {
  entry,
  move: null,
  judge: ({ layout }) =>
    onePerEntry(layout.components, (component) => {
      for (const layer of layout.layers) {
        const body = layer.kind === "sheet" ? fouling(component, layer) : null;
        if (body !== null) return foul(component, body, layer);
      }
      return null;
    }),
};

const fouling = (component: PlacedComponent, layer: LayerLayout): PlacedBody | null => {
  const own = layer.cutOuts.filter(({ owner }) => owner === component.id);
  const isIn = (body: PlacedBody): boolean =>
    body.low < layer.front - CONTACT && body.high > layer.rear + CONTACT;
  const isHeld = layer.index >= component.clamped.first && layer.index <= component.clamped.last;
  return (
    component.bodies.find(
      // A bush's thread runs in the hole that it clamps: the gauge of that hole judges it.
      (body) => isIn(body) && !(isHeld && body.role === "bush") && !passesThrough(body, own),
    ) ?? null
  );
};

const passesThrough = (body: PlacedBody, openings: readonly CutOut[]): boolean =>
  openings.some(({ contour }) => containsContour(contour, body.footprint) || fills(contour, body));

/** A body drawn to its opening's own size fits it: the gauge of the hole judges that fit. */
const fills = (opening: CutOut["contour"], body: PlacedBody): boolean => {
  const hole = contourExtent(opening);
  const box = contourExtent(body.footprint);
  return (
    box.minX >= hole.minX - CONTACT &&
    box.maxX <= hole.maxX + CONTACT &&
    box.minY >= hole.minY - CONTACT &&
    box.maxY <= hole.maxY + CONTACT
  );
};

const foul = (component: PlacedComponent, body: PlacedBody, layer: LayerLayout): Finding => {
  const box = contourExtent(body.footprint);
  const across = Math.max(extentWidth(box), extentHeight(box));
  const { has: opened, needs: needed } = leastLack(body, component, layer) ?? {
    has: 0,
    needs: across,
  };
  const isInFront = layer.index < component.clamped.first;
  const room = opened === 0 ? "has no opening for it" : `opens by ${millimetres(opened, needed)}`;
  // A body that stands aside, or whose corners stand out, wants more than it is wide.
  const there = Math.abs(needed - across) <= CONTACT ? "" : " where it stands";
  const clears = atLeastTenth(needed);
  const key = isInFront ? "openings.front" : "openings.behind";
  return finding(entry, {
    message: `${component.id}: its ${body.role}, ${millimetres(across, opened)} across, would stand in ${layer.id}, which ${room}: ${millimetres(needed - opened, 0)} too little${there}. An opening of ${clears} (${key} of ${component.part.id}) clears it.`,
    span: component.span,
    related: [{ what: layer.id, span: layer.design.written.span }],
    subjects: [component.id, layer.id],
    measured: measureMm(opened),
    limit: measureMm(needed),
    source: limitOfFigures(component.part.figures),
  });
};

/** Of its own openings the one that lacks least; null where there is none. */
const leastLack = (
  { footprint }: PlacedBody,
  { id }: PlacedComponent,
  layer: LayerLayout,
): OpeningLack | null =>
  layer.cutOuts
    .filter(({ owner }) => owner === id)
    .map(({ contour }) => openingLack(footprint, contour))
    .toSorted((a, b) => a.needs - a.has - (b.needs - b.has))[0] ?? null;

/** As a builder writes it, never less than it is. */
const atLeastTenth = (value: number): string => `${decimal(upToTenth(value), 1)} mm`;
