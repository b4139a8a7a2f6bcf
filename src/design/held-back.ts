// What was left out because a component could not be read is counted on the finding that says why it could not. Takes a
// panel's findings and how many things each unread component held back.

import type { Finding } from "../diagnostics/finding.ts";
import { isWithin } from "../diagnostics/within.ts";
import type { PanelDesign } from "./panel-design.ts";

export const withHeldBack = (
  findings: readonly Finding[],
  design: PanelDesign,
  heldBack: ReadonlyMap<string, number>,
): readonly Finding[] => {
  const left = new Map(heldBack);
  const spans = design.components.flatMap((entry) =>
    entry.kind === "unreadable" && left.has(entry.id) ? [entry] : [],
  );
  if (spans.length === 0) return findings;
  return findings.map((found) => {
    const cause = spans.find(({ id, span }) => left.has(id) && isWithin(found.span, span));
    if (cause === undefined || found.severity !== "fault") return found;
    const suppressed = found.suppressed + (left.get(cause.id) ?? 0);
    left.delete(cause.id);
    return { ...found, suppressed };
  });
};
