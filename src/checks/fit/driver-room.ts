// Fasteners of a panel that no straight driver comes to.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { DriverFact, DriverStop } from "../../fit/fit-facts.ts";
import { lengthWords, measureMm } from "../words.ts";
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
    suppressed: others.length,
  });
};

const panelSpan = (name: string, { layout }: ConsoleFacts): Finding["span"] =>
  layout.panels.find((panel) => panel.name === name)?.use.written.span ??
  layout.design.written.span;
