// The rails of a bay as two bars: as wide as the mount's seat, behind the faces that the panels lie on. Only for a console
// without a frame of its own, whose rail bars are then the rails.

import { extent } from "../../geometry/extent.ts";
import { rectangle } from "../../geometry/shapes.ts";
import type { BayLayout } from "../../layout/console/console-layout.ts";
import { prismBody, type StandingBody } from "./standing-body.ts";

export const railBodies = (bay: BayLayout): readonly StandingBody[] => {
  const { seat } = bay.mount;
  if (seat <= 0 || bay.clearWidth <= 0) return [];
  const inner = bay.clearWidth / 2;
  return SIDES.map(({ side, sign }) => {
    const [near, far] = [sign * inner, sign * (inner + seat)];
    const id = `rail ${bay.id} ${side}`;
    return prismBody(
      {
        id,
        role: "rail",
        thing: `${side} rail of ${bay.id}`,
        what: "",
        span: bay.design.written.span,
      },
      rectangle(extent(Math.min(near, far), 0, Math.max(near, far), bay.length)),
      { low: -bay.design.railDepth, high: 0, frame: bay.frame },
    );
  });
};

const SIDES = [
  { side: "left", sign: -1 },
  { side: "right", sign: 1 },
] as const;
