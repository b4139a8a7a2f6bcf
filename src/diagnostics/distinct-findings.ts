// A file that stands in several places is read with each of them, and so is what is wrong in it: the same words at the same
// place are one finding. The first stays, in its order.

import type { Finding } from "./finding.ts";

export const distinctFindings = (findings: readonly Finding[]): readonly Finding[] => {
  const told = new Set<string>();
  return findings.filter(({ code, message, span }) => {
    const key = [code, span.file, span.start, span.end, message].join("\n");
    const isNew = !told.has(key);
    told.add(key);
    return isNew;
  });
};
