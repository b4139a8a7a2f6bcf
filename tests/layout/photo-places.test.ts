// Places that say how far off a photograph has them, wherever a design writes places: each is counted, with its name.

import { expect, test } from "vitest";
import { photoPlaces } from "../../src/layout/photo-places.ts";
import { readPanel } from "../design/reading.ts";

test("components, markings, screws and dowels are all among them", () => {
  const { panel, findings } =
    readPanel(`components: { a: { part: led-5, at: { x: 30 mm, y: 40 mm, residual: 0.4 mm } } }
markings:
  - window: { name: w, at: { x: 60 mm, y: 40 mm, residual: 0.5 mm }, width: 9 mm, height: 9 mm, layers: [face] }
fixings: { screws: m3, dowels: 3 mm, at: [{ x: 14 mm, y: 30 mm }, { x: 60 mm, y: 30 mm, residual: 0.6 mm }], dowels-at: [{ x: 20 mm, y: 20 mm, residual: 0.7 mm }, { x: 50 mm, y: 20 mm }] }`);
  expect(findings).toEqual([]);
  if (panel === null) throw new Error("it was not read");
  expect(photoPlaces(panel).map(({ id, under, residual }) => [id, under, residual])).toEqual([
    ["a", "components", 0.4],
    ["w", "markings", 0.5],
    ["fixing.2", "fixings", 0.6],
    ["dowel.1", "fixings", 0.7],
  ]);
});
