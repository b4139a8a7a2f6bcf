// The shortest side among the slots of all sections: what a tool's reliefs must find room in.

import type { FramePlan } from "./frame-plan.ts";
import { railTabs } from "./rib-boards.ts";

export const narrowestSlot = (plans: readonly FramePlan[]): number =>
  Math.min(
    ...plans.flatMap((plan) => {
      const { clearance } = plan.design;
      const tabs = plan.boards.flatMap((board) =>
        [...board.tabs.left, ...board.tabs.right].map(({ from, to }) => to - from),
      );
      const rails = plan.bays.flatMap((bay) => {
        const { left, right } = railTabs(bay, plan);
        return [left.from - left.to, right.to - right.from];
      });
      return [plan.thickness, ...tabs, ...rails].map((side) => side + clearance);
    }),
  );
