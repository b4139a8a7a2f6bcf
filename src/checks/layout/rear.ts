// The rear of a panel as it lies on its rails: the sheet that bears, the strips that the rails cover, what stands behind.

import { type Extent, extentsOverlap } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout, PlacedBody, PlacedComponent } from "../../layout/panel-layout.ts";
import { seatedLayer } from "../../layout/seated-layer.ts";

export interface RearBody {
  readonly component: PlacedComponent;
  readonly body: PlacedBody;
  readonly box: Extent;
}

export const rearBodies = (layout: PanelLayout): readonly RearBody[] => {
  const rear = seatedLayer(layout)?.rear ?? Number.NEGATIVE_INFINITY;
  return layout.components.flatMap((component) =>
    component.bodies
      .filter(({ low }) => low < rear)
      .map((body) => ({ component, body, box: contourExtent(body.footprint) })),
  );
};

export const railsMeet = (layout: PanelLayout, box: Extent): boolean =>
  layout.rails.some((rail) => extentsOverlap(box, rail));
