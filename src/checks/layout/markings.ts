// Markings against what covers or cuts them: openings, knobs, the panel's edge; and letters that the font hasn't got.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { contourDistance, contourToPathDistance } from "../../geometry/distance.ts";
import { type Extent, extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { PanelLayout, PlacedMarking } from "../../layout/panel-layout.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const overCutOut: CodeEntry = {
  code: "checks/marking-over-cut-out",
  severity: "fault",
  title: "a marking that an opening cuts",
  why: "Part of the legend or scale falls out with the opening. Put it on another side, or farther away.",
  example: "legend: { text: PUMP, side: above, gap: -6 mm }",
};

const underKnob: CodeEntry = {
  code: "checks/marking-covered",
  severity: "query",
  title: "a marking under a knob, cap or guard",
  why: "What is fitted on the face hides the marking. It can be made; somebody must say that it should be.",
  example: "knob: knob-22-skirt",
};

const offPanel: CodeEntry = {
  code: "checks/marking-off-panel",
  severity: "fault",
  title: "a marking that leaves the panel",
  why: "What lies beyond the outline is engraved into the waste, or not at all.",
  example: "markings:\n  - legend: { text: A VERY LONG LEGEND, x: 140 mm, y: 20 mm }",
};

const missingGlyph: CodeEntry = {
  code: "checks/missing-glyph",
  severity: "fault",
  title: "a character that the font hasn't got",
  why: "A letter without a shape would leave a hole in the legend, so that nothing is put in its place. Spell it otherwise or choose another font.",
  example: "legend: 10 kΩ",
};

export const markingOverCutOut: Rule = {
  entry: overCutOut,
  judge: ({ layout }) =>
    layout.markings.flatMap((marking) => {
      const cut = firstOpeningOver(marking, layout);
      if (cut === null) return [];
      return [
        finding(overCutOut, {
          message: `${nameOf(marking)} runs into the opening of ${cut.owner} in ${cut.layer}.`,
          span: marking.span,
          related: [{ what: cut.owner, span: cut.span }],
          subjects: [marking.owner, cut.owner],
          measured: measureMm(0),
          limit: measureMm(0),
          source: { kind: "geometry", name: "a marking needs material under it" },
        }),
      ];
    }),
};

const firstOpeningOver = (
  marking: PlacedMarking,
  layout: PanelLayout,
): PanelLayout["layers"][number]["cutOuts"][number] | null => {
  const layer = layout.layers.find(({ id }) => id === marking.layer);
  const near = layer?.cutOuts.filter(({ contour }) =>
    extentsOverlap(contourExtent(contour), marking.box),
  );
  return near?.find(({ contour }) => isMarkedOn(marking, contour)) ?? null;
};

/** True where any shape of the marking shares area with the contour. */
const isMarkedOn = (marking: PlacedMarking, contour: Contour): boolean => {
  const box = contourExtent(contour);
  return (
    marking.fills.some((fill) => isFilledOn(fill, contour, box)) ||
    marking.strokes.some(({ path }) => contourToPathDistance(contour, path).overlaps)
  );
};

/** A ring round a hole does not lie on it: the shape's own holes count. */
const isFilledOn = (
  fill: PlacedMarking["fills"][number],
  contour: Contour,
  box: Extent,
): boolean => {
  if (!extentsOverlap(contourExtent(fill.outline), box)) return false;
  if (!contourDistance(fill.outline, contour).overlaps) return false;
  return !fill.holes.some((hole) => containsContour(hole, contour));
};

const COVERING = ["knob", "cap", "guard", "flange", "washer", "nut"];

export const markingCovered: Rule = {
  entry: underKnob,
  judge: ({ layout }) => {
    const covers = layout.components.flatMap((component) =>
      component.bodies
        .filter((body) => COVERING.includes(body.role) && body.high > 0)
        .map((body) => ({ body, component, box: contourExtent(body.footprint) })),
    );
    return layout.markings.flatMap((marking) => {
      const hidden = covers.find(
        ({ body, box }) => extentsOverlap(box, marking.box) && isMarkedOn(marking, body.footprint),
      );
      if (hidden === undefined) return [];
      return [
        finding(underKnob, {
          message: `${nameOf(marking)} lies under the ${hidden.body.role} of ${hidden.component.id}.`,
          span: marking.span,
          related: [{ what: hidden.component.id, span: hidden.component.span }],
          subjects: [marking.owner, hidden.component.id],
          measured: measureMm(0),
          limit: measureMm(0),
          source: { kind: "geometry", name: "what covers the face hides it" },
        }),
      ];
    });
  },
};

export const markingOffPanel: Rule = {
  entry: offPanel,
  judge: ({ layout }) =>
    layout.markings.flatMap((marking) => {
      if (marking.fills.length + marking.strokes.length === 0) return [];
      const room = contourExtent(layout.outline);
      const over = overshoot(marking.box, room);
      const outline =
        layout.layers.find(({ id }) => id === marking.layer)?.outline ?? layout.outline;
      if (over <= 0 && containsContour(outline, rectangle(marking.box))) return [];
      return [
        finding(offPanel, {
          message: `${nameOf(marking)} leaves the panel by ${millimetres(Math.max(0, over))}: it reaches from ${millimetres(marking.box.minX)} to ${millimetres(marking.box.maxX)} across and ${millimetres(marking.box.minY)} to ${millimetres(marking.box.maxY)} up.`,
          span: marking.span,
          subjects: [marking.owner],
          measured: measureMm(over),
          limit: measureMm(0),
          source: { kind: "geometry", name: "the panel's finished outline" },
        }),
      ];
    }),
};

const overshoot = (box: Extent, room: Extent): number =>
  Math.max(room.minX - box.minX, box.maxX - room.maxX, room.minY - box.minY, box.maxY - room.maxY);

export const missingGlyphs: Rule = {
  entry: missingGlyph,
  judge: ({ layout }) =>
    layout.markings
      .filter((marking) => marking.missing.length > 0)
      .map((marking): Finding => {
        const characters = [...new Set(marking.missing)];
        const shown = characters
          .slice(0, 5)
          .map((character) => `"${character}" (${codePoint(character)})`);
        return finding(missingGlyph, {
          message: `${nameOf(marking)}: the font has no shape for ${shown.join(", ")}.`,
          span: marking.span,
          subjects: [marking.owner],
          measured: { value: characters.length, unit: "count" },
          limit: { value: 0, unit: "count" },
          source: { kind: "geometry", name: "the font's own characters" },
        });
      }),
};

const codePoint = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;

const MOST_SHOWN = 24;

const nameOf = (marking: PlacedMarking): string => {
  if (marking.text === null) return `The ${marking.kind} of ${marking.owner}`;
  const text =
    marking.text.length > MOST_SHOWN ? `${marking.text.slice(0, MOST_SHOWN)}…` : marking.text;
  return `"${text.replaceAll("\n", " / ")}" (${marking.owner})`;
};
