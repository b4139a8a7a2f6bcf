import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { codeTable } from "../../src/cli/code-table.ts";
import { runIn } from "./run-in.ts";

const here = import.meta.dirname;

test("a code is explained with its example, by its whole name or its last word", async () => {
  const { code, stdout } = await runIn(here, ["why", "layout/unknown-part"]);
  expect(code).toBe(0);
  expect(stdout).toContain("layout/unknown-part (fault)");
  expect(stdout).toContain("part: no-such-part");
  expect((await runIn(here, ["why", "unknown-part"])).stdout).toBe(stdout);
});

test("without a code all are listed, each once and in order", async () => {
  const { stdout } = await runIn(here, ["why", "--json"]);
  const codes = stdout
    .trimEnd()
    .split("\n")
    .map((line): string => JSON.parse(line).code);
  expect(codes).toEqual([...new Set(codes)].sort());
  expect(codes.length).toBeGreaterThan(15);
});

test("every code is floor/name and has something to say", () => {
  for (const { code, title, why, example } of codeTable()) {
    expect(code).toMatch(/^[a-z]+\/[a-z0-9-]+$/);
    for (const text of [title, why, example]) expect(text.trim()).not.toBe("");
  }
});

test("every code that the sources spell out is explained", () => {
  const source = join(here, "..", "..", "src");
  const spelled = readdirSync(source, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .flatMap((path) => {
      const text = readFileSync(join(source, path), "utf8");
      return [...text.matchAll(/\bcode: "([a-z]+\/[a-z0-9-]+)"/g)].map(([, code = ""]) => code);
    });
  const known = new Set(codeTable().map(({ code }) => code));
  expect(spelled.length).toBeGreaterThan(60);
  expect(spelled.filter((code) => !known.has(code))).toEqual([]);
});

test("what neither holds is not said twice not to be held", () => {
  for (const { title } of codeTable()) expect(title).not.toMatch(/neither .* not /);
});
