// Unpacking of WOFF 1.0: every table must have the checksum that the font's maker wrote for it, computed here as
// OpenType 1.9, "Calculating checksums", says: the sum of its 32-bit words.

import { describe, expect, it } from "vitest";
import { bytesFromBase64 } from "../../src/lettering/base64.ts";
import { openSfnt } from "../../src/lettering/sfnt.ts";
import { outlineFonts } from "./packed-fonts.ts";

describe.each(outlineFonts.map((record) => [record.id, record] as const))("%s", (_, record) => {
  const { bytes, view, tables } = openSfnt(bytesFromBase64(record.base64));

  it("unpacks every table to its checksum", () => {
    expect(tables.size).toBeGreaterThan(10);
    for (let entry = 12; entry < 12 + 16 * tables.size; entry += 16) {
      const start = view.getUint32(entry + 8);
      const length = view.getUint32(entry + 12);
      const words = new Uint8Array(Math.ceil(length / 4) * 4);
      words.set(bytes.subarray(start, start + length));
      const isHead = String.fromCharCode(...bytes.subarray(entry, entry + 4)) === "head";
      // The head table's own checksum is taken with its checkSumAdjustment field at zero.
      if (isHead) words.fill(0, 8, 12);
      let sum = 0;
      const table = new DataView(words.buffer);
      for (let place = 0; place < words.length; place += 4)
        sum = (sum + table.getUint32(place)) >>> 0;
      expect(sum).toBe(view.getUint32(entry + 4));
    }
  });
});

it("refuses WOFF 2", () => {
  expect(() => openSfnt(new Uint8Array([0x77, 0x4f, 0x46, 0x32]))).toThrow("not WOFF 2");
});
