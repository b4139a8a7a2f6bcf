// The gate is what it says it is: exact versions, one test command everywhere, a closing line that hides nothing.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test, vi } from "vitest";
import type { TestModule } from "vitest/node";
import { ALONE, TOUCHES_OTHERS } from "./support/alone.ts";
import ClosingLine from "./support/closing-line.ts";

const root = dirname(import.meta.dirname);
const textOf = (path: string): string => readFileSync(join(root, path), "utf8");

test("every dependency is named by one exact version", () => {
  const { dependencies, devDependencies } = JSON.parse(textOf("package.json"));
  const versions = Object.entries<string>({ ...dependencies, ...devDependencies });
  expect(versions.length).toBeGreaterThan(10);
  expect(
    versions.filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[0-9a-z.]+)?$/.test(version)),
  ).toEqual([]);
});

test("continuous integration runs the test command of the README", () => {
  expect(textOf("README.md")).toContain("npm ci && npm test");
  expect(textOf(".ci/run")).toContain("(npm ci && npm test)");
});

test("what would be felt by others in its process runs alone", () => {
  const files = readdirSync(join(root, "tests"), { recursive: true, encoding: "utf8" })
    .map((path) => `tests/${path.replaceAll("\\", "/")}`)
    .filter((path) => path.endsWith(".test.ts") && !path.startsWith("tests/long/"));
  const touching = files.filter((path) => TOUCHES_OTHERS.test(textOf(path)));
  expect(touching.length).toBeGreaterThan(5);
  const isAlone = (path: string): boolean => ALONE.some((each) => path.startsWith(each));
  expect(touching.filter((path) => !isAlone(path))).toEqual([]);
  // And each that is said to run alone is there.
  expect(ALONE.filter((each) => !files.some((path) => path.startsWith(each)))).toEqual([]);
});

type State = "passed" | "failed" | "skipped" | "pending";

const moduleOf = (states: readonly State[], errors: number): TestModule =>
  ({
    errors: () => Array(errors).fill({ message: "could not be loaded" }),
    children: { allTests: () => states.map((state) => ({ result: () => ({ state }) })) },
  }) as unknown as TestModule;

function closingLine(modules: readonly TestModule[], unhandled: readonly unknown[]): unknown {
  const said = vi.spyOn(console, "log").mockImplementation(() => undefined);
  new ClosingLine().onTestRunEnd(modules, unhandled);
  const line = said.mock.calls[0]?.[0];
  said.mockRestore();
  return line;
}

test("the closing line counts each test once", () => {
  const modules = [moduleOf(["passed", "passed", "failed"], 0), moduleOf(["skipped", "passed"], 0)];
  expect(closingLine(modules, [])).toBe("3 passed, 1 failed, 1 skipped");
});

test("the closing line counts as failed what never became a test", () => {
  expect(closingLine([moduleOf([], 1)], [])).toBe("0 passed, 1 failed, 0 skipped");
  expect(closingLine([moduleOf(["passed"], 0)], ["loose end"])).toBe(
    "1 passed, 1 failed, 0 skipped",
  );
});

test("the closing line does not count an unfinished test as passed", () => {
  expect(closingLine([moduleOf(["pending"], 0)], [])).toBe("0 passed, 0 failed, 1 skipped");
});
