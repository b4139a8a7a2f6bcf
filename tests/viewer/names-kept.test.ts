// Taking off and renaming what others name. The check: the text that comes out is read by the program itself, which finds no
// unknown name in it, and whatever stays stands where it stood.

import { describe, expect, test } from "vitest";
import type { Edit } from "../../src/design/edit.ts";
import { source } from "../../src/design/source.ts";
import { applyEdits } from "../../src/diagnostics/text-edit.ts";
import { componentRenamed } from "../../viewer/panel/naming-edits.ts";
import { patternOf } from "../../viewer/panel/pattern-edits.ts";
import { thingsRemoved } from "../../viewer/panel/removal-edits.ts";
import { layoutOf, panelOf, panelText } from "../layout/bench-panel.ts";

const LAMP = "part: led-5-bezel";

const TEXT = panelText({
  height: "16 modules",
  fixings:
    "{ screws: m3, dowels: 3 mm, at: [{ x: 10 mm, y: 10 mm }, { x: 135 mm, y: 10 mm }, { right-of: a, centres: 62 mm }] }",
  components: [
    `a: { ${LAMP}, at: { x: 40 mm, y: 60 mm } }`,
    `b: { ${LAMP}, at: { right-of: a, centres: 30 mm } }`,
    `warn: { row: { ${LAMP}, count: 2, pitch: 20 mm, above: a, centres: 30 mm } }`,
    `c: { ${LAMP}, at: { right-of: warn.2, centres: 20 mm } } # the last`,
  ],
  markings: [
    "{ border: { name: frame, around: [a, b] } }",
    "{ border: { around: [a] } }",
    "{ legend: { name: word, text: WORD, at: { below: a, centres: 15 mm } } }",
  ],
});

const from = source("panel.yaml", TEXT);

const carriedOut = (made: Edit): string => {
  if (made.kind === "refused") throw new Error(made.why);
  const applied = applyEdits(TEXT, [made.edit]);
  if (applied.kind === "refused") throw new Error(applied.why);
  return applied.text;
};

const places = (text: string): Readonly<Record<string, string>> => {
  const { components, ownPlaces } = layoutOf(text);
  return Object.fromEntries(
    [...components, ...ownPlaces].map(({ id, at }) => [
      id,
      `${Math.round(at.x * 100) / 100}, ${Math.round(at.y * 100) / 100}`,
    ]),
  );
};

const unknownNames = (text: string): readonly string[] =>
  panelOf(text)
    .findings.filter(({ code }) => /unknown|dupl|not-a/.test(code))
    .map(({ message }) => message);

describe("a component that is taken off", () => {
  test("leaves no name behind, and nothing that stays moves", () => {
    const { edit, says } = thingsRemoved(from, ["a"], layoutOf(TEXT));
    const text = carriedOut(edit);
    expect(unknownNames(text)).toEqual([]);
    const { a: _gone, ...rest } = places(TEXT);
    expect(places(text)).toEqual(rest);
    expect(text).toContain("around: [b]");
    expect(layoutOf(text).markings.filter(({ kind }) => kind === "border").length).toBe(1);
    expect([...says].sort()).toEqual([
      "b keeps its place by its own numbers",
      "fixing.3 keeps its place by its own numbers",
      "frame no longer goes round a",
      "the border round a goes with it: nothing else is in it",
      "warn keeps its place by its own numbers",
      "word keeps its place by its own numbers",
    ]);
  });

  test("that nothing names is simply gone", () => {
    const { edit, says } = thingsRemoved(from, ["c"], layoutOf(TEXT));
    expect(says).toEqual([]);
    expect(carriedOut(edit)).not.toContain("  c:");
  });

  test("a pattern's member may be named too", () => {
    const { edit, says } = thingsRemoved(from, ["warn"], layoutOf(TEXT));
    expect(says).toEqual(["c keeps its place by its own numbers"]);
    expect(unknownNames(carriedOut(edit))).toEqual([]);
  });
});

describe("markings and screws that are taken off", () => {
  test("go as whole items, the others stay as they are written", () => {
    const text = carriedOut(thingsRemoved(from, ["frame", "word"], layoutOf(TEXT)).edit);
    expect(text).toContain("markings:\n  - { border: { around: [a] } }\n");
    expect(text).not.toContain("frame");
    expect(text).not.toContain("WORD");
  });

  test("the last marking leaves a list that the program still reads", () => {
    const last = panelText({
      height: "16 modules",
      fixings: "",
      components: [`a: { ${LAMP}, at: { x: 40 mm, y: 60 mm } }`],
      markings: ["border: { around: [a] }"],
    });
    const { edit } = thingsRemoved(source("panel.yaml", last), ["border-1"], layoutOf(last));
    const applied = applyEdits(last, edit.kind === "edit" ? [edit.edit] : []);
    const text = applied.kind === "edited" ? applied.text : "";
    expect(layoutOf(text).components.length).toBe(1);
    expect(text).not.toContain("border");
    expect(unknownNames(text)).toEqual([]);
  });

  test("one of three screws goes, two are kept in words, dowels always", () => {
    const layout = layoutOf(TEXT);
    const text = carriedOut(thingsRemoved(from, ["fixing.2"], layout).edit);
    expect(text).toContain("at: [{ x: 10 mm, y: 10 mm }, { right-of: a, centres: 62 mm }]");
    expect(thingsRemoved(from, ["fixing.1", "fixing.2"], layout).edit).toMatchObject({
      kind: "refused",
      why: "the stack takes at least 2 screws",
    });
    expect(thingsRemoved(from, ["dowel.1"], layout).edit).toMatchObject({
      kind: "refused",
      why: "the stack takes both its dowels",
    });
  });
});

describe("a component that is renamed", () => {
  const taken = ["a", "b", "c", "warn", "frame", "word", "border-2"];
  const renamed = (entry: string, name: string): string => {
    const made = componentRenamed(from, entry, { name, taken });
    if (made.kind === "refused") throw new Error(made.why);
    const applied = applyEdits(TEXT, made.edits);
    if (applied.kind === "refused") throw new Error(applied.why);
    return applied.text;
  };

  test("is renamed everywhere: neighbours, borders, screws, markings", () => {
    const text = renamed("a", "pump-1");
    expect(unknownNames(text)).toEqual([]);
    const { a, ...rest } = places(TEXT);
    expect(places(text)).toEqual({ "pump-1": a, ...rest });
    expect(text).toContain("around: [pump-1, b]");
  });

  test("a pattern's members keep their numbers", () => {
    expect(renamed("warn", "alarms")).toContain("right-of: alarms.2, centres: 20 mm");
  });

  test.each([
    ["another thing's name", "b"],
    ["a marking's name, said or counted", "border-2"],
    ["no name", "2nd Pump"],
    ["markup", "<b>"],
  ])("%s is refused in words", (_what, name) => {
    expect(componentRenamed(from, "a", { name, taken })).toMatchObject({ kind: "refused" });
  });
});

test("whoever names one that becomes a member of a row names the member", () => {
  const layout = layoutOf(TEXT);
  const text = carriedOut(patternOf(from, "row", { entries: ["a", "b"], layout }).edit);
  expect(unknownNames(text)).toEqual([]);
  expect(text).toContain("around: [a.1, a.2]");
  const { a, b, ...rest } = places(TEXT);
  expect(places(text)).toEqual({ "a.1": a, "a.2": b, ...rest });
});
