import fc from "fast-check";
import { expect, test } from "vitest";
import { distinctPaths, pathFault, safeName } from "../../src/pack/file-name.ts";

test.each([
  ["Towing winch", "towing-winch"],
  ["  Fire / pumps!  ", "fire-pumps"],
  ["Größe Ø 3", "grosse-o-3"],
  ["..", /^name-[0-9a-f]{8}$/],
  ["舵", /^name-[0-9a-f]{8}$/],
  ["Pump Ω", /^pump-[0-9a-f]{8}$/],
  // Device names of Windows: Microsoft, "Naming files, paths, and namespaces".
  ["CON", "con-named"],
  ["lpt1", "lpt1-named"],
  ["nul.", "nul-named"],
])("names %j safely", (words, expected) => {
  if (expected instanceof RegExp) expect(safeName(words)).toMatch(expected);
  else expect(safeName(words)).toBe(expected);
});

test("long names stay apart although they are cut", () => {
  const a = safeName(`${"a".repeat(200)} one`);
  const b = safeName(`${"a".repeat(200)} two`);
  expect(a).not.toBe(b);
  expect(a.length).toBeLessThanOrEqual(64);
});

test("names that can't be spelt in ASCII stay apart", () => {
  expect(safeName("舵 1")).not.toBe(safeName("錨 1"));
});

test("any text at all gives a name that every file system takes, and the same one again", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (words) => {
      const name = safeName(words);
      expect(pathFault(`${name}.svg`)).toBeNull();
      expect(name).toBe(safeName(words));
      expect(safeName(name)).toBe(name);
    }),
  );
});

test("paths that a case-blind disk would take for one are numbered", () => {
  expect(
    distinctPaths(["cut/a.kerf-0.20.svg", "cut/A.kerf-0.20.svg", "cut/a.kerf-0.20.svg"]),
  ).toEqual(["cut/a.kerf-0.20.svg", "cut/A-2.kerf-0.20.svg", "cut/a-3.kerf-0.20.svg"]);
});

test.each(["../x", "/x", "a//b", "a/con.txt", "a./b", "a b", "a\\b", "x:y", "aux"])(
  "%j is refused as a path",
  (path) => {
    expect(pathFault(path)).not.toBeNull();
  },
);
