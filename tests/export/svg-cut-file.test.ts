// The SVG for the machine, read back by a reader of our tests' own (SVG 1.1 path grammar) and measured against the bench's numbers.

import { describe, expect, test } from "vitest";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { svgCutFile } from "../../src/export/svg-cut-file.ts";
import type { SetUp } from "../../src/parts/sheet-part.ts";
import { readSvgFile, runArea, runBox, type SvgFile, type SvgPath } from "../support/svg-reader.ts";
import {
  D_HOLE,
  FRONT_UP,
  HOSTILE_NAMES,
  PLATE,
  plateNamed,
  REAR_UP,
  TURNED_SLOT,
} from "./bureau-plate.ts";
import { expectGolden } from "./golden.ts";

const OPTIONS = { colours: DEFAULT_COLOURS, title: "Plate: face" } as const;
const written = (setUp: SetUp): string => svgCutFile(PLATE, setUp, OPTIONS);
const front = written(FRONT_UP);

const pathNamed = (file: SvgFile, id: string): SvgPath => {
  const found = file.paths.find((path) => path.attributes.get("id") === id);
  if (found === undefined) throw new Error(`no path ${id}`);
  return found;
};

const boxNamed = (file: SvgFile, id: string): ReturnType<typeof runBox> => {
  const run = pathNamed(file, id).runs[0];
  if (run === undefined) throw new Error(`${id} is empty`);
  return runBox(run);
};

const middle = (box: ReturnType<typeof runBox>): readonly [number, number] => [
  (box.minX + box.maxX) / 2,
  (box.minY + box.maxY) / 2,
];

describe("a file that no program reads in another unit", () => {
  const file = readSvgFile(front);

  test("width, height and viewBox are the sheet in mm", () => {
    expect(file.root.get("width")).toBe("166.05mm");
    expect(file.root.get("height")).toBe("77.15mm");
    expect(file.root.get("viewBox")).toBe("0 0 166.05 77.15");
  });

  test("no transform, text, style, script or number that is none", () => {
    expect(new Set(file.elements)).toEqual(new Set(["svg", "title", "desc", "g", "path"]));
    expect(front).not.toMatch(/transform|NaN|Infinity|undefined|e-\d|-0[^.\d]/);
  });

  test("it says part, revision, face, kerf with its residual, units and instructions", () => {
    expect(file.title).toBe("Plate: face");
    for (const words of [
      "Part plate-face, revision B",
      "Face up: FRONT. Not mirrored.",
      "Kerf: in this file, 0.2 mm full width, measured.",
      "Kerf across x 0.21 mm, across y 0.19 mm: beyond the line in this file it takes 0.005 mm a side in x, -0.005 mm a side in y.",
      "inset by half the spot of 0.15 mm",
      "Units: millimetres. Sheet 166.05 mm x 77.15 mm",
      "Paper mask on, front up.",
      "Lines are 0.025 mm wide.",
    ])
      expect(file.description).toContain(words);
  });

  test("the same bytes twice, and as reviewed", () => {
    expect(written({ ...FRONT_UP })).toBe(front);
    expectGolden("plate-face.front.svg", front);
    expectGolden("plate-face.rear.svg", written(REAR_UP));
  });
});

