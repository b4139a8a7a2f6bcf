import { mkdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { designPlace } from "../../src/cli/design-argument.ts";
import { type Disk, realDisk } from "../../src/cli/disk.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const lay = (folder: string, files: Readonly<Record<string, string>>): void => {
  for (const [path, kind] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), `consolewright: 1\nkind: ${kind}\nname: x\n`);
  }
};

const place = (cwd: string, argument: string, root?: string): unknown =>
  designPlace(argument, { cwd, root }, realDisk);

test("without a workshop the root is the nearest folder upward with a console file", () => {
  const folder = temporaryFolder();
  lay(folder, {
    "shed/starboard.yaml": "console",
    "shed/panels/winch.yaml": "panel",
    "shed/panels/deck/lights.yaml": "panel",
    "alone/winch.yaml": "panel",
  });
  const root = join(folder, "shed");
  expect(place(folder, "shed/panels/winch.yaml")).toEqual({ root, entry: "panels/winch.yaml" });
  expect(place(root, "panels/deck")).toEqual({ root, entry: "panels/deck/lights.yaml" });
  expect(place(folder, "shed")).toEqual({ root, entry: "starboard.yaml" });
  expect(place(folder, "alone")).toEqual({ root: join(folder, "alone"), entry: "winch.yaml" });
  expect(place(folder, "shed/panels/winch.yaml", ".")).toEqual({
    root: folder,
    entry: "shed/panels/winch.yaml",
  });
});

test("a workshop above several consoles is the root of all of them", () => {
  const folder = temporaryFolder();
  lay(folder, {
    "school/workshop.yaml": "workshop",
    "school/console.yaml": "console",
    "school/variants/narrow.yaml": "console",
    "school/variants/lid.yaml": "panel",
    "school/own/shed.yaml": "workshop",
    "school/own/desk.yaml": "console",
  });
  const root = join(folder, "school");
  expect(place(folder, "school/variants/narrow.yaml")).toEqual({
    root,
    entry: "variants/narrow.yaml",
  });
  expect(place(folder, "school/variants/lid.yaml")).toEqual({ root, entry: "variants/lid.yaml" });
  expect(place(folder, "school/own")).toEqual({ root: join(root, "own"), entry: "desk.yaml" });
});

test("of several files the usual name is meant, else one must be named", () => {
  const folder = temporaryFolder();
  lay(folder, {
    "panel.yaml": "panel",
    "other.yaml": "panel",
    "two/a.yml": "panel",
    "two/b.yaml": "panel",
  });
  expect(place(folder, ".")).toMatchObject({ entry: "panel.yaml" });
  expect(place(folder, "two")).toMatchObject({
    kind: "wrong-use",
    why: expect.stringContaining("a.yml, b.yaml"),
  });
});

test.each([
  ["nowhere.yaml", undefined, "no file or folder"],
  [".", undefined, "holds no console or panel file"],
  ["sub/panel.yaml", "other", "does not lie below"],
  ["sub/panel.yaml", "nowhere", "can't be used"],
])("%s with root %s is wrong use", (argument, root, why) => {
  const folder = temporaryFolder();
  lay(folder, { "sub/panel.yaml": "panel", "other/notes.yaml": "shopping" });
  expect(place(folder, argument, root)).toEqual({
    kind: "wrong-use",
    why: expect.stringContaining(why),
  });
});

test("a link to a design is followed first", () => {
  const folder = temporaryFolder();
  lay(folder, { "real/panel.yaml": "panel" });
  symlinkSync(join(folder, "real", "panel.yaml"), join(folder, "short.yaml"));
  expect(place(folder, "short.yaml")).toEqual({ root: join(folder, "real"), entry: "panel.yaml" });
});

test("a pipe among the files is not waited for", () => {
  const folder = temporaryFolder();
  lay(folder, { "panel.yaml": "panel", "pipe.yaml": "panel" });
  const disk: Disk = {
    ...realDisk,
    look: (path) => (path.endsWith("pipe.yaml") ? "other" : realDisk.look(path)),
    readHead: (path, most) => {
      if (path.endsWith("pipe.yaml")) throw new Error("a reader of a pipe would wait for ever");
      return realDisk.readHead(path, most);
    },
  };
  rmSync(join(folder, "panel.yaml"));
  expect(designPlace(".", { cwd: folder, root: undefined }, disk)).toMatchObject({
    why: expect.stringContaining("holds no console or panel file"),
  });
});
