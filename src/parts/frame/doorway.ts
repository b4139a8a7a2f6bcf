// Does a section pass the doorway? It is carried through with its two smaller sides across; null where it passes.

import type { FrameDesign } from "../../design/frame-design.ts";
import { type Shortage, shortage } from "./bed.ts";
import type { FramePlan } from "./frame-plan.ts";

export const doorwayRoom = (plan: FramePlan, doorway: FrameDesign["doorway"]): Shortage | null => {
  if (doorway === null) return null;
  const [a, b] = sectionSize(plan).toSorted((x, y) => x - y);
  return shortage([a!, b!], doorway);
};

/** Long, wide and high, put together. */
const sectionSize = ({ ends, across, thickness, cheeks }: FramePlan): readonly number[] => [
  ends.to - ends.from,
  across.to - across.from + 2 * thickness,
  Math.max(...[...cheeks.left, ...cheeks.right].map(({ y }) => y)),
];
