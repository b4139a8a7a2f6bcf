// Component lists of many kinds become panels without a fault and with room for every hand, in a text that stays the same.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readDesign } from "../../src/design/read-design.ts";
import { extentsOverlap } from "../../src/geometry/extent.ts";
import { contourExtent } from "../../src/geometry/measure.ts";
import { testLibrary } from "../support/test-library.ts";
import { arranged, type How } from "./arranged.ts";

const HEAD = "part,quantity,legend,group,note\n";

const TEN_LINES = `${HEAD}toggle-6,2,MAIN; AUX,Power,
led-5-bezel,2,ON; FAULT,Power,
fuse-holder-5x20,1,2 A,Power,
push-button-16,2,START; STOP,Pump,
pot-16,1,SPEED,Pump,
lamp-8,1,RUNNING,Pump,
rotary-12,1,MODE,Pump,
toggle-6-locking,1,BYPASS,Valves,
toggle-6,2,FILL; DRAIN,Valves,
led-3-bezel,3,LOW; HALF; FULL,Valves,
`;

const MIXED = `${HEAD}toggle-12,8,FEED,Feed,
led-5-bezel,8,,Feed,
push-button-16,6,CALL,Calls,
pot-16,4,LEVEL,Levels,
rotary-12,2,RANGE,Levels,
lamp-8,6,STATE,States,
tactile-12-cap,6,KEY,Keys,
`;

const PEOPLE: readonly (readonly [string, string, How])[] = [
  ["ten lines in three groups", TEN_LINES, {}],
  ["forty of seven kinds", MIXED, {}],
  ["no legends, no groups", `${HEAD}toggle-6,9,,,\nled-3-bezel,14,,,\n`, {}],
  ["one wide display", `${HEAD}character-20x4,1,,,\npush-button-12,3,UP; DOWN; SET,,\n`, {}],
  ["on a lit stack", `${HEAD}toggle-12,4,HEAT,Heat,\ntoggle-12,2,LIGHT,Light,\n`, { stack: "lit" }],
  ["on a rack panel", TEN_LINES, { mount: "rack-19" }],
  [
    "in a box lid of 160",
    `${HEAD}toggle-6,3,A; B; C,,\npot-9,2,X; Y,,\n`,
    { mount: "box-lid", width: 160 },
  ],
  ["one thing alone", `${HEAD}toggle-6,1,ON,,\n`, {}],
  [
    "words of any kind",
    `${HEAD}toggle-6,1,"NO: 1 # ""x""",'a: {b}',\ntoggle-6,1,"- [dash]",null,"* note & more"\nled-5-bezel,1,0x10,~,yes\n`,
    {},
  ],
];

const listOf = (part: string, quantity: number | string, legend = ""): string =>
  `${HEAD}${part},${quantity},${legend},,\n`;

describe("lists that people write", () => {
  test.each(PEOPLE)("%s: reads back, compiles, no fault, hands clear", (_name, list, how) => {
    const made = arranged(list, how);
    expect(
      made.findings.filter(({ code }) => code.startsWith("design/")).map(({ message }) => message),
    ).toEqual([]);
    expect(made.troubles.map(({ code, message }) => `${code} ${message}`)).toEqual([]);
    expect(made.findings.filter(({ severity }) => severity === "fault")).toEqual([]);
    expect(made.panel?.layout).not.toBeNull();
    expect(readDesign("panel.yaml", made.text ?? "").findings).toEqual([]);
  });

  test.each(PEOPLE)("%s: every thing of the list stands on the panel", (_name, list, how) => {
    const wanted = list
      .split("\n")
      .slice(1)
      .flatMap((line) => {
        const [part = "", quantity = "0"] = line.split(",");
        return Array.from({ length: Number(quantity) }, () => part);
      });
    const placed = arranged(list, how).panel?.layout?.components.map(({ part }) => part.id) ?? [];
    expect([...placed].sort()).toEqual(wanted.sort());
  });

  test.each(PEOPLE)("%s: bodies apart from each other and off the rails", (_name, list, how) => {
    const layout = arranged(list, how).panel?.layout;
    const bodies = (layout?.components ?? []).map(({ bodies: own, id }) => ({
      id,
      boxes: own.map(({ footprint }) => contourExtent(footprint)),
    }));
    for (const [index, { boxes }] of bodies.entries()) {
      for (const other of bodies.slice(index + 1))
        expect(boxes.some((a) => other.boxes.some((b) => extentsOverlap(a, b)))).toBe(false);
      for (const rail of layout?.rails ?? [])
        expect(boxes.some((box) => extentsOverlap(box, rail))).toBe(false);
    }
  });

  test.each(PEOPLE)("%s: the text is the same on every run", (_name, list, how) => {
    expect(arranged(list, how).text).toBe(arranged(list, how).text);
  });
});

