// Heights as whole steps of a millionth of a millimetre, so that a layer's foot and the head of the one below are the same
// number however they were summed.

import { invariant } from "../invariant.ts";

export const steppedHeight = (height: number): number => {
  invariant(Number.isFinite(height), "a height is finite");
  return Math.round(height * heightSteps) / heightSteps;
};

const heightSteps = 2 ** 20;
