import {
  chmodSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { realDisk } from "../../src/cli/disk.ts";
import { replaceTexts } from "../../src/cli/replace-texts.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const BOM = "\uFEFF";

test("texts are replaced, with their permissions, their mark and their line ends", () => {
  const folder = temporaryFolder();
  const place = join(folder, "panel.yaml");
  writeFileSync(place, `${BOM}a: 1\r\n`);
  chmodSync(place, 0o640);
  const changes = [{ place, before: `${BOM}a: 1\r\n`, after: `${BOM}a: 2\r\n` }];
  expect(replaceTexts(changes, realDisk)).toBeNull();
  expect(readFileSync(place, "utf8")).toBe(`${BOM}a: 2\r\n`);
  expect(statSync(place).mode & 0o777).toBe(0o640);
  expect(readdirSync(folder)).toEqual(["panel.yaml"]);
});

test("a link stays a link, its file is replaced", () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "real.yaml"), "a: 1\n");
  symlinkSync("real.yaml", join(folder, "panel.yaml"));
  const change = { place: join(folder, "panel.yaml"), before: "a: 1\n", after: "a: 2\n" };
  expect(replaceTexts([change], realDisk)).toBeNull();
  expect(readFileSync(join(folder, "real.yaml"), "utf8")).toBe("a: 2\n");
  expect(realDisk.look(join(folder, "panel.yaml"))).toBe("link");
});

test("nothing is written where one of the files has changed meanwhile", () => {
  const folder = temporaryFolder();
  for (const name of ["a", "b"]) writeFileSync(join(folder, name), "old");
  writeFileSync(join(folder, "b"), "somebody's");
  const changes = ["a", "b"].map((name) => ({
    place: join(folder, name),
    before: "old",
    after: "new",
  }));
  expect(replaceTexts(changes, realDisk)).toContain("has changed");
  expect(readFileSync(join(folder, "a"), "utf8")).toBe("old");
});

test("a disk that fails in the middle leaves every file as it was", () => {
  for (let failAt = 1; failAt <= 4; failAt++) {
    const folder = temporaryFolder();
    for (const name of ["a", "b"]) writeFileSync(join(folder, name), "old");
    let count = 0;
    const failing =
      <Args extends readonly unknown[]>(work: (...args: Args) => void) =>
      (...args: Args): void => {
        count++;
        if (count === failAt) throw Object.assign(new Error("full"), { code: "ENOSPC" });
        work(...args);
      };
    const disk = { ...realDisk, write: failing(realDisk.write), rename: failing(realDisk.rename) };
    const changes = ["a", "b"].map((name) => ({
      place: join(folder, name),
      before: "old",
      after: "new",
    }));
    expect(replaceTexts(changes, disk)).toBe("the disk is full");
    expect(readdirSync(folder).map((name) => readFileSync(join(folder, name), "utf8"))).toEqual([
      "old",
      "old",
    ]);
  }
});
