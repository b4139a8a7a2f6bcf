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

const laidWithLink = (): { readonly folder: string; readonly target: string } => {
  const folder = temporaryFolder();
  lay(folder, { "real/panel.yaml": "panel", "real/deep/lid.yaml": "panel", "mine/x.txt": "note" });
  const target = join(folder, "real", "panel.yaml");
  symlinkSync(target, join(folder, "mine", "panel.yaml"));
  return { folder, target };
};

test.each(["mine", "mine/panel.yaml"])(
  "%s with a link that leads out is not worked on: the file that it leads to is named",
  (argument) => {
    const { folder, target } = laidWithLink();
    expect(place(folder, argument)).toEqual({
      kind: "wrong-use",
      why: `${join(folder, argument === "mine" ? "mine/panel.yaml" : argument)} is a link to ${target}, which is outside its folder's design. To work on that file, name it: ${target}`,
    });
    expect(place(folder, target)).toEqual({ root: join(folder, "real"), entry: "panel.yaml" });
  },
);

test("a link out of the folder that was named is refused though the design reaches above it", () => {
  const folder = temporaryFolder();
  lay(folder, { "shed.yaml": "workshop", "winch.yaml": "panel", "deck/notes.yaml": "note" });
  symlinkSync("../winch.yaml", join(folder, "deck/panel.yaml"));
  expect(place(folder, "deck")).toMatchObject({
    kind: "wrong-use",
    why: expect.stringContaining(`is a link to ${join(folder, "winch.yaml")}`),
  });
  expect(place(folder, "deck/panel.yaml")).toEqual({ root: folder, entry: "winch.yaml" });
});

test("a link to a file of the same design, and one to a folder, are followed", () => {
  const { folder } = laidWithLink();
  const root = join(folder, "real");
  symlinkSync("panel.yaml", join(root, "short.yaml"));
  symlinkSync(root, join(folder, "elsewhere"));
  expect(place(root, "short.yaml")).toEqual({ root, entry: "panel.yaml" });
  expect(place(folder, "elsewhere")).toEqual({ root, entry: "panel.yaml" });
  expect(place(folder, "elsewhere/deep/lid.yaml")).toEqual({
    root: join(root, "deep"),
    entry: "lid.yaml",
  });
});

test("a root that is named bounds what a link may lead to", () => {
  const { folder, target } = laidWithLink();
  expect(place(folder, "mine", ".")).toEqual({ root: folder, entry: "real/panel.yaml" });
  expect(place(folder, "mine", "mine")).toEqual({
    kind: "wrong-use",
    why: `mine does not lie below the root ${join(folder, "mine")}.`,
  });
  expect(target).toContain("real");
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
