// What is asked of the knee space before a front desk, before anybody knows how much of it the desk leaves. Takes the frame's
// text and who sits there; what nobody has written is what the fit asks of such a desk, from the same numbers.

import type { FrameDesign } from "../../design/frame-design.ts";
import type { PosedOperator } from "../../layout/console/console-layout.ts";
import { kneeHeightNeeded } from "../../standards/knee-height.ts";
import { USUAL_KNEE_HEIGHT } from "./frame-practice.ts";

export type KneesAsked =
  /** As deep at the foot as at the knee. */
  | { readonly kind: "written"; readonly depth: number; readonly height: number }
  /** Knees and feet as deep as a seated person's; `height`: of this one's knees, where the bays leave it. */
  | { readonly kind: "usual"; readonly height: number };

export const kneesAsked = ({ knees }: FrameDesign, operator: PosedOperator | null): KneesAsked => {
  if (knees !== null) return { kind: "written", depth: knees[0], height: knees[1] };
  const wanted = operator === null ? 0 : kneeHeightNeeded(operator.design.seatHeight);
  return { kind: "usual", height: Math.max(USUAL_KNEE_HEIGHT, wanted) };
};