describe("how much panel a list takes", () => {
  /**
   * The height that the boxes of everything would take, set without any gap, between rails and borders; and the borders
   * round each group, 4 mm from it, with their legends. No arrangement in groups can do with less.
   */
  const areaBound = (list: string, groups: number): number => {
    const layout = arranged(list).panel?.layout;
    const area = (layout?.components ?? []).reduce((sum, { bodies, face, grasp }) => {
      const boxes = [
        ...bodies.map(({ footprint }) => footprint),
        ...face,
        ...(grasp === null ? [] : [grasp]),
      ].map(contourExtent);
      const low = Math.min(...boxes.map(({ minX }) => minX));
      const high = Math.max(...boxes.map(({ maxX }) => maxX));
      const foot = Math.min(...boxes.map(({ minY }) => minY));
      const head = Math.max(...boxes.map(({ maxY }) => maxY));
      // Half the people's 13 to 25 mm round what a hand takes hold of, and a legend of 4.1 with its gap above.
      const room = grasp === null ? 1.5 : 7;
      return sum + (high - low + 2 * room) * (head - foot + 2 * room + 6);
    }, 0);
    const frames = groups * 2 * (4 + 4.1 / 2);
    return area / (146.05 - 2 * (9.5 + 4)) + frames;
  };

  test.each([
    ["ten lines", TEN_LINES, 3],
    ["forty of seven kinds", MIXED, 5],
  ])("%s: within a few modules of what the areas alone come to", (_name, list, groups) => {
    const height = arranged(list).panel?.layout?.nominal.maxY ?? Number.NaN;
    expect((height - areaBound(list, groups)) / 9.525).toBeLessThanOrEqual(5);
  });

  test("a list takes no less panel when it grows", () => {
    const height = (count: number): number =>
      arranged(listOf("push-button-16", count)).panel?.layout?.nominal.maxY ?? Number.NaN;
    const heights = [1, 3, 6, 12, 24].map(height);
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
    expect(new Set(heights).size).toBeGreaterThan(2);
  });
});

describe("the text", () => {
  const lines = (list: string): readonly string[] => (arranged(list).text ?? "").split("\n");

  test("equal things of one line are written as rows of like length, at one pitch", () => {
    const rows = lines(`${HEAD}led-5-bezel,8,,Lamps,\n`).filter((line) => line.includes("row:"));
    expect(rows.map((row) => /count: (\d+)/.exec(row)?.[1])).toEqual(["4", "4"]);
  });

  test("a row's legends stand in its list, in reading order", () => {
    expect(lines(TEN_LINES)).toContain("    legends: [LOW, HALF, FULL]");
  });

  test("a legend that begins with a figure gives no name: the part does", () => {
    expect(lines(TEN_LINES)).toContain("  fuse-holder-5x20:");
  });

  test("each group has its comment and its border", () => {
    const text = lines(TEN_LINES);
    for (const group of ["Power", "Pump", "Valves"]) {
      expect(text).toContain(`  # ${group}`);
      expect(
        text.some((line) => line.startsWith("  - border:") && line.includes(`legend: ${group} `)),
      ).toBe(true);
    }
  });

  test("every distance is a round half millimetre", () => {
    const distances = [
      ...lines(MIXED)
        .join("\n")
        .matchAll(/(?:left|top|centres|pitch): ([\d.]+) mm/g),
    ];
    expect(distances.length).toBeGreaterThan(15);
    for (const [, distance] of distances) expect(Number.isInteger(2 * Number(distance))).toBe(true);
  });
});

