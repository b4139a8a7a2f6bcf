// Lanes of strips and the way of their cables: cut lengths, distances, walls between circuits, no straight line to an exit.

import { describe, expect, test } from "vitest";
import { containsPoint } from "../../src/geometry/containment.ts";
import { type Contour, type Point, point } from "../../src/geometry/contour.ts";
import { pointAlong } from "../../src/geometry/edge.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { pointDistance } from "../../src/geometry/point.ts";
import type { SolidLayer } from "../../src/geometry/solid/solid.ts";
import type { ChannelFact, NotchFact } from "../../src/parts/printed/printed-facts.ts";
import { PITCH_OVER_DISTANCE } from "../../src/parts/printed/strip-lanes.ts";
import { testLibrary } from "../support/test-library.ts";
import { isMaterial, layerAt, layeredBody, printed, soundPart, stackOf } from "./printed-panel.ts";

const FEW = `
  a: { part: toggle-12, at: { left: 40 mm, top: 40 mm } }
  b: { part: led-5-bezel, at: { left: 100 mm, top: 40 mm } }
  c: { part: led-5-bezel, at: { left: 100 mm, bottom: 30 mm } }`;

const lit = (strip: string, components = FEW): ReturnType<typeof soundPart> =>
  soundPart(printed({ height: "12 modules", stack: stackOf(strip), components }).spacer);

describe("the depth that a strip wants", () => {
  // LEDs a metre, and the distances at which pitch over distance is 1.5 and 1 (common practice): 60 wants 11 to 17 mm,
  // 96 7 to 10.4, 120 5.6 to 8.3, 144 4.6 to 7.
  test.each([
    [60, 11, 17],
    [96, 7, 10.4],
    [120, 5.6, 8.3],
    [144, 4.6, 7],
  ])("of %i LEDs a metre is %f to %f mm", (perMetre, least, most) => {
    const pitch = 1000 / perMetre;
    expect(pitch / PITCH_OVER_DISTANCE.most).toBeCloseTo(least, 0);
    expect(pitch / PITCH_OVER_DISTANCE.least).toBeCloseTo(most, 0);
  });

  test("is held by a spacer of 14 mm for 60 LEDs a metre, and not by one of 8 mm", () => {
    const ratio = ({ pitch, distance }: ChannelFact): number => pitch / distance;
    const [deep] = lit("strip-60-12v").facts.channels;
    const shallow = soundPart(
      printed({ height: "12 modules", stack: stackOf("strip-60-12v", "", 8), components: FEW })
        .spacer,
    ).facts.channels[0];
    expect(deep?.pitch).toBeCloseTo(16.667, 3);
    // Strip 2.2 high on a floor of 1.4: 14 - 3.6 and the backing's 2 mm to the rear of the opal face.
    expect(deep?.distance).toBeCloseTo(12.4, 6);
    expect(ratio(deep!)).toBeLessThan(1.5);
    expect(ratio(shallow!)).toBeGreaterThan(1.5);
  });
});

describe("lanes", () => {
  test.each([
    ["strip-60-12v", 50, 3],
    ["strip-60-5v", 16.667, 1],
    ["strip-60-12v-single", 16.667, 1],
    ["strip-144-5v-addressable", 6.944, 1],
  ])("of %s are whole cut lengths and a joint", (id, cut, leds) => {
    const strip = testLibrary().catalogue.strips.get(id)!;
    const { channels } = lit(id).facts;
    expect(channels.length).toBeGreaterThan(0);
    for (const channel of channels) {
      expect(strip.cutEvery).toBeCloseTo(cut, 3);
      expect(channel.length).toBeCloseTo(channel.cuts * strip.cutEvery + strip.joint, 5);
      expect(channel.leds).toHaveLength(channel.cuts * leds);
      expect(channel.width).toBeCloseTo(strip.width + 0.8, 9);
      for (const [index, led] of channel.leds.slice(1).entries())
        expect(pointDistance(channel.leds[index]!, led)).toBeCloseTo(strip.pitch, 5);
    }
  });

  test("lie in the open, on their channels", () => {
    const part = lit("strip-60-5v");
    const solid = layeredBody(part);
    const { box, channels } = part.facts;
    const floor = layerAt(solid, box.rear + 1.5);
    const above = layerAt(solid, box.rear + 3);
    for (const { from, to, leds } of channels)
      for (const at of [from, to, ...leds]) {
        expect(isMaterial(floor, at)).toBe(false);
        expect(isMaterial(above, at)).toBe(false);
        expect(isMaterial(layerAt(solid, box.rear + 1), at)).toBe(true);
      }
  });

  test("of LED boards hold whole boards, sunk as deep as their solder stands out", () => {
    const part = lit("led-board-2-24x12");
    const { channels, box } = part.facts;
    expect(channels.length).toBeGreaterThan(0);
    for (const { leds, cuts } of channels) expect(leds).toHaveLength(2 * cuts);
    expect(isMaterial(layerAt(layeredBody(part), box.rear + 3.2), channels[0]!.from)).toBe(false);
  });

  test("are told of where not one cut fits", () => {
    const { findings } = printed({
      height: "5 modules",
      stack: stackOf("strip-60-12v"),
      components:
        "\n  a: { row: { part: toggle-12, count: 4, pitch: 24 mm }, at: { left: 37 mm, y: centre } }",
    });
    expect(findings.map(({ code }) => code)).toContain("parts/no-lane");
  });

  test("of an unknown strip are told of with the nearest names", () => {
    const { findings } = printed({ stack: stackOf("strip-60-12w") });
    expect(findings.map(({ code }) => code)).toEqual(["parts/unknown-strip"]);
    expect(findings[0]?.message).toContain("strip-60-12v");
  });
});

