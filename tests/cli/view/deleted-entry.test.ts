// A design that is served and whose first file is deleted meanwhile: the others are told as they stand, and the texts that the
// page still has are written back. What was never of the design stays closed.

import { existsSync, mkdtempSync, readFileSync, rmSync, unlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { realDisk } from "../../../src/cli/disk.ts";
import { saveTexts } from "../../../src/cli/view/save-texts.ts";
import { type DesignSource, servedDesign } from "../../../src/cli/view/served-design.ts";

const PANEL =
  "consolewright: 1\nkind: panel\nname: bilge\nworkshop: shed.yaml\nmount: console-rail\n";
const SHED = "consolewright: 1\nkind: workshop\nname: shed\n";

const laid = (): { readonly root: string; readonly source: DesignSource } => {
  const root = mkdtempSync(join(tmpdir(), "consolewright-deleted-"));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  writeFileSync(join(root, "panel.yaml"), PANEL);
  writeFileSync(join(root, "shed.yaml"), SHED);
  writeFileSync(join(root, "other.yaml"), SHED);
  return {
    root,
    source: { place: { root, entry: "panel.yaml" }, isReadOnly: false, disk: realDisk },
  };
};

const pathsOf = (source: DesignSource): readonly string[] =>
  servedDesign(source).message.files.map(({ path }) => path);

test("a deleted first file leaves the files that it named in the page", () => {
  const { root, source } = laid();
  expect(pathsOf(source)).toEqual(["panel.yaml", "shed.yaml"]);
  unlinkSync(join(root, "panel.yaml"));
  expect(pathsOf(source)).toEqual(["shed.yaml"]);
});

test("a first file that can't be read for the moment does so too", () => {
  const { root, source } = laid();
  pathsOf(source);
  writeFileSync(join(root, "panel.yaml"), `${PANEL}]:\n`);
  expect(pathsOf(source)).toEqual(["panel.yaml", "shed.yaml"]);
});

test("both files deleted are written anew, and no file that was never of the design", () => {
  const { root, source } = laid();
  pathsOf(source);
  unlinkSync(join(root, "panel.yaml"));
  unlinkSync(join(root, "shed.yaml"));
  const anew = (path: string, text: string) => ({ path, baseHash: null, text });
  expect(saveTexts([anew("other.yaml", "x")], source).status).toBe(403);
  expect(saveTexts([anew("panel.yaml", PANEL), anew("shed.yaml", SHED)], source).status).toBe(200);
  expect(readFileSync(join(root, "shed.yaml"), "utf8")).toBe(SHED);
  expect(existsSync(join(root, "panel.yaml"))).toBe(true);
});
