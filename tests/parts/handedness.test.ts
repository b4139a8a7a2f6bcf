// Handedness: a backing that is cut with its rear up, read back from its written file by a second reader and turned over,
// must lie on the face's file.

import { describe, expect, test } from "vitest";
import { DEFAULT_COLOURS } from "../../src/export/process-colours.ts";
import { svgCutFile } from "../../src/export/svg-cut-file.ts";
import type { SetUp } from "../../src/parts/sheet-part.ts";
import type { PanelProject } from "../../src/project.ts";
import { panelOf } from "../layout/bench-panel.ts";
import { readSvgFile, type SvgRun } from "../support/svg-reader.ts";

interface Hole {
  readonly x: number;
  readonly y: number;
}

/** Middle of a closed run's box, arcs counted by their ends: right for round holes drawn as two half turns. */
const middle = ({ edges }: SvgRun): Hole => {
  const places = edges.flatMap((edge) =>
    edge.kind === "arc" ? [edge.from, edge.to, edge.centre] : [edge.from, edge.to],
  );
  const xs = places.map(({ x }) => x);
  const ys = places.map(({ y }) => y);
  return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
};

const cutFile = (
  panel: PanelProject,
  layer: string,
): { readonly setUp: SetUp; readonly holes: readonly Hole[]; readonly width: number } => {
  const part = panel.sheetParts.find((one) => one.layer === layer);
  const setUp = part?.setUps.find(({ operations }) =>
    operations.some(({ kind }) => kind === "cut"),
  );
  if (part === undefined || setUp === undefined) throw new Error(`${layer} is not cut`);
  const file = readSvgFile(
    svgCutFile(part, setUp, { colours: DEFAULT_COLOURS, title: part.title }),
  );
  const holes = file.paths
    .filter(({ group }) => group.includes("cut-inner"))
    .flatMap(({ runs }) => runs.filter(({ closed }) => closed).map(middle));
  return { setUp, holes, width: Number(file.root.get("viewBox")?.split(" ")[2]) };
};

const words = (workedFrom: string): Parameters<typeof panelOf>[0] => ({
  height: "10 modules",
  stack: [
    "{ layer: face, sheet: opal, finish: painted }",
    `{ layer: backing, sheet: black, worked-from: ${workedFrom} }`,
  ],
  components: [
    "a: { part: toggle-6, at: { x: 38 mm, y: 61 mm } }",
    "b: { part: led-5-bezel, at: { x: 62 mm, y: 24 mm } }",
    "c: { part: push-button-16, at: { x: 105 mm, y: 70 mm } }",
  ],
});

const nearest = (hole: Hole, among: readonly Hole[]): number =>
  Math.min(...among.map((other) => Math.hypot(other.x - hole.x, other.y - hole.y)));

/** Component centres as the design gives them, in the file's own axes: y down, from the sheet's upper left corner. */
const CENTRES = [
  [38, 61],
  [62, 24],
  [105, 70],
] as const;

describe("an unsymmetrical panel, its backing cut from behind", () => {
  const panel = panelOf(words("rear"));
  const face = cutFile(panel, "face");
  const backing = cutFile(panel, "backing");

  const inFile = (
    { setUp: { sheet } }: ReturnType<typeof cutFile>,
    x: number,
    y: number,
  ): Hole => ({
    x: x - sheet.minX,
    y: sheet.maxY - y,
  });

  test("turned over, the backing's holes lie on the face's at every component", () => {
    expect(backing.setUp.faceUp).toBe("rear");
    const turned = backing.holes.map(({ x, y }) => ({ x: backing.width - x, y }));
    for (const [x, y] of CENTRES) {
      expect(nearest(inFile(face, x, y), face.holes)).toBeLessThan(0.05);
      expect(nearest(inFile(backing, x, y), turned)).toBeLessThan(0.05);
    }
  });

  test("not turned over, no component of it lies where it should", () => {
    for (const [x, y] of CENTRES)
      expect(nearest(inFile(backing, x, y), backing.holes)).toBeGreaterThan(1);
  });

  test("cut from the front, it lies on the face as it is", () => {
    const front = cutFile(panelOf(words("front")), "backing");
    for (const [x, y] of CENTRES)
      expect(nearest(inFile(front, x, y), front.holes)).toBeLessThan(0.05);
  });
});
