// The packed fonts: ids, and the licence that must travel with each (SIL Open Font License 1.1, condition 2).

import { expect, it } from "vitest";
import { openLettering } from "../../src/lettering/lettering.ts";
import { packedFonts } from "./packed-fonts.ts";

it("packs these faces", () => {
  expect(packedFonts.map(({ id, kind }) => `${id}: ${kind}`)).toEqual([
    "b612: outline",
    "b612-bold: outline",
    "barlow-condensed: outline",
    "barlow-condensed-semibold: outline",
    "overpass: outline",
    "overpass-semibold: outline",
    "saira-stencil: stencil",
    "single-line: single-line",
  ]);
});

it.each(packedFonts.map((record) => [record.id, record] as const))(
  "%s carries its notice and the whole licence",
  (_, { licence }) => {
    expect(licence).toMatch(/Copyright \d{4} The|Created by: +Sheldon B\. Michaels/);
    expect(licence).toContain("SIL OPEN FONT LICENSE Version 1.1");
    expect(licence).toContain("PERMISSION & CONDITIONS");
    expect(licence).toContain("DISCLAIMER");
  },
);

it("opens no font before a character of it is asked for", () => {
  const broken = { ...packedFonts[0]!, base64: "!" };
  const { faces } = openLettering([broken]);
  const face = faces.get(broken.id)!;
  expect(face.kind).toBe("outline");
  expect(() => face.has("A")).toThrow("base64");
});

it("refuses two fonts of one id", () => {
  expect(() => openLettering([packedFonts[0]!, packedFonts[0]!])).toThrow("id of its own");
});
