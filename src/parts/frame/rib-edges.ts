// How high a bay's ribs stand at each cheek, beside what a tab there takes. Takes the plan; gives both numbers, whatever they say.

import type { FrameBay } from "./frame-bay.ts";
import type { FramePlan } from "./frame-plan.ts";
import { shortestEdge } from "./tabs.ts";

export interface RibEdge {
  readonly bay: FrameBay;
  readonly side: "left" | "right";
  /** From the rib's lower edge to its shoulder at the cheek; less than 0 where the cheek's is below the rib's own. */
  readonly height: number;
  readonly least: number;
}

export const ribEdges = ({ bays, boards, thickness }: FramePlan): readonly RibEdge[] =>
  bays.flatMap((bay) => {
    const rib = boards.find((board) => board.bay === bay.id);
    if (rib === undefined) return [];
    const least = shortestEdge(thickness);
    return [
      { bay, side: "right", height: rib.top[0]!.y, least },
      { bay, side: "left", height: rib.top.at(-1)!.y, least },
    ] as const;
  });
