// Walls that keep light in, lanes for strips, heat of a closed box: against figures from outside.

import { describe, expect, test } from "vitest";
import { heatOf } from "../../src/light/box-heat.ts";
import { testLibrary } from "../support/test-library.ts";
import { displayPanel, leverPanel, shaftPanel } from "./dark-panels.ts";

const spacers = [leverPanel(), displayPanel(), shaftPanel()].map(
  ({ printedParts }) => printedParts.find(({ role }) => role === "spacer")!,
);

describe("walls at a line of 0.45 mm", () => {
  test("are whole multiples, opaque from 1.35 mm on (common practice: 0.9, 1.35, 1.8, 2.25)", () => {
    for (const { facts } of spacers)
      for (const { thickness, line, lines, opaqueFrom } of facts.walls) {
        expect(line).toBe(0.45);
        expect(thickness).toBeCloseTo(lines * 0.45, 9);
        expect(thickness).toBeGreaterThanOrEqual(opaqueFrom ?? 1.35);
      }
  });

  test("and collars and floors are no thinner", () => {
    for (const { facts } of spacers) {
      for (const { thickness } of facts.collars) expect(thickness).toBeGreaterThanOrEqual(1.35);
      expect(facts.floor?.thickness).toBeGreaterThanOrEqual(1.35);
    }
  });
});

describe("lanes", () => {
  test("hold whole cut lengths and a joint, and an LED each 16.667 mm (60 a metre)", () => {
    for (const { facts } of spacers) {
      expect(facts.channels.length).toBeGreaterThan(0);
      for (const { cuts, length, leds, from, to, pitch } of facts.channels) {
        expect(pitch).toBeCloseTo(1000 / 60, 6);
        expect(leds).toHaveLength(cuts);
        expect(length).toBeGreaterThanOrEqual(cuts * (1000 / 60));
        expect(Math.abs(to.x - from.x) + Math.abs(to.y - from.y)).toBeCloseTo(length, 6);
      }
    }
  });
});

describe("a closed box", () => {
  const { catalogue } = testLibrary();
  const [part] = spacers;

  test("gains P / (h A) at 9 W/m²K over its outside (common practice: 8 to 10), every lamp at full brightness", () => {
    const heat = heatOf(part!, catalogue)!;
    const leds = part!.facts.channels.reduce((sum, channel) => sum + channel.leds.length, 0);
    const strip = catalogue.strips.get("strip-60-5v-addressable")!;
    const each = (5 * strip.milliampsPerCut) / strip.ledsPerCut / 1000;
    expect(heat.watts).toBeCloseTo(leds * each, 9);
    const { plan, front, rear } = part!.facts.box;
    const [a, b, c] = [plan.maxX - plan.minX, plan.maxY - plan.minY, front - rear];
    const area = (2 * (a * b + b * c + c * a)) / 1e6;
    expect(heat.area).toBeCloseTo(area, 12);
    expect(heat.temperature - heat.room).toBeCloseTo(heat.watts / (9 * area), 9);
  });

  test("without lamps has no heat to tell of", () => {
    const { facts } = part!;
    expect(heatOf({ ...part!, facts: { ...facts, channels: [] } }, catalogue)).toBeNull();
  });
});
