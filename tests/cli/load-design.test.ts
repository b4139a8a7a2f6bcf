import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { realDisk } from "../../src/cli/disk.ts";
import { type LoadedDesign, loadDesign } from "../../src/cli/load-design.ts";
import { compile } from "../../src/project.ts";
import { testLibrary } from "../support/test-library.ts";
import { temporaryFolder } from "./temporary-folder.ts";

const load = (root: string): LoadedDesign => loadDesign({ root, entry: "panel.yaml" }, realDisk);

const head = "consolewright: 1\nkind: panel\nname: a\n";

const codes = ({ findings }: LoadedDesign): readonly string[] => findings.map(({ code }) => code);

test("files are read until no new name comes up, circles included; bytes stay what they are", () => {
  const root = temporaryFolder();
  const text = `\uFEFF${head}workshop: shop/workshop.yaml\r\ncatalogue: [own.yaml]\n`;
  writeFileSync(join(root, "panel.yaml"), text);
  mkdirSync(join(root, "shop"));
  writeFileSync(join(root, "shop", "workshop.yaml"), "kind: workshop\ncatalogue: [../own.yaml]\n");
  writeFileSync(join(root, "own.yaml"), "kind: parts\ncatalogue: [own.yaml, panel.yaml]\n");
  writeFileSync(join(root, "bystander.yaml"), head);
  const loaded = load(root);
  expect(codes(loaded)).toEqual([]);
  expect([...loaded.files.keys()].sort()).toEqual(["own.yaml", "panel.yaml", "shop/workshop.yaml"]);
  expect(loaded.files.get("panel.yaml")).toBe(text);
});

test("a file that is not there is left to the place that names it", () => {
  const root = temporaryFolder();
  writeFileSync(join(root, "panel.yaml"), `${head}workshop: gone.yaml\n`);
  expect(codes(load(root))).toEqual([]);
});

test("a folder, bytes that are no text and a file of megabytes are findings", () => {
  const root = temporaryFolder();
  writeFileSync(join(root, "panel.yaml"), `${head}catalogue: [folder, film.yaml, utf16.yaml]\n`);
  mkdirSync(join(root, "folder"));
  writeFileSync(join(root, "film.yaml"), Buffer.alloc(5_000_000, 0x61));
  writeFileSync(join(root, "utf16.yaml"), Buffer.from("kind: parts", "utf16le").fill(0xff, 0, 1));
  const loaded = load(root);
  expect(codes(loaded)).toEqual([
    "cli/unreadable-file",
    "cli/oversize-file",
    "cli/unreadable-file",
  ]);
  expect([...loaded.files.keys()]).toEqual(["panel.yaml"]);
});

test("a chain of files without end is cut off", () => {
  const root = temporaryFolder();
  writeFileSync(join(root, "panel.yaml"), `${head}catalogue: [0.yaml]\n`);
  for (let index = 0; index < 600; index++)
    writeFileSync(join(root, `${index}.yaml`), `kind: parts\ncatalogue: [${index + 1}.yaml]\n`);
  const loaded = load(root);
  expect(codes(loaded)).toEqual(["cli/too-many-files"]);
  expect(loaded.files.size).toBeLessThanOrEqual(500);
});

test("links inside the root are followed, links out of it and round in a circle are not", () => {
  const root = temporaryFolder();
  const elsewhere = temporaryFolder();
  writeFileSync(join(elsewhere, "secret.yaml"), "kind: parts\n");
  writeFileSync(join(root, "panel.yaml"), `${head}catalogue: [near.yaml, far.yaml, round.yaml]\n`);
  writeFileSync(join(root, "real.yaml"), "kind: parts\n");
  symlinkSync("real.yaml", join(root, "near.yaml"));
  symlinkSync(join(elsewhere, "secret.yaml"), join(root, "far.yaml"));
  symlinkSync("round.yaml", join(root, "round.yaml"));
  const loaded = load(root);
  expect(codes(loaded)).toEqual(["cli/outside-root", "cli/unreadable-file"]);
  expect([...loaded.files.keys()]).toEqual(["panel.yaml", "near.yaml"]);
});

