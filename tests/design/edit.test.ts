// Edits of a design: only the value that is meant changes, comments and spacing stay, and everything can be undone.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import {
  appendItem,
  type Edit,
  nodeAt,
  removeItem,
  removeKey,
  replaceValue,
  setKey,
} from "../../src/design/edit.ts";
import { quoted } from "../../src/design/quoted.ts";
import { readText } from "../../src/design/read-text.ts";
import { source } from "../../src/design/source.ts";
import type { TextNode } from "../../src/design/text-node.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";

const after = (text: string, edit: Edit): string => {
  if (edit.kind === "refused") return `refused: ${edit.why}`;
  const result = applyEdits(text, [edit.edit]);
  return result.kind === "edited" ? result.text : result.why;
};

const set = (text: string, path: readonly string[], key: string, value: string): string =>
  after(text, setKey(source("f", text), path, { key, value }));
const remove = (text: string, path: readonly string[], key: string): string =>
  after(text, removeKey(source("f", text), path, key));
const append = (text: string, path: readonly string[], item: string): string =>
  after(text, appendItem(source("f", text), path, item));

const removeAt = (text: string, index: number): string =>
  after(text, removeItem(source("f", text), ["l"], index));

describe("taking an entry out of brackets", () => {
  test.each([
    ["l: [a, b, c] # x\n", 0, "l: [b, c] # x\n"],
    ["l: [a, b, c]\n", 1, "l: [a, c]\n"],
    ["l: [a, b , c ]\n", 2, "l: [a, b ]\n"],
    // A comment beside an entry that stays, or above it, is lost with none that goes.
    ["l: [ a, # one\n     b # two\n   ]\n", 1, "l: [ a # one\n      # two\n   ]\n"],
    ["l: [ a, # one, it is\n     b ]\n", 0, "l: [  # one, it is\n     b ]\n"],
    ["l: [ a # one, it is\n     , b, c ]\n", 1, "l: [ a # one, it is\n     , c ]\n"],
    ["l: [ a # one, it is\n     , b ]\n", 1, "l: [ a # one, it is\n       ]\n"],
  ])("%j without item %i", (text, index, result) => {
    expect(removeAt(text, index)).toBe(result);
    expect(parse(result).l).toEqual(parse(text).l.toSpliced(index, 1));
  });

  test("a key likewise", () => {
    const text = "m: { a: 1, # one\n     b: 2 # two\n   }\n";
    expect(remove(text, ["m"], "b")).toBe("m: { a: 1 # one\n      # two\n   }\n");
  });
});

describe("setting a key", () => {
  test.each([
    ["a: 1 # one\nb: 2\n", [], "a", "9", "a: 9 # one\nb: 2\n"],
    ["a: 1 # one\n", [], "b", "2", "a: 1 # one\nb: 2\n"],
    ["a: 1", [], "b", "2", "a: 1\nb: 2"],
    ["a: 1\r\nc:\r\n  d: 1\r\n", ["c"], "e", "2", "a: 1\r\nc:\r\n  d: 1\r\n  e: 2\r\n"],
    ["a: { b: 1 } # one\n", ["a"], "c", "2", "a: { b: 1, c: 2 } # one\n"],
    ["a: { b: 1, } # one\n", ["a"], "c", "2", "a: { b: 1, c: 2, } # one\n"],
    ["a: {}\n", ["a"], "c", "2", "a: { c: 2 }\n"],
    ["a:\n  b: 1\n\n# end\nc: 1\n", ["a"], "d", "2", "a:\n  b: 1\n  d: 2\n\n# end\nc: 1\n"],
    ["l:\n  - a: 1\n  - b: 2\n", ["l", "0"], "c", "3", "l:\n  - a: 1\n    c: 3\n  - b: 2\n"],
    ["a:\n  b: [1, 2] # x\n", ["a"], "b", "3", "a:\n  b: 3 # x\n"],
    ["a:\n# note\nb: 1\n", [], "a", "3", "a: 3\n# note\nb: 1\n"],
    [
      "a:\n  b:\n    c: 1\n    d: 2\ne: 3\n",
      ["a"],
      "b",
      "{ c: 9 }",
      "a:\n  b:\n    { c: 9 }\ne: 3\n",
    ],
    ["a: |\n  words\n  more\nb: 1\n", [], "a", "x", "a: x\nb: 1\n"],
    ["\uFEFFa: 1\n", [], "b", "2", "\uFEFFa: 1\nb: 2\n"],
    ["a: 'it''s'\n", [], "a", "x", "a: x\n"],
  ])("%j", (text, path, key, value, result) => {
    expect(set(text, path, key, value)).toBe(result);
  });

  test.each([
    ["a: 1\na: 2\n", [], "a"],
    ["a: [1]\n", ["a"], "b"],
    ["a: 1\n", ["x"], "b"],
    ["{{{", [], "b"],
  ])("is refused in %j", (text, path, key) => {
    expect(set(text, path, key, "1")).toContain("refused");
    expect(set("a: 1\n", [], "a", "1\nb: 2")).toContain("refused");
  });
});

