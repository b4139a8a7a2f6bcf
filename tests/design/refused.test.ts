// What a design does without, hostile files among it: refused with a finding at its place, quickly, and never thrown.

import { describe, expect, test } from "vitest";
import { readDesign } from "../../src/design/read-design.ts";
import { codesOf, FILE, panelText, pointedAt } from "./reading.ts";

const codes = (text: string): readonly string[] => codesOf(readDesign(FILE, text).findings);

const million = (piece: string): string => piece.repeat(1_048_576 / piece.length);
const most = (piece: string): string => piece.repeat(Math.floor(131_000 / piece.length));

describe("a design does without", () => {
  test.each([
    ["anchors", panelText("title: &t Winch"), "anchor", "&t"],
    ["aliases", panelText("title: *t"), "alias", "*t"],
    ["tags", panelText("title: !x Winch"), "tag", "!"],
    ["local tags on groups", panelText("lettering: !!map { gap: 2 }"), "tag", "!"],
    ["merge keys", panelText("<<: { title: Winch }"), "merge-key", "<<"],
    ["directives", `%YAML 1.1\n---\n${panelText("")}`, "directive", "%YAML 1.1"],
    [
      "directives behind comments",
      `# a\n\n%TAG ! x\n---\n${panelText("")}`,
      "directive",
      "%TAG ! x",
    ],
    ["second documents", panelText("---\nname: two"), "second-document", "---"],
    ["documents behind an end mark", panelText("...\nname: two"), "second-document", "..."],
    ["bells", panelText("title: a\u0007b"), "hidden-character", "\u0007"],
    ["null characters", panelText("title: a\u0000b"), "hidden-character", "\u0000"],
    ["direction marks", panelText("title: a\u202eb"), "hidden-character", "\u202e"],
    ["half characters", panelText("title: a\ud800b"), "hidden-character", "\ud800"],
    ["lone carriage returns", panelText("title: a\rrevision: b"), "hidden-character", "\r"],
    ["late byte order marks", panelText("title: a\uFEFFb"), "hidden-character", "\uFEFF"],
    ["escaped null characters", panelText('title: "a\\0b"'), "hidden-character", '"a\\0b"'],
  ])("%s", (_what, text, code, place) => {
    const { findings } = readDesign(FILE, text);
    expect(codesOf(findings)).toEqual([code]);
    expect(findings.map((found) => pointedAt(text, found))).toEqual([place]);
  });

  test("tabs as indentation", () => {
    expect(codes(panelText("lettering:\n\tgap: 2"))).toEqual(["tab-as-indent"]);
  });

  test("groups of keys as keys, and keys without a name", () => {
    expect(codes(panelText("? [a, b]\n: c"))).toEqual(["key-without-value"]);
    expect(codes(panelText("lettering: { : 3 }"))).toEqual(["key-without-value"]);
  });

  test("but not without an opening mark, an end mark or a byte order mark", () => {
    expect(
      codes(`\uFEFF---\r\n${panelText("title: a").replaceAll("\n", "\r\n")}...\r\n# end\r\n`),
    ).toEqual([]);
  });
});

describe("a text that is no tree", () => {
  test.each([
    ["an open brace", panelText("lettering: { gap: 2")],
    ["an open quotation mark", panelText('title: "Winch')],
    ["a second colon", panelText("title: Winch: towing")],
    ["an unknown escape", panelText('title: "a\\qb"')],
    ["a stray bracket", panelText("title: Winch ]\n]")],
    ["bad indentation", panelText("lettering:\n    gap: 2\n  font: a")],
    ["a percent sign first", panelText("title: %a")],
    ["a quotation mark and more", panelText('title: "a" b')],
  ])("because of %s gives nothing and says where", (_what, text) => {
    const { design, findings } = readDesign(FILE, text);
    expect(design).toBeNull();
    expect(new Set(codesOf(findings))).toEqual(new Set(["syntax"]));
    expect(findings.length).toBeLessThanOrEqual(3);
    expect(findings[0]?.message).not.toMatch(
      /[a-z]+-[a-z]+-(?:ind|end|start)|implicit|mapping|YAML/,
    );
  });

  test.each([
    ["", "empty-file"],
    ["# a comment\n", "empty-file"],
    ["---\n", "empty-file"],
    ["\uFEFF", "empty-file"],
    ["just words", "wrong-shape"],
    ["- a\n- b", "wrong-shape"],
  ])("but %j says little", (text, code) => expect(codes(text)).toEqual([code]));
});