describe("lines where the bench needs them", () => {
  const file = readSvgFile(front);

  test("kerf example in the file: 146.25 x 57.35 outline, 6.4 holes, opening 1.8 x 3.8, piece 2.2 x 4.2", () => {
    const size = (id: string): readonly number[] => {
      const box = boxNamed(file, id);
      return [box.maxX - box.minX, box.maxY - box.minY].map((side) => Math.round(side * 1e4) / 1e4);
    };
    expect(size("outline")).toEqual([146.25, 57.35]);
    expect(size("stud-1")).toEqual([6.4, 6.4]);
    expect(size("opening")).toEqual([1.8, 3.8]);
    expect(size("piece")).toEqual([2.2, 4.2]);
    expect(size("pilot")).toEqual([2.5, 2.5]);
  });

  test("y runs down once: the lower left stud lies low on the sheet", () => {
    const [x, y] = middle(boxNamed(file, "stud-1"));
    expect(x).toBeCloseTo(10 + 4.7625, 4);
    expect(y).toBeCloseTo(67.15 - 4.7625, 4);
  });

  test("every hole is a closed path of two half turns, true to 0.1 µm", () => {
    for (const id of ["stud-1", "stud-2", "stud-3", "stud-4"]) {
      const [run, ...others] = pathNamed(file, id).runs;
      expect(others).toEqual([]);
      expect(run?.closed).toBe(true);
      expect(run?.edges.map((edge) => edge.kind)).toEqual(["arc", "arc"]);
      for (const edge of run?.edges ?? []) {
        if (edge.kind !== "arc") continue;
        expect(edge.radius).toBeCloseTo(3.2, 4);
        expect(Math.abs(edge.turn)).toBeCloseTo(Math.PI, 6);
      }
    }
  });

  test("a slot turned by 30 degrees and a D hole keep their arcs within 0.001 mm", () => {
    const shrunk = { "brake/clamp@backing": 2.4, "speed/clamp@backing": 5.9 } as const;
    for (const [id, radius] of Object.entries(shrunk)) {
      const arcs = (pathNamed(file, id).runs[0]?.edges ?? []).filter((edge) => edge.kind === "arc");
      expect(arcs.length).toBeGreaterThan(1);
      for (const arc of arcs)
        if (arc.kind === "arc") expect(Math.abs(arc.radius - radius)).toBeLessThan(0.001);
    }
    // Centres of the slot's ends: 3.5 from (40, 30) along 30 degrees.
    const ends = (pathNamed(file, "brake/clamp@backing").runs[0]?.edges ?? []).flatMap((edge) =>
      edge.kind === "arc" ? [edge.centre] : [],
    );
    for (const centre of ends) {
      const reach = Math.hypot(centre.x - 50, 67.15 - centre.y - 30);
      expect(Math.abs(reach - 3.5)).toBeLessThan(0.001);
    }
  });

  test("areas agree with the sizes: slot 4.8 wide, D of radius 5.9 with its flat at 4.9", () => {
    const areaOf = (id: string): number => {
      const run = pathNamed(file, id).runs[0];
      return run === undefined ? 0 : Math.abs(runArea(run));
    };
    expect(areaOf("brake/clamp@backing")).toBeCloseTo(7 * 4.8 + Math.PI * 2.4 ** 2, 2);
    const cap = 5.9 ** 2 * Math.acos(4.9 / 5.9) - 4.9 * Math.sqrt(5.9 ** 2 - 4.9 ** 2);
    expect(areaOf("speed/clamp@backing")).toBeCloseTo(Math.PI * 5.9 ** 2 - cap, 2);
    expect([TURNED_SLOT.vertices.length, D_HOLE.vertices.length]).toEqual([4, 2]);
  });

  test("arcs stay arcs: 7 circles as 2, slot ends as 2 halves each, the D as 4 pieces, one in the bracket", () => {
    expect(front.match(/A/g)?.length).toBe(7 * 2 + 2 * 2 + 4 + 1 + countOutsidePaths(front));
  });
});

/** Characters that XML 1.0 bars (section 2.2), and overrides of the writing direction. */
const isBarred = (character: string): boolean => {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x20) return ![0x09, 0x0a, 0x0d].includes(code);
  return /[\u202a-\u202e\u2066-\u2069\ufffe\uffff\p{Cs}]/u.test(character);
};

/** Capital As in the words of the file. */
const countOutsidePaths = (text: string): number =>
  text.replaceAll(/ d="[^"]*"/g, "").match(/A/g)?.length ?? 0;

