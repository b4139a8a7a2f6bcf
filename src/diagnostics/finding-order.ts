// Findings in the order in which whoever wrote the text meets what they speak of.

import { comparedTexts } from "./compared-texts.ts";
import type { Finding } from "./finding.ts";

export const findingsInTextOrder = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted(
    (a, b) =>
      comparedTexts(a.span.file, b.span.file) ||
      a.span.start - b.span.start ||
      comparedTexts(a.code, b.code),
  );
