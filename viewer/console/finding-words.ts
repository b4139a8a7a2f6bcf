// A finding in a few words, to stand in the picture at what it speaks of: the whole sentence is in the list.

import type { Finding, Severity } from "../../src/diagnostics/finding.ts";
import { decimal } from "../../src/geometry/number.ts";

const WORDS: Readonly<Record<Severity, string>> = { fault: "Fault", query: "Query", note: "Note" };

/**
 * The name of its code says what is wrong; a length and its limit stand with it. A gap less than none is one body within another:
 * the sentence says how.
 */
export const findingWords = ({
  code,
  severity,
  measured,
  limit,
}: Pick<Finding, "code" | "severity" | "measured" | "limit">): string => {
  const name = (code.split("/").at(-1) ?? code).replaceAll("-", " ");
  const numbers =
    measured?.unit === "mm" && limit?.unit === "mm" && measured.value >= 0
      ? `: ${decimal(measured.value, 2)} mm, limit ${decimal(limit.value, 2)} mm`
      : "";
  return `${WORDS[severity]}, ${name}${numbers}`;
};
