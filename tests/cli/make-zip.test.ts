// `make --zip` and `--one-zip`: the same files as in folders, whole or not at all, old zips kept and marked where there is a
// fault, and nothing of anybody else's written over.

import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { zipEntries } from "../support/zip-reader.ts";
import { type Outcome, type RunSettings, runIn } from "./run-in.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { testLibrary } from "./test-library.ts";
import { everyFile, layConsole, panelText } from "./two-panels.ts";

beforeAll(testLibrary);

const SOUND = panelText("other");
const FAULTY = panelText("other", "no-such-part");

const make = (cwd: string, args: readonly string[], settings: RunSettings = {}): Promise<Outcome> =>
  runIn(cwd, ["make", ...args, "--only", "fascia"], { library: testLibrary, ...settings });

/** With drawings and papers: a console without a frame has nothing else. */
const makeAll: typeof make = (cwd, args) => runIn(cwd, ["make", ...args], { library: testLibrary });

const unpacked = (zip: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    zipEntries(readFileSync(zip)).map(({ name, bytes }) => [name, bytes.toString("base64")]),
  );

describe("unpacked, a zip is what make writes as a folder", () => {
  test("of a panel: out/NAME.zip, with every paper", async () => {
    const folder = layConsole(SOUND);
    await makeAll(folder, ["panels/good.yaml", "--out", "folders/good"]);
    const { code, stdout } = await makeAll(folder, ["panels/good.yaml", "--zip"]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^good: \d+ files in out\/good\.zip, \d+ measurements right$/m);
    expect(readdirSync(join(folder, "out"))).toEqual(["good.zip"]);
    expect(unpacked(join(folder, "out/good.zip"))).toEqual(everyFile(join(folder, "folders")));
  });

  test("of a console: a zip for each panel and for the console itself", async () => {
    const folder = layConsole(SOUND);
    await makeAll(folder, [".", "--out", "folders"]);
    const { code, stdout } = await makeAll(folder, [".", "--zip", "--json"]);
    expect(code).toBe(0);
    const out = join(folder, "out/desk");
    expect(readdirSync(out)).toEqual(["console.zip", "good.zip", "other.zip"]);
    const together = Object.assign(
      {},
      ...readdirSync(out).map((name) => unpacked(join(out, name))),
    );
    expect(together).toEqual(everyFile(join(folder, "folders")));
    const { zips } = JSON.parse(stdout);
    expect(zips).toHaveLength(3);
    for (const { path, bytes, sha256 } of zips) {
      const found = readFileSync(join(out, path));
      expect(found.length).toBe(bytes);
      expect(createHash("sha256").update(found).digest("hex")).toBe(sha256);
    }
  });

  test("of a console in one: out/NAME.zip with a folder for each", async () => {
    const folder = layConsole(SOUND);
    await make(folder, [".", "--out", "folders/desk"]);
    expect((await make(folder, [".", "--one-zip"])).code).toBe(0);
    expect(readdirSync(join(folder, "out"))).toEqual(["desk.zip"]);
    expect(unpacked(join(folder, "out/desk.zip"))).toEqual(everyFile(join(folder, "folders")));
  });
});

test("the same design gives the same bytes, whatever was there before", async () => {
  const folder = layConsole(SOUND);
  await make(folder, [".", "--zip"]);
  const first = everyFile(join(folder, "out"));
  await make(folder, [".", "--zip"]);
  expect(everyFile(join(folder, "out"))).toEqual(first);
});

test("what changed since the last pack is read out of the old zip", async () => {
  const folder = layConsole(SOUND);
  await make(folder, [".", "--zip"]);
  await make(folder, [".", "--one-zip"]);
  expect((await make(folder, [".", "--zip"])).stdout).toContain("good-face as cut");
  writeFileSync(join(folder, "panels/good.yaml"), panelText("good", "toggle-12"));
  for (const form of ["--zip", "--one-zip"]) {
    const { stdout } = await make(folder, [".", form]);
    expect(stdout).toContain("good-face changed");
    expect(stdout).toContain("other-face as cut");
  }
});

