import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { markStale } from "../../src/cli/mark-stale.ts";
import { writePack } from "../../src/cli/write-pack.ts";
import { manifestFile, manifestOf } from "../../src/pack/manifest.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { utf8Bytes } from "../../src/pack/utf8.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const packOf = (texts: Readonly<Record<string, string>>): readonly PackFile[] => {
  const files = Object.entries(texts).map(
    ([path, text]): PackFile => ({
      path,
      kind: "cut-svg",
      part: "winch-face",
      bytes: utf8Bytes(text),
    }),
  );
  const shape = JSON.stringify(texts);
  const parts = [{ id: "winch-face", shape, setting: "a" }];
  return [...files, manifestFile(manifestOf({ name: "winch", revision: "A" }, files, parts))];
};

const oldPack = packOf({ "README.md": "old", "cut/face.svg": "old face", "cut/gone.svg": "old" });
const newPack = packOf({ "README.md": "new", "cut/face.svg": "new face", "more/added.svg": "new" });

/** Path to content of everything below a folder, links as links. */
const contents = (folder: string): Readonly<Record<string, string>> => {
  const found: Record<string, string> = {};
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const place = join(entry.parentPath, entry.name);
    if (entry.isFile()) found[place.slice(folder.length + 1)] = readFileSync(place, "utf8");
    else if (entry.isSymbolicLink()) found[place.slice(folder.length + 1)] = "(link)";
  }
  return found;
};

const asWritten = (pack: readonly PackFile[]): Readonly<Record<string, string>> =>
  Object.fromEntries(pack.map(({ path, bytes }) => [path, Buffer.from(bytes).toString()]));

test("a pack is written where there was nothing, folders above it included", () => {
  const target = join(temporaryFolder(), "out", "winch");
  expect(writePack(target, newPack, realDisk)).toEqual({ kind: "written", changes: null });
  expect(contents(target)).toEqual(asWritten(newPack));
  expect(readdirSync(join(target, ".."))).toEqual(["winch"]);
});

test("a second pack replaces ours, says what changed, and leaves foreign files alone", () => {
  const target = join(temporaryFolder(), "winch");
  writePack(target, oldPack, realDisk);
  mkdirSync(join(target, "mine", "deep"), { recursive: true });
  writeFileSync(join(target, "mine", "deep", "notes.txt"), "mine");
  writeFileSync(join(target, "cut", "mine.svg"), "mine");
  symlinkSync("/etc/hostname", join(target, "cut", "link"));
  expect(writePack(target, newPack, realDisk)).toEqual({
    kind: "written",
    changes: [{ part: "winch-face", change: "changed" }],
  });
  expect(contents(target)).toEqual({
    ...asWritten(newPack),
    "mine/deep/notes.txt": "mine",
    "cut/mine.svg": "mine",
    "cut/link": "(link)",
  });
  expect(readdirSync(join(target, ".."))).toEqual(["winch"]);
});

test("a folder of somebody else's gets our files added and loses none", () => {
  const target = join(temporaryFolder(), "winch");
  mkdirSync(join(target, "cut"), { recursive: true });
  writeFileSync(join(target, "cut", "mine.svg"), "mine");
  writeFileSync(join(target, "thesis.txt"), "mine");
  writePack(target, newPack, realDisk);
  expect(contents(target)).toEqual({
    ...asWritten(newPack),
    "cut/mine.svg": "mine",
    "thesis.txt": "mine",
  });
});

test.each(["README.md", "cut", "manifest.json"])(
  "a foreign %s in the way is refused and kept",
  (name) => {
    const target = join(temporaryFolder(), "winch");
    mkdirSync(target);
    writeFileSync(join(target, name), "mine");
    expect(writePack(target, newPack, realDisk)).toMatchObject({ kind: "refused" });
    expect(contents(target)).toEqual({ [name]: "mine" });
  },
);

test("a foreign file where a later pack wants one of its own is refused, the old pack stays whole", () => {
  const target = join(temporaryFolder(), "winch");
  writePack(target, oldPack, realDisk);
  mkdirSync(join(target, "more"));
  writeFileSync(join(target, "more", "added.svg"), "mine");
  expect(writePack(target, newPack, realDisk)).toMatchObject({ kind: "refused" });
  expect(contents(target)).toEqual({ ...asWritten(oldPack), "more/added.svg": "mine" });
});

