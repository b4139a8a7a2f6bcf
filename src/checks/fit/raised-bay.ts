// A bay that stands higher, as a remedy that is tried with every body before it is offered: what stands on it goes up with it,
// meets nothing that it did not meet, and keeps within the console. Only where no frame is made: that would be another one.

import type { Remedy } from "../../diagnostics/finding.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { consoleInside } from "../../fit/console-inside.ts";
import { keepsInside } from "../../fit/outside-facts.ts";
import { mm } from "../../geometry/quantity.ts";
import { movedFrame } from "../../geometry/space/frame.ts";
import { boxGap, type SpaceBox } from "../../geometry/space/space-box.ts";
import { type Vector, vector } from "../../geometry/space/vector.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";
import { raisedBays, raising } from "../frame/raising.ts";
import type { ConsoleFacts } from "./console-rule.ts";

/** A console with one of its bays higher, and all its bodies. */
export interface RaisedScene {
  readonly layout: ConsoleLayout;
  readonly bodies: readonly ConsoleBody[];
}

/** `suits`: what else is asked of the console with the bay at its new height. */
export const raisedBayRemedies = (
  id: string,
  by: number,
  facts: ConsoleFacts,
  suits: (scene: RaisedScene) => boolean = () => true,
): readonly Remedy[] => {
  const { layout, fit, texts } = facts;
  const bay = layout.bays.find((each) => each.id === id);
  if (bay === undefined || layout.design.frame !== null) return [];
  const raise = raising([bay], by, texts);
  const up = vector(0, 0, raise.by);
  // Its panels' own, and its rails.
  const isRaised = (body: ConsoleBody): boolean => body.bay === id;
  const bodies = fit.bodies.map((body) => (isRaised(body) ? raisedBody(body, raise.by) : body));
  const works =
    meetsNothingNew(fit.bodies, bodies, isRaised) &&
    isWithin(bay, up, facts) &&
    suits({ layout: raisedBays(layout, [id], raise.by), bodies });
  return works ? [raise.remedy] : [];
};

const raisedBody = (body: ConsoleBody, by: number): ConsoleBody => ({
  ...body,
  frame: movedFrame(body.frame, vector(0, 0, by)),
  box: { ...body.box, minZ: mm(body.box.minZ + by), maxZ: mm(body.box.maxZ + by) },
});

/** By boxes: what they call apart is apart. */
const meetsNothingNew = (
  before: readonly ConsoleBody[],
  after: readonly ConsoleBody[],
  isRaised: (body: ConsoleBody) => boolean,
): boolean => {
  const others = before.filter((body) => !isRaised(body));
  return after.every(
    (body, index) =>
      !isRaised(body) ||
      others.every(({ box }) => !meet(body.box, box) || meet(before[index]!.box, box)),
  );
};

const meet = (one: SpaceBox, other: SpaceBox): boolean => boxGap(one, other) <= 0;

const isWithin = (bay: BayLayout, up: Vector, { layout, frame, fit }: ConsoleFacts): boolean =>
  layout.panels.every((panel) => {
    if (panel.place.kind !== "bay" || panel.place.bay !== bay.id) return true;
    const inside = consoleInside(layout, frame, panel);
    const own = fit.bodies.filter((body) => body.panel === panel.name);
    return inside === null || keepsInside(panel, own, { inside, to: movedFrame(panel.frame, up) });
  });