describe("a fault", () => {
  test("leaves the old zip of its panel as it is, with a note beside it, until it can be made again", async () => {
    const folder = layConsole(SOUND);
    const out = join(folder, "out/desk");
    await makeAll(folder, [".", "--zip"]);
    const before = everyFile(out);
    writeFileSync(join(folder, "panels/other.yaml"), FAULTY);
    const { code, stdout } = await makeAll(folder, [".", "--zip"]);
    expect(code).toBe(1);
    expect(stdout).toContain("other: not written; out/desk/other.zip is kept and marked stale");
    const {
      "other.zip.STALE.txt": note = "",
      "console.zip.STALE.txt": ofConsole,
      ...kept
    } = everyFile(out);
    expect(Buffer.from(note, "base64").toString()).toContain("layout/unknown-part");
    expect(ofConsole).toBeDefined();
    expect(kept).toEqual(before);
    writeFileSync(join(folder, "panels/other.yaml"), SOUND);
    await makeAll(folder, [".", "--zip"]);
    expect(everyFile(out)).toEqual(before);
  });

  test("in any panel keeps all of the one zip back", async () => {
    const folder = layConsole(FAULTY);
    expect((await make(folder, [".", "--one-zip"])).code).toBe(1);
    expect(readdirSync(folder)).not.toContain("out");
    writeFileSync(join(folder, "panels/other.yaml"), SOUND);
    expect((await make(folder, [".", "--one-zip"])).code).toBe(0);
    const before = readFileSync(join(folder, "out/desk.zip"));
    writeFileSync(join(folder, "panels/other.yaml"), FAULTY);
    expect((await make(folder, [".", "--one-zip"])).code).toBe(1);
    expect(readFileSync(join(folder, "out/desk.zip")).equals(before)).toBe(true);
    expect(readdirSync(join(folder, "out"))).toEqual(["desk.zip", "desk.zip.STALE.txt"]);
  });
});

describe("what is not from this program", () => {
  const foreignZip = zipSync({ "holiday.txt": new Uint8Array([1]) });

  test.each([
    ["a text", Buffer.from("mine")],
    ["a zip of somebody's", Buffer.from(foreignZip)],
    ["nothing at all", Buffer.alloc(0)],
  ])("is not written over and not marked: %s", async (_what, bytes) => {
    const folder = layConsole(SOUND);
    mkdirSync(join(folder, "out"));
    const place = join(folder, "out/good.zip");
    writeFileSync(place, bytes);
    const { code, stderr } = await make(folder, ["panels/good.yaml", "--zip"]);
    expect(code).toBe(1);
    expect(stderr).toContain("is in the way");
    writeFileSync(join(folder, "panels/good.yaml"), panelText("good", "no-such-part"));
    await make(folder, ["panels/good.yaml", "--zip"]);
    expect(everyFile(join(folder, "out"))).toEqual({ "good.zip": bytes.toString("base64") });
  });

  test("put into a zip of ours makes it theirs", async () => {
    const folder = layConsole(SOUND);
    await make(folder, ["panels/good.yaml", "--zip"]);
    const place = join(folder, "out/good.zip");
    const files = zipEntries(readFileSync(place)).map(({ name, bytes }) => [name, bytes] as const);
    writeFileSync(
      place,
      zipSync(Object.fromEntries([...files, ["good/notes.txt", Buffer.from("mine")]])),
    );
    const { code, stderr } = await make(folder, ["panels/good.yaml", "--zip"]);
    expect([code, stderr.includes("is in the way")]).toEqual([1, true]);
    expect(Object.keys(unpacked(place))).toContain("good/notes.txt");
  });

  test("a link in the zip's place is refused and what it leads to untouched", async () => {
    const folder = layConsole(SOUND);
    const elsewhere = temporaryFolder();
    writeFileSync(join(elsewhere, "precious.zip"), "mine");
    mkdirSync(join(folder, "out"));
    symlinkSync(join(elsewhere, "precious.zip"), join(folder, "out/good.zip"));
    expect((await make(folder, ["panels/good.yaml", "--zip"])).code).toBe(1);
    expect(readFileSync(join(elsewhere, "precious.zip"), "utf8")).toBe("mine");
  });

  test("a note of that name stays as it is", async () => {
    const folder = layConsole(SOUND);
    await make(folder, ["panels/good.yaml", "--zip"]);
    writeFileSync(join(folder, "out/good.zip.STALE.txt"), "mine");
    writeFileSync(join(folder, "panels/good.yaml"), panelText("good", "no-such-part"));
    expect((await make(folder, ["panels/good.yaml", "--zip"])).stdout).toMatch(/not written$/m);
    expect(readFileSync(join(folder, "out/good.zip.STALE.txt"), "utf8")).toBe("mine");
  });
});

