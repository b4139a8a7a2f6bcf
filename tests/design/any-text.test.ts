// Any text at all gives a design or a finding, never an exception, and every finding points into the text.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { includesOf } from "../../src/design/includes.ts";
import { readDesign } from "../../src/design/read-design.ts";
import { lineAndColumn } from "../../src/diagnostics/position.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { codesOf, FILE, panelText } from "./reading.ts";

const SAMPLES = ["winch.yaml", "starboard.yaml", "shed.yaml"].map((name) =>
  readFileSync(join(import.meta.dirname, "samples", name), "utf8"),
);

const expectSound = (text: string): void => {
  const { design, findings } = readDesign(FILE, text);
  includesOf(FILE, text);
  expect(design !== null || findings.length > 0).toBe(true);
  for (const { span, code, message, remedies } of findings) {
    expect(span.start, code).toBeGreaterThanOrEqual(0);
    expect(span.end, code).toBeGreaterThanOrEqual(span.start);
    expect(span.end, code).toBeLessThanOrEqual(text.length);
    expect(message.length, message).toBeLessThan(400);
    for (const remedy of remedies) expect(applyEdits(text, remedy.edits).kind).toBe("edited");
  }
};

const pieces = fc.constantFrom(
  "consolewright: 1\n",
  "kind: panel\n",
  "kind: workshop\n",
  "name: a\n",
  "a: ",
  "- ",
  "? ",
  "[",
  "]",
  "{",
  "}",
  ",",
  ":",
  "#",
  "&a ",
  "*a",
  "!t ",
  "|\n",
  ">\n",
  '"',
  "'",
  "\n",
  "\r\n",
  "\t",
  "  ",
  "---\n",
  "...\n",
  "%YAML\n",
  "<<: ",
  "12,5 mm",
  "3/8",
  "1e309",
  "NaN",
  "😀",
  "\uFEFF",
  "\u0000",
  "°",
  "º",
  "components:\n",
  "  a: { part: b, at: { x: ",
  "\ud800",
);

describe("any text", () => {
  test("is read or told of", () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: "binary" })), expectSound));
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 40 }), (each) => expectSound(each.join(""))),
      { numRuns: 300 },
    );
  });

  test("that was a design before it was cut, doubled or typed into is read or told of", () => {
    const change = fc.tuple(fc.nat(), fc.nat(40), fc.oneof(pieces, fc.string({ maxLength: 5 })));
    fc.assert(
      fc.property(
        fc.constantFrom(...SAMPLES),
        fc.array(change, { minLength: 1, maxLength: 4 }),
        (sample, changes) => {
          const text = changes.reduce((before, [place, length, added]) => {
            const start = place % (before.length + 1);
            return before.slice(0, start) + added + before.slice(start + length);
          }, sample);
          expectSound(text);
        },
      ),
      { numRuns: 250 },
    );
  });
});

describe("places", () => {
  const LINES =
    'title: 😀 ok\ncomponents:\n  a: { part: led-5, at: centre, legend: "😀", turn: 15º }';

  test("are right after a byte order mark, CRLF and characters beyond the basic plane", () => {
    for (const text of [panelText(LINES), `\uFEFF${panelText(LINES)}`]) {
      for (const whole of [text, text.replaceAll("\n", "\r\n")]) {
        const { findings } = readDesign(FILE, whole);
        expect(codesOf(findings)).toEqual(["look-alike"]);
        const [found] = findings;
        expect(whole.slice(found?.span.start, found?.span.end)).toBe("15º");
        expect(lineAndColumn(whole, found?.span.start ?? 0)).toEqual({ line: 10, column: 52 });
      }
    }
  });

  test("and values do not depend on line ends or the mark", () => {
    const plain = readDesign(FILE, SAMPLES[0] ?? "").design;
    const windows = readDesign(FILE, `\uFEFF${(SAMPLES[0] ?? "").replaceAll("\n", "\r\n")}`).design;
    const withoutPlaces = (value: unknown): unknown =>
      JSON.parse(
        JSON.stringify(value, (key, item) => (key === "written" || key === "span" ? 0 : item)),
      );
    expect(withoutPlaces(windows)).toEqual(withoutPlaces(plain));
  });
});
