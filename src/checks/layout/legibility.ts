// Can the legend be read from where the operator sits, and can the machine make its strokes.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { mm } from "../../geometry/quantity.ts";
import { cutWidthOf } from "../../layout/markings/style.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import {
  arcMinutes,
  CHARACTER_ANGLES,
  characterHeight,
  STROKE_SHARES,
} from "../../standards/characters.ts";
import { isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const tooLow: CodeEntry = {
  code: "checks/legend-too-small",
  severity: "query",
  title: "a legend too small for the viewing distance",
  why: "What counts is the angle that a capital fills at the eye: 15 minutes of arc at the very least, 16 by the older edition, 20 to 22 for comfort and for anything that alerts. At 700 mm that is 3.1, 3.3, and 4.1 to 4.5 mm.",
  example: "viewing-distance: 700 mm\nlettering: { height: 2.5 mm }",
};

const tooThin: CodeEntry = {
  code: "checks/stroke-too-thin",
  severity: "query",
  title: "strokes too thin to read",
  why: "Light letters on a dark face want strokes of a seventh to an eighth of their height. A single pass of a laser is a hair: 0.15 mm is one twenty-seventh of a 4.1 mm capital. Take an outline font, or a larger tool.",
  example: "lettering: { font: single-line, height: 4 mm }",
};

const tooFine: CodeEntry = {
  code: "checks/stroke-below-tool",
  severity: "fault",
  title: "strokes finer than the machine's spot or tool",
  why: "A stroke that is narrower than the beam or cutter can't be filled: it comes out at the tool's width, or not at all.",
  example: "lettering: { height: 0.8 mm }",
};

/** Legends under this angle are hard to read: the stricter of two editions. */
const LEAST = CHARACTER_ANGLES.leastInRevision2;

const lettered = (facts: PanelFacts): readonly (PlacedMarking & { readonly capHeight: number })[] =>
  facts.layout.markings.filter(
    (
      marking,
    ): marking is PlacedMarking & { readonly capHeight: NonNullable<PlacedMarking["capHeight"]> } =>
      marking.capHeight !== null && marking.fills.length + marking.strokes.length > 0,
  );

export const legendTooSmall: Rule = {
  entry: tooLow,
  judge: (facts) => {
    const distance = facts.layout.design.viewingDistance;
    const need = characterHeight(distance, LEAST.arcMinutes);
    const small = lettered(facts).filter(({ capHeight }) => isUnder(capHeight, need));
    return grouped(small, (marking) => marking.capHeight).map(({ marking, count }) =>
      finding(tooLow, {
        message: `${count} ${marking.kind}${count === 1 ? "" : "s"} of ${millimetres(marking.capHeight)}, first that of ${marking.owner}, fill ${decimal(arcMinutes(mm(marking.capHeight), distance), 1)} minutes of arc at ${millimetres(distance)}; ${LEAST.arcMinutes} are wanted, which is ${millimetres(Math.ceil(need * 100) / 100)}.`,
        span: marking.span,
        related: [
          {
            what: "viewing-distance",
            span: spanOf(facts.layout.design.written, "viewing-distance"),
          },
        ],
        subjects: [marking.owner],
        measured: { value: arcMinutes(mm(marking.capHeight), distance), unit: "arcmin" },
        limit: { value: LEAST.arcMinutes, unit: "arcmin" },
        source: { kind: "standard", name: LEAST.source },
        suppressed: count - 1,
      }),
    );
  },
};

export const strokeTooThin: Rule = {
  entry: tooThin,
  judge: (facts) => {
    // The eighth is a rule of thumb for bold lettering; half of it is what no reader would call bold.
    const share = STROKE_SHARES.lightOnDarkLeast / 2;
    const thin = lettered(facts).filter(({ capHeight, strokeWidth }) =>
      isUnder(strokeWidth, capHeight * share),
    );
    return grouped(thin, (marking) => marking.strokeWidth / marking.capHeight).map(
      ({ marking, count }) =>
        finding(tooThin, {
          message: `${marking.owner}: strokes of ${millimetres(marking.strokeWidth)} on capitals of ${millimetres(marking.capHeight)} are one ${decimal(marking.capHeight / marking.strokeWidth, 0)}th of their height; a seventh to an eighth reads well, ${millimetres(marking.capHeight * STROKE_SHARES.lightOnDarkLeast)}.`,
          span: marking.span,
          subjects: [marking.owner],
          measured: measureMm(marking.strokeWidth),
          limit: measureMm(marking.capHeight * share),
          source: { kind: "standard", name: STROKE_SHARES.source },
          suppressed: count - 1,
        }),
    );
  },
};

export const strokeBelowTool: Rule = {
  entry: tooFine,
  judge: (facts) => {
    const fine = lettered(facts).flatMap((marking) => {
      const layer = facts.layout.layers.find(({ id }) => id === marking.layer);
      const tool = cutWidthOf(layer?.machine ?? null);
      return marking.fills.length > 0 && isUnder(marking.strokeWidth, tool)
        ? [{ marking, tool }]
        : [];
    });
    const first = fine[0];
    if (first === undefined) return [];
    const { marking, tool } = first;
    return [
      finding(tooFine, {
        message: `${marking.owner}: strokes of ${millimetres(marking.strokeWidth)} are finer than the ${millimetres(tool)} that the machine cuts.`,
        span: marking.span,
        subjects: [marking.owner],
        measured: measureMm(marking.strokeWidth),
        limit: measureMm(tool),
        source: { kind: "machine", name: "spot or finest tool" },
        suppressed: fine.length - 1,
      }),
    ];
  },
};

/** One finding for all markings that fall short alike: same height, one cause. */
const grouped = <Marking extends PlacedMarking>(
  markings: readonly Marking[],
  by: (marking: Marking) => number,
): readonly { readonly marking: Marking; readonly count: number }[] => {
  const groups = new Map<number, Marking[]>();
  for (const marking of markings) {
    const key = by(marking);
    groups.set(key, [...(groups.get(key) ?? []), marking]);
  }
  return [...groups.values()].flatMap((group) =>
    group[0] === undefined ? [] : [{ marking: group[0], count: group.length }],
  );
};
