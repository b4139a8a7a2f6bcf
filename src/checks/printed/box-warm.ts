// How warm a closed light box gets: all watts leave by free convection and radiation from its outside, which a single
// coefficient stands for. A comparison, not a promise: measure a box that comes near its limit.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimal, decimalBeside } from "../../geometry/number.ts";
import { type BoxHeat, heatOf } from "../../light/box-heat.ts";
import { SOFTENING } from "../../standards/softening.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureOf } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/box-warm",
  severity: "query",
  title: "a closed light box that gets too warm for its plastic",
  why: "A closed box gives its heat away through its own walls: about 9 watts for each square metre and degree, free air outside. PLA gives way at 55 to 60 °C, PETG at about 75. Take fewer or dimmer lamps, let air through (a low inlet, a high outlet), or print it from something that bears more.",
  example: `stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-144-5v-addressable, circuit: night } }
components:
  a: { part: led-5, at: { x: 60 mm, y: 40 mm } }`,
};

export const boxWarm: Rule = {
  entry,
  move: null,
  judge: ({ printedParts, catalogue }) =>
    printedParts.flatMap((part) => {
      const heat = heatOf(part, catalogue);
      const softens = SOFTENING[part.stock.material];
      if (heat === null || softens === undefined || !isOver(heat.temperature, softens.from))
        return [];
      return [
        finding(entry, {
          message: `${part.owner}: ${decimal(heat.watts, 1)} W in a closed box of ${decimal(heat.area * 1e4, 0)} cm² make it about ${decimalBeside(heat.temperature, softens.from, 0)} °C in a room of ${decimal(heat.room, 0)} °C; ${part.stock.material} softens from ${decimalBeside(softens.from, heat.temperature, 0)} °C, ${decimalBeside(heat.temperature - softens.from, 0, 0)} less. ${wattsBorne(heat, softens.from)} W or less keep it from softening.`,
          span: part.span,
          subjects: [part.owner],
          measured: measureOf(heat.temperature, "celsius"),
          limit: measureOf(softens.from, "celsius"),
          source: {
            kind: "practice",
            name: `${softens.source}; 9 W/m²K from its outside, ${decimal(heat.room, 0)} °C round it`,
          },
        }),
      ];
    }),
};

/** The difference from the room grows as the watts do. Rounded down: what is written does it. */
const wattsBorne = ({ watts, temperature, room }: BoxHeat, most: number): string =>
  decimal(Math.floor((watts * (most - room) * 10) / (temperature - room)) / 10, 1);
