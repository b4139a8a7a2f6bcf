// An edit of one line is read from the tree of the text before it. Held against a reading of the whole text by the YAML
// library, which knows nothing of the text before: same tree, same places, same findings, whatever the line has become.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readText } from "../../src/design/read-text.ts";
import { source } from "../../src/design/source.ts";
import type { MapEntry, TextNode } from "../../src/design/text-node.ts";

const SAMPLES = ["winch.yaml", "starboard.yaml", "shed.yaml"].map((name) =>
  readFileSync(join(import.meta.dirname, "samples", name), "utf8"),
);

let count = 0;

/** As of a file that nobody has read before. */
const readAnew = (text: string): string => {
  count += 1;
  const file = `new-${count}.yaml`;
  return JSON.stringify(readText(source(file, text))).replaceAll(`"${file}"`, '"file"');
};

const readAgain = (file: string, text: string): string =>
  JSON.stringify(readText(source(file, text))).replaceAll(`"${file}"`, '"file"');

/** Sound values, what opens something, and what YAML has a meaning of its own for. */
const words = fc.constantFrom(
  ...[
    "12 mm",
    "12.25 mm",
    "1,5 mm",
    "centre",
    "{ x: 1 mm, y: centre }",
    "[a, b]",
    "{ a: { b: c } }",
  ],
  ...[
    '"PUMP"',
    "'A'",
    '"A\\nB"',
    "PUMP #3",
    "PUMP # three",
    "a: b",
    "{ a: b",
    "a }",
    "[",
    '"',
    "'",
  ],
  ...[
    "&a 1",
    "*a",
    "!t x",
    "|",
    ">-",
    "",
    " ",
    "- a",
    "? a",
    "{}",
    "[]",
    "~",
    "@a",
    "%a",
    "`a`",
    "a\n  b: c",
  ],
  ...[
    "\t1",
    "1\t",
    "---",
    "...",
    "<<",
    "{ <<: a }",
    "{ left: 12,5 mm }",
    "{ a: 1, a: 2 }",
    "x\r",
    "\\",
    "é",
  ],
);

interface LineEdit {
  readonly line: number;
  readonly how: "value" | "key" | "number" | "cut" | "put";
  readonly at: number;
  readonly word: string;
}

const edits: fc.Arbitrary<LineEdit> = fc.record({
  line: fc.nat(400),
  how: fc.constantFrom("value", "value", "key", "number", "number", "cut", "put"),
  at: fc.nat(80),
  word: words,
});

const edited = (text: string, { line, how, at, word }: LineEdit): string => {
  const lines = text.split("\n");
  const index = line % lines.length;
  const old = lines[index] ?? "";
  const place = at % (old.length + 1);
  lines[index] = {
    value: () => old.replace(/: .*/, `: ${word}`),
    key: () => old.replace(/[\w-]+:/, `${word}:`),
    number: () => old.replace(/\d+(?:\.\d+)?/, `${at}.5`),
    cut: () => old.slice(0, place) + old.slice(place + 1),
    put: () => old.slice(0, place) + word + old.slice(place),
  }[how]();
  return lines.join("\n");
};

test("any edit of lines gives what the whole text gives", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...SAMPLES),
      fc.array(fc.tuple(edits, fc.boolean()), { minLength: 1, maxLength: 8 }),
      (sample, list) => {
        count += 1;
        const file = `kept-${count}.yaml`;
        let text = sample;
        readText(source(file, text));
        for (const [edit, isKept] of list) {
          const next = edited(text, edit);
          const whole = readAnew(next);
          expect(readAgain(file, next)).toBe(whole);
          // What would break the text is mostly taken back, so that the next edit begins with a sound one again.
          if (isKept) text = next;
          else readAgain(file, text);
        }
      },
    ),
    { numRuns: 150 },
  );
}, 60_000);

const entry = (node: TextNode | null, key: string): MapEntry | undefined =>
  node?.kind === "map" ? node.entries.find((one) => one.key === key) : undefined;

test("only the line of a place is read again", () => {
  const before =
    "kind: panel\ncomponents:\n  a: { at: { x: 1 mm } }\n  b: { at: { x: 5 mm } }\n  c: { x: 1 }\n";
  const first = entry(readText(source("one.yaml", before)).root, "components")?.value ?? null;
  const after = before.replace("5 mm", "17.5 mm");
  const second = entry(readText(source("one.yaml", after)).root, "components")?.value ?? null;
  expect(entry(second, "a")).toBe(entry(first, "a"));
  const c = entry(second, "c");
  expect(after.slice(c?.keySpan.start, c?.value.span.end)).toBe("c: { x: 1 }");
});
