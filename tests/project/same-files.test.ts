// The same panel said in other words gives the same cut files, byte for byte: inches for millimetres, another order of
// components that do not lean on each other, a turn the other way round, a second run.

import { describe, expect, test } from "vitest";
import { packOfProject } from "../../src/project.ts";
import { type PanelWords, panelText, projectOf } from "../layout/bench-panel.ts";

/** The cut files of the panel's pack, by path. */
const cutFiles = (words: PanelWords): ReadonlyMap<string, string> => {
  const project = projectOf(panelText(words));
  const [panel] = project.panels;
  if (panel === undefined) throw new Error("no panel");
  const { files } = packOfProject(project, panel, { only: "fascia", card: false });
  return new Map(
    files
      .filter(({ path }) => /\.(svg|dxf)$/.test(path))
      .map(({ path, bytes }) => [path, new TextDecoder().decode(bytes)]),
  );
};

const FIXINGS =
  "{ screws: m3, dowels: 3 mm, at: [{ x: 20 mm, y: 6 mm }, { right: 20 mm, top: 6 mm }], dowels-at: [{ x: 20 mm, y: 20 mm }, { right: 20 mm, top: 28 mm }] }";

const LINES = [
  "pump: { part: toggle-6, at: { x: 38.1 mm, y: 25.4 mm }, legend: PUMP }",
  "gain: { part: pot-16, at: { x: 73.025 mm, y: 69.85 mm }, scale: { from: 0, to: 10, major: 2 } }",
  "port: { part: d-sub-9, at: { right: 1.5 in, bottom: 25.4 mm }, turn: 15 deg }",
];

const METRIC: PanelWords = { height: "114.3 mm", fixings: FIXINGS, components: LINES };
const reference = cutFiles(METRIC);

describe("the same panel in other words", () => {
  test("has cut files at all, of two layers in several formats", () => {
    expect(reference.size).toBeGreaterThanOrEqual(6);
    for (const text of reference.values()) expect(text.length).toBeGreaterThan(500);
  });

  test("in inches and modules", () => {
    const inches = {
      ...METRIC,
      height: "12 modules",
      components: [
        "pump: { part: toggle-6, at: { x: 1 1/2 in, y: 1 in }, legend: PUMP }",
        "gain: { part: pot-16, at: { x: 2 7/8 in, y: 2 3/4 in }, scale: { from: 0, to: 10, major: 2 } }",
        "port: { part: d-sub-9, at: { right: 38.1 mm, bottom: 1 in }, turn: 15° }",
      ],
    };
    expect(cutFiles(inches)).toEqual(reference);
  });

  test("in another order", () => {
    expect(cutFiles({ ...METRIC, components: LINES.toReversed() })).toEqual(reference);
  });

  test("turned the other way to the same place", () => {
    const turned = LINES.map((line) => line.replace("turn: 15 deg", "turn: -345 deg"));
    expect(cutFiles({ ...METRIC, components: turned })).toEqual(reference);
  });

  test("a second time", () => {
    expect(cutFiles(METRIC)).toEqual(reference);
  });

  test("moved by a tenth of a millimetre they differ: the comparison can fail", () => {
    const moved = LINES.map((line) => line.replace("x: 38.1 mm", "x: 38.2 mm"));
    expect(cutFiles({ ...METRIC, components: moved })).not.toEqual(reference);
  });
});
