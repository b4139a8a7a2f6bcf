import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { manifestFile, manifestOf } from "../../src/pack/manifest.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { packZip } from "../../src/pack/pack-zip.ts";
import { utf8Bytes } from "../../src/pack/utf8.ts";
import { type Outcome, type RunSettings, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";
import { everyFile, layConsole, panelText, WORKSHOP } from "./two-panels.ts";

const makeAll = (
  cwd: string,
  args: readonly string[],
  settings: RunSettings = {},
): Promise<Outcome> => runIn(cwd, ["make", ...args], { library: testLibrary, ...settings });

/** Without drawings and papers, which take most of the time. */
const make: typeof makeAll = (cwd, args, settings) =>
  makeAll(cwd, args.includes("--only") ? args : [...args, "--only", "fascia"], settings);

const SOUND = panelText("other");
const FAULTY = panelText("other", "no-such-part");

beforeAll(testLibrary);

test("a panel's pack goes into out/NAME, and --json says each file with its hash", async () => {
  const folder = layConsole(SOUND);
  const { code, stdout, stderr } = await make(folder, ["panels/good.yaml", "--json"]);
  expect([code, stderr]).toEqual([0, ""]);
  const record = JSON.parse(stdout);
  expect(Object.keys(record).slice(0, 3)).toEqual(["files", "findings", "inspection"]);
  const out = join(folder, "out", "good");
  for (const { path, bytes, sha256 } of record.files) {
    const found = readFileSync(join(out, path));
    expect(found.length).toBe(bytes);
    expect(createHash("sha256").update(found).digest("hex")).toBe(sha256);
  }
  expect(Object.keys(everyFile(out)).sort()).toEqual(
    record.files.map(({ path }: { path: string }) => path).sort(),
  );
  expect(record.inspection.length).toBeGreaterThan(50);
  expect(record.inspection.every(({ passed }: { passed: boolean }) => passed)).toBe(true);
});

test("the kerf stands in the names; every kind of paper is there", async () => {
  const folder = layConsole(SOUND);
  await makeAll(folder, ["panels/good.yaml", "--out", "p"]);
  const names = Object.keys(everyFile(join(folder, "p")));
  for (const name of [
    "README.md",
    "manifest.json",
    "findings.md",
    "inspection.md",
    "inspection.csv",
    "measuring-list.md",
    "parts-list.md",
    "parts-list.csv",
    "cut/colour-key.md",
    "cut/good-face-1-engrave-and-cut.kerf-0.20.svg",
    "cut/good-face-1-engrave-and-cut.kerf-0.20.dxf",
    "cut/good-face-1-engrave-and-cut.kerf-0.20.r12.dxf",
    "template/good-face-front.pdf",
    "template/good-face-back.pdf",
    "drawings/good-front.svg",
    "drawings/good-section.pdf",
  ])
    expect(names).toContain(name);
});

test("the same design gives the same bytes, whatever was there before", async () => {
  const folder = layConsole(SOUND);
  await make(folder, ["panels/good.yaml", "--out", "a"]);
  const first = everyFile(join(folder, "a"));
  await make(folder, ["panels/good.yaml", "--out", "a"]);
  expect(everyFile(join(folder, "a"))).toEqual(first);
  const elsewhere = layConsole(SOUND);
  await make(join(elsewhere, "panels"), ["good.yaml", "--out", "../b"]);
  expect(everyFile(join(elsewhere, "b"))).toEqual(first);
});

test("of a console the sound panel is written, the faulty one keeps its old pack, marked stale", async () => {
  const folder = layConsole(SOUND);
  expect((await makeAll(folder, ["."])).code).toBe(0);
  const before = everyFile(join(folder, "out", "desk", "other"));
  writeFileSync(join(folder, "panels", "other.yaml"), FAULTY);
  writeFileSync(join(folder, "panels", "good.yaml"), panelText("good", "toggle-12"));
  const { code, stdout } = await make(folder, [".", "--json"]);
  expect(code).toBe(1);
  const record = JSON.parse(stdout);
  expect(record.files.every(({ path }: { path: string }) => path.startsWith("good/"))).toBe(true);
  expect(record.files.length).toBeGreaterThan(5);
  expect(record.findings).toContainEqual(
    expect.objectContaining({ code: "layout/unknown-part", panel: "other" }),
  );
  expect(record.panels).toMatchObject([
    { name: "good", written: true, changes: [{ part: "good-face", change: "changed" }] },
    { name: "other", written: false, stale: true },
    // What is the console's own shows all its panels.
    { name: "desk", folder: "console/", written: false, stale: true },
  ]);
  const { "STALE.txt": note = "", ...kept } = everyFile(join(folder, "out", "desk", "other"));
  expect(kept).toEqual(before);
  expect(Buffer.from(note, "base64").toString()).toContain("layout/unknown-part");
});

test("a panel whose file has gone keeps its old pack, marked stale", async () => {
  const folder = layConsole(SOUND);
  expect((await makeAll(folder, ["."])).code).toBe(0);
  const before = everyFile(join(folder, "out", "desk", "other"));
  rmSync(join(folder, "panels", "other.yaml"));
  const { code, stdout } = await make(folder, [".", "--json"]);
  expect(code).toBe(1);
  expect(JSON.parse(stdout).panels).toMatchObject([
    { name: "good", folder: "good/", written: true },
    { name: "other", folder: "other/", written: false, stale: true },
    { name: "desk", written: false, stale: true },
  ]);
  const { "STALE.txt": note = "", ...kept } = everyFile(join(folder, "out", "desk", "other"));
  expect(kept).toEqual(before);
  expect(Buffer.from(note, "base64").toString()).toContain("file-missing");
  // Once the file is back, the pack is whole again.
  writeFileSync(join(folder, "panels", "other.yaml"), SOUND);
  expect((await makeAll(folder, ["."])).code).toBe(0);
  expect(everyFile(join(folder, "out", "desk", "other"))).toEqual(before);
});

test("what changed since the last pack is said in words", async () => {
  const folder = layConsole(SOUND);
  await make(folder, ["panels/good.yaml"]);
  expect((await make(folder, ["panels/good.yaml"])).stdout).toContain("good-face as cut");
  writeFileSync(join(folder, "panels", "good.yaml"), panelText("good", "toggle-12"));
  expect((await make(folder, ["panels/good.yaml"])).stdout).toContain("good-face changed");
});

test("--strict writes nothing where any panel has a fault", async () => {
  const folder = layConsole(FAULTY);
  expect((await make(folder, [".", "--strict"])).code).toBe(1);
  expect(existsSync(join(folder, "out"))).toBe(false);
  expect((await make(folder, ["."])).code).toBe(1);
  expect(readdirSync(join(folder, "out", "desk"))).toEqual(["good"]);
});

test("--only fascia writes no papers, --card adds its own files", async () => {
  const folder = layConsole(SOUND);
  await make(folder, ["panels/good.yaml", "--only", "fascia", "--card", "--out", "p"]);
  expect(Object.keys(everyFile(join(folder, "p"))).sort()).toEqual([
    "card/good-face-1-cut.kerf-0.15.dxf",
    "card/good-face-1-cut.kerf-0.15.r12.dxf",
    "card/good-face-1-cut.kerf-0.15.svg",
    "cut/colour-key.md",
    "cut/good-face-1-engrave-and-cut.kerf-0.20.dxf",
    "cut/good-face-1-engrave-and-cut.kerf-0.20.r12.dxf",
    "cut/good-face-1-engrave-and-cut.kerf-0.20.svg",
    "inspection.csv",
    "inspection.md",
    "manifest.json",
  ]);
});

test.each([
  [["panels/good.yaml", "--only", "lamps"], "fascia"],
  [["panels/good.yaml", "--out", "console.yaml"], "is a file"],
  [["panels/good.yaml", "--out", "link"], "is a link"],
  [["panels/good.yaml", "--out", "."], "folder of its own"],
  [["panels/good.yaml", "--out", ".."], "folder of its own"],
  [["nowhere"], "no file or folder"],
])("%j is wrong use", async (args, hint) => {
  const folder = layConsole(SOUND);
  symlinkSync(temporaryFolder(), join(folder, "link"));
  const before = everyFile(folder);
  const { code, stderr } = await make(folder, args);
  expect(code).toBe(2);
  expect(stderr).toContain(hint);
  expect(everyFile(folder)).toEqual(before);
});

test("a full disk is a finding, the old pack stays whole and the exit code is 1", async () => {
  const folder = layConsole(SOUND);
  await make(folder, ["panels/good.yaml"]);
  const before = everyFile(join(folder, "out"));
  writeFileSync(join(folder, "panels", "good.yaml"), panelText("good", "toggle-12"));
  const disk: Disk = {
    ...realDisk,
    write: () => {
      throw Object.assign(new Error("no space"), { code: "ENOSPC" });
    },
  };
  const { code, stdout, stderr } = await make(folder, ["panels/good.yaml"], { disk });
  expect(code).toBe(1);
  expect(stderr).toContain("the disk is full");
  expect(stderr).not.toContain("    at ");
  expect(stdout).toContain("not written");
  expect(everyFile(join(folder, "out"))).toEqual(before);
});

test("a link in a console's output that leads out is refused for that panel alone", async () => {
  const folder = layConsole(SOUND);
  const elsewhere = temporaryFolder();
  mkdirSync(join(folder, "out", "desk"), { recursive: true });
  symlinkSync(elsewhere, join(folder, "out", "desk", "other"));
  const { code, stdout } = await make(folder, [".", "--json"]);
  expect(code).toBe(1);
  expect(JSON.parse(stdout).findings).toContainEqual(
    expect.objectContaining({ code: "cli/cannot-write", panel: "other" }),
  );
  expect(readdirSync(elsewhere)).toEqual([]);
  expect(existsSync(join(folder, "out", "desk", "good", "manifest.json"))).toBe(true);
});

const writtenPanels = (folder: string): readonly string[] =>
  existsSync(join(folder, "out")) ? readdirSync(join(folder, "out", "desk")) : [];

test("a panel that is missing, unreadable or no panel leaves its neighbours alone", async () => {
  const gone = layConsole(SOUND);
  rmSync(join(gone, "panels", "other.yaml"));
  const garbled = layConsole("kind: [");
  const binary = layConsole(SOUND);
  writeFileSync(join(binary, "panels", "other.yaml"), Buffer.from([0xff, 0xfe, 0x00]));
  const workshop = layConsole(WORKSHOP);
  for (const folder of [gone, garbled, binary, workshop]) {
    expect((await make(folder, ["console.yaml", "--only", "fascia"])).code).toBe(1);
    expect(writtenPanels(folder)).toEqual(["good"]);
  }
});

test("the line that sums up a design that could not be read begins with its file", async () => {
  const folder = layConsole(SOUND);
  writeFileSync(join(folder, "console.yaml"), Buffer.from([0xff, 0xfe, 0x00]));
  const { code, stdout } = await make(folder, ["console.yaml"]);
  expect(code).toBe(1);
  expect(stdout.trimEnd().split("\n").at(-1)).toMatch(/^console\.yaml: /);
});

test("a workshop that is missing or wrong speaks against every panel", async () => {
  const gone = layConsole(SOUND);
  rmSync(join(gone, "workshop.yaml"));
  const wrong = layConsole(SOUND);
  writeFileSync(
    join(wrong, "workshop.yaml"),
    WORKSHOP.replace("measured: 2.9 mm", "measured: wide"),
  );
  for (const folder of [gone, wrong]) {
    expect((await make(folder, ["console.yaml", "--only", "fascia"])).code).toBe(1);
    expect(writtenPanels(folder)).toEqual([]);
  }
});

test("what stands round the panels speaks against the console's own pack alone", async () => {
  const round = [
    "frame: { type: side-console, sheet: no-such-sheet }",
    "frame: { type: round-table, sheet: opal }",
    "obstacles: [{ name: stool, box: [0, 40, 90], at: [300, -200, 0] }]",
    "operator: { seat-height: high }",
  ];
  for (const wrong of round) {
    const folder = layConsole(SOUND);
    const path = join(folder, "console.yaml");
    writeFileSync(path, `${readFileSync(path, "utf8")}\n${wrong}\n`);
    expect((await make(folder, ["console.yaml", "--only", "fascia"])).code).toBe(1);
    expect(writtenPanels(folder)).toEqual(["good", "other"]);
  }
});

test("panels of one name are not written: each would lie over the others", async () => {
  const folder = layConsole(SOUND);
  const path = join(folder, "console.yaml");
  writeFileSync(path, readFileSync(path, "utf8").replace("as: other", "as: good"));
  const { code, stdout } = await make(folder, ["console.yaml", "--only", "fascia"]);
  expect([code, writtenPanels(folder)]).toEqual([1, []]);
  expect(stdout).toContain("good: not written");
});

test("an old pack that can't be marked is told of, and what stands in the way is left alone", async () => {
  const folder = layConsole(SOUND);
  await make(folder, ["console.yaml", "--only", "fascia"]);
  const note = join(folder, "out", "desk", "other", "STALE.txt");
  writeFileSync(note, "mine");
  const panel = join(folder, "panels", "other.yaml");
  writeFileSync(panel, SOUND.replace("toggle-6", "toggel-6"));
  const { code, stderr } = await make(folder, ["console.yaml", "--only", "fascia"]);
  expect(code).toBe(1);
  expect(stderr).toContain("is older than its design and could not be marked");
  expect(readFileSync(note, "utf8")).toBe("mine");
});

describe("a pack of a panel that its console no longer has", () => {
  const renamed = async (): Promise<{ readonly folder: string; readonly old: string }> => {
    const folder = layConsole(SOUND);
    await make(folder, ["console.yaml"]);
    const console = join(folder, "console.yaml");
    writeFileSync(console, readFileSync(console, "utf8").replace("as: other", "as: pumps"));
    return { folder, old: join(folder, "out", "desk", "other") };
  };

  test("is told of with its folder, and left as it is", async () => {
    const { folder, old } = await renamed();
    const before = everyFile(old);
    const { code, stdout } = await make(folder, ["console.yaml"]);
    expect(code).toBe(0);
    expect(stdout).toContain(
      "other: no panel of this console; its old pack in out/desk/other is left as it is",
    );
    expect(everyFile(old)).toEqual(before);
    const { findings } = JSON.parse((await make(folder, ["console.yaml", "--json"])).stdout);
    const told = findings.filter(({ code: of }: { code: string }) => of === "cli/pack-of-none");
    expect(told).toHaveLength(1);
    expect(told[0].message).toContain(`${old} holds a pack of "other"`);
  });

  test("is not what somebody else put there, nor what lies behind a link, nor that of a panel with a fault", async () => {
    const { folder, old } = await renamed();
    rmSync(join(old, "manifest.json"));
    const elsewhere = temporaryFolder();
    await make(folder, ["panels/good.yaml", "--out", join(elsewhere, "good")]);
    symlinkSync(join(elsewhere, "good"), join(folder, "out", "desk", "linked"));
    await make(folder, ["console.yaml"]);
    writeFileSync(join(folder, "panels", "other.yaml"), FAULTY);
    const { stdout } = await make(folder, ["console.yaml"]);
    expect(stdout).not.toContain("no panel of this console");
    expect(stdout).toContain("pumps: not written; out/desk/pumps/ is kept and marked stale");
  });
});

test("--only fascia writes nothing of a console without a frame, and leaves its whole pack alone", async () => {
  const folder = layConsole(SOUND);
  const { code } = await make(folder, ["console.yaml"]);
  expect([code, writtenPanels(folder)]).toEqual([0, ["good", "other"]]);
  await makeAll(folder, ["console.yaml"]);
  const own = join(folder, "out", "desk", "console");
  const before = everyFile(own);
  expect(Object.keys(before)).toContain("README.md");
  const { stdout } = await make(folder, ["console.yaml"]);
  expect(everyFile(own)).toEqual(before);
  expect(stdout).not.toContain("no panel of this console");
});

test("--only fascia marks a console's old pack stale where it has the cut files of a frame that has gone", async () => {
  const folder = layConsole(SOUND);
  const own = join(folder, "out", "desk", "console");
  for (const { path, bytes } of packWithBoard()) {
    mkdirSync(dirname(join(own, path)), { recursive: true });
    writeFileSync(join(own, path), bytes);
  }
  const before = everyFile(own);
  const { code, stdout } = await make(folder, ["console.yaml"]);
  expect(code).toBe(0);
  expect(stdout).toContain("desk: not written; out/desk/console/ is kept and marked stale");
  const { "STALE.txt": note = "", ...kept } = everyFile(own);
  expect(Buffer.from(note, "base64").toString()).toContain("no frame any more");
  expect(kept).toEqual(before);
});

test("and its old zip alike", async () => {
  const folder = layConsole(SOUND);
  const zip = join(folder, "out", "desk", "console.zip");
  mkdirSync(dirname(zip), { recursive: true });
  writeFileSync(zip, packZip([{ folder: "console/", files: packWithBoard() }]));
  const { code, stdout } = await make(folder, ["console.yaml", "--zip"]);
  expect(code).toBe(0);
  expect(stdout).toContain("desk: not written; out/desk/console.zip is kept and marked stale");
  expect(readFileSync(`${zip}.STALE.txt`, "utf8")).toContain("no frame any more");
});

/** As it was written when the console had a frame. */
const packWithBoard = (): readonly PackFile[] => {
  const board: PackFile = {
    path: "cut/desk-floor.svg",
    kind: "cut-svg",
    part: "floor",
    bytes: utf8Bytes("<svg/>"),
  };
  return [board, manifestFile(manifestOf({ name: "desk", revision: "1" }, [board], []))];
};
