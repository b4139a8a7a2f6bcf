// Which files a design names, how their paths are resolved, and circles among them.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fileMissing, type Include, includeCycles, includesOf } from "../../src/design/includes.ts";
import { resolveInclude } from "../../src/design/resolve-include.ts";

describe("a path", () => {
  test.each([
    ["console.yaml", "panels/winch.yaml", "panels/winch.yaml"],
    ["panels/winch.yaml", "../workshop.yaml", "workshop.yaml"],
    ["a/b/c.yaml", "../../d.yaml", "d.yaml"],
    ["a/b.yaml", "./c.yaml", "a/c.yaml"],
    ["a.yaml", "b//c.yaml", "b/c.yaml"],
    ["a/b.yaml", "c/../d.yaml", "a/d.yaml"],
    ["a.yaml", "Über das/ö.yaml", "Über das/ö.yaml"],
    ["a.yaml", "..a.yaml", "..a.yaml"],
  ])("in %s of %s leads to %s", (file, written, path) => {
    expect(resolveInclude(file, written)).toEqual({ kind: "resolved", path });
  });

  test.each([
    "../a.yaml",
    "b/../../a.yaml",
    "/etc/passwd",
    "~/a.yaml",
    "C:/a.yaml",
    "c:a.yaml",
    "a\\b.yaml",
    "\\\\server\\a.yaml",
    "https://example.org/a.yaml",
    "file:///a.yaml",
    "data:a",
    "a\u0000.yaml",
    "a\n.yaml",
    "",
    " ",
    ".",
    "b/..",
    "panels/",
    "nul",
    "CON.yaml",
    "a/lpt1.yaml",
    "a?.yaml",
    "a .",
    "a. /b",
    "a".repeat(500),
  ])("%j is refused in the root", (written) => {
    expect(resolveInclude("a.yaml", written).kind).toBe("refused");
  });

  test("never leads above the root", () => {
    const step = fc.constantFrom("..", ".", "a", "b", "", "...");
    fc.assert(
      fc.property(fc.array(step), fc.array(step), (folders, steps) => {
        const file = [...folders.filter((each) => /^[ab]$/.test(each)), "f.yaml"].join("/");
        const resolved = resolveInclude(file, steps.join("/"));
        if (resolved.kind === "resolved") {
          expect(resolved.path).not.toMatch(/^\/|(?:^|\/)\.\.?(?:\/|$)|^$/);
        }
      }),
    );
  });
});

describe("includes", () => {
  test("are told in the order of the text, each once, those that can't be resolved left out", () => {
    const text = `consolewright: 1
kind: console
name: a
panels:
  - { file: panels/b.yaml, as: b }
  - { file: panels/b.yaml, as: c }
  - { file: ../../x.yaml, as: d }
  - [file, y.yaml]
workshop: shed.yaml
catalogue: parts.yaml
`;
    expect(includesOf("sub/a.yaml", text)).toEqual([
      "sub/panels/b.yaml",
      "sub/shed.yaml",
      "sub/parts.yaml",
    ]);
    expect(includesOf("a.yaml", "{{{")).toEqual([]);
    expect(includesOf("a.yaml", "")).toEqual([]);
  });

  const named = (file: string, paths: readonly string[]): readonly [string, readonly Include[]] => [
    file,
    paths.map((path, index) => ({ path, span: { file, start: index, end: index + 1 } })),
  ];

  test("in a circle are one finding a circle", () => {
    const includes = new Map([
      named("a", ["b", "shed"]),
      named("b", ["c"]),
      named("c", ["a", "shed"]),
      named("d", ["d"]),
      named("shed", []),
    ]);
    const findings = includeCycles(includes);
    expect(findings.map(({ message }) => message)).toEqual([
      "files name each other in a circle: a names b names c names a",
      "files name each other in a circle: d names d",
    ]);
    expect(findings[0]?.span.file).toBe("a");
    expect(includeCycles(new Map([named("a", ["b", "c"]), named("b", ["c"])]))).toEqual([]);
  });

  const missing = (path: string, there: readonly string[]): string =>
    fileMissing({ path, span: { file: "a.yaml", start: 3, end: 9 } }, there).message;

  test("that are not there have near names to offer, and no other", () => {
    expect(missing("worksop.yaml", ["workshop.yaml", "a.yaml", "console.yaml"])).toBe(
      "there is no file worksop.yaml; the nearest is workshop.yaml",
    );
    expect(missing("worksop.yaml", ["a.yaml", "console.yaml", "my-parts.yaml"])).toBe(
      "there is no file worksop.yaml",
    );
  });

  test("that lie in another folder, or end otherwise, are near by their own name", () => {
    expect(missing("panel/winch.yaml", ["panels/pumps.yaml", "panels/winch.yaml"])).toBe(
      "there is no file panel/winch.yaml; the nearest is panels/winch.yaml",
    );
    expect(missing("winch.yml", ["wrench.yaml", "winch.yaml"])).toBe(
      "there is no file winch.yml; the nearest are winch.yaml and wrench.yaml",
    );
  });

  test("are as near in capitals, which other systems take for the same letters", () => {
    expect(missing("Panels/WINCH.yaml", ["panels/pumps.yaml", "panels/winch.yaml"])).toBe(
      "there is no file Panels/WINCH.yaml; the nearest is panels/winch.yaml",
    );
  });
});
