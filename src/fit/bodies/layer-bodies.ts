// Sheets of a panel as bodies: each the prism of its outline less what is cut out of it. Printed layers are printed parts.

import { difference } from "../../geometry/boolean.ts";
import { contourExtent } from "../../geometry/measure.ts";
import { layered, solidLayer, solidRegion } from "../../geometry/solid/solid.ts";
import { WORLD } from "../../geometry/space/frame.ts";
import type { LayerLayout, PanelLayout } from "../../layout/panel-layout.ts";
import type { StandingBody } from "./standing-body.ts";

export const layerBodies = ({ layers }: PanelLayout): readonly StandingBody[] =>
  layers.flatMap((layer) => (layer.kind === "sheet" ? sheetBody(layer) : []));

const sheetBody = (layer: LayerLayout): readonly StandingBody[] => {
  const { id, outline, cutOuts, front, rear, design } = layer;
  const regions = difference(
    [{ outline, holes: [] }],
    cutOuts.map(({ contour }) => contour),
  );
  if (regions.length === 0) return [];
  return [
    {
      id,
      role: "layer",
      thing: id,
      what: "sheet",
      solid: layered([
        solidLayer(
          rear,
          front,
          regions.map((region) => solidRegion(region)),
        ),
      ]),
      extent: { ...contourExtent(outline), minZ: rear, maxZ: front },
      frame: WORLD,
      span: design.written.span,
    },
  ];
};
