// Fasteners of a panel that no straight driver comes to.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { DriverFact } from "../../fit/fit-facts.ts";
import { lengthWords } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { andMore, bodyName, byCause } from "./panel-words.ts";
import { driverSource } from "./service-limits.ts";

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
      facts.fit.drivers.filter(({ blocker }) => blocker !== null),
      ({ panel, blocker }) => `${panel} ${blocker?.panel} ${blocker?.thing}`,
      () => 0,
    ).map((group) => kept(group, facts)),
};

const kept = (group: readonly [DriverFact, ...DriverFact[]], facts: ConsoleFacts): Finding => {
  const [{ panel, fastener, needs, blocker }, ...others] = group;
  const span = blocker?.span ?? panelSpan(panel, facts);
  const words = lengthWords(facts, span);
  const name = blocker === null ? "something" : bodyName(blocker);
  return finding(entry, {
    message: `${panel}: a driver ${words(needs.diameter)} across and ${words(needs.length)} long does not come straight to ${fastener}${andMore(others.length)}: the ${name} stands in the way.`,
    span,
    related: [{ what: panel, span: panelSpan(panel, facts) }],
    subjects: [panel, ...(blocker === null ? [] : [blocker.id])],
    source: driverSource(facts),
    suppressed: others.length,
  });
};

const panelSpan = (name: string, { layout }: ConsoleFacts): Finding["span"] =>
  layout.panels.find((panel) => panel.name === name)?.use.written.span ??
  layout.design.written.span;
