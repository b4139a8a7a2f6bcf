// Holds the floors and the other rules of the source tree, and proves on made-up sources that each rule can fail.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  floorFaults,
  headerFaults,
  lengthFaults,
  type Sources,
  sameBytesFaults,
} from "./support/source-rules.ts";

const root = dirname(import.meta.dirname);

function sourcesUnder(...folders: readonly string[]): Sources {
  const paths = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .map((path) => `${folder}/${path.replaceAll("\\", "/")}`)
      .filter((path) => /\.tsx?$/.test(path)),
  );
  return new Map(paths.sort().map((path) => [path, readFileSync(join(root, path), "utf8")]));
}

const shipped = sourcesUnder("src", "viewer");
const core = new Map([...shipped].filter(([path]) => /^src\/(?!cli\/)/.test(path)));

describe("the source tree", () => {
  test("has files", () => {
    expect(core.size).toBeGreaterThan(10);
    expect(shipped.size).toBeGreaterThan(core.size);
  });
  test("imports only go down", () => expect(floorFaults(shipped)).toEqual([]));
  test("computes the same bytes in every engine, at any time, in any place", () =>
    expect(sameBytesFaults(core)).toEqual([]));
  test("has no file that is too long", () => {
    const all = sourcesUnder("src", "viewer", "tests", "scripts", "bench");
    expect(lengthFaults(all)).toEqual([]);
  });
  test("says at the top of each file what it is", () => expect(headerFaults(shipped)).toEqual([]));
});

const one = (path: string, text: string): Sources => new Map([[path, text]]);

describe("the rule of the floors", () => {
  const faultsOf = (path: string, text: string): readonly string[] => floorFaults(one(path, text));

  test("finds nothing wrong with imports of lower floors, of the own folder and of packages", () => {
    const text = `import type { Mm } from "../geometry/quantity.ts";
      import { other } from "./other.ts";
      import { parse } from "yaml";
      export { other };`;
    expect(faultsOf("src/layout/stack.ts", text)).toEqual([]);
    expect(faultsOf("viewer/main.tsx", `import { compile } from "../src/project.ts";`)).toEqual([]);
    expect(faultsOf("src/cli/commands/make.ts", `import "../../project.ts";`)).toEqual([]);
  });

  test.each([
    ["a value from above", `import { layoutPanel } from "../layout/layout-panel.ts";`],
    ["a type from above", `import type { PanelLayout } from "../layout/panel-layout.ts";`],
    ["an inline type from above", `type A = import("../layout/panel-layout.ts").PanelLayout;`],
    ["a re-export from above", `export { layoutPanel } from "../layout/layout-panel.ts";`],
    ["a star re-export from above", `export * from "../layout/layout-panel.ts";`],
    ["a bare import from above", `import "../layout/layout-panel.ts";`],
    ["a lazy import from above", `const load = () => import("../layout/layout-panel.ts");`],
    ["a deep folder from above", `import { a } from "../checks/layout/a.ts";`],
    ["the door above all floors", `import { compile } from "../project.ts";`],
    ["the page", `import { view } from "../../viewer/view.ts";`],
    ["the tests", `import { view } from "../../tests/support/view.ts";`],
    ["a folder without a floor", `import { a } from "../helpers/a.ts";`],
    ["a computed name", `const load = (name: string) => import(name);`],
  ])("objects to %s", (_what, text) => {
    expect(faultsOf("src/catalogue/part.ts", text)).toHaveLength(1);
  });

  test("objects to siblings in both directions", () => {
    expect(faultsOf("src/export/svg.ts", `import "../inspection/row.ts";`)).toHaveLength(1);
    expect(faultsOf("src/inspection/row.ts", `import "../export/svg.ts";`)).toHaveLength(1);
    expect(faultsOf("src/drawings/front.ts", `import "../arrange/rows.ts";`)).toHaveLength(1);
    expect(faultsOf("src/lettering/face.ts", `import "../standards/rack.ts";`)).toHaveLength(1);
    expect(faultsOf("src/geometry/point.ts", `import "../diagnostics/finding.ts";`)).toHaveLength(
      1,
    );
  });

  test("objects to files and folders that it does not know", () => {
    expect(faultsOf("src/helpers/text.ts", "export const a = 1;")).toHaveLength(1);
    expect(faultsOf("src/index.ts", "export const a = 1;")).toHaveLength(1);
    expect(faultsOf("src/geometry.ts", "export const a = 1;")).toHaveLength(1);
  });

  test("objects where there is nothing to look at", () =>
    expect(floorFaults(new Map())).toHaveLength(1));

  test("is not misled by comments and strings", () => {
    const text = `// import "../layout/a.ts";\nexport const words = 'import "../layout/a.ts"';`;
    expect(faultsOf("src/catalogue/part.ts", text)).toEqual([]);
  });
});

describe("the rule of equal bytes", () => {
  test.each([
    ["a sine", "export const a = Math.sin(1);"],
    ["a power", "export const a = (x: number) => x ** 2;"],
    ["a root of two", "export const a = 2 ** 0.5;"],
    ["an assigned power", "export function a(x: number) { let y = x; y **= 2; return y; }"],
    ["an alias", "const { cos } = Math; export { cos };"],
    ["a copy", "const m = Math; export { m };"],
    ["a computed member", `export const a = Math["sin"](1);`],
    ["chance", "export const a = Math.random();"],
    ["the clock", "export const a = Date.now();"],
    ["a date", "export const a = new Date();"],
    ["a locale's order", `export const a = ["b"].sort((x, y) => x.localeCompare(y));`],
    ["a locale's number", "export const a = (1.5).toLocaleString();"],
  ])("objects to %s", (_what, text) => {
    expect(sameBytesFaults(one("src/layout/a.ts", text))).toHaveLength(1);
  });

  test("lets exact arithmetic pass", () => {
    const text = `export const a = Math.sqrt(2) + Math.abs(-1) + Math.PI + 2 ** 32 + 2 ** -10; // not Math.sin`;
    expect(sameBytesFaults(one("src/layout/a.ts", text))).toEqual([]);
  });
});

describe("the rules of files", () => {
  test("object to line 401", () => {
    expect(lengthFaults(one("src/layout/a.ts", "a\n".repeat(400)))).toEqual([]);
    expect(lengthFaults(one("src/layout/a.ts", "a\n".repeat(401)))).toHaveLength(1);
  });

  test("object to a file that begins with code", () => {
    expect(headerFaults(one("src/layout/a.ts", "// What it is.\nexport {};"))).toEqual([]);
    expect(headerFaults(one("src/layout/a.ts", "export {};\n// What it is."))).toHaveLength(1);
  });
});
