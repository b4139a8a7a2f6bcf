// Fasteners of a panel that no straight driver comes to.

import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import type { DriverFact, DriverStop } from "../../fit/fit-facts.ts";
import { point } from "../../geometry/contour.ts";
import { pointToContour } from "../../geometry/distance.ts";
import { pointIn } from "../../geometry/space/frame.ts";
import { placedContour, placement } from "../../geometry/transform.ts";
import { isUnder } from "../limits.ts";
import { awayWays } from "../move-ways.ts";
import type { Shift } from "../place-trouble.ts";
import { lengthWords, measureMm } from "../words.ts";
import { componentMoves } from "./component-moves.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { andMore, bodyName, byCause } from "./panel-words.ts";
import { driverSideSource } from "./service-limits.ts";

const entry: CodeEntry = {
  code: "fit/driver-room",
  severity: "query",
  title: "no room for a driver before a panel's fastener",
  why: "A panel is held by fasteners that are turned from the front. Something that overhangs one, a knob of its own or of the neighbour, a wall, a shelf, keeps a straight driver off. Move one of the two, or say with what the fastener is turned.",
  example:
    "components:\n  a: { part: pot-16, knob: knob-22-skirt, at: { left: 14 mm, bottom: 14 mm } }",
};

export const driverRoom: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.drivers.flatMap(({ met, ...fact }) => (met === null ? [] : [{ ...fact, met }])),
      ({ panel, met: { blocker } }) => `${panel} ${blocker.panel} ${blocker.thing}`,
      worse,
    ).map((group) => kept(group, facts)),
};

type Stopped = DriverFact & { readonly met: DriverStop };

/** One that stands on the axis before one beside it, of these the nearest. */
const worse = ({ met: { side, free } }: Stopped): number => (side === "length" ? LONG : 0) - free;
/** More than any driver is wide. */
const LONG = 1e6;

const kept = (group: readonly [Stopped, ...Stopped[]], facts: ConsoleFacts): Finding => {
  const [{ panel, fastener, needs, met }, ...others] = group;
  const { blocker, side, free } = met;
  const { span } = blocker;
  const words = lengthWords(facts, span);
  const left =
    side === "length" ? `${words(free)} before the panel` : `with ${words(free)} past it`;
  return finding(entry, {
    message: `${panel}: a driver ${words(needs.diameter)} across and ${words(needs.length)} long does not come straight to ${fastener}${andMore(others.length)}: the ${bodyName(blocker)} stands in the way, ${left}.`,
    span,
    related: [{ what: panel, span: panelSpan(panel, facts) }],
    subjects: [panel, blocker.id],
    measured: measureMm(free),
    limit: measureMm(needs[side]),
    source: driverSideSource(facts, side),
    remedies: besideDriver(group, facts),
    suppressed: others.length,
  });
};

/** A control of the panel itself beside the driver: moved until it leaves what is wanted to every fastener that it bars. */
const besideDriver = (group: readonly Stopped[], facts: ConsoleFacts): readonly Remedy[] => {
  const [{ panel: name, met } = { panel: "", met: null }] = group;
  const panel = facts.layout.panels.find((one) => one.name === name);
  const component = panel?.layout.components.find(({ id }) => id === met?.blocker.thing);
  if (panel === undefined || component === undefined || met?.blocker.panel !== name) return [];
  if (group.some(({ met: { side } }) => side === "length")) return [];
  const fronts = component.bodies.filter(({ high }) => high > 0).map(({ footprint }) => footprint);
  const barred = group.map(({ at, needs, met: { free } }) => {
    const { x, y } = pointIn(panel.frame, at);
    const axis = point(x, y);
    const now = Math.min(...fronts.map((one) => pointToContour(axis, one).gap));
    return { axis, wanted: now + (needs.diameter - free) / 2 };
  });
  const suits = ({ x, y }: Shift): boolean =>
    fronts.every((one) => {
      const there = placedContour(one, placement(x, y));
      return barred.every(({ axis, wanted }) => !isUnder(pointToContour(axis, there).gap, wanted));
    });
  const ways = barred.slice(0, 1).flatMap(({ axis }) => awayWays(axis, component.at));
  return componentMoves({ panel, component, ways, suits }, facts);
};

const panelSpan = (name: string, { layout }: ConsoleFacts): Finding["span"] =>
  layout.panels.find((panel) => panel.name === name)?.use.written.span ??
  layout.design.written.span;
