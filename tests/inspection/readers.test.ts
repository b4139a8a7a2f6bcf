// The readers against each other and against readers from outside: makerjs and the grammar reader on random outlines,
// dxf-parser on the hand-written DXF.

import dxfParser from "dxf-parser";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { point } from "../../src/geometry/contour.ts";
import { readDxf } from "../../src/inspection/dxf-reader.ts";
import { loopArea, loopLength } from "../../src/inspection/loop.ts";
import { markupPieces } from "../../src/inspection/markup.ts";
import { loopsOfPathData } from "../../src/inspection/path-data.ts";
import { statementsIn } from "../../src/inspection/statements.ts";
import { loopsOfPath } from "../../src/inspection/svg-path.ts";
import { readSvg } from "../../src/inspection/svg-reader.ts";
import { handDxf } from "./hand-files.ts";
import { FACE_SHAPES } from "./hand-plate.ts";

const ORIGIN = point(0, 0);
const corner = fc.tuple(
  fc.integer({ min: -90, max: 90 }),
  fc.constantFrom(0, 0.2, -0.2, 0.9, -0.4),
);

/** A star-shaped outline: corners at rising angles, so that it never crosses itself. */
const outline = fc.array(corner, { minLength: 3, maxLength: 12 }).map((corners) => {
  const places = corners.map(([wobble], index) => {
    const angle = (2 * Math.PI * index) / corners.length;
    const radius = 20 + wobble / 10;
    return [
      Number((30 + radius * Math.cos(angle)).toFixed(4)),
      Number((40 + radius * Math.sin(angle)).toFixed(4)),
    ] as const;
  });
  const steps = places.map(([x, y], index) => {
    const [fromX, fromY] = places[(index + places.length - 1) % places.length]!;
    const bulge = corners[index]![1];
    if (bulge === 0) return `L${x} ${y}`;
    const chord = Math.hypot(x - fromX, y - fromY);
    const radius = ((chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge))).toFixed(5);
    return `A${radius} ${radius} 0 0 ${bulge > 0 ? 1 : 0} ${x} ${y}`;
  });
  const last = places[places.length - 1]!;
  return `M${last[0]} ${last[1]}${steps.join("")}Z`;
});

describe("path data", () => {
  test("makerjs and the grammar reader agree on area, length and box", () => {
    fc.assert(
      fc.property(outline, (data) => {
        const [ours] = loopsOfPathData(data, ORIGIN)!;
        const [theirs] = loopsOfPath(data, ORIGIN);
        expect(loopArea(theirs!.edges)).toBeCloseTo(loopArea(ours!.edges), 4);
        expect(loopLength(theirs!.edges)).toBeCloseTo(loopLength(ours!.edges), 4);
        for (const side of ["minX", "minY", "maxX", "maxY"] as const) {
          expect(theirs!.box[side]).toBeCloseTo(ours!.box[side], 5);
        }
        expect(theirs!.gap).toBeCloseTo(0, 6);
        expect(theirs!.chains).toBe(1);
      }),
      { seed: 20260102, numRuns: 200 },
    );
  });

  test("every command of a cut file, y turned upward", () => {
    const [box] = loopsOfPathData("M1,2 H4 V6 H1Z", point(10, 100))!;
    expect(box!.edges.map(({ to }) => [to.x, to.y])).toEqual([
      [14, 98],
      [14, 94],
      [11, 94],
      [11, 98],
    ]);
    expect(loopsOfPathData("M0 0L1 0 1 1 0 1Z M5 5L6 5L6 6Z", ORIGIN)).toHaveLength(2);
    expect(loopsOfPathData("M-.1 0L+1 0L1 .5Z", ORIGIN)).toHaveLength(1);
  });

  test("curves and exponents are not guessed at", () => {
    expect(loopsOfPathData("M1e-1 0L1 0L1 1Z", ORIGIN)).toBeNull();
    expect(loopsOfPathData("M0 0C1 1 2 2 3 0Z", ORIGIN)).toBeNull();
    expect(loopsOfPathData("M0 0A2 1 0 0 0 3 0Z", ORIGIN)).toBeNull();
    expect(loopsOfPathData("m0 0l1 1", ORIGIN)).toBeNull();
  });

  test("an outline that is cut twice is two chains", () => {
    const [twice] = loopsOfPath("M0 0L4 0L4 4L0 4L0 0L4 0L4 4L0 4L0 0", ORIGIN);
    expect(twice!.chains).not.toBe(1);
  });
});