test("an obstacle's shape that leads out of the root is told of once", () => {
  const root = temporaryFolder();
  const elsewhere = temporaryFolder();
  writeFileSync(join(elsewhere, "seat.stl"), "solid");
  symlinkSync(join(elsewhere, "seat.stl"), join(root, "seat.stl"));
  writeFileSync(
    join(root, "panel.yaml"),
    "consolewright: 1\nkind: console\nname: c\nobstacles:\n  - { name: seat, stl: seat.stl, at: [0, 0, 0] }\n",
  );
  const loaded = load(root);
  expect(codes(loaded)).toEqual(["cli/outside-root"]);
  const { findings } = compile({ ...loaded, entry: "panel.yaml" }, testLibrary());
  expect(findings.map(({ code }) => code)).toEqual([]);
});

test("a photograph that is a folder, a link out or closed is told of at the line that names it", () => {
  const root = temporaryFolder();
  const elsewhere = temporaryFolder();
  writeFileSync(join(elsewhere, "secret.jpg"), "");
  mkdirSync(join(root, "folder.jpg"));
  symlinkSync(join(elsewhere, "secret.jpg"), join(root, "far.jpg"));
  symlinkSync("round.jpg", join(root, "round.jpg"));
  const told = ["folder.jpg", "far.jpg", "round.jpg"].map((name) => {
    const text = `${head}photo:\n  file: ${name}\n`;
    writeFileSync(join(root, "panel.yaml"), text);
    return load(root).findings.map(({ code, span }) => [
      code,
      span.file,
      text.slice(span.start, span.end),
    ]);
  });
  expect(told).toEqual([
    [["cli/unreadable-file", "panel.yaml", "folder.jpg"]],
    [["cli/outside-root", "panel.yaml", "far.jpg"]],
    [["cli/unreadable-file", "panel.yaml", "round.jpg"]],
  ]);
});

test("a photograph behind a link to nothing weighs what one weighs that is not there", () => {
  const root = temporaryFolder();
  const text = `${head}mount: box-lid\nwidth: 60 mm\nheight: 50 mm\nstack: [{ layer: face, sheet: opal-acrylic-3 }]\nphoto: { file: old.jpg, points: [{ in-picture: [1, 9], on-panel: [0, 0] }, { in-picture: [9, 9], on-panel: [9, 0] }, { in-picture: [9, 1], on-panel: [9, 9] }, { in-picture: [1, 1], on-panel: [0, 9] }] }\n`;
  writeFileSync(join(root, "panel.yaml"), text);
  const told = (): readonly string[] => {
    const loaded = load(root);
    expect(codes(loaded)).toEqual([]);
    const project = compile({ ...loaded, entry: "panel.yaml" }, testLibrary());
    return project.panels.flatMap(({ findings }) =>
      findings.filter(({ code }) => code.includes("photo")).map(({ code }) => code),
    );
  };
  expect(told()).toEqual(["layout/photo-missing"]);
  symlinkSync("gone.jpg", join(root, "old.jpg"));
  expect(told()).toEqual(["layout/photo-missing"]);
  symlinkSync("gone-too.jpg", join(root, "gone.jpg"));
  expect(told()).toEqual(["layout/photo-missing"]);
});

test("a photograph that two panels name is told of in both, and in no other", () => {
  const root = temporaryFolder();
  mkdirSync(join(root, "old.jpg"));
  writeFileSync(
    join(root, "panel.yaml"),
    "consolewright: 1\nkind: console\nname: c\npanels:\n  - { file: a.yaml }\n  - { file: b.yaml }\n  - { file: c.yaml }\n",
  );
  for (const name of ["a", "b"])
    writeFileSync(join(root, `${name}.yaml`), `${head}photo: { file: old.jpg }\n`);
  writeFileSync(join(root, "c.yaml"), head);
  expect(load(root).findings.map(({ code, span }) => `${code} ${span.file}`)).toEqual([
    "cli/unreadable-file a.yaml",
    "cli/unreadable-file b.yaml",
  ]);
});