describe("taking out a key", () => {
  test.each([
    ["a: 1 # one\nb: 2\n", [], "a", "b: 2\n"],
    ["a: 1\nb: 2", [], "b", "a: 1"],
    ["a: 1\r\nb: 2", [], "b", "a: 1"],
    ["# first\na: 1\n# second\nb: 2\n", [], "b", "# first\na: 1\n# second\n"],
    ["x: { a: 1, b: 2, c: 3 }\n", ["x"], "a", "x: { b: 2, c: 3 }\n"],
    ["x: { a: 1, b: 2, c: 3 }\n", ["x"], "b", "x: { a: 1, c: 3 }\n"],
    ["x: { a: 1, b: 2, c: 3 }\n", ["x"], "c", "x: { a: 1, b: 2 }\n"],
    ["x: { a: 1 } # n\n", ["x"], "a", "x: {} # n\n"],
    ["x:\n  a: 1\ny: 2\n", ["x"], "a", "x:\n  {}\ny: 2\n"],
    ["l:\n  - a: 1\n    b: 2\n", ["l", "0"], "a", "l:\n  - b: 2\n"],
    ["l:\n  - a: 1\n    b: 2\n", ["l", "0"], "b", "l:\n  - a: 1\n"],
    ["a:\n  b:\n    c: 1\n\n  d: 2\n", ["a"], "b", "a:\n\n  d: 2\n"],
    ["a: |\n  words\n\nb: 2\n", [], "a", "\nb: 2\n"],
  ])("%j", (text, path, key, result) => expect(remove(text, path, key)).toBe(result));

  test("is refused where nothing would be left, or nothing is there", () => {
    expect(remove("a: 1\n", [], "a")).toContain("refused");
    expect(remove("a: 1\n", [], "b")).toContain("refused");
    expect(remove("? a\n: 1\nb: 2\n", [], "a")).toContain("refused");
  });
});

describe("adding an item", () => {
  test.each([
    ["l: [1, 2] # n\n", ["l"], "3", "l: [1, 2, 3] # n\n"],
    ["l: []\n", ["l"], "3", "l: [3]\n"],
    ["l:\n  - 1 # n\n  - 2\n\nm: 1\n", ["l"], "3", "l:\n  - 1 # n\n  - 2\n  - 3\n\nm: 1\n"],
    ["l:\n- a: 1\n  b: 2\n", ["l"], "{ a: 3 }", "l:\n- a: 1\n  b: 2\n- { a: 3 }\n"],
  ])("%j", (text, path, item, result) => expect(append(text, path, item)).toBe(result));

  test("is refused where there is no list", () => {
    expect(append("l: 1\n", ["l"], "3")).toContain("refused");
    expect(append("l: 1\n", ["m", "0"], "3")).toContain("refused");
  });
});

const SAMPLES = ["winch.yaml", "starboard.yaml", "shed.yaml"].map((name) =>
  readFileSync(join(import.meta.dirname, "samples", name), "utf8"),
);

/** Every map of a text: its path and its keys. */
const mapsOf = (node: TextNode, path: readonly string[] = []): [readonly string[], string[]][] => {
  if (node.kind === "map") {
    const keys = node.entries.map(({ key }) => key);
    const inner = node.entries.flatMap(({ key, value }) => mapsOf(value, [...path, key]));
    return [[path, keys], ...inner];
  }
  return node.kind === "list"
    ? node.items.flatMap((item, index) => mapsOf(item, [...path, `${index}`]))
    : [];
};

const commentsOf = (text: string): readonly string[] => text.match(/#.*/g) ?? [];

const at = (tree: unknown, path: readonly string[]): Record<string, unknown> =>
  path.reduce<Record<string, unknown>>(
    (value, step) => value[step] as Record<string, unknown>,
    tree as Record<string, unknown>,
  );

const KINDS = ["remove", "replace", "add"] as const;

interface Choice {
  readonly path: readonly string[];
  readonly key: string;
  readonly kind: (typeof KINDS)[number];
  readonly value: string;
}

describe("random edits of the samples", () => {
  const failsafe = (text: string): unknown => parse(text, { schema: "failsafe" });
  const steps = fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat(2)), { minLength: 1, maxLength: 12 });

  type Step = readonly [number, number, number];

  const chosen = (text: string, [mapNumber, keyNumber, what]: Step): Choice => {
    const { root } = readText(source("f", text));
    const maps = root === null ? [] : mapsOf(root);
    const [path, keys] = maps[mapNumber % maps.length] ?? [[], []];
    const key = keys[keyNumber % keys.length] ?? "new";
    const kind = KINDS[what] ?? "add";
    return { path, key: kind === "add" ? "added" : key, kind, value: `value ${keyNumber % 10}` };
  };

  /** One random edit; what the tree must be afterwards is worked out on a plain copy of it. */
  const step = (text: string, random: Step): string => {
    const from = source("f", text);
    const { path, key, kind, value } = chosen(text, random);
    const wanted = failsafe(text);
    const owner = at(wanted, path);
    if (kind === "remove") delete owner[key];
    else owner[key] = value;
    const edit =
      kind === "remove"
        ? removeKey(from, path, key)
        : setKey(from, path, { key, value: quoted(value) });
    if (edit.kind === "refused") return text;
    const result = applyEdits(text, [edit.edit]);
    if (result.kind === "refused") throw new Error(result.why);
    expect(failsafe(result.text)).toEqual(wanted);
    expect(applyEdits(result.text, result.undo)).toMatchObject({ kind: "edited", text });
    if (kind === "add") expect(commentsOf(result.text)).toEqual(commentsOf(text));
    return result.text;
  };

  test("change what they should and nothing else, and undo to the first text", () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), fc.boolean(), steps, (sample, windows, random) => {
        random.reduce(step, windows ? sample.replaceAll("\n", "\r\n") : sample);
      }),
      { numRuns: 40 },
    );
  });

  test("replace a value where it stands", () => {
    const [winch = ""] = SAMPLES;
    const from = source("f", winch);
    const node = nodeAt(from, ["components", "brake", "at", "left"]);
    if (node === null) throw new Error("it is there");
    const result = applyEdits(winch, [replaceValue(from, node.span, "26.5 mm")]);
    expect(result).toMatchObject({
      text: winch.replace("left: 24 mm, top: 30", "left: 26.5 mm, top: 30"),
    });
  });
});