interface ParsedEntity {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly vertices?: readonly { readonly x: number; readonly y: number }[];
  readonly center?: { readonly x: number };
  readonly radius?: number;
}

/** In Node the package gives the class itself; its types describe the browser's bundle. */
const Parser = dxfParser as unknown as new () => {
  readonly parseSync: (text: string) => {
    readonly header: Readonly<Record<string, unknown>>;
    readonly entities: readonly ParsedEntity[];
  };
};

test("dxf-parser reads the same circles and polylines", () => {
  const text = handDxf(FACE_SHAPES).replace(/(?:999\n.*\n)+/, "");
  const parsed = new Parser().parseSync(text);
  const { items, units } = readDxf(text, ORIGIN);
  expect(parsed.header["$INSUNITS"]).toBe(4);
  expect(units.millimetres).toBe(1);
  expect(items).toHaveLength(parsed.entities.length);
  for (const [index, entity] of parsed.entities.entries()) {
    const { process, loops } = items[index]!;
    expect(process).toBe(entity.layer);
    const edges = loops[0]!.edges;
    if (entity.type === "CIRCLE") {
      const { center, radius } = entity;
      expect(loopArea(edges)).toBeCloseTo(Math.PI * radius! ** 2, 9);
      expect((loops[0]!.box.minX + loops[0]!.box.maxX) / 2).toBeCloseTo(center!.x, 9);
    } else {
      const { vertices, shape } = entity;
      const places = vertices!.map(({ x, y }) => `${x} ${y}`);
      expect(edges.map(({ from }) => `${from.x} ${from.y}`)).toEqual(
        // A vertex that lies on the next one starts no edge.
        places.filter((place, at) => place !== (places[at + 1] ?? (shape ? places[0] : place))),
      );
      expect(loops[0]!.gap === 0).toBe(shape);
    }
  }
});

describe("words", () => {
  test("in lines of their own, or in a sentence", () => {
    const expected = {
      part: "winch-face",
      revision: "B",
      faceUp: "rear",
      kerf: 0.2,
      leavesKerf: false,
    };
    expect(
      statementsIn(["part: winch-face", "revision: B", "face up: rear", "kerf: in-file 0.2000 mm"]),
    ).toEqual(expected);
    expect(
      statementsIn([
        "Part winch-face, revision B, panel winch, layer face, set-up 1-cut.",
        "Face up: REAR. Mirrored once.",
        "Kerf: in this file, 0.2 mm full width, measured.",
      ]),
    ).toEqual(expected);
  });

  test("left out, or leaving the kerf", () => {
    expect(statementsIn([])).toEqual({
      part: null,
      revision: null,
      faceUp: null,
      kerf: null,
      leavesKerf: false,
    });
    expect(statementsIn(["Kerf: left to the cutter. Lines are edges."]).leavesKerf).toBe(true);
  });
});

describe("markup", () => {
  test("comments, entities, quotes and empty tags", () => {
    expect(
      markupPieces(`<?xml?><!-- <path> --><a b="1>2" c='&lt;&#39;&amp;'>x &amp; y<d/></a>`),
    ).toEqual([
      {
        kind: "open",
        name: "a",
        attributes: new Map([
          ["b", "1>2"],
          ["c", "<'&"],
        ]),
        isEmpty: false,
      },
      { kind: "text", text: "x & y" },
      { kind: "open", name: "d", attributes: new Map(), isEmpty: true },
      { kind: "close", name: "a" },
    ]);
  });

  test("any text at all is read to its end", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."<>/\"'!-?= aM&#3;\n") }), (text) => {
        markupPieces(text);
        readSvg(text, ORIGIN);
        readDxf(text, ORIGIN);
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
