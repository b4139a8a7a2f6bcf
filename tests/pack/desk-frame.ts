// A frame made by hand for the tests of a console's pack: two cheeks and a rib, each with the sheet part of a small plate, so
// that the maker of frames need not be right for them.

import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { prism, solidRegion } from "../../src/geometry/solid/solid.ts";
import type { Frame } from "../../src/geometry/space/frame.ts";
import { vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleFrame, FramePart } from "../../src/parts/frame/frame-part.ts";
import { platePart } from "./plate-part.ts";

const upright = (y: number): Frame => ({
  x: vector(1, 0, 0),
  y: vector(0, 0, 1),
  z: vector(0, -1, 0),
  origin: vector(0, y, 0),
});

const across: Frame = {
  x: vector(0, -1, 0),
  y: vector(0, 0, 1),
  z: vector(-1, 0, 0),
  origin: vector(150, 90, 0),
};

const board = (
  part: Pick<FramePart, "id" | "number" | "role" | "title" | "frame">,
  width: number,
): FramePart => {
  const sheetPart = platePart({ id: part.id });
  const vent = circle(point(60, 60), 20);
  return {
    kind: "frame-part",
    unit: 1,
    section: 1,
    stock: sheetPart.stock,
    thickness: mm(9),
    region: { outline: rectangle(extent(0, 0, width, 640)), holes: [vent] },
    grain: "y",
    holes: [{ feature: "vent", contour: vent }],
    sheetPart: { ...sheetPart, title: part.title },
    ...part,
  };
};

export const deskFrame = (title = "Left cheek"): ConsoleFrame => ({
  parts: [
    board({ id: "cheek-left", number: 1, role: "cheek", title, frame: upright(90) }, 300),
    board(
      { id: "cheek-right", number: 2, role: "cheek", title: "Right cheek", frame: upright(-81) },
      300,
    ),
    board({ id: "rib-1", number: 3, role: "rib", title: "Rib 1", frame: across }, 180),
  ],
  joints: [
    {
      kind: "tab-and-slot",
      from: "rib-1",
      into: "cheek-left",
      feature: "rib-1/tab.1",
      clearance: mm(0.2),
    },
  ],
  units: [
    {
      number: 1,
      bays: ["desk"],
      knees: null,
      inside: {
        solid: prism(
          0,
          162,
          solidRegion({ outline: rectangle(extent(0, 0, 640, 300)), holes: [] }),
        ),
        frame: {
          x: vector(0, 0, 1),
          y: vector(1, 0, 0),
          z: vector(0, 1, 0),
          origin: vector(0, -81, 0),
        },
        span: { file: "console.yaml", start: 0, end: 0 },
      },
    },
  ],
  assembly: [
    { unit: 1, adds: ["cheek-left"], enters: null, words: `Lay ${title} on the bench.` },
    { unit: 1, adds: ["rib-1"], enters: vector(0, 1, 0), words: "Stand the rib in its slot." },
    {
      unit: 1,
      adds: ["cheek-right"],
      enters: vector(0, 1, 0),
      words: "Close it with the right cheek.",
    },
  ],
});
