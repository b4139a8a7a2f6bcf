// The list of a pack's files: each file once, a group for each set-up, groups in the order of use.

import { expect, test } from "vitest";
import type { PackFile, PackFileKind } from "../../src/pack/pack-file.ts";
import { fileGroups, sizeWords } from "../../viewer/job-pack/file-groups.ts";

const file = (path: string, kind: PackFileKind): PackFile => ({
  path,
  kind,
  part: "",
  bytes: new Uint8Array(),
});

const FILES = [
  file("README.md", "readme"),
  file("cut/winch-face-1-cut.kerf-0.20.svg", "cut-svg"),
  file("cut/winch-face-1-cut.kerf-0.20.dxf", "cut-dxf"),
  file("cut/winch-face-1-cut.kerf-0.20.r12.dxf", "cut-dxf-r12"),
  file("cut/winch-face-2-engrave.nominal.svg", "cut-svg"),
  file("print/winch-spacer.3mf", "print-3mf"),
  file("print/winch-spacer.stl", "print-stl"),
  file("print/winch-spacer.step", "print-step"),
  file("film/alarms.svg", "label-film"),
  file("drawings/winch-front.svg", "drawing-svg"),
  file("drawings/winch-front.pdf", "drawing-pdf"),
  file("console.glb", "console-model"),
  file("template/winch-face-front.pdf", "template-pdf"),
  file("mock-up.pdf", "mock-up"),
  file("pictures/winch-spacer.png", "picture-png"),
  file("inspection.csv", "inspection"),
  file("fit-report.md", "fit-report"),
  file("cut/colour-key.md", "key"),
  file("measuring-list.md", "measuring-list"),
  file("parts-list.csv", "parts-list"),
  file("hand-operations.md", "hand-operations"),
  file("assembly.md", "assembly"),
  file("findings.md", "findings"),
  file("manifest.json", "manifest"),
];

test("every file stands in one group, each set-up has its own, the order is that of the work", () => {
  const groups = fileGroups(FILES);
  expect(groups.flatMap(({ files }) => files.map(({ path }) => path)).sort()).toEqual(
    FILES.map(({ path }) => path).sort(),
  );
  expect(groups.map(({ title, files }) => [title, files.length])).toEqual([
    ["Cut: winch-face-1-cut", 3],
    ["Cut: winch-face-2-engrave", 1],
    ["To print", 3],
    ["Label films", 1],
    ["Drawings", 3],
    ["Templates and mock-up in true size", 2],
    ["Pictures", 1],
    ["Inspection", 1],
    ["Fit report", 1],
    ["Papers", 8],
  ]);
});

test.each([
  [0, "0 B"],
  [999, "999 B"],
  [1000, "1.0 kB"],
  [999_949, "999.9 kB"],
  [999_950, "1.0 MB"],
  [1_300_000, "1.3 MB"],
])("%d bytes are %s", (bytes, words) => expect(sizeWords(bytes)).toBe(words));
