// The old `kern` table against the reader of opentype.js, on a shipped font whose GPOS table is replaced by one.
// (The HarfBuzz build for JavaScript leaves that table out.)

import opentype from "opentype.js";
import { expect, it } from "vitest";
import { bytesFromBase64 } from "../../src/lettering/base64.ts";
import { pairKerning } from "../../src/lettering/pair-kerning.ts";
import { openSfnt, tagAt } from "../../src/lettering/sfnt.ts";
import { packedFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";

/** Version 0, one format 0 subtable, horizontal: pairs of glyph indices in rising order. */
const kernTable = (pairs: readonly (readonly [number, number, number])[]): Uint8Array => {
  const bytes = new Uint8Array(4 + 14 + 6 * pairs.length);
  const view = new DataView(bytes.buffer);
  view.setUint16(2, 1);
  view.setUint16(6, 14 + 6 * pairs.length);
  view.setUint16(8, 1);
  view.setUint16(10, pairs.length);
  for (const [index, [left, right, change]] of pairs.entries()) {
    view.setUint16(18 + 6 * index, left);
    view.setUint16(20 + 6 * index, right);
    view.setInt16(22 + 6 * index, change);
  }
  return bytes;
};

/** The font without its layout tables and with this one in their place. Entries stay sorted by tag. */
const withKernTable = (file: Uint8Array, table: Uint8Array): Uint8Array => {
  const font = openSfnt(file);
  const entries: { tag: string; bytes: Uint8Array }[] = [];
  for (let entry = 12; entry < 12 + 16 * font.tables.size; entry += 16) {
    const tag = tagAt(font.view, entry);
    const start = font.view.getUint32(entry + 8);
    const bytes = font.bytes.subarray(start, start + font.view.getUint32(entry + 12));
    if (tag !== "GPOS" && tag !== "GSUB" && tag !== "GDEF") entries.push({ tag, bytes });
  }
  entries.push({ tag: "kern", bytes: table });
  entries.sort((a, b) => (a.tag < b.tag ? -1 : 1));
  let end = 12 + 16 * entries.length;
  const whole = new Uint8Array(
    entries.reduce((total, { bytes }) => total + Math.ceil(bytes.length / 4) * 4, end),
  );
  const view = new DataView(whole.buffer);
  view.setUint32(0, 0x00010000);
  view.setUint16(4, entries.length);
  for (const [index, { tag, bytes }] of entries.entries()) {
    const entry = 12 + 16 * index;
    for (let letter = 0; letter < 4; letter += 1)
      view.setUint8(entry + letter, tag.charCodeAt(letter));
    view.setUint32(entry + 8, end);
    view.setUint32(entry + 12, bytes.length);
    whole.set(bytes, end);
    end += Math.ceil(bytes.length / 4) * 4;
  }
  return whole;
};

it("is read where a font has no GPOS kerning", () => {
  const record = packedFonts.find((font) => font.id === "overpass")!;
  const shaper = shaperOf(record);
  const letters = [..."ATVWY"].map((letter) => ({ letter, index: shaper.glyphIndex(letter) }));
  const pairs = letters
    .flatMap((left) =>
      letters.map((right, place) => [left.index, right.index, 10 * place - 25] as const),
    )
    .sort((a, b) => a[0] - b[0] || a[1] - b[1])
    .filter((_, index) => index % 3 !== 0);
  const font = withKernTable(bytesFromBase64(record.base64), kernTable(pairs));
  const kerning = pairKerning(openSfnt(font));
  const reference = opentype.parse(font.slice().buffer);
  let kerned = 0;
  for (const left of letters)
    for (const right of letters) {
      const expected = reference.getKerningValue(left.index, right.index);
      expect(kerning(left.index, right.index)).toBe(expected);
      if (expected !== 0) kerned += 1;
    }
  expect(kerned).toBe(pairs.filter(([, , change]) => change !== 0).length);
});
