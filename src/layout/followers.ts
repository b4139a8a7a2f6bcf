// One cause, one finding: what was left out because of something else is counted on the finding of that something else.

import type { Finding } from "../diagnostics/finding.ts";
import { CIRCULAR_PLACE, UNKNOWN_NEIGHBOUR, UNKNOWN_PART } from "./codes.ts";

/** How many things were left out because of each id; the id itself is not counted. */
export const followerCounts = (
  lost: ReadonlyMap<string, string>,
  causes: readonly string[],
): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const cause of causes) counts.set(cause, (counts.get(cause) ?? 0) + 1);
  for (const [id, cause] of lost) if (id !== cause) counts.set(cause, (counts.get(cause) ?? 0) + 1);
  return counts;
};

const ROOTS: readonly string[] = [UNKNOWN_PART, UNKNOWN_NEIGHBOUR, CIRCULAR_PLACE].map(
  ({ code }) => code,
);

/** The findings with what they hold back; `others` are counts whose finding was made where the text was read. */
export const countedFollowers = (
  findings: readonly Finding[],
  counts: ReadonlyMap<string, number>,
): {
  readonly findings: readonly Finding[];
  readonly others: ReadonlyMap<string, number>;
} => {
  const others = new Map(counts);
  const counted = findings.map((found) => {
    const root = ROOTS.includes(found.code) ? (found.subjects[0] ?? "") : "";
    const suppressed = others.get(root) ?? 0;
    others.delete(root);
    return suppressed === 0 ? found : { ...found, suppressed: found.suppressed + suppressed };
  });
  return { findings: counted, others };
};
