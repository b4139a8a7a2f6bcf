// Sums of tolerances along a rail, against the trade's own example.

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { toleranceFacts } from "../../src/fit/along-rail/tolerance-facts.ts";
import { toleranceSum } from "../../src/fit/along-rail/tolerance-sum.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { findingsOf, readExample } from "../findings/example.ts";
import { consoleOf } from "./console-of.ts";

test("eight butted panels of 0.1 to each side: 1.6 at the worst, sqrt(16) x 0.1 as a root sum square", () => {
  const sides = Array.from({ length: 16 }, (_, side) => ({
    what: `panel ${Math.floor(side / 2) + 1}`,
    plusMinus: mm(0.1),
    by: "general" as const,
  }));
  const sum = toleranceSum(sides);
  expect(sum.worstCase).toBeCloseTo(1.6, 12);
  expect(sum.rootSumSquare).toBeCloseTo(0.4, 12);
  expect(sum.shares).toHaveLength(8);
  expect(sum.shares[0]?.plusMinus).toBeCloseTo(0.2, 12);
});

const PANEL = "mount: corner-screws\nwidth: 100 mm\nheight: HEIGHT\n";
const bay = (mount: string, length: string): string => `bays:
  wall: { mount: ${mount}, at: [500, 0, 900], along: [0, 0, 1], length: ${length}, depth: 100 mm }
panels:
`;

describe("panels in a bay", () => {
  // ISO 2768-1 class m: over 30 to 120 +-0.3, over 120 to 400 +-0.5.
  test("butted ones add up what ISO 2768-1 class m allows each, the largest share first", () => {
    const console = consoleOf(
      `${bay("corner-screws", "401 mm")}  - { file: a.yaml, as: a, bay: wall }\n  - { file: b.yaml, as: b, bay: wall }\n  - { file: c.yaml, as: c, bay: wall }\n`,
      {
        a: PANEL.replace("HEIGHT", "100 mm"),
        b: PANEL.replace("HEIGHT", "180 mm"),
        c: PANEL.replace("HEIGHT", "120 mm"),
      },
    );
    const [fact] = toleranceFacts(console.layout);
    expect(fact?.free).toBeCloseTo(1, 9);
    expect(fact?.worstCase).toBeCloseTo(0.3 + 0.5 + 0.3, 12);
    expect(fact?.rootSumSquare).toBeCloseTo(Math.sqrt(0.09 + 0.25 + 0.09), 12);
    expect(fact?.shares.map(({ what }) => what)).toEqual(["b", "a", "c"]);
  });

  test("those on studs pass nothing on, and lie under nominal at both ends", () => {
    const console = consoleOf(
      `${bay("console-rail", "20 modules")}  - { file: a.yaml, as: a, bay: wall }\n  - { file: b.yaml, as: b, bay: wall }\n`,
      { a: "", b: "" },
    );
    const [fact] = toleranceFacts(console.layout);
    expect(fact).toMatchObject({ worstCase: 0, rootSumSquare: 0, shares: [] });
    // 0.175 at each of four ends.
    expect(fact?.free).toBeCloseTo(0.7, 9);
  });

  // The table of ISO 2768-1 ends at 1000 mm: there the mount's own undersize, 0.25 mm at each end, is what a cut may be off by.
  test("longer than the standard's table says, whose limit it is is said", () => {
    const texts = new Map(
      readExample(join(import.meta.dirname, "../findings/fit/bay-overrun-by-tolerance.yaml")),
    );
    const sourceWith = (heights: readonly [string, string, string], length: string): unknown => {
      const long = new Map(texts);
      for (const [index, name] of ["a", "b", "c"].entries())
        long.set(
          `${name}.yaml`,
          texts.get(`${name}.yaml`)!.replace("410 mm", heights[index] ?? ""),
        );
      long.set("console.yaml", texts.get("console.yaml")!.replace("1230 mm", length));
      const found = findingsOf(long).find(({ code }) => code === "fit/bay-overrun-by-tolerance");
      return [found?.source?.kind, found?.source?.name, found?.measured?.value];
    };
    expect(sourceWith(["410 mm", "410 mm", "410 mm"], "1230 mm")).toEqual([
      "standard",
      "ISO 2768-1 class m for each panel's length",
      expect.closeTo(2.4, 9),
    ]);
    expect(sourceWith(["1100 mm", "410 mm", "410 mm"], "1920 mm")).toEqual([
      "standard",
      expect.stringContaining("over that, what the mount cuts"),
      expect.closeTo(0.8 + 0.8 + 2 * 0.25, 9),
    ]);
  });
});
