// What is seen of a display's trim: its flange lies on the face, and has the height of a few layers.

import type { Contour } from "../geometry/contour.ts";
import { type Mm, mm } from "../geometry/quantity.ts";
import type { Placement } from "../geometry/transform.ts";
import { placedBodies } from "./bodies.ts";
import type { Entry } from "./instances.ts";
import type { PlacedBody } from "./panel-layout.ts";
import { TRIM_HEIGHT, trimPlan } from "./trim-plan.ts";

type Trimmed = Pick<Entry, "part" | "common">;

/** About the display's axis; empty where it has no trim. */
export const trimFace = ({ part, common }: Trimmed): readonly Contour[] =>
  common.trim === null ? [] : [trimPlan(part, common.trim).flange];

export const trimBodies = (
  trimmed: Trimmed,
  place: { readonly owner: string; readonly at: Placement; readonly seat: Mm },
): readonly PlacedBody[] =>
  placedBodies(
    trimFace(trimmed).map((footprint) => ({
      owner: "",
      role: "flange",
      footprint,
      low: mm(0),
      high: TRIM_HEIGHT,
    })),
    place,
  );
