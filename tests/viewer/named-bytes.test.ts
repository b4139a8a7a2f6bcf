// Files too large to be read are there all the same: not "missing", and told with their size.

import { expect, test } from "vitest";
import { photoFindings } from "../../src/inspection/photo-file.ts";
import { namedBytes } from "../../viewer/files/named-bytes.ts";
import { readPanel } from "../design/reading.ts";

const sized = (size: number) => ({ size, arrayBuffer: async () => new ArrayBuffer(size % 1000) });

test("a photograph of more than 50 million bytes is told by its size, and is not missing", async () => {
  const { binaries, troubles } = await namedBytes([
    { path: "panels/old.jpg", file: sized(50_000_001) },
    { path: "lid.stl", file: sized(12) },
  ]);
  expect(troubles).toEqual(["panels/old.jpg has 50000001 bytes, at most 50000000 are read"]);
  expect(binaries.get("lid.stl")).toHaveLength(12);
  const { panel } = readPanel(
    "photo: { file: old.jpg, points: [{ in-picture: [10, 470], on-panel: [0, 0] }, { in-picture: [630, 470], on-panel: [90, 0] }, { in-picture: [630, 9], on-panel: [90, 50] }, { in-picture: [10, 9], on-panel: [0, 50] }] }",
  );
  expect(panel === null ? null : photoFindings(panel, binaries)).toEqual([]);
});
