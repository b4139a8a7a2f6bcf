// The route of a sheet through the shop: which set-ups it has, what each does, and what hands do between them.
// Engraving, inner and outer cuts are one set-up only where the sheet is painted before, or not at all.

import type { FinishDesign } from "../design/workshop-design.ts";

export interface SetUpPlan {
  readonly id: string;
  readonly engraves: boolean;
  readonly cuts: boolean;
  readonly instructions: readonly string[];
}

export const routeOf = (finish: FinishDesign | null, isEngraved: boolean): readonly SetUpPlan[] => {
  switch (finish?.order) {
    case "cut-paint-engrave":
      return cutPaintEngrave(isEngraved);
    case "paint-then-cut":
      return [
        single(isEngraved, [
          "Paint the sheet and let it harden before this set-up.",
          "Touch in the cut edges by hand afterwards: bare edges leak light.",
        ]),
      ];
    case "engrave-fill":
      return [single(isEngraved, ["Fill the engraving with paint afterwards and wipe it level."])];
    case undefined:
      return [single(isEngraved, [])];
  }
};

const single = (isEngraved: boolean, instructions: readonly string[]): SetUpPlan => ({
  id: isEngraved ? "1-engrave-and-cut" : "1-cut",
  engraves: isEngraved,
  cuts: true,
  instructions,
});

const cutPaintEngrave = (isEngraved: boolean): readonly SetUpPlan[] => {
  const cut: SetUpPlan = {
    id: "1-cut",
    engraves: false,
    cuts: true,
    instructions: [
      "Wash with water and mild soap, anneal, then paint face and edges and let them harden.",
    ],
  };
  if (!isEngraved) return [cut];
  const engrave: SetUpPlan = {
    id: "2-engrave",
    engraves: true,
    cuts: false,
    instructions: [
      "Engrave after painting, in the locating jig, on the datum of the first set-up.",
    ],
  };
  return [cut, engrave];
};
