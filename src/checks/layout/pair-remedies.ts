// Moves that bring two components apart: the one written later moves first.

import type { Finding } from "../../diagnostics/finding.ts";
import type { CutOut } from "../../layout/panel-layout.ts";
import { awayFrom, moveRemedy } from "../move-remedy.ts";
import type { PanelFacts } from "../rule.ts";

export const pairRemedies = (
  a: Pick<CutOut, "owner">,
  b: Pick<CutOut, "owner">,
  options: { readonly need: number; readonly facts: PanelFacts },
): Finding["remedies"] => {
  const { components } = options.facts.layout;
  const first = components.find(({ id }) => id === a.owner);
  const second = components.find(({ id }) => id === b.owner);
  if (first === undefined || second === undefined || first.entry === second.entry) return [];
  const found = moveRemedy(second, awayFrom(first, second, options.need), options.facts);
  return found.length > 0
    ? found
    : moveRemedy(first, awayFrom(second, first, options.need), options.facts);
};
