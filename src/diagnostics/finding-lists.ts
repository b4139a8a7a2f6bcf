// Lists of findings: whose they are, and their order.

import { comparedTexts } from "./compared-texts.ts";
import type { Finding } from "./finding.ts";

/** In the order in which whoever wrote the text meets what they speak of. */
export const findingsInTextOrder = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted(
    (a, b) =>
      comparedTexts(a.span.file, b.span.file) ||
      a.span.start - b.span.start ||
      comparedTexts(a.code, b.code),
  );

/** As those of a panel, or of a console. */
export const named = (panel: string, findings: readonly Finding[]): readonly Finding[] =>
  findings.map((found) => ({ ...found, panel }));
