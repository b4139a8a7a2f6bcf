// Lamp boxes: volumes by hand, walls in whole lines, LEDs that light the whole text, films of outlines alone, and a move.

import { beforeAll, describe, expect, test } from "vitest";
import { svgLabelFilm } from "../../src/export/svg-label-film.ts";
import { containsContour } from "../../src/geometry/containment.ts";
import { circle } from "../../src/geometry/contour.ts";
import { contourDistance } from "../../src/geometry/distance.ts";
import { contourExtent, regionArea } from "../../src/geometry/measure.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { recipeVolume } from "../../src/geometry/solid/recipe-volume.ts";
import { isLampBoxPart, type LampBoxPart } from "../../src/parts/printed/lamp-box-facts.ts";
import { lampBoxesWithSheets } from "../../src/parts/printed/lamp-boxes.ts";
import { openKernel } from "../support/kernel.ts";
import { laidPanel, printedFindings } from "./fitted-panel.ts";
import { printed, rounded } from "./trim-solid-check.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await openKernel();
});

/** An annunciator of 24 windows as a trainer has it, every alert class in it. */
const WORDS = ["FIRE", "BILGE", "FUEL", "NAV"];
const ALERTS = ["warning", "caution", "advisory", "none"];
const LEGENDS = Array.from(
  { length: 24 },
  (_, index) => `{ text: [${WORDS[index % 4]}, E ROOM], alert: ${ALERTS[index % 4]} }`,
).join(", ");

const annunciator = (
  box: string,
  { x = "centre", legends = LEGENDS, workshop = "" } = {},
): ReturnType<typeof boxed> =>
  boxed(
    `{ grid: { part: lamp-window-18x12, columns: 4, rows: 6, pitch: 24 mm, row-pitch: 14.4 mm }, at: { x: ${x}, top: 15.6 mm }, legends: [${legends}], lamp-box: ${box} }`,
    workshop,
  );

const boxed = (component: string, workshop = "") => {
  const laid = laidPanel(
    {
      height: "12 modules",
      lettering: "{ font: barlow-condensed-semibold, height: 3.9 mm }",
      components: `\n  w: ${component}`,
    },
    workshop,
  );
  const made = lampBoxesWithSheets(laid.layout, laid.context);
  return { ...laid, ...made, box: made.parts.find(isLampBoxPart), lid: made.parts[1] };
};

const soundBox = (box: LampBoxPart | undefined): LampBoxPart => {
  if (box === undefined) throw new Error("no lamp box");
  return box;
};

const codes = (findings: readonly { readonly code: string }[]): readonly string[] =>
  findings.map(({ code }) => code);

describe("the volume of a box of one cell", () => {
  const one = (box: string) => boxed(`{ part: lamp-window-18x12, at: centre, lamp-box: ${box} }`);

  // Walls of 5 lines: 22.5 x 16.5 outside, corner 1. An ear of radius 3.6 at each side, its centre 2.85 off the wall: what
  // of it lies in the wall is a circular segment.
  const segment = 3.6 ** 2 * Math.acos(2.85 / 3.6) - 2.85 * Math.sqrt(3.6 ** 2 - 2.85 ** 2);
  const outside = rounded(22.5, 16.5, 1) + 2 * (Math.PI * 3.6 ** 2 - segment);

  // The shelf holds 3 mm of frosted sheet on a ledge of two lines. M2 insert: pilot 3.2 and 0.3 for the printer, 4 + 1 deep.
  test("is that of its outline less cell, shelf and pilots", () => {
    const { box } = one("{ diffuser: frosted-3, flange: 0 mm }");
    const cell = 15 * rounded(16.2, 10.2, 0.5) + 3 * rounded(18, 12, 0.5);
    const pilots = 2 * 5 * Math.PI * 1.75 ** 2;
    const expected = 18 * outside - cell - pilots;
    expect(recipeVolume(soundBox(box).bodies[0]!.solid)).toBeCloseTo(expected, 5);
  });

  // The lid: 2 mm of plate, 1.6 of plug with 0.2 round it. LED seats 4.2 + 0.3 in the plate, 3.2 + 0.3 in the plug; M2
  // clearance 2.4 + 0.4. Its number stands 0.4 high on the plate: whatever is left of the volume is that relief.
  test("and its lid is plate and plug less the seats, and a number in relief", () => {
    const { lid } = one("{ diffuser: frosted-3, flange: 0 mm }");
    const plate = 2 * (outside - 2 * Math.PI * 2.25 ** 2 - 2 * Math.PI * 1.4 ** 2);
    const plug = 1.6 * (rounded(15.8, 9.8, 0.5) - 2 * Math.PI * 1.75 ** 2);
    const { solid } = lid!.bodies[0]!;
    const relief = recipeVolume(solid) - plate - plug;
    if (solid.kind !== "layered") throw new Error("a lid is layers");
    const [numbers] = solid.layers;
    const area = numbers!.regions.reduce(
      (sum, { outline, holes }) =>
        sum + regionArea({ outline: outline.contour, holes: holes.map(({ contour }) => contour) }),
      0,
    );
    expect(relief).toBeCloseTo(0.4 * area, 5);
    expect(area).toBeGreaterThan(1);
  });
});

