import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Outcome, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";

const LIST = `part,quantity,legend,group
toggle-12,3,PUMP,pumps
pot-16,1,SPEED,drive
`;

const arrange = (cwd: string, ...args: readonly string[]): Promise<Outcome> =>
  runIn(cwd, ["arrange", ...args], { library: testLibrary });

const withList = (text = LIST): string => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "list.csv"), text);
  return folder;
};

test("a list becomes a panel file that checks without a fault", async () => {
  const folder = withList();
  const printed = await arrange(folder, "list.csv", "--name", "Fire pumps");
  expect(printed.code).toBe(0);
  expect(printed.stdout).toContain("name: fire-pumps");
  const written = await arrange(
    folder,
    "list.csv",
    "--name",
    "Fire pumps",
    "--out",
    "new/panel.yaml",
  );
  expect(written).toMatchObject({ code: 0, stdout: "new/panel.yaml\n" });
  expect(readFileSync(join(folder, "new", "panel.yaml"), "utf8")).toBe(printed.stdout);
  expect((await runIn(folder, ["check", "new"], { library: testLibrary })).code).toBe(0);
});

test("a workshop is named by its path from the panel", async () => {
  const folder = withList();
  writeFileSync(join(folder, "workshop.yaml"), "consolewright: 1\nkind: workshop\nname: shed\n");
  const { stdout } = await arrange(
    folder,
    "list.csv",
    "--workshop",
    "workshop.yaml",
    "--out",
    "new/panel.yaml",
  );
  expect(stdout).toBe("new/panel.yaml\n");
  expect(readFileSync(join(folder, "new", "panel.yaml"), "utf8")).toMatch(
    /workshop: "?\.\.\/workshop\.yaml"?/,
  );
});

test("a word that is no part's name is told the nearest of the catalogue, and of parts of one's own", async () => {
  const folder = withList("part\npush button 16mm\nbilge alarm 3\n");
  const own = readFileSync("examples/tug-trainer/own-parts.yaml", "utf8");
  writeFileSync(join(folder, "own.yaml"), own.replace("gauge-52-ring:", "bilge-alarm-30:"));
  const { stderr } = await arrange(folder, "list.csv", "--catalogue", "own.yaml");
  expect(stderr).toMatch(/`push button 16mm` is not the name .*; the nearest are push-button-16/);
  expect(stderr).toMatch(/`bilge alarm 3` is not the name .*; the nearest are bilge-alarm-30/);
});

test("what can't be arranged is told with its line, for programs as well", async () => {
  const folder = withList("part,quantity\ntoggle-12,1\nno-such-part,2\n");
  const { code, stdout } = await arrange(folder, "list.csv", "--json");
  expect(code).toBe(1);
  expect(JSON.parse(stdout).findings).toContainEqual(
    expect.objectContaining({ code: "layout/unknown-part", file: "list.csv", line: 3 }),
  );
});

test.each([
  [["nowhere.csv"], "can't be read"],
  [["."], "is not a file"],
  [["list.csv", "--width", "wide"], "not a length"],
  [["list.csv", "--workshop", "list.csv"], "not a workshop"],
  [["list.csv", "--out", "list.csv"], "already there"],
])("%j is wrong use", async (args, hint) => {
  const folder = withList();
  const { code, stderr } = await arrange(folder, ...args);
  expect(code).toBe(2);
  expect(stderr).toContain(hint);
  expect(readFileSync(join(folder, "list.csv"), "utf8")).toBe(LIST);
});

// IEC 60297-3-101: a horizontal pitch is 5.08 mm.
test("a width may be counted in the mount's own pitch", async () => {
  const folder = withList("part,quantity,legend,group\nled-5-bezel,2,ON; OFF,\n");
  const { code, stdout } = await arrange(
    folder,
    "list.csv",
    "--mount",
    "subrack-3u",
    "--width",
    "42HP",
  );
  expect(code).toBe(0);
  expect(stdout).toContain("width: 42 HP");
});

test.each([
  [["--mount", "subrack-3u", "--width", "3 U"], "counts its width in HP"],
  [["--width", "11 modules"], "counts no widths"],
])("%j is wrong use of a count", async (args, hint) => {
  const { code, stderr } = await arrange(withList(), "list.csv", ...args);
  expect(code).toBe(2);
  expect(stderr).toContain(hint);
});

test("parts of one's own are arranged, and the panel names their file", async () => {
  const folder = withList("part,quantity,legend,group\npot-16,1,SPEED,\n");
  writeFileSync(
    join(folder, "bench.yaml"),
    "consolewright: 1\nkind: parts\nname: bench\nmeasured:\n  pot-16: { hold.length: 7.5 mm, dated: 2026-01-31 }\n",
  );
  const { code, stdout } = await arrange(folder, "list.csv", "--catalogue", "bench.yaml");
  expect(code).toBe(0);
  expect(stdout).toMatch(/^catalogue: \["?bench\.yaml"?\]$/m);
});

test("what is wrong with the workshop is told", async () => {
  const folder = withList();
  writeFileSync(
    join(folder, "shed.yaml"),
    "consolewright: 1\nkind: workshop\nname: shed\nmachines:\n  cutter: { type: scissors }\n",
  );
  const { stderr } = await arrange(folder, "list.csv", "--workshop", "shed.yaml");
  expect(stderr).toContain("shed.yaml:5");
});
