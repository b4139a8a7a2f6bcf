import { expect, test } from "vitest";
import { circle, point } from "../../src/geometry/contour.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { changesBetween, changesSentence } from "../../src/pack/changes.ts";
import { type Manifest, manifestFile, manifestOf, readManifest } from "../../src/pack/manifest.ts";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { partHash } from "../../src/pack/part-hash.ts";
import { utf8Bytes, utf8Text } from "../../src/pack/utf8.ts";
import type { SheetPart } from "../../src/parts/sheet-part.ts";
import { platePart } from "./plate-part.ts";

const manifestFor = (...parts: readonly SheetPart[]): Manifest =>
  manifestOf({ name: "winch", revision: "A" }, [], parts.map(partHash));

test("a manifest is read as it was written", () => {
  const file: PackFile = {
    path: "cut/a.svg",
    kind: "cut-svg",
    part: "winch-face",
    bytes: utf8Bytes("abc"),
  };
  const manifest = manifestOf({ name: "winch", revision: "A" }, [file], [partHash(platePart({}))]);
  expect(readManifest(utf8Text(manifestFile(manifest).bytes))).toEqual(manifest);
  // FIPS 180-4's digest of "abc".
  expect(manifest.files[0]?.sha256).toBe(
    "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
});

test.each([
  ["no JSON", "hello"],
  ["somebody else's", '{ "name": "app", "files": [] }'],
  ["a list", "[]"],
  [
    "a file without a hash",
    '{ "format": "consolewright-pack-1", "panel": "a", "revision": "A", "files": [{ "path": "a" }], "parts": [] }',
  ],
  [
    "a path that leads out",
    '{ "format": "consolewright-pack-1", "panel": "a", "revision": "A", "parts": [], "files": [{ "path": "../a", "kind": "key", "part": "", "bytes": 1, "sha256": "" }] }',
  ],
])("%s is no manifest of ours", (_, text) => {
  expect(readManifest(text)).toBeNull();
});

test("what changed is told part by part", () => {
  const face = platePart({ id: "winch-face" });
  const backing = platePart({ id: "winch-backing" });
  const spacer = platePart({ id: "winch-spacer" });
  const before = manifestFor(face, backing, spacer);
  const after = manifestFor(
    platePart({ id: "winch-face", hole: 6.5 }),
    backing,
    platePart({ id: "winch-trim" }),
  );
  const changes = changesBetween(before, after);
  expect(changesSentence(changes)).toBe(
    "winch-face changed, winch-backing as cut, winch-trim is new, winch-spacer is no longer wanted",
  );
});

test("a shape at another kerf is the same shape", () => {
  const before = manifestFor(platePart({ kerf: 0.2 }));
  const after = manifestFor(platePart({ kerf: 0.23 }));
  expect(changesBetween(before, after)).toEqual([{ part: "winch-face", change: "setting" }]);
});

test("titles, revisions, witness marks and noise below a ten-thousandth change nothing that is cut", () => {
  const before = platePart({});
  const setUp = before.setUps[0];
  if (setUp === undefined) throw new Error("the plate has a set-up");
  const noisy: SheetPart = {
    ...before,
    title: "renamed",
    revision: "B",
    setUps: [
      {
        ...setUp,
        operations: [
          { kind: "stroke", process: "witness", feature: "witness", paths: [], width: mm(0.1) },
          ...setUp.operations.map((operation) =>
            operation.kind === "cut" && operation.contour.kind === "circle"
              ? { ...operation, contour: circle(point(20 + 1e-9, -0), operation.contour.radius) }
              : operation,
          ),
        ],
      },
    ],
  };
  expect(partHash(noisy)).toEqual(partHash(before));
});