test("links that lead out of the folder are refused and what lies behind them is untouched", () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "elsewhere"));
  writeFileSync(join(folder, "elsewhere", "face.svg"), "mine");
  symlinkSync(join(folder, "elsewhere"), join(folder, "winch"));
  expect(writePack(join(folder, "winch"), newPack, realDisk)).toMatchObject({
    kind: "refused",
    why: expect.stringContaining("is a link to"),
  });
  mkdirSync(join(folder, "lamp"));
  symlinkSync(join(folder, "elsewhere"), join(folder, "lamp", "cut"));
  expect(writePack(join(folder, "lamp"), newPack, realDisk)).toMatchObject({ kind: "refused" });
  expect(contents(join(folder, "elsewhere"))).toEqual({ "face.svg": "mine" });
});

test("a manifest that lists paths outside its folder is nobody's of ours", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "precious.txt"), "mine");
  const target = join(folder, "winch");
  mkdirSync(target);
  const evil = packOf({ "../precious.txt": "x" }).filter(({ kind }) => kind === "manifest");
  writeFileSync(join(target, "manifest.json"), evil[0]?.bytes ?? "");
  expect(writePack(target, newPack, realDisk)).toMatchObject({ kind: "refused" });
  expect(readFileSync(join(folder, "precious.txt"), "utf8")).toBe("mine");
});

/** A disk that fails at its n-th change, for good or once. */
const failingDisk = (failAt: number, forGood: boolean): { disk: Disk; changes: () => number } => {
  let count = 0;
  const counted =
    <Args extends readonly unknown[]>(work: (...args: Args) => void) =>
    (...args: Args): void => {
      count++;
      if (forGood ? count >= failAt : count === failAt)
        throw Object.assign(new Error("full"), { code: "ENOSPC" });
      work(...args);
    };
  const disk: Disk = {
    ...realDisk,
    write: counted(realDisk.write),
    makeFolder: counted(realDisk.makeFolder),
    rename: counted(realDisk.rename),
    removeFile: counted(realDisk.removeFile),
    removeFolder: counted(realDisk.removeFolder),
  };
  return { disk, changes: () => count };
};

test.each([true, false])(
  "whichever step fails (for good: %s), the next start finds one whole pack and every foreign file",
  (forGood) => {
    const counting = failingDisk(Number.POSITIVE_INFINITY, false);
    let steps = 1;
    for (let failAt = 1; failAt <= steps; failAt++) {
      const folder = temporaryFolder();
      const target = join(folder, "winch");
      writePack(target, oldPack, realDisk);
      writeFileSync(join(target, "cut", "mine.svg"), "mine");
      if (failAt === 1) {
        const dry = join(temporaryFolder(), "winch");
        writePack(dry, oldPack, realDisk);
        writeFileSync(join(dry, "cut", "mine.svg"), "mine");
        writePack(dry, newPack, counting.disk);
        steps = counting.changes();
      }
      const result = writePack(target, newPack, failingDisk(failAt, forGood).disk);
      // The next start, of a run that finds faults and writes nothing.
      markStale(target, ["1 fault"], realDisk);
      const { "STALE.txt": note, ...found } = contents(target);
      expect(note).toContain("1 fault");
      const expected = result.kind === "written" ? newPack : oldPack;
      expect(found).toEqual({ ...asWritten(expected), "cut/mine.svg": "mine" });
      expect(readdirSync(folder)).toEqual(["winch"]);
    }
    expect(steps).toBeGreaterThan(10);
  },
);

test("a failure while adding to somebody's folder takes our files out again", () => {
  for (let failAt = 1; failAt <= 12; failAt++) {
    const target = join(temporaryFolder(), "winch");
    mkdirSync(target);
    writeFileSync(join(target, "thesis.txt"), "mine");
    const result = writePack(target, newPack, failingDisk(failAt, false).disk);
    if (result.kind === "written") continue;
    expect(result.why).toContain("the disk is full");
    expect(contents(target)).toEqual({ "thesis.txt": "mine" });
  }
});

test("the stale note goes only onto packs of ours, and goes away with the next pack", () => {
  const target = join(temporaryFolder(), "winch");
  mkdirSync(target);
  writeFileSync(join(target, "thesis.txt"), "mine");
  expect(markStale(target, ["1 fault"], realDisk)).toEqual({ kind: "no-pack" });
  expect(contents(target)).toEqual({ "thesis.txt": "mine" });
  writePack(target, oldPack, realDisk);
  expect(markStale(target, ["1 fault"], realDisk)).toEqual({ kind: "marked" });
  expect(markStale(target, ["2 faults"], realDisk)).toEqual({ kind: "marked" });
  expect(contents(target)["STALE.txt"]).toContain("2 faults");
  writePack(target, newPack, realDisk);
  expect(contents(target)).toEqual({ ...asWritten(newPack), "thesis.txt": "mine" });
});
