// The kinds of stack that builders make, each from a plain text to its set-ups: which there are, which face looks up, what
// each does. Common practice for the routes: (a) cut, paint, engrave; (b) paint the sheet, engrave and cut at once.

import { describe, expect, test } from "vitest";
import type { SheetPart } from "../../src/parts/sheet-part.ts";
import { type PanelWords, panelOf, troubles } from "../layout/bench-panel.ts";

const summary = (parts: readonly SheetPart[]): readonly string[] =>
  parts.flatMap((part) =>
    part.setUps.map((setUp) => {
      const does = [...new Set(setUp.operations.map(({ process }) => process))].sort().join("+");
      return `${part.layer} ${setUp.id} ${setUp.faceUp} up: ${does}`;
    }),
  );

const COMPONENTS = [
  "pump: { part: toggle-6, at: { x: 45 mm, y: 36 mm }, legend: PUMP }",
  "full: { part: led-5-bezel, at: { x: 100 mm, y: 36 mm }, legend: FULL }",
];
const LETTERING = ["lettering: { font: b612, height: 4.2 mm }"];
const panel = (words: PanelWords): ReturnType<typeof panelOf> =>
  panelOf({ components: COMPONENTS, more: LETTERING, ...words });

const CUT = "cut-inner+cut-outer";

const KINDS: readonly (readonly [string, PanelWords, readonly string[]])[] = [
  [
    "painted opal single sheet, cut, painted, then engraved",
    {
      mount: "corner-screws",
      height: "76 mm",
      more: ["width: 146 mm", ...LETTERING],
      fixings: "",
      stack: ["{ layer: face, sheet: opal, finish: painted }"],
    },
    [`face 1-cut front up: ${CUT}+witness`, "face 2-engrave front up: engrave"],
  ],
  [
    "face on aluminium",
    { stack: ["{ layer: face, sheet: opal, finish: painted }", "{ layer: metal, sheet: metal }"] },
    [
      `face 1-cut front up: ${CUT}+witness`,
      "face 2-engrave front up: engrave",
      `metal 1-cut front up: ${CUT}+witness`,
    ],
  ],
  [
    "face, diffuser and backing",
    {
      // A lever reaches through three sheets; a lamp of 5 mm would end below the face.
      components: COMPONENTS.slice(0, 1),
      stack: [
        "{ layer: face, sheet: opal, finish: painted-sheet }",
        "{ layer: diffuser, sheet: frosted }",
        "{ layer: metal, sheet: metal }",
      ],
    },
    [
      `face 1-engrave-and-cut front up: ${CUT}+engrave+witness`,
      `diffuser 1-cut front up: ${CUT}+witness`,
      `metal 1-cut front up: ${CUT}+witness`,
    ],
  ],
  [
    "two-colour laminate",
    {
      mount: "corner-screws",
      height: "76 mm",
      more: ["width: 146 mm", ...LETTERING],
      fixings: "",
      stack: ["{ layer: face, sheet: two-colour }"],
    },
    [`face 1-engrave-and-cut front up: ${CUT}+engrave+witness`],
  ],
  [
    "unlit aluminium, engraved and filled",
    {
      mount: "corner-screws",
      height: "76 mm",
      more: ["width: 146 mm", "lettering: { font: b612, height: 11 mm }"],
      fixings: "",
      stack: ["{ layer: metal, sheet: metal, finish: filled }"],
    },
    [`metal 1-engrave-and-cut front up: ${CUT}+engrave+witness`],
  ],
];

describe("kinds of stack", () => {
  test.each(KINDS)("%s", (_name, words, expected) => {
    const made = panel(words);
    expect(summary(made.sheetParts)).toEqual(expected);
    expect(troubles(made.findings).filter((line) => line.startsWith("fault"))).toEqual([]);
  });

  test("face on an acrylic backing that is worked from behind", () => {
    const made = panel({
      stack: [
        "{ layer: face, sheet: opal, finish: painted }",
        "{ layer: backing, sheet: black, worked-from: rear }",
      ],
    });
    expect(summary(made.sheetParts)).toEqual([
      `face 1-cut front up: ${CUT}+witness`,
      "face 2-engrave front up: engrave",
      `backing 1-cut rear up: ${CUT}+witness`,
    ]);
    // The one thing to ask about an acrylic backing: the studs' web at its edge.
    expect(troubles(made.findings).map((line) => line.split(" ")[1])).toEqual([
      "checks/mount-in-acrylic",
    ]);
  });

  test("paint, engrave and cut at once, but cut from behind: two set-ups, for legends lie on the front", () => {
    const made = panel({
      stack: [
        "{ layer: face, sheet: opal, finish: painted-sheet, worked-from: rear }",
        "{ layer: metal, sheet: metal }",
      ],
    });
    expect(summary(made.sheetParts).slice(0, 2)).toEqual([
      "face 1-engrave front up: engrave",
      `face 2-cut rear up: ${CUT}+witness`,
    ]);
  });

  test("every set-up of a stack with dowels names the same datum", () => {
    const made = panel({});
    const data = new Set(
      made.sheetParts.flatMap(({ setUps }) => setUps.map(({ instructions }) => instructions[0])),
    );
    expect(data.size).toBe(1);
    expect([...data][0]).toMatch(/^Datum: dowel\.1 at .* and dowel\.2 at /);
  });

  test("filled engraving is a hand operation, and so is deburring metal", () => {
    const made = panel({
      stack: ["{ layer: metal, sheet: metal, finish: filled }"],
      fixings: "",
    });
    expect(made.sheetParts[0]?.handOperations.map(({ what }) => what)).toEqual(["deburr", "fill"]);
  });
});

describe("the witness in the waste", () => {
  test("fits the sheet, however narrow the panel and long its name", () => {
    for (const width of ["20 mm", "60 mm", "200 mm"]) {
      const made = panelOf({
        mount: "corner-screws",
        height: "60 mm",
        more: [`width: ${width}`],
        fixings: "",
        stack: ["{ layer: a-rather-long-name-for-a-layer, sheet: opal }"],
      });
      const setUp = made.sheetParts[0]?.setUps[0];
      const mark = setUp?.operations.find(({ process }) => process === "witness");
      if (setUp === undefined || mark?.kind !== "stroke") throw new Error("no witness");
      for (const { vertices } of mark.paths)
        for (const { x, y } of vertices) {
          expect(x).toBeLessThanOrEqual(setUp.sheet.maxX);
          expect(x).toBeGreaterThanOrEqual(setUp.sheet.minX);
          expect(y).toBeGreaterThanOrEqual(setUp.sheet.minY);
        }
    }
  });
});
