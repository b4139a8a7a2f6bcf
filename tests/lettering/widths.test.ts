// Widths of real legends against HarfBuzz 1.6.4: its advances, its kerning and the height of its own outline of E.

import { describe, expect, it } from "vitest";
import { mm } from "../../src/geometry/quantity.ts";
import { setText } from "../../src/lettering/set-text.ts";
import { faceNamed } from "./faces.ts";
import { outlineFonts } from "./packed-fonts.ts";
import { shaperOf } from "./shaper.ts";

const LEGENDS = [
  "HAUL SPEED",
  "PAY OUT",
  "AVAILABLE",
  "TO/FROM",
  "BRAKE",
  "HELD",
  "LINE TENSION kN",
  "GEN 1",
  "BUS TIE",
  "WATER LEVEL",
  "TEST",
  "AUTO/MAN",
  "AFT",
  "V",
  "TYPE AVAWAY LTD.",
  "DEPTH (m)",
  "-10 +10 %",
  "45°",
  "Voltage Tap",
  "",
  " ",
];

const onCurveHeights = (outline: string): readonly number[] =>
  [...outline.matchAll(/[ML]\s*(-?[\d.]+)[ ,]+(-?[\d.]+)/g)].map(([, , y]) => Number(y));

describe.each(outlineFonts.map((record) => [record.id, record] as const))("%s", (id, record) => {
  const face = faceNamed(id);
  const shaper = shaperOf(record);
  const heights = onCurveHeights(shaper.outline("E"));
  const capital = Math.max(...heights) - Math.min(...heights);

  it.each(LEGENDS)("%j is as wide as HarfBuzz makes it", (legend) => {
    for (const capHeight of [3, 4.072, 12.7]) {
      const set = setText(face, legend, { capHeight: mm(capHeight), align: "start" });
      const expected = (shaper.width(legend) / capital) * capHeight;
      expect(set.missing).toEqual([]);
      expect(set.advance).toBeCloseTo(expected, 9);
    }
  });

  it("kerns some of these legends, so that the widths above prove it", () => {
    const kerned = LEGENDS.filter((text) => shaper.width(text) !== shaper.unkernedWidth(text));
    expect(kerned.length).toBeGreaterThan(3);
  });

  it("adds tracking between characters, not after the last", () => {
    const plain = setText(face, "TRIP", { capHeight: mm(4), align: "start" });
    const tracked = setText(face, "TRIP", { capHeight: mm(4), align: "start", tracking: mm(0.3) });
    expect(tracked.advance - plain.advance).toBeCloseTo(0.9, 12);
  });

  it("aligns by advance width", () => {
    const [start, middle, end] = (["start", "middle", "end"] as const).map((align) =>
      setText(face, "SLIP", { capHeight: mm(4), align }),
    );
    expect(middle!.box.minX).toBeCloseTo(start!.box.minX - start!.advance / 2, 12);
    expect(end!.box.minX).toBeCloseTo(start!.box.minX - start!.advance, 12);
    expect(end!.box.maxX).toBeLessThan(0.1);
  });
});
