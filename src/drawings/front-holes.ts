// What holds a panel, seen from the front: mount holes with the larger clearance in front of them, fixings and dowels,
// windows, and the strips that the rails cover behind.

import { circle } from "../geometry/contour.ts";
import { rectangle } from "../geometry/shapes.ts";
import type { CutOut, PanelLayout } from "../layout/panel-layout.ts";
import { segmentsOfCross } from "./crosses.ts";
import type { DrawingItem } from "./drawing.ts";
import { filled, HAIR, outlined, stroked, THIN } from "./items.ts";

const HOLDING: readonly CutOut["purpose"][] = ["mount", "fixing", "dowel"];

export const frontHoles = (layout: PanelLayout): readonly DrawingItem[] => {
  const [front, ...behind] = layout.layers;
  const cut = front?.cutOuts ?? [];
  const holding = cut.filter(({ purpose }) => HOLDING.includes(purpose));
  const windows = cut.filter(({ purpose }) => purpose === "window");
  const hidden = behind.flatMap(({ cutOuts }) =>
    cutOuts.filter(({ purpose }) => purpose === "mount" || purpose === "fixing"),
  );
  const blind = layout.fixings.filter(({ id }) => !cut.some(({ owner }) => owner === id));
  return [
    outlined(
      layout.rails.map((rail) => rectangle(rail)),
      { ink: "faint", width: HAIR, dashed: true },
    ),
    filled(
      windows.map(({ contour }) => contour),
      "glass",
    ),
    outlined(
      windows.map(({ contour }) => contour),
      { ink: "line", width: THIN },
    ),
    outlined(
      holding.map(({ contour }) => contour),
      { ink: "line", width: THIN },
    ),
    outlined(
      hidden.map(({ contour }) => contour),
      { ink: "faint", width: HAIR, dashed: true },
    ),
    outlined(
      blind.map(({ at, diameter }) => circle(at, diameter / 2)),
      { ink: "faint", width: HAIR, dashed: true },
    ),
    stroked(
      [...layout.mountHoles, ...layout.fixings].flatMap(({ at }) => segmentsOfCross(at, 2.2)),
      { ink: "dimension", width: HAIR },
    ),
  ];
};
