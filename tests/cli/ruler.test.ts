import { expect, test } from "vitest";
import { runIn } from "./run-in.ts";

const here = import.meta.dirname;

// The ratios that a wrong unit leaves: quotients of 72, 90 and 96 units an inch, of an inch of 25.4 mm
// (ISO 31-1) with points (72) and pixels (96, CSS 2.1), and powers of ten. Written out by hand as rounded decimals,
// so that the program's own quotients are checked against them.
test.each([
  ["0.75", "72 units an inch and read at 96"],
  ["1.3333", "96 units an inch and read at 72"],
  ["0.9375", "90 units an inch and read at 96"],
  ["1.0667", "96 units an inch and read at 90"],
  ["0.8", "72 units an inch and read at 90"],
  ["1.25", "90 units an inch and read at 72"],
  ["2.8346", "points and read as millimetres"],
  ["0.3528", "millimetres and read as points"],
  ["0.2646", "millimetres and read as pixels"],
  ["3.7795", "pixels and read as millimetres"],
  ["25.4", "millimetres and read as inches"],
  ["0.03937", "inches and read as millimetres"],
  ["10", "read as centimetres"],
  ["1000", "read as metres"],
  ["0.96", "fit to page"],
])("100 mm that measure %s times as much are named", async (ratio, cause) => {
  const measured = String(Math.round(Number(ratio) * 1000) / 10);
  const { code, stdout } = await runIn(here, ["ruler", "100", measured, "--reading", "0.1"]);
  expect(code).toBe(0);
  expect(stdout.split("\n").find((line) => line.includes("most likely"))).toContain(cause);
});

test("the right size is right, within the reading", async () => {
  expect((await runIn(here, ["ruler", "100", "100.4"])).stdout).toContain("right");
  expect((await runIn(here, ["ruler", "4 in", "101.6"])).stdout).toContain("right");
  expect((await runIn(here, ["ruler", "100", "100.4", "--reading", "0.1"])).stdout).not.toContain(
    "right",
  );
});

test("a short length leaves more than one cause, the nearest first", async () => {
  const { stdout } = await runIn(here, ["ruler", "10", "7.6", "--json"]);
  const [axis] = JSON.parse(stdout).axes;
  expect(axis.causes.map(({ ratio }: { ratio: number }) => ratio)).toEqual([0.75, 0.8]);
});

test("no known ratio is said so", async () => {
  expect((await runIn(here, ["ruler", "100", "61"])).stdout).toContain("no mistake of units");
});

test("x and y that differ are told", async () => {
  const { stdout } = await runIn(here, ["ruler", "100", "97", "100", "99.5"]);
  expect(stdout).toContain("x and y differ");
  expect((await runIn(here, ["ruler", "100", "97", "100", "97.5"])).stdout).not.toContain("differ");
});
