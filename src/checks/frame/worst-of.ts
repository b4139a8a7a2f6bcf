// Findings of one rule over many boards, ribs or bays have one cause: the one that is furthest off speaks, the others are counted.

import type { Finding } from "../../diagnostics/finding.ts";

export const worstOf = (findings: readonly Finding[]): readonly Finding[] =>
  findings
    .toSorted((a, b) => off(b) - off(a))
    .slice(0, 1)
    .map((found) => ({ ...found, suppressed: findings.length - 1 }));

const off = ({ measured, limit }: Finding): number =>
  Math.abs((measured?.value ?? 0) - (limit?.value ?? 0));