test("a name of a design never becomes a path", async () => {
  const folder = layConsole(SOUND);
  const named = (name: string): void =>
    writeFileSync(
      join(folder, "panels/good.yaml"),
      panelText("good").replace("name: good\n", `name: ${JSON.stringify(name)}\n`),
    );
  for (const evil of ["../../etc/x", "/etc/x", "..", "a/b", "C:x", "x.zip/../../y"]) {
    named(evil);
    const { code, stderr } = await make(folder, ["panels/good.yaml", "--zip", "--out", "zips"]);
    expect([code, stderr.includes("design/not-a-name")]).toEqual([1, true]);
  }
  expect(readdirSync(folder).sort()).toEqual(["console.yaml", "panels", "workshop.yaml"]);
  // A name that Windows keeps for a device, whatever its ending (Microsoft, "Naming files, paths, and namespaces").
  named("con");
  expect((await make(folder, ["panels/good.yaml", "--zip", "--out", "zips"])).code).toBe(0);
  expect(readdirSync(join(folder, "zips"))).toEqual(["con-named.zip"]);
});

test("whichever step of the disk fails, there is the old zip or the new one, whole", async () => {
  for (const failing of ["makeFolder", "write", "rename"] as const) {
    const folder = layConsole(SOUND);
    await make(folder, ["panels/good.yaml", "--zip"]);
    const before = everyFile(join(folder, "out"));
    writeFileSync(join(folder, "panels/good.yaml"), panelText("good", "toggle-12"));
    const disk: Disk = {
      ...realDisk,
      [failing]: () => {
        throw Object.assign(new Error("no space"), { code: "ENOSPC" });
      },
    };
    const { code, stderr } = await make(folder, ["panels/good.yaml", "--zip"], { disk });
    expect(code).toBe(1);
    expect(stderr).toContain("the disk is full");
    expect(everyFile(join(folder, "out"))).toEqual(before);
  }
});

test.each([
  [["--zip", "--one-zip"], "take one of them"],
  [["--zip", "--out", "console.yaml"], "is a file"],
])("%j is wrong use", async (args, hint) => {
  const folder = layConsole(SOUND);
  const { code, stderr } = await make(folder, ["panels/good.yaml", ...args]);
  expect([code, stderr.includes(hint)]).toEqual([2, true]);
});