describe("a lit stack", () => {
  test("keeps its fixings: each has its web, none lies further than 80 from the next", () => {
    const made = arranged(`${HEAD}toggle-12,12,FEED,Feed,\n`, { stack: "lit" });
    const found = made.panel?.findings.map(({ code }) => code) ?? [];
    expect(made.panel?.layout?.fixings.length).toBeGreaterThan(5);
    expect(found).not.toContain("checks/over-fixing");
    expect(found).not.toContain("checks/fixings-apart");
    expect(found).not.toContain("layout/fixing-room");
  });
});

describe("lists that can't be arranged", () => {
  test("an unknown part is told with the nearest, and the rest is arranged", () => {
    const made = arranged(`${HEAD}toggle-66,1,,,\ntoggle-6,2,A; B,,\n`);
    expect(made.findings.map(({ code }) => code)).toContain("layout/unknown-part");
    expect(made.panel?.layout?.components).toHaveLength(2);
  });

  test("500 buttons are too many", () => {
    const made = arranged(listOf("push-button-22", 500));
    expect(made.text).toBeNull();
    expect(made.findings.map(({ code }) => code)).toEqual(["arrange/too-many"]);
  });

  test.each([0, -1, "many", "1e9"])("a quantity of %s is a finding", (quantity) => {
    const made = arranged(listOf("toggle-6", quantity));
    expect(made.text).toBeNull();
    expect(made.findings.some(({ severity }) => severity === "fault")).toBe(true);
  });

  test("an instrument wider than the panel between the rails is not put on it in silence", () => {
    const made = arranged(`${HEAD}meter-96,2,A; B,,\n`, { mount: "box-lid", width: 90 });
    expect(made.text === null || made.troubles.length > 0).toBe(true);
  });

  test("an empty list, an unknown mount", () => {
    expect(arranged(HEAD).text).toBeNull();
    const made = arranged(TEN_LINES, { mount: "console-rial" });
    expect(made.text).toBeNull();
    expect(made.findings.map(({ code }) => code)).toContain("layout/unknown-mount");
  });
});

describe("any list of common parts", () => {
  const seed = 20_261_124;
  const COMMON = [
    "toggle-6",
    "toggle-12",
    "led-5-bezel",
    "lamp-8",
    "push-button-16",
    "pot-16",
    "rotary-12",
    "tactile-12-cap",
    "fuse-holder-5x20",
  ];
  const line = fc.tuple(
    fc.constantFrom(...COMMON),
    fc.integer({ min: 1, max: 5 }),
    fc.constantFrom("", "ON", "HEATER", "A; B", "FUEL PUMP"),
    fc.constantFrom("", "One", "Two"),
  );

  test(`is arranged without a fault (seed ${seed})`, { timeout: 120_000 }, () => {
    testLibrary();
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 8 }), (lines) => {
        const list =
          HEAD +
          lines
            .map(([part, quantity, legend, group]) => `${part},${quantity},${legend},${group},\n`)
            .join("");
        const made = arranged(list);
        expect(made.troubles.map(({ message }) => message)).toEqual([]);
        expect(made.panel?.layout?.components.length).toBe(
          lines.reduce((sum, [, quantity]) => sum + quantity, 0),
        );
      }),
      { seed, numRuns: 25 },
    );
  });
});
