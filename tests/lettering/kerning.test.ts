// Kerning and advances against HarfBuzz 1.6.4 (harfbuzzjs), the shaper of browsers and publishing programs.

import { describe, expect, it } from "vitest";
import { bytesFromBase64 } from "../../src/lettering/base64.ts";
import { pairKerning } from "../../src/lettering/pair-kerning.ts";
import { openSfnt } from "../../src/lettering/sfnt.ts";
import { outlineFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";

const LETTERS = [
  ..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789",
  ...".,:;-/()'\"&+=%°ÄÅÉÖØÜß",
];

describe.each(outlineFonts.map((record) => [record.id, record] as const))("%s", (_, record) => {
  it("kerns every pair of letters, figures and signs as HarfBuzz does", () => {
    const shaper = shaperOf(record);
    const kerning = pairKerning(openSfnt(bytesFromBase64(record.base64)));
    const present = LETTERS.filter((letter) => shaper.glyphIndex(letter) !== 0);
    const alone = new Map(present.map((letter) => [letter, shaper.width(letter)]));
    const index = new Map(present.map((letter) => [letter, shaper.glyphIndex(letter)]));
    const wrong: string[] = [];
    let kerned = 0;
    for (const left of present)
      for (const right of present) {
        const expected = shaper.width(left + right) - alone.get(left)! - alone.get(right)!;
        const ours = kerning(index.get(left)!, index.get(right)!);
        if (ours !== expected) wrong.push(`${left}${right}: ${ours}, HarfBuzz ${expected}`);
        if (expected !== 0) kerned += 1;
      }
    expect(wrong).toEqual([]);
    expect(present.length ** 2).toBeGreaterThan(5000);
    expect(kerned).toBeGreaterThan(200);
  });
});
