// Does a section pass the doorway? It is carried through with its two smaller sides across; null where it passes.

import type { FrameDesign } from "../../design/frame-design.ts";
import { type Shortage, shortage } from "./bed.ts";
import type { FramePlan } from "./frame-plan.ts";

/** Which side of the section it is that does not pass. */
export type SectionSide = "length" | "width" | "height";

export interface DoorwayShortage extends Shortage {
  readonly side: SectionSide;
}

export const doorwayRoom = (
  plan: FramePlan,
  doorway: FrameDesign["doorway"],
): DoorwayShortage | null => {
  if (doorway === null) return null;
  const [a, b] = sectionSize(plan).toSorted((one, other) => one.size - other.size);
  const short = shortage([a!.size, b!.size], doorway);
  return short && { ...short, side: (short.measured === a!.size ? a! : b!).side };
};

/** Long, wide and high, put together. */
const sectionSize = ({
  ends,
  across,
  thickness,
  cheeks,
}: FramePlan): readonly { readonly side: SectionSide; readonly size: number }[] => [
  { side: "length", size: ends.to - ends.from },
  { side: "width", size: across.to - across.from + 2 * thickness },
  { side: "height", size: Math.max(...[...cheeks.left, ...cheeks.right].map(({ y }) => y)) },
];
