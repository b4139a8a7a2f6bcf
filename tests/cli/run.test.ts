import { expect, test } from "vitest";
import { COMMANDS } from "../../src/cli/command-list.ts";
import { wantsColour } from "../../src/cli/shell.ts";
import { runIn } from "./run-in.ts";

const here = import.meta.dirname;

test.each([[], ["--help"], ["-h"], ["help"]])("%j lists the commands", async (...args) => {
  const { code, stdout, stderr } = await runIn(here, args.flat());
  expect(code).toBe(0);
  for (const { summary } of COMMANDS) expect(stdout).toContain(summary);
  expect(stderr).toBe("");
});

test.each(COMMANDS.map(({ name }) => name))(
  "%s has help of its own, by both ways",
  async (name) => {
    const asked = await runIn(here, [name, "--help"]);
    expect(asked.code).toBe(0);
    expect(asked.stdout).toContain(`Use: consolewright ${name}`);
    expect(asked.stdout).toContain("--json");
    expect(await runIn(here, ["help", name])).toEqual(asked);
  },
);

test("the version is printed", async () => {
  expect(await runIn(here, ["--version"])).toEqual({
    code: 0,
    stdout: "0.0.0-test\n",
    stderr: "",
  });
});

test.each([
  [["mke"], "make"],
  [["why", "--jsn"], "--json"],
  [["why", "-json"], "--json"],
  [["why", "--json=yes"], "takes no value"],
  [["why", "a", "b"], "one too many"],
  [["ruler", "100"], "missing"],
  [["ruler", "100", "96", "--reading"], "needs a value"],
  [["ruler", "100", "96", "--reading", "1", "--reading=2"], "twice"],
  [["ruler", "100", "wide"], "not a length"],
  [["ruler", "100", "-5"], "not a length"],
  [["ruler", "100", "96", "100"], "second pair"],
  [["why", "design/no-such-code"], "Nearest"],
])("%j is wrong use and says what to do", async (args, hint) => {
  const { code, stdout, stderr } = await runIn(here, args);
  expect(code).toBe(2);
  expect(stdout).toBe("");
  expect(stderr).toContain(hint);
});

test("a bug says that it is one, without a stack unless asked for", async () => {
  const library = (): Promise<never> => Promise.reject(new Error("the cat sat on it"));
  const quiet = await runIn(here, ["list"], { library });
  expect(quiet.code).toBe(70);
  expect(quiet.stderr).toContain("the cat sat on it");
  expect(quiet.stderr).not.toContain("    at ");
  const traced = await runIn(here, ["list"], { library, trace: true });
  expect(traced.stderr).toContain("    at ");
});

test("words after -- are words", async () => {
  const { code, stderr } = await runIn(here, ["why", "--", "--json"]);
  expect(code).toBe(2);
  expect(stderr).toContain('"--json"');
});

test.each([
  [{ isTTY: true }, undefined, true],
  [{ isTTY: true }, "", true],
  [{ isTTY: true }, "1", false],
  [{ isTTY: false }, undefined, false],
  [{}, undefined, false],
])("on %j with NO_COLOR %j colour is %s", (stream, noColour, wanted) => {
  expect(wantsColour(stream, noColour)).toBe(wanted);
});
