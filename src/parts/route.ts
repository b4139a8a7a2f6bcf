// The route of a sheet through the shop: which set-ups it has, what each does, and what hands do between them.
// Engraving, inner and outer cuts are one set-up only where the sheet is painted before, or not at all.

import type { FinishDesign } from "../design/workshop-design.ts";

export interface SetUpPlan {
  readonly id: string;
  readonly engraves: boolean;
  readonly cuts: boolean;
  /** Legends lie on the front; cuts are made from the face that the design says. */
  readonly faceUp: "front" | "rear";
  readonly instructions: readonly string[];
}

export const routeOf = (
  finish: FinishDesign | null,
  isEngraved: boolean,
  workedFrom: "front" | "rear",
): readonly SetUpPlan[] => {
  switch (finish?.order) {
    case "cut-paint-engrave":
      return cutPaintEngrave(isEngraved, workedFrom);
    case "paint-then-cut":
      return atOnce(isEngraved, workedFrom, {
        before: "Paint the sheet and let it harden before this set-up.",
        after: "Touch in the cut edges by hand afterwards: bare edges leak light.",
      });
    case "engrave-fill":
      return atOnce(isEngraved, workedFrom, {
        before: null,
        after: "Fill the engraving with paint afterwards and wipe it level.",
      });
    case undefined:
      return atOnce(isEngraved, workedFrom, { before: null, after: null });
  }
};

/** One set-up; two where the cuts are made from behind and the legends can only be engraved from the front. */
const atOnce = (
  isEngraved: boolean,
  workedFrom: "front" | "rear",
  say: { readonly before: string | null; readonly after: string | null },
): readonly SetUpPlan[] => {
  const before = say.before === null ? [] : [say.before];
  const after = say.after === null ? [] : [say.after];
  if (!isEngraved || workedFrom === "front") {
    const id = isEngraved ? "1-engrave-and-cut" : "1-cut";
    const instructions = [...before, ...after];
    return [{ id, engraves: isEngraved, cuts: true, faceUp: workedFrom, instructions }];
  }
  return [
    { id: "1-engrave", engraves: true, cuts: false, faceUp: "front", instructions: before },
    {
      id: "2-cut",
      engraves: false,
      cuts: true,
      faceUp: "rear",
      instructions: [
        "Turn the sheet over, left to right, on the datum of the first set-up.",
        ...after,
      ],
    },
  ];
};

const cutPaintEngrave = (
  isEngraved: boolean,
  workedFrom: "front" | "rear",
): readonly SetUpPlan[] => {
  const cut: SetUpPlan = {
    id: "1-cut",
    engraves: false,
    cuts: true,
    faceUp: workedFrom,
    instructions: [
      "Wash with water and mild soap, anneal, then paint face and edges and let them harden.",
    ],
  };
  if (!isEngraved) return [cut];
  const engrave: SetUpPlan = {
    id: "2-engrave",
    engraves: true,
    cuts: false,
    faceUp: "front",
    instructions: [
      "Engrave after painting, in the locating jig, on the datum of the first set-up.",
    ],
  };
  return [cut, engrave];
};
