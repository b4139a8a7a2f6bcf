// The built library as another project meets it: its types check there, a wrong use of them does not, and it runs.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";

const root = join(import.meta.dirname, "..");
let consumer = "";

const PROGRAM = `import { readFileSync } from "node:fs";
import { compile, openLibrary } from "consolewright";
const data = new URL(import.meta.resolve("consolewright/library.json"));
const library = openLibrary(JSON.parse(readFileSync(data, "utf8")));
const project = compile({ entry: "a.yaml", files: new Map([["a.yaml", "kind: panel"]]) }, library);
`;

beforeAll(() => {
  mkdirSync(join(root, ".cache"), { recursive: true });
  consumer = mkdtempSync(join(root, ".cache/consumer-"));
  mkdirSync(join(consumer, "node_modules"));
  symlinkSync(root, join(consumer, "node_modules/consolewright"));
  writeFileSync(join(consumer, "package.json"), `{ "type": "module" }`);
});

afterAll(() => rmSync(consumer, { recursive: true, force: true }));

function typeErrors(name: string, text: string): string {
  const compilerOptions = {
    strict: true,
    module: "nodenext",
    target: "es2023",
    noEmit: true,
    types: ["node"],
    typeRoots: [join(root, "node_modules/@types")],
  };
  writeFileSync(join(consumer, name), text);
  const settings = JSON.stringify({ compilerOptions, files: [name] });
  writeFileSync(join(consumer, "tsconfig.json"), settings);
  const tsc = join(root, "node_modules/typescript/bin/tsc");
  return spawnSync(process.execPath, [tsc, "-p", "."], { cwd: consumer }).stdout.toString();
}

test("its types check in another project", () => {
  const text = `${PROGRAM}export const width: number | undefined = project.panels[0]?.layout?.nominal.maxX;\n`;
  expect(typeErrors("right.ts", text)).toBe("");
});

test("a wrong use of it is a type error there", () => {
  const text = `${PROGRAM}export const width: string = project.panels.length;\n`;
  expect(typeErrors("wrong.ts", text)).toContain("TS2322");
});

test("it runs in another project", () => {
  writeFileSync(join(consumer, "run.js"), `${PROGRAM}console.log(project.kind);\n`);
  const said = execFileSync(process.execPath, ["run.js"], { cwd: consumer, encoding: "utf8" });
  expect(said).toBe("stopped\n");
});
