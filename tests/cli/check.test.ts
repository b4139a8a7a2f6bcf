import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Outcome, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";

const check = (cwd: string, ...args: readonly string[]): Promise<Outcome> =>
  runIn(cwd, ["check", ...args], { library: testLibrary });

/** A folder with the design that `new` writes. */
const begun = async (mount = "console-rail"): Promise<string> => {
  const folder = temporaryFolder();
  await runIn(folder, ["new", "winch", "--mount", mount], { library: testLibrary });
  return folder;
};

const changed = (folder: string, from: string, to: string): void => {
  const place = join(folder, "winch", "panel.yaml");
  const text = readFileSync(place, "utf8");
  expect(text).toContain(from);
  writeFileSync(place, text.replace(from, to));
};

test.each(["console-rail", "rack-19", "subrack-3u", "corner-screws", "box-lid"])(
  "what `new` writes for %s has no fault",
  async (mount) => {
    const { code, stdout, stderr } = await check(await begun(mount), "winch");
    expect(stderr).not.toContain("fault:");
    expect(code).toBe(0);
    expect(stdout).toMatch(/^winch: no faults, /);
  },
);

test("--json prints one finding a line with its ten keys in order", async () => {
  const folder = await begun();
  changed(folder, "part: toggle-6", "part: toggel-6");
  const { code, stdout, stderr } = await check(folder, "winch/panel.yaml", "--json");
  expect([code, stderr]).toEqual([1, ""]);
  const lines = stdout.trimEnd().split("\n");
  for (const line of lines)
    expect(Object.keys(JSON.parse(line)).slice(0, 10)).toEqual([
      "code",
      "severity",
      "file",
      "line",
      "column",
      "message",
      "measured",
      "limit",
      "source",
      "remedies",
    ]);
  const text = readFileSync(join(folder, "winch/panel.yaml"), "utf8").split("\n");
  const line = text.findIndex((row) => row.includes("toggel-6")) + 1;
  expect(lines.map((row) => JSON.parse(row))).toContainEqual(
    expect.objectContaining({ code: "layout/unknown-part", file: "winch/panel.yaml", line }),
  );
});

test("findings go to the error stream, paths as seen from here, without colour unless it is a terminal", async () => {
  const folder = await begun();
  changed(folder, "part: toggle-6", "part: toggel-6");
  const plain = await check(join(folder, "winch"), ".");
  expect(plain.stdout).toMatch(/^winch: 1 fault, /);
  expect(plain.stderr).toContain("--> panel.yaml:");
  expect((await check(folder, "winch")).stderr).toContain("--> winch/panel.yaml:");
  expect(plain.stderr).not.toContain("\u001b");
  const painted = await runIn(folder, ["check", "winch"], { library: testLibrary, colour: true });
  expect(painted.stderr).toContain("\u001b[1;31mfault:\u001b[0m");
  const lines = await check(folder, "winch", "--lines");
  expect(lines.stderr).toMatch(/^winch\/panel\.yaml:\d+:\d+: fault: /m);
});

test("a file that can't be read is a finding and not an end", async () => {
  const folder = await begun();
  writeFileSync(join(folder, "winch", "workshop.yaml"), Buffer.from([0xff, 0xfe, 0x00]));
  const { code, stdout } = await check(folder, "winch/panel.yaml", "--root", "winch", "--json");
  expect(code).toBe(1);
  expect(stdout).toContain("cli/unreadable-file");
});

test("a file that is named otherwise than it lies in its folder is told the nearest there", async () => {
  const folder = await begun();
  const shed = join(folder, "winch", "workshop.yaml");
  writeFileSync(join(folder, "winch", "notes.txt"), "");
  writeFileSync(join(folder, "winch", "wrkshop-old.yaml"), readFileSync(shed));
  changed(folder, "workshop: workshop.yaml", "workshop: wrkshop.yaml");
  const { code, stderr } = await check(folder, "winch/panel.yaml");
  expect(code).toBe(1);
  expect(stderr).toContain(
    "there is no file wrkshop.yaml; the nearest are workshop.yaml and wrkshop-old.yaml",
  );
});

test.each([
  ["shed/workshop.yaml", "workshop.yaml"],
  ["wrkshop.yml", "workshop.yaml"],
  ["shop/tools.yaml", "shops/tools.yaml"],
])("a file that is named %s is told the near one %s, which no text names", async (wanted, near) => {
  const folder = await begun();
  const shed = join(folder, "winch", "workshop.yaml");
  mkdirSync(join(folder, "winch", "shops"));
  writeFileSync(join(folder, "winch", "shops", "tools.yaml"), readFileSync(shed));
  changed(folder, "workshop: workshop.yaml", `workshop: ${wanted}`);
  const { stderr } = await check(folder, "winch/panel.yaml", "--root", "winch");
  expect(stderr).toContain(`there is no file ${wanted}; the nearest is ${near}`);
});

test("a file that is named like none in its folder is told no other", async () => {
  const folder = await begun();
  changed(folder, "workshop: workshop.yaml", "workshop: machines.yaml");
  const { stderr } = await check(folder, "winch/panel.yaml");
  expect(stderr).toMatch(/there is no file machines\.yaml(?!;)/);
});

test("a link that leads out of the root is not followed", async () => {
  const folder = await begun();
  const elsewhere = temporaryFolder();
  writeFileSync(join(elsewhere, "secret.yaml"), "password: hunter2\n");
  symlinkSync(join(elsewhere, "secret.yaml"), join(folder, "winch", "secret.yaml"));
  changed(folder, "workshop: workshop.yaml", "workshop: secret.yaml");
  const { code, stdout } = await check(folder, "winch", "--json");
  expect(code).toBe(1);
  expect(stdout).toContain("cli/outside-root");
  expect(stdout).not.toContain("hunter2");
});

test("--fix writes what mends, leaves comments alone and tells what remains", async () => {
  const folder = await begun();
  // The two components stand on each other, and so do their legends: the one cause hides the other.
  changed(folder, "centres: 25 mm }", "centres: 6 mm }   # too near");
  expect((await check(folder, "winch")).stderr).toContain("[checks/cut-outs-overlap]");
  const { code, stderr } = await check(folder, "winch", "--fix");
  expect(stderr).toMatch(/^fixed: centres: [\d.]+ mm/m);
  expect(stderr).not.toContain("fault: power and ready run");
  expect(code).toBe(stderr.includes("fault:") ? 1 : 0);
  const text = readFileSync(join(folder, "winch", "panel.yaml"), "utf8");
  expect(text).toContain("# too near");
  expect(text).not.toContain("centres: 6 mm");
});

test("a design that --fix can mend ends without a fault, and is not touched again", async () => {
  const folder = await begun();
  changed(folder, "centres: 25 mm }", "centres: 6 mm }");
  changed(folder, "    legend: READY\n", "");
  expect((await check(folder, "winch")).code).toBe(1);
  expect((await check(folder, "winch", "--fix")).code).toBe(0);
  const text = readFileSync(join(folder, "winch", "panel.yaml"), "utf8");
  await check(folder, "winch", "--fix");
  expect(readFileSync(join(folder, "winch", "panel.yaml"), "utf8")).toBe(text);
});
