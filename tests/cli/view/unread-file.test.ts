// A file of a served design that stands there and can't be read for the moment: it is no deleted file. The page is told which it
// is, and nothing is written over it.

import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { realDisk } from "../../../src/cli/disk.ts";
import { saveTexts } from "../../../src/cli/view/save-texts.ts";
import { servedDesign } from "../../../src/cli/view/served-design.ts";
import { textHash } from "../../../src/diagnostics/text-edit.ts";

const PANEL =
  "consolewright: 1\nkind: panel\nname: bilge\nworkshop: shed.yaml\nmount: console-rail\n";
const SHED = "consolewright: 1\nkind: workshop\nname: shed\n";

const laid = () => {
  const root = mkdtempSync(join(tmpdir(), "consolewright-unread-"));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  writeFileSync(join(root, "panel.yaml"), PANEL);
  writeFileSync(join(root, "shed.yaml"), SHED);
  const source = { place: { root, entry: "panel.yaml" }, isReadOnly: false, disk: realDisk };
  servedDesign(source);
  return { root, shed: join(root, "shed.yaml"), source };
};

/** The old text in ISO 8859-1, where é is one byte that begins no character of UTF-8. */
const LATIN = Buffer.concat([Buffer.from(SHED), Buffer.from([0x23, 0xe9, 0x0a])]);

test.each<readonly [string, RegExp, (shed: string) => void]>([
  ["saved in another encoding", /is not UTF-8 text/, (shed) => writeFileSync(shed, LATIN)],
  ["of 5 MB", /has 5000000 bytes/, (shed) => writeFileSync(shed, "#".repeat(5_000_000))],
  [
    "with a folder in its place",
    /is not a file/,
    (shed) => {
      unlinkSync(shed);
      mkdirSync(shed);
    },
  ],
  [
    "with a link that leads out in its place",
    /leads out of the design's folder/,
    (shed) => {
      const away = `${shed}-away`;
      renameSync(shed, away);
      const elsewhere = mkdtempSync(join(tmpdir(), "consolewright-away-"));
      onTestFinished(() => rmSync(elsewhere, { recursive: true, force: true }));
      const outside = join(elsewhere, "shed.yaml");
      renameSync(away, outside);
      symlinkSync(outside, shed);
    },
  ],
])("a workshop %s is told of as one that can't be read", (_how, why, act) => {
  const { source, shed } = laid();
  act(shed);
  const { message } = servedDesign(source);
  expect(message.files.map(({ path }) => path)).toEqual(["panel.yaml"]);
  expect(message.unread).toEqual(["shed.yaml"]);
  expect(message.troubles).toEqual([expect.stringMatching(why)]);
});

test("a deleted one is none of them", () => {
  const { source, shed } = laid();
  unlinkSync(shed);
  expect(servedDesign(source).message).toMatchObject({ unread: [], troubles: [] });
});

test("nothing is written over it, whatever the page believes to stand there", () => {
  const { source, shed } = laid();
  writeFileSync(shed, LATIN);
  for (const baseHash of [textHash(SHED), null]) {
    const { status, reply } = saveTexts([{ path: "shed.yaml", baseHash, text: "x" }], source);
    expect([status, reply]).toEqual([403, { kind: "refused", why: "shed.yaml is not UTF-8 text" }]);
  }
  expect(readFileSync(shed)).toEqual(LATIN);
});
