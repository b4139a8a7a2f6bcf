import { expect, test } from "vitest";
import { runIn } from "./run-in.ts";

test("keys lists what a component takes, with what holds where nothing is said", async () => {
  const { code, stdout } = await runIn(".", ["keys", "panel.components"]);
  expect(code).toBe(0);
  const lines = stdout.split("\n");
  expect(lines.some((line) => line.startsWith("panel.components.*.legend.side  "))).toBe(true);
  expect(lines.find((line) => line.startsWith("panel.components.*.fitted  "))).toContain(
    "now unless told",
  );
});

test("every key is listed once", async () => {
  const { stdout } = await runIn(".", ["keys"]);
  const paths = stdout
    .trimEnd()
    .split("\n")
    .map((line) => line.split("  ")[0]);
  expect(new Set(paths).size).toBe(paths.length);
  for (const kind of ["panel", "console", "workshop", "parts"])
    expect(paths.some((path) => path?.startsWith(`${kind}.`))).toBe(true);
});

test("for editors the schema itself comes out", async () => {
  const { stdout } = await runIn(".", ["keys", "--json"]);
  expect(JSON.parse(stdout)).toMatchObject({
    $schema: "https://json-schema.org/draft/2020-12/schema",
  });
});

test("a word that no key goes by is said so", async () => {
  const { code, stdout, stderr } = await runIn(".", ["keys", "nosuchkey"]);
  expect({ code, stdout }).toEqual({ code: 0, stdout: "" });
  expect(stderr).toContain('No key goes by "nosuchkey"');
});
