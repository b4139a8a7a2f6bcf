// The colour of a filled legend is its paint's, on whatever sheet.

import { expect, test } from "vitest";
import { faceLook } from "../../src/drawings/face-look.ts";
import type { LayerLayout } from "../../src/layout/panel-layout.ts";
import { checked } from "../checks/panel.ts";

const filled = (paint: string, sheet: "plate" | "black"): LayerLayout => {
  const { layout } = checked(
    "",
    `mount: corner-screws\nwidth: 100 mm\nheight: 80 mm\nstack: [{ layer: face, sheet: ${sheet}, finish: paint-filled }]\n`,
  );
  const layer = layout.layers[0]!;
  return { ...layer, finish: { ...layer.finish!, coats: [paint] } };
};

test.each([
  ["white", "plate", "legend-filled"],
  ["black", "plate", "legend"],
  ["white", "black", "legend-filled"],
  ["blue", "plate", "face-blue"],
] as const)("%s paint in %s", (paint, sheet, ink) => {
  const layer = filled(paint, sheet);
  expect(layer.finish?.order).toBe("engrave-fill");
  expect(faceLook(layer).legend).toBe(ink);
});
