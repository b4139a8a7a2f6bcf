// A small sheet part for tests: a plate of 60 x 40 with one hole, cut by a laser.

import { circle, loop, point, vertex } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import type { SheetPart } from "../../src/parts/sheet-part.ts";

const written = { span: { file: "panel.yaml", start: 0, end: 0 }, keys: {} };

export interface PlateSettings {
  readonly id?: string;
  readonly hole?: number;
  readonly kerf?: number;
}

export const platePart = ({
  id = "winch-face",
  hole = 6.4,
  kerf = 0.2,
}: PlateSettings): SheetPart => ({
  kind: "sheet-part",
  id,
  panel: "winch",
  layer: "face",
  title: "Towing winch, face",
  revision: "A",
  stock: {
    id: "laminate-1-6",
    material: "laminate",
    colour: "black on white",
    light: "opaque",
    nominal: mm(1.6),
    measured: null,
    dated: null,
    cap: null,
    opaqueFrom: null,
    written,
  },
  thickness: mm(1.6),
  handOperations: [],
  setUps: [
    {
      id: "1-cut",
      machine: {
        kind: "co2-laser",
        id: "laser",
        bed: [mm(600), mm(400)],
        spot: mm(0.15),
        kerf: "in-file",
        measured: [],
        written,
      },
      faceUp: "front",
      instructions: [],
      sheet: extent(-10, -30, 70, 30),
      kerf: { kind: "in-file", kerf: mm(kerf), x: mm(kerf), y: mm(kerf), measured: false },
      operations: [
        {
          kind: "cut",
          process: "cut-inner",
          feature: "hole",
          centre: point(20, 0),
          contour: circle(point(20, 0), hole / 2),
        },
        {
          kind: "cut",
          process: "cut-outer",
          feature: "outline",
          centre: point(30, 0),
          contour: loop([vertex(0, -20), vertex(60, -20), vertex(60, 20), vertex(0, 20)]),
        },
      ],
    },
  ],
});
