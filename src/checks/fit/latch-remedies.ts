// What gives a plug's latch its thumb's room: its board turned, its component moved on the panel, or the panel at another module. Each
// is tried with every body by its convex pieces, coarse on the safe side, before it is offered.

import type { Remedy } from "../../diagnostics/finding.ts";
import { shapeExtent } from "../../fit/body-groups.ts";
import type { ConsoleBody } from "../../fit/console-body.ts";
import { hullRelation } from "../../fit/hull-relation.ts";
import { barsThumb, isLatch } from "../../fit/latch-facts.ts";
import { directionIn, type Frame, movedFrame } from "../../geometry/space/frame.ts";
import { boxGap, boxOut } from "../../geometry/space/space-box.ts";
import { minus, plus, scaled, type Vector } from "../../geometry/space/vector.ts";
import type { PlacedPanel } from "../../layout/console/console-layout.ts";
import type { Way } from "../move-remedy.ts";
import type { Shift } from "../place-trouble.ts";
import { turnedBoardRemedies } from "./board-turned.ts";
import { componentMoves } from "./component-moves.ts";
import type { ConsoleFacts } from "./console-rule.ts";
import { freeModuleRemedies } from "./free-module.ts";

/** `other`: null where the console's own edge is in the way; only a board is turned for that. */
export const latchRemedies = (
  latch: ConsoleBody,
  other: ConsoleBody | null,
  facts: ConsoleFacts,
): readonly Remedy[] => {
  const turned = turnedBoardRemedies(latch, facts);
  const panel = facts.layout.panels.find(({ name }) => name === latch.panel);
  if (turned.length > 0 || other === null || panel === undefined) return turned;
  const moved = movedComponent(latch, panel, facts);
  return moved.length > 0 || other.panel === latch.panel
    ? moved
    : freeModuleRemedies(panel, facts, (frame) => isFreeAt(frame, latch, { panel, facts }));
};

const movedComponent = (
  latch: ConsoleBody,
  panel: PlacedPanel,
  facts: ConsoleFacts,
): readonly Remedy[] => {
  const component = panel.layout.components.find(({ id }) => id === latch.thing);
  if (component === undefined) return [];
  const isOwn = ({ panel: on, thing }: ConsoleBody): boolean =>
    on === latch.panel && thing === latch.thing;
  const own = facts.fit.bodies.filter(isOwn);
  const others = facts.fit.bodies.filter((body) => !isOwn(body));
  const suits = ({ x, y }: Shift): boolean => {
    const by = plus(scaled(panel.frame.x, x), scaled(panel.frame.y, y));
    return own.map((body) => movedBody(body, by)).every((body) => isFree(body, others));
  };
  return componentMoves({ panel, component, ways: waysFrom(latch, panel), suits }, facts);
};

/** Back from what the latch looks at, then aside of it. */
const waysFrom = ({ frame }: ConsoleBody, panel: PlacedPanel): readonly Way[] => {
  const away = directionIn(panel.frame, frame.y);
  const across: Way = { axis: "across", toward: away.x > 0 ? -1 : 1 };
  const along: Way = { axis: "along", toward: away.y > 0 ? -1 : 1 };
  const [back, aside] = Math.abs(away.x) > Math.abs(away.y) ? [across, along] : [along, across];
  return [back, aside, { ...aside, toward: aside.toward === 1 ? -1 : 1 }];
};

const movedBody = (body: ConsoleBody, by: Vector): ConsoleBody =>
  inFrame(body, movedFrame(body.frame, by));

const inFrame = (body: ConsoleBody, frame: Frame): ConsoleBody => ({
  ...body,
  frame,
  box: boxOut(frame, shapeExtent(body.shape)),
});

/** The panel's own check of places looks after what else it carries; latches are held against all. */
const isFree = (body: ConsoleBody, others: readonly ConsoleBody[]): boolean =>
  others.every((other) => {
    const isThumb = isLatch(body) || isLatch(other);
    if (isThumb ? !bars(body, other) : other.panel === body.panel) return true;
    return boxGap(body.box, other.box) > 0 || hullRelation(body, other, 0) === null;
  });

const bars = (body: ConsoleBody, other: ConsoleBody): boolean =>
  (isLatch(body) && barsThumb(other)) || (isLatch(other) && barsThumb(body));

/** Of the panel's other bodies the search for a module looks. */
const isFreeAt = (
  frame: Frame,
  latch: ConsoleBody,
  { panel, facts }: { readonly panel: PlacedPanel; readonly facts: ConsoleFacts },
): boolean => {
  const by = minus(frame.origin, panel.frame.origin);
  const others = facts.fit.bodies.filter(({ panel: on }) => on !== latch.panel);
  return isFree(movedBody(latch, by), others);
};