const made = annunciator("{ diffuser: frosted-3 }");
const { lampBox } = soundBox(made.box);

describe("an annunciator of 24 windows, two LEDs each", () => {
  test("is judged without a word", () => {
    expect(made.findings).toEqual([]);
    expect(lampBox.cells.map(({ number }) => number)).toEqual(
      Array.from({ length: 24 }, (_, index) => index + 1),
    );
  });

  // Common practice: at least two full lines between neighbours, and the stock's opaque minimum, 1.35 mm.
  test("has inner walls of whole lines, at least two and at least opaque", () => {
    for (const wall of [lampBox.wallAcross!, lampBox.wallUp!, lampBox.outerWall]) {
      const lines = wall / lampBox.line;
      expect(lines).toBeCloseTo(Math.round(lines), 9);
      expect(lines).toBeGreaterThanOrEqual(2);
      expect(wall).toBeGreaterThanOrEqual(1.35);
    }
    // Windows 18 x 12 at 24 x 14.4 leave 6 and 2.4: 13 and 5 lines of 0.45.
    expect([lampBox.wallAcross, lampBox.wallUp]).toEqual([5.85, 2.25]);
    const [first, second] = lampBox.cells;
    const below = lampBox.cells[4]!;
    expect(contourDistance(first!.opening, second!.opening).gap).toBeCloseTo(5.85, 6);
    expect(contourDistance(first!.opening, below.opening).gap).toBeCloseTo(2.25, 6);
  });

  // Depth 15 to 20, common practice: here the spacer's 18 less 3 of diffuser.
  test("is as deep as its spacer, and its cells show each window whole", () => {
    expect(lampBox.depth).toBe(15);
    for (const [index, cell] of lampBox.cells.entries()) {
      const window = made.layout.layers[1]!.cutOuts.find(
        ({ owner, purpose }) => owner === `w.${index + 1}` && purpose === "clamp",
      )!;
      expect(containsContour(cell.opening, window.contour)).toBe(true);
    }
  });

  test("lights each text whole: no place of it farther from an LED than half its length", () => {
    for (const { text, leds } of lampBox.cells) {
      expect(leds).toHaveLength(2);
      expect(text!.reach).toBeLessThanOrEqual(text!.length / 2);
    }
  });

  test("reaches are what a count of places along the text gives", () => {
    for (const { window, text, leds } of lampBox.cells) {
      const { minX, maxX } = made.layout.markings.find(({ owner }) => owner === window)!.box;
      const places = Array.from({ length: 2001 }, (_, at) => minX + ((maxX - minX) * at) / 2000);
      const reach = Math.max(
        ...places.map((x) => Math.min(...leds.map((led) => Math.abs(led.x - x)))),
      );
      expect(text!.reach).toBeCloseTo(reach, 2);
    }
  });

  test("seats every LED in the plug of its own cell, apart from its neighbour", () => {
    const { lens, rim } = lampBox.lid;
    for (const { inside, leds } of lampBox.cells) {
      for (const at of leds)
        expect(containsContour(inside, circle(at, lens.modelled / 2))).toBe(true);
      expect(leds[1]!.x - leds[0]!.x).toBeGreaterThan(rim.modelled + 2 * lampBox.line);
    }
  });
});