test("circuits stand apart behind a wall of their own", () => {
  const part = soundPart(
    printed({
      height: "12 modules",
      stack: stackOf(
        "strip-60-5v, circuit: night, apart: [{ circuit: day, around: [b, c], gap: 14 mm }]",
      ).replace(/, circuit: night \} \}$/, " } }"),
      components: FEW,
    }).spacer,
  );
  const walls = part.facts.walls.filter(({ kind }) => kind === "circuit");
  expect(walls).toMatchObject([{ owners: ["day"], lines: 3 }]);
  const circuits = new Set(part.facts.channels.map(({ circuit }) => circuit));
  expect([...circuits].toSorted()).toEqual(["day", "night"]);
  const layer = layerAt(layeredBody(part), part.facts.box.front - 3);
  const ofCircuit = (name: string): readonly Point[] =>
    part.facts.channels.filter(({ circuit }) => circuit === name).flatMap(({ leds }) => leds);
  for (const day of ofCircuit("day"))
    for (const night of ofCircuit("night")) expect(isBlocked(layer, day, night)).toBe(true);
});

describe("a cable's way out", () => {
  test("is rounded, passes the plug, turns once, and stands clear of the rails", () => {
    const { notches } = lit("strip-60-5v").facts;
    expect(notches).toHaveLength(1);
    const { exit, plug, cornerRadius, turns, passage } = notches[0]!;
    expect({ cornerRadius, turns }).toEqual({ cornerRadius: 2, turns: 1 });
    const arcs = edgesOf(exit).filter((edge) => edge.kind === "arc");
    expect(arcs).toHaveLength(4);
    for (const arc of arcs) expect(arc.kind === "arc" ? arc.radius : 0).toBeCloseTo(2, 6);
    const xs = edgesOf(exit).map(({ from }) => from.x);
    const ys = edgesOf(exit).map(({ from }) => from.y);
    const sides = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    expect(Math.max(...sides)).toBeGreaterThan(plug.width);
    expect(Math.min(...sides)).toBeGreaterThan(plug.height);
    for (const at of [...places(exit), ...places(passage)]) {
      expect(at.x).toBeGreaterThan(9.525);
      expect(at.x).toBeLessThan(146.05 - 9.525);
    }
  });

  test.each(["strip-60-5v", "strip-60-12v", "strip-120-5v"])(
    "no straight line from an LED of %s reaches it",
    (strip) => {
      const part = lit(strip);
      const layer = layerAt(layeredBody(part), part.facts.box.front - 3);
      const [notch] = part.facts.notches;
      expect(notch).toBeDefined();
      const leds = part.facts.channels.flatMap((channel) => channel.leds);
      expect(seen(layer, leds, notch!)).toEqual([]);
    },
  );

  test("nor from anywhere in the open", () => {
    const part = lit("strip-60-5v");
    const layer = layerAt(layeredBody(part), part.facts.box.front - 3);
    const [notch] = part.facts.notches;
    const open: Point[] = [];
    for (let x = 12; x < 135; x += 2.3)
      for (let y = 3; y < 112; y += 2.3) {
        const at = point(x, y);
        if (!isMaterial(layer, at) && !containsPoint(notch!.passage, at)) open.push(at);
      }
    expect(open.length).toBeGreaterThan(300);
    expect(seen(layer, open, notch!)).toEqual([]);
  });

  test("is told of where there is no room for it", () => {
    const { findings } = printed({ height: "3 modules", stack: stackOf("strip-60-5v") });
    expect(findings.map(({ code }) => code)).toContain("parts/no-cable-way");
  });
});

const places = (contour: Contour): readonly Point[] =>
  edgesOf(contour).flatMap((edge) => [edge.from, pointAlong(edge, 0.5)]);

const isBlocked = (layer: SolidLayer, from: Point, to: Point): boolean => {
  const steps = Math.ceil(pointDistance(from, to) / 0.25);
  for (let step = 0; step <= steps; step += 1) {
    const share = step / steps;
    const at = point(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
    if (isMaterial(layer, at)) return true;
  }
  return false;
};

/** Places from which some place of the exit is in sight. */
const seen = (layer: SolidLayer, from: readonly Point[], notch: NotchFact): readonly Point[] => {
  const inside = places(notch.exit).map((at) =>
    point(at.x + (notch.at.x - at.x) * 0.02, at.y + (notch.at.y - at.y) * 0.02),
  );
  return from.filter((at) => [...inside, notch.at].some((target) => !isBlocked(layer, at, target)));
};