describe("order of work", () => {
  const file = readSvgFile(front);

  test("witness, engraving, score, drill, openings, outline", () => {
    const groups = file.paths.map((path) => path.group);
    expect(groups.filter((group, index) => group !== groups[index - 1])).toEqual([
      "witness",
      "engrave",
      "score",
      "drill",
      "cut-inner",
      "cut-outer",
    ]);
  });

  test("within cuts, small before large", () => {
    for (const group of ["cut-inner", "cut-outer"]) {
      const areas = file.paths
        .filter((path) => path.group === group)
        .map((path) => Math.abs(path.runs[0] === undefined ? 0 : runArea(path.runs[0])))
        .map((area) => Math.round(area * 1e4));
      expect(areas.length).toBeGreaterThan(1);
      expect(areas).toEqual(areas.toSorted((a, b) => a - b));
    }
  });

  test("the order in which the part lists its operations does not matter", () => {
    const turned = { ...FRONT_UP, operations: FRONT_UP.operations.toReversed() };
    expect(written(turned)).toBe(front);
  });

  test("cuts are lines without fill, engraved areas are even-odd fills without line", () => {
    for (const { group, attributes } of file.paths) {
      const colour = DEFAULT_COLOURS[group === "engrave" ? "engrave" : "cut-inner"];
      if (group === "engrave") {
        expect(attributes.get("fill")).toBe(colour);
        expect(attributes.get("fill-rule")).toBe("evenodd");
        expect(attributes.get("stroke")).toBe("none");
      } else {
        expect(attributes.get("fill")).toBe("none");
        expect(attributes.get("stroke")).toMatch(/^#[0-9a-f]{6}$/);
        expect(attributes.get("stroke-width")).toBe("0.025");
      }
    }
  });
});

describe("worked from behind", () => {
  test("mirrored exactly once, about the sheet's vertical centre line, and the file says so", () => {
    const seen = readSvgFile(front);
    const behind = readSvgFile(written(REAR_UP));
    expect(behind.description).toContain("Face up: REAR. Mirrored once");
    for (const id of ["stud-1", "opening", "brake/clamp@backing", "speed/clamp@backing", "piece"]) {
      const [x, y] = middle(boxNamed(seen, id));
      const [mirrored, same] = middle(boxNamed(behind, id));
      expect(mirrored).toBeCloseTo(166.05 - x, 3);
      expect(same).toBeCloseTo(y, 3);
    }
  });

  test("a turned slot leans the other way, so that shapes are mirrored and not only moved", () => {
    const lean = (text: string): number => {
      const lines = pathNamed(readSvgFile(text), "brake/clamp@backing").runs[0]?.edges ?? [];
      const line = lines.find((edge) => edge.kind === "line");
      if (line === undefined) return 0;
      return (line.to.y - line.from.y) / (line.to.x - line.from.x);
    };
    expect(lean(front)).toBeCloseTo(-Math.tan(Math.PI / 6), 3);
    expect(lean(written(REAR_UP))).toBeCloseTo(Math.tan(Math.PI / 6), 3);
  });
});

describe("a design's words never become markup", () => {
  test.each(HOSTILE_NAMES.map((name) => [JSON.stringify(name.slice(0, 40)), name]))(
    "%s",
    (_shown, name) => {
      const { part, setUp } = plateNamed(name);
      const text = svgCutFile(part, setUp, { ...OPTIONS, title: name });
      const file = readSvgFile(text);
      expect(file.elements).toEqual(readSvgFile(front).elements);
      expect(file.paths.map((path) => path.attributes.get("d"))).toHaveLength(
        readSvgFile(front).paths.length,
      );
      const ids = file.paths.map((path) => path.attributes.get("id") ?? "");
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) expect(id).toMatch(/^[A-Za-z_][A-Za-z0-9._/@-]*$/);
      expect(Array.from(text).filter(isBarred)).toEqual([]);
      expect(text.length).toBeLessThan(front.length + 4000);
    },
  );

  test("a colour that is none stops the run instead of reaching the file", () => {
    const colours = { ...DEFAULT_COLOURS, engrave: `red"/><script>` };
    expect(() => svgCutFile(PLATE, FRONT_UP, { ...OPTIONS, colours })).toThrow(/#rrggbb/);
  });
});

test("the tests' reader objects to a file with one digit of one arc changed", () => {
  const broken = front.replace(/A3\.2 3\.2/, "A3.3 3.2");
  expect(broken).not.toBe(front);
  expect(() => readSvgFile(broken)).toThrow(/arc of a circle/);
});
