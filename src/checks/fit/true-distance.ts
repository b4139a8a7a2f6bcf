// A panel's own file supposes a distance that it is read from. At a console with an operator the true one counts
// (fit/legend-small-at-eye), and what was judged by the supposed one gives way.

import type { Finding } from "../../diagnostics/finding.ts";
import type { ConsoleLayout } from "../../layout/console/console-layout.ts";

const BY_SUPPOSED_DISTANCE = "checks/legend-too-small";

/** Of the panel that is called so in the console. */
export const atTrueDistance = (
  findings: readonly Finding[],
  panel: string,
  layout: ConsoleLayout | null,
): readonly Finding[] => {
  const isSeated = layout !== null && layout.operator !== null;
  return isSeated && layout.panels.some(({ name }) => name === panel)
    ? findings.filter(({ code }) => code !== BY_SUPPOSED_DISTANCE)
    : findings;
};