describe("its box and lid", () => {
  test("print as one closed solid each", () => {
    for (const part of made.parts) {
      const mesh = printed(part, kernel);
      expect(mesh).toMatchObject({ faults: [], shells: 1, recipe: [] });
      expect(mesh.strays).toBeLessThan(1e-3);
    }
  });

  test("have a number in relief for every window, read from behind", () => {
    const { solid } = made.lid!.bodies[0]!;
    if (solid.kind !== "layered") throw new Error("a lid is layers");
    const [relief] = solid.layers;
    const boxes = relief!.regions.map(({ outline }) => contourExtent(outline.contour));
    for (const { inside } of lampBox.cells) {
      const cell = contourExtent(inside);
      const own = boxes.filter(
        ({ minX, maxX, minY, maxY }) =>
          minX > cell.minX &&
          maxX < cell.maxX &&
          minY > cell.minY - 1e-6 &&
          maxY < cell.maxY + 1e-6,
      );
      expect(own.length).toBeGreaterThanOrEqual(1);
    }
    // "12" seen from behind has its 1 on the left, that is at higher x from the front: the narrower figure.
    const twelve = contourExtent(lampBox.cells[11]!.inside);
    const figures = boxes
      .filter(
        ({ minX, maxX, minY }) =>
          minX > twelve.minX &&
          maxX < twelve.maxX &&
          minY > twelve.minY - 1e-6 &&
          minY < twelve.maxY,
      )
      .toSorted((a, b) => a.minX - b.minX);
    expect(figures).toHaveLength(2);
    const width = ({ minX, maxX }: (typeof boxes)[number]): number => maxX - minX;
    expect(width(figures[1]!)).toBeLessThan(width(figures[0]!));
  });

  test("have a diffuser for each cell that lies on its shelf with the sliding clearance", () => {
    const cuts = made.sheets[0]!.setUps[0]!.operations;
    expect(cuts).toHaveLength(24);
    for (const [index, cut] of cuts.entries()) {
      if (cut.kind !== "cut") throw new Error("a diffuser is cut");
      const { opening, inside } = lampBox.cells[index]!;
      expect(contourDistance(cut.contour, opening).gap).toBeCloseTo(0.2, 6);
      expect(containsContour(cut.contour, inside)).toBe(true);
    }
    expect(lampBox.shelf.ledge).toBe(0.9);
  });

  // 48 LEDs of 2 V and 20 mA.
  test("say what they take", () => {
    expect(lampBox.watts).toBeCloseTo(1.92, 9);
  });

  test("stand behind the windows as bodies that tile them: neighbours touch and don't overlap", () => {
    const tiles = made.layout.components.map(({ bodies }) => bodies[0]!);
    for (const [index, tile] of tiles.entries())
      for (const other of tiles.slice(index + 1))
        expect(contourDistance(tile.footprint, other.footprint).overlaps).toBe(false);
    const { plan } = soundBox(made.box).facts.box;
    const reach = tiles.map(({ footprint }) => contourExtent(footprint));
    expect(Math.min(...reach.map(({ minY }) => minY))).toBeLessThanOrEqual(plan.minY + 1e-9);
    expect(Math.max(...reach.map(({ maxY }) => maxY))).toBeGreaterThanOrEqual(plan.maxY - 1e-9);
  });
});