describe("what was made before in another form is told of, and left as it is:", () => {
  const older = ({ stdout }: Outcome): readonly string[] =>
    [...stdout.matchAll(/^an older pack in (\S+) is left as it is$/gm)].map(
      ([, place = ""]) => place,
    );

  test("folders beside the zips of a console, and zips beside its folders", async () => {
    const folder = layConsole(SOUND);
    expect(older(await make(folder, ["."]))).toEqual([]);
    const before = everyFile(join(folder, "out/desk/good"));
    const zipped = await make(folder, [".", "--zip"]);
    expect(older(zipped)).toEqual(["out/desk/good", "out/desk/other"]);
    expect(zipped.code).toBe(0);
    expect(everyFile(join(folder, "out/desk/good"))).toEqual(before);
    expect(older(await make(folder, ["."]))).toEqual(["out/desk/good.zip", "out/desk/other.zip"]);
    const { findings } = JSON.parse((await make(folder, [".", "--zip", "--json"])).stdout);
    expect(
      findings.filter(({ code }: { code: string }) => code === "cli/pack-of-other-form"),
    ).toMatchObject([{ severity: "note", suppressed: 1 }]);
  });

  test("folders beside the one zip of a console, and that beside its folders", async () => {
    const folder = layConsole(SOUND);
    await make(folder, ["."]);
    expect(older(await make(folder, [".", "--one-zip"]))).toEqual([
      "out/desk/good",
      "out/desk/other",
    ]);
    expect(older(await make(folder, ["."]))).toEqual(["out/desk.zip"]);
  });

  test("the folder of a panel beside its zip, and that beside its folder", async () => {
    const folder = layConsole(SOUND);
    await make(folder, ["panels/good.yaml"]);
    for (const form of ["--zip", "--one-zip"])
      expect(older(await make(folder, ["panels/good.yaml", form]))).toEqual(["out/good"]);
    expect(older(await make(folder, ["panels/good.yaml"]))).toEqual(["out/good.zip"]);
  });

  test("a folder of a panel that the console no longer has, beside zips", async () => {
    const folder = layConsole(SOUND);
    await make(folder, ["."]);
    const console = join(folder, "console.yaml");
    writeFileSync(console, readFileSync(console, "utf8").replace("as: other", "as: pumps"));
    const { stdout } = await make(folder, [".", "--zip"]);
    expect(stdout).toContain("its old pack in out/desk/other is left as it is");
  });

  test("and not the pack of another design that lies at that place", async () => {
    const folder = layConsole(SOUND);
    await make(folder, ["panels/good.yaml"]);
    const text = panelText("good").replace("name: good", "name: cellar");
    expect(text).toContain("name: cellar");
    writeFileSync(join(folder, "panels/good.yaml"), text);
    await make(folder, ["panels/good.yaml", "--out", "out/good"]);
    writeFileSync(join(folder, "panels/good.yaml"), panelText("good"));
    expect(older(await make(folder, ["panels/good.yaml", "--zip"]))).toEqual([]);
  });

  test("and not what anybody else put there", async () => {
    const folder = layConsole(SOUND);
    mkdirSync(join(folder, "out/desk/good"), { recursive: true });
    writeFileSync(join(folder, "out/desk/good/notes.txt"), "mine");
    writeFileSync(join(folder, "out/desk.zip"), zipSync({ "a.txt": new Uint8Array([1]) }));
    expect(older(await make(folder, [".", "--zip"]))).toEqual([]);
  });
});

test("a zip of a panel that its console no longer has is told of, and left as it is", async () => {
  const folder = layConsole(SOUND);
  await make(folder, [".", "--zip"]);
  const out = join(folder, "out/desk");
  writeFileSync(join(out, "holiday.zip"), zipSync({ "holiday.txt": new Uint8Array([1]) }));
  const before = everyFile(out);
  const console = join(folder, "console.yaml");
  writeFileSync(console, readFileSync(console, "utf8").replace("as: other", "as: pumps"));
  const { code, stdout } = await make(folder, [".", "--zip"]);
  expect(code).toBe(0);
  expect(stdout).toContain("its old pack in out/desk/other.zip is left as it is");
  expect(stdout).not.toContain("holiday");
  const { "pumps.zip": made, ...kept } = everyFile(out);
  expect(made).toBeDefined();
  expect(kept).toEqual(before);
});
