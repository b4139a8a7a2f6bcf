// Making folders: all of them, or the disk's own refusal, at once.

import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { realDisk } from "../../src/cli/disk.ts";
import { temporaryFolder } from "./temporary-folder.ts";

test("a file system that takes no folders refuses instead of being asked for ever", () => {
  // Linux's /proc answers that the new folder is not there, whereupon a recursive mkdir begins anew without end.
  expect(() => realDisk.makeFolder("/proc/consolewright/out")).toThrow();
});

test("folders are made with all above them, those that are there being left alone", () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "a"));
  realDisk.makeFolder(join(folder, "a", "b", "c"));
  realDisk.makeFolder(join(folder, "a", "b", "c"));
  expect(realDisk.look(join(folder, "a", "b", "c"))).toBe("folder");
});

test("a folder may be reached through a link; a file or a link to nothing is in the way", () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "real"));
  symlinkSync(join(folder, "real"), join(folder, "link"));
  realDisk.makeFolder(join(folder, "link", "new"));
  expect(realDisk.look(join(folder, "real", "new"))).toBe("folder");
  writeFileSync(join(folder, "file"), "");
  expect(() => realDisk.makeFolder(join(folder, "file", "new"))).toThrow("ENOTDIR");
  symlinkSync(join(folder, "nowhere"), join(folder, "dangling"));
  expect(() => realDisk.makeFolder(join(folder, "dangling", "new"))).toThrow();
});
