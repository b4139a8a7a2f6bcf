// What is wrong in a file that stands twice is told once; another message or another place is another finding.

import { expect, test } from "vitest";
import { distinctFindings } from "../../src/diagnostics/distinct-findings.ts";
import { type CodeEntry, finding } from "../../src/diagnostics/finding.ts";

const entry: CodeEntry = {
  code: "checks/made-up",
  severity: "query",
  title: "",
  why: "",
  example: "",
};

const at = (start: number, message: string, panel: string) =>
  finding(entry, { message, panel, span: { file: "pumps.yaml", start, end: start + 4 } });

test("the same words at the same place are one finding, the first one", () => {
  const told = [
    at(10, "too small", "left"),
    at(10, "too small", "right"),
    at(10, "too near", "left"),
  ];
  expect(distinctFindings([...told, at(20, "too small", "left")])).toEqual([
    told[0],
    told[2],
    at(20, "too small", "left"),
  ]);
});
