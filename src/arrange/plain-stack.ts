// The one engraved sheet of an unlit panel that is made of a list: legends filled with the first paint that can be read on it.

import { decimal } from "../geometry/number.ts";
import { finishOf, type LayoutContext, stockOf } from "../layout/context.ts";
import { legendContrast } from "../layout/legend-contrast.ts";
import { LEAST_CONTRAST } from "../standards/contrast.ts";

const SHEET = "aluminium-2";
/** The builder's own may be called so too, and goes before the usual one. */
const FINISHES = ["paint-filled", "black-filled"] as const;

/** Its lines; where the first paint was passed over, the reason stands behind them. */
export const plainStack = (context: LayoutContext): readonly string[] => {
  const stock = stockOf(context, SHEET);
  const found = FINISHES.map((name) => ({
    name,
    contrast: legendContrast(finishOf(context, name), stock),
  }));
  const taken = found.find(({ contrast }) => (contrast?.ratio ?? LEAST_CONTRAST) >= LEAST_CONTRAST);
  const [first] = found;
  const line = `{ layer: face, sheet: ${SHEET}, finish: ${taken?.name ?? FINISHES[0]} }`;
  if (first === undefined || taken === undefined || taken === first) return [line];
  const told = ({ contrast }: typeof first): string =>
    contrast === null ? "" : `${contrast.letters.name} ${decimal(contrast.ratio, 1)} to 1`;
  return [
    `${line} # against ${SHEET}: ${told(taken)}; ${told(first)}, and ${LEAST_CONTRAST} is wanted`,
  ];
};
