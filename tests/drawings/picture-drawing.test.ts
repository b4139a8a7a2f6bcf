import { describe, expect, it } from "vitest";
import { componentArt } from "../../src/drawings/art.ts";
import { layersDrawing } from "../../src/drawings/layers-drawing.ts";
import { pictureDrawing } from "../../src/drawings/picture-drawing.ts";
import { svgDrawing } from "../../src/export/svg-drawing.ts";
import { joinedExtent } from "../../src/geometry/extent.ts";
import { contourExtent, pathExtent } from "../../src/geometry/measure.ts";
import { itemExtents, laidOut, library, panelText, WINCH } from "./panels.ts";

const alone = (part: string, turn = 0): string =>
  panelText([`it: { part: ${part}, turn: ${turn} deg, at: { x: centre, y: centre } }`]);

describe("every part of the catalogue", () => {
  for (const [id, part] of library.catalogue.parts) {
    it(`is recognisable from the front: ${id}`, () => {
      const layout = laidOut(alone(id));
      const [component] = layout.components;
      const pieces = componentArt(component!, layout.layers[0]!.cutOuts);
      const isSeenThroughFace = part.openings.front === null;
      if (!isSeenThroughFace) expect(pieces.length).toBeGreaterThan(1);
      for (const piece of pieces) {
        const boxes =
          piece.kind === "area" ? piece.contours.map(contourExtent) : piece.paths.map(pathExtent);
        for (const value of boxes.flatMap((box) => Object.values(box)))
          expect(Number.isFinite(value)).toBe(true);
      }
    });
  }
});

describe("a turned part", () => {
  for (const part of ["toggle-6", "pot-16", "seven-segment-4-056", "d-sub-9", "gauge-52"])
    it(`is drawn turned: ${part}`, () => {
      const size = (turn: number) => {
        const layout = laidOut(alone(part, turn));
        const box = componentArt(layout.components[0]!, layout.layers[0]!.cutOuts)
          .flatMap((piece) => (piece.kind === "area" ? piece.contours.map(contourExtent) : []))
          .reduce(joinedExtent);
        const { x, y } = layout.components[0]!.at;
        return {
          left: x - box.minX,
          right: box.maxX - x,
          down: y - box.minY,
          up: box.maxY - y,
        };
      };
      const upright = size(0);
      const quarter = size(90);
      expect(quarter.left).toBeCloseTo(upright.up, 1);
      expect(quarter.right).toBeCloseTo(upright.down, 1);
      expect(quarter.up).toBeCloseTo(upright.right, 1);
      expect(quarter.down).toBeCloseTo(upright.left, 1);
    });
});

describe("the picture", () => {
  const layout = laidOut(WINCH);
  const picture = pictureDrawing(layout, library.lettering);

  it("has no dimension and no paper", () => {
    const inks = new Set(picture.items.map(({ ink }) => ink));
    for (const ink of ["dimension", "hold", "paper", "line"] as const)
      expect(inks.has(ink)).toBe(false);
    expect(inks.has("legend-lit")).toBe(true);
    expect(inks.has("face-black")).toBe(true);
  });

  it("stays inside its frame and is small enough for a README", () => {
    for (const box of itemExtents(picture)) {
      expect(box.minX).toBeGreaterThanOrEqual(picture.box.minX);
      expect(box.maxX).toBeLessThanOrEqual(picture.box.maxX);
      expect(box.minY).toBeGreaterThanOrEqual(picture.box.minY);
      expect(box.maxY).toBeLessThanOrEqual(picture.box.maxY);
    }
    expect(svgDrawing(picture).length).toBeLessThan(200_000);
  });

  it("lights the legends of annunciator windows in the colours of their alerts", () => {
    // MIL-STD-411F: warning red, caution amber (yellow), advisory green.
    const text = panelText([
      "alarm: { row: { part: lamp-window-18x12, count: 3, pitch: 24 mm }, at: { left: 40 mm, top: 40 mm }, legends: [{ text: FIRE, alert: warning }, { text: OIL, alert: caution }, { text: RUN, alert: advisory }] }",
    ]);
    const inks = pictureDrawing(laidOut(text), library.lettering).items.map(({ ink }) => ink);
    for (const ink of ["lens-red", "lens-amber", "lens-green"] as const)
      expect(inks.filter((each) => each === ink)).toHaveLength(1);
  });

  it("shows the colour of bare metal and of the last coat", () => {
    const faceOf = (stack: string) => {
      const text = WINCH.replace(/stack:\n(.*\n){2}/, `stack:\n  - ${stack}\n`);
      return pictureDrawing(laidOut(text), library.lettering).items.some(
        ({ ink }) => ink === "face-aluminium",
      );
    };
    expect(faceOf("{ layer: face, sheet: aluminium-2 }")).toBe(true);
    expect(faceOf("{ layer: face, sheet: black-acrylic-3 }")).toBe(false);
  });
});

describe("the layers side by side", () => {
  const layout = laidOut(WINCH);
  const drawing = layersDrawing(layout, library.lettering);

  it("show every opening of every layer at half size", () => {
    const outlines = drawing.items.flatMap((item) =>
      item.kind === "outline" ? [item.contours] : [],
    );
    expect(outlines).toHaveLength(layout.layers.length);
    for (const [index, layer] of layout.layers.entries()) {
      const [outer, ...openings] = outlines[index]!;
      expect(openings).toHaveLength(layer.cutOuts.length);
      const drawn = contourExtent(outer!);
      const real = contourExtent(layer.outline);
      expect(drawn.maxX - drawn.minX).toBeCloseTo((real.maxX - real.minX) / 2, 9);
      for (const [at, opening] of openings.entries()) {
        const box = contourExtent(opening);
        const cut = contourExtent(layer.cutOuts[at]!.contour);
        expect(box.minX - drawn.minX).toBeCloseTo((cut.minX - real.minX) / 2, 9);
        expect(box.maxY - drawn.maxY).toBeCloseTo((cut.maxY - real.maxY) / 2, 9);
      }
    }
  });

  it("keep the layers apart", () => {
    const boxes = drawing.items.flatMap((item) =>
      item.kind === "outline" ? [contourExtent(item.contours[0]!)] : [],
    );
    for (const [index, box] of boxes.slice(1).entries())
      expect(box.minX > boxes[index]!.maxX || box.maxY < boxes[index]!.minY).toBe(true);
  });
});
