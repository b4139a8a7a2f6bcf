// A text written by the program is that text to every reader of YAML, checked with the library's other schemas.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { quoted } from "../../src/design/quoted.ts";

const WORDS = [
  "yes",
  "No",
  "ON",
  "off",
  "y",
  "n",
  "null",
  "Null",
  "~",
  "true",
  "NaN",
  ".inf",
  "0",
  "007",
  "1.50",
  "1e3",
  "0x1F",
  "0o7",
  "1_000",
  "12:30",
  "2026-10-02",
  "",
  " ",
  " a",
  "a ",
  "a  b",
  "- a",
  "? a",
  ": a",
  "a: b",
  "a #b",
  "#b",
  "&a",
  "*a",
  "!a",
  "|",
  ">",
  "%a",
  "@a",
  "`a",
  "'a'",
  '"a"',
  "a\\b",
  "[a]",
  "{a}",
  "a, b",
  "a\nb",
  "a\tb",
  "a\u0007",
  "é",
  "😀",
  "\u2028",
  "<<",
  "=",
  "---",
  "...",
  "-",
  "PAY OUT",
  "3/8",
  "15°",
  "A/C (AFT)",
  "\uFEFFa",
  "\ud800",
];

describe("a quoted text", () => {
  const taken = (text: string, version: "1.1" | "1.2"): unknown[] => [
    parse(`k: ${quoted(text)}\n`, { version, schema: version === "1.1" ? "yaml-1.1" : "core" }).k,
    parse(`{ k: ${quoted(text)}, m: 1 }\n`, {
      version,
      schema: version === "1.1" ? "yaml-1.1" : "core",
    }).k,
    parse(`- ${quoted(text)}\n`, { version, schema: version === "1.1" ? "yaml-1.1" : "core" })[0],
  ];

  test.each(WORDS)("%j is that text to readers of YAML 1.1 and 1.2", (text) => {
    expect(taken(text, "1.2")).toEqual([text, text, text]);
    expect(taken(text, "1.1")).toEqual([text, text, text]);
  });

  test("of any kind is, and stands on one line", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: "binary" })), (text) => {
        expect(quoted(text)).not.toContain("\n");
        expect(taken(text, "1.2")).toEqual([text, text, text]);
        expect(taken(text, "1.1")).toEqual([text, text, text]);
      }),
      { numRuns: 60 },
    );
  });

  test("stays plain where it can", () => {
    expect(["PAY OUT", "toggle-12", "Über"].map(quoted)).toEqual(["PAY OUT", "toggle-12", "Über"]);
  });
});