describe("the label film", () => {
  // MIL-STD-411F: warning red, caution yellow, advisory a third colour, green preferred.
  test("has each text where its window is, in the colour of its alert", () => {
    const { films, layout } = annunciator("{}");
    const [film] = films;
    for (const label of film!.labels) {
      const component = layout.components.find(({ id }) => id === label.window)!;
      const window = contourExtent(component.face[0]!);
      expect(label.words).toBe(component.legend!.text);
      for (const { outline } of label.fills) {
        const box = contourExtent(outline);
        expect(box.minX).toBeGreaterThan(window.minX);
        expect(box.maxX).toBeLessThan(window.maxX);
      }
    }
    const svg = svgLabelFilm(film!);
    const groupOf = (alert: string): string =>
      new RegExp(`<g id="${alert}">.*?</g>`, "s").exec(svg)![0];
    const hueOf = (alert: string): readonly number[] =>
      (/fill="#(..)(..)(..)"/.exec(groupOf(alert)) ?? [])
        .slice(1)
        .map((hex) => Number.parseInt(hex, 16));
    const [red, yellow, green] = ["warning", "caution", "advisory"].map(hueOf);
    expect(red![0]).toBeGreaterThan(2 * Math.max(red![1]!, red![2]!));
    expect(Math.min(yellow![0]!, yellow![1]!)).toBeGreaterThan(2 * yellow![2]!);
    expect(green![1]).toBeGreaterThan(2 * Math.max(green![0]!, green![2]!));
    for (const alert of ALERTS) expect(groupOf(alert).match(/<path/g)).toHaveLength(6);
  });

  test("is outlines and nothing else, whatever its words are", () => {
    const hostile = `"</g><script>alert(1)</script>"`;
    const legends = [
      hostile,
      `"<text x='1'>&amp; ]]>"`,
      `"javascript:x"`,
      ...Array.from({ length: 21 }, () => "A"),
    ].join(", ");
    const { films } = annunciator("{}", { legends });
    const svg = svgLabelFilm(films[0]!);
    expect(films[0]!.labels[0]!.words).toContain("<script>");
    const elements = [...svg.matchAll(/<\/?([a-zA-Z?]+)/g)].map(([, name]) => name);
    expect([...new Set(elements)].sort()).toEqual(["?xml", "g", "path", "svg", "title"]);
    expect(svg).not.toMatch(/script|javascript|<text|alert\(/);
    // What is not markup is numbers and letters of path data.
    const data = [...svg.matchAll(/ d="([^"]*)"/g)].map(([, path]) => path!);
    for (const path of data) expect(path).toMatch(/^[MLHVAZ0-9 .-]+$/);
  });

  test("is printed at full size: millimetres, one unit each, and a line to cut along", () => {
    const { films } = annunciator("{}");
    const svg = svgLabelFilm(films[0]!);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!;
    expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
    const { minX, maxX } = contourExtent(films[0]!.outline);
    expect(Number(width)).toBeCloseTo(maxX - minX + 10, 3);
    expect(svg).toContain('id="cut"');
  });
});

test("windows that move by 3 mm take cells, LEDs, diffusers and labels with them", () => {
  const [before, after] = ["70 mm", "73 mm"].map((x) =>
    boxed(
      `{ grid: { part: lamp-window-18x12, columns: 2, rows: 2, pitch: 24 mm, row-pitch: 14.4 mm }, at: { x: ${x}, top: 30 mm }, legends: [A, B, C, D], lamp-box: {} }`,
    ),
  );
  const places = (made: typeof before): readonly number[] => {
    const { lampBox, facts } = soundBox(made!.box);
    return [
      facts.box.plan.minX,
      ...lampBox.cells.flatMap(({ opening, inside, leds }) => [
        contourExtent(opening).minX,
        contourExtent(inside).maxX,
        ...leds.map(({ x }) => x),
      ]),
      ...lampBox.lid.screws.map(({ x }) => x),
      ...made!.films[0]!.labels.flatMap(({ fills }) =>
        fills.map(({ outline }) => contourExtent(outline).minX),
      ),
      ...made!.sheets[0]!.setUps[0]!.operations.flatMap((operation) =>
        operation.kind === "cut" ? [operation.centre.x] : [],
      ),
      ...made!.layout.components.map(({ bodies }) => contourExtent(bodies[0]!.footprint).minX),
    ];
  };
  const from = places(before);
  expect(from.length).toBeGreaterThan(25);
  for (const [index, x] of places(after).entries()) expect(x - from[index]!).toBeCloseTo(3, 9);
});

describe("LEDs", () => {
  const leds = (count: number, part = "lamp-window-30x20") =>
    boxed(`{ part: ${part}, at: centre, lamp-box: { leds: ${count} } }`);

  // The cell of a 30 x 20 window is 28.2 x 18.2 inside its ledge.
  test.each([
    [1, 1, 1],
    [2, 2, 1],
    [3, 3, 1],
    [4, 2, 2],
    [6, 3, 2],
  ])("%i stand in %i columns and %i rows, evenly", (count, columns, rows) => {
    const [cell] = soundBox(leds(count).box).lampBox.cells;
    expect(new Set(cell!.leds.map(({ x }) => x.toFixed(6))).size).toBe(columns);
    expect(new Set(cell!.leds.map(({ y }) => y.toFixed(6))).size).toBe(rows);
    if (columns > 1) expect(cell!.pitch.across).toBeCloseTo(28.2 / columns, 9);
    if (rows > 1) expect(cell!.pitch.up).toBeCloseTo(18.2 / rows, 9);
  });

  test("that have no room are refused with both numbers", () => {
    const { parts, findings } = leds(24, "lamp-window-18x12");
    expect(parts).toEqual([]);
    expect(codes(findings)).toEqual(["parts/lamp-box-leds"]);
    expect(findings[0]!.measured!.value).toBeLessThan(findings[0]!.limit!.value);
  });

  test("that are no bare LEDs are refused", () => {
    const box = (led: string): string =>
      `{ part: lamp-window-18x12, at: centre, lamp-box: { led: ${led} } }`;
    for (const led of ["led-5-bezel", "toggle-12", "no-such-led"])
      expect(codes(boxed(box(led)).findings)).toEqual(["parts/lamp-box-leds"]);
    expect(boxed(box("led-5")).findings).toEqual([]);
  });
});

describe("is not made, or asked about,", () => {
  test("where its windows are no grid", () => {
    const ring =
      "{ ring: { part: lamp-window-18x12, count: 3, radius: 30 mm }, at: centre, lamp-box: {} }";
    expect(codes(boxed(ring).findings)).toEqual(["parts/lamp-box-pattern"]);
    const turned = "{ part: lamp-window-18x12, at: centre, turn: 30 deg, lamp-box: {} }";
    expect(codes(boxed(turned).findings)).toEqual(["parts/lamp-box-pattern"]);
    const lying = "{ part: lamp-window-18x12, at: centre, turn: 90 deg, lamp-box: {} }";
    expect(boxed(lying).findings).toEqual([]);
  });

  // 13.4 less 12 leaves 1.4: three lines. 13 leaves 1.0: two lines, 0.9, below the stock's 1.35.
  test("where neighbours stand too near for an opaque wall", () => {
    const rows = (pitch: number): string =>
      `{ column: { part: lamp-window-18x12, count: 2, pitch: ${pitch} mm }, at: centre, lamp-box: {} }`;
    expect(boxed(rows(13.4)).findings).toEqual([]);
    const { parts, findings } = boxed(rows(13));
    expect(parts).toEqual([]);
    expect(codes(findings)).toEqual(["parts/no-opaque-wall"]);
    expect(findings[0]).toMatchObject({ measured: { value: 0.9 } });
    expect(findings[0]!.limit!.value).toBeCloseTo(1.35, 9);
  });

  test("where it is not 15 to 20 mm deep", () => {
    const deep = (depth: number): string =>
      `{ part: lamp-window-18x12, at: centre, lamp-box: { depth: ${depth} mm } }`;
    for (const [depth, limit] of [[14.9, 15], [15], [20], [20.1, 20]] as const) {
      const made = boxed(deep(depth));
      expect(made.parts).toHaveLength(2);
      const found = printedFindings(made, made.parts).map((one) => one.limit?.value);
      expect(found).toEqual(limit === undefined ? [] : [limit]);
    }
  });
});