test.each([
  ["components: [[[", "components: [", "title: T\nheight: 3 modules"],
  ["lettering: { gap: 2", "lettering: {", 'title: "a [ b"\nheight: 3 modules'],
])("a bracket that is never closed is told where it is opened: %s", (line, before, after) => {
  const text = panelText(`# not this [\ntitle2: 'nor {'\n${line}\n${after}`);
  const [first, ...others] = readDesign(FILE, text).findings;
  expect(first?.message).toBe("the bracket that is opened here is not closed");
  expect(first?.span.start).toBe(text.indexOf(before) + before.length - 1);
  expect(others).toEqual([]);
});

describe("a hostile file", () => {
  test.each([
    ["a megabyte of brackets", million("["), "too-large"],
    [
      "20,000 keys",
      Array.from({ length: 20_000 }, (_, index) => `k${index}: v`).join("\n"),
      "too-large",
    ],
    ["20,000 short keys", most("a: b\n").slice(0, 100_000), "too-many-keys"],
    ["brackets", most("["), "too-deep"],
    ["braces", most("{a: "), "too-deep"],
    ["dashes in a row", most("- "), "too-deep"],
    ["question marks in a row", most("? "), "too-deep"],
    [
      "ever deeper lines",
      Array.from({ length: 400 }, (_, depth) => `${" ".repeat(depth)}a:`).join("\n"),
      "too-deep",
    ],
    ["pairs of brackets", most("[]"), "too-many-keys"],
    ["closing brackets", most("]"), "too-many-keys"],
    ["quotation marks", most('"'), "too-many-keys"],
    ["lines", most("a\n"), "too-many-keys"],
    ["documents", `a: b\n${most("---\n").slice(0, 40_000)}`, "second-document"],
  ])("of %s is refused", (_what, text, code) => expect(codes(text)).toContain(code));
});

describe("any file", () => {
  test("of any repeated piece is answered within two seconds", () => {
    const heads = ["", panelText("title: "), panelText("components:\n  a: { part: b, at: { x: ")];
    const pieces = [
      "a,",
      "a: 1a",
      "1",
      "1a",
      "a ",
      "é",
      "😀",
      "a #b ",
      "1/2 ",
      ": ",
      "{a,",
      "a: {b: c}\n",
      "- a\n",
      "\\",
      "<<: ",
      "&a ",
      "*a ",
    ];
    for (const head of heads) {
      for (const piece of pieces) {
        const started = performance.now();
        const { findings } = readDesign(FILE, head + most(piece));
        // Within budget even where two machines' worth of tests share two cores; alone the slowest takes 0.2 s.
        expect(performance.now() - started, piece).toBeLessThan(2000);
        expect(findings.length, piece).toBeGreaterThan(0);
      }
    }
  });

  test("with names of JavaScript's own finds nothing behind them", () => {
    const text = panelText(
      "components:\n  constructor: { part: led-5, at: centre }\n  a: { part: led-5, at: centre, __proto__: x, toString: y }",
    );
    const { design, findings } = readDesign(FILE, text);
    expect(codesOf(findings)).toEqual(["unknown-key", "unknown-key"]);
    expect(design).toMatchObject({ components: [{ id: "constructor" }, { id: "a" }] });
    const console_ = readDesign("c.yaml", "consolewright: 1\nkind: console\nname: c\n").design;
    expect(console_?.kind === "console" ? console_.bays["constructor"] : "none").toBeUndefined();
  });
});
