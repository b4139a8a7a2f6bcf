// Panels that do not come out of their places.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { LiftFact } from "../../fit/fit-facts.ts";
import { MOST_TILT } from "../../fit/service/tilted-way.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { wantSameStretch } from "./pair-groups.ts";
import { andMore, asSeverity, bodyName } from "./panel-words.ts";
import { liftSource } from "./service-limits.ts";

const entry: CodeEntry = {
  code: "fit/cannot-lift-out",
  severity: "fault",
  title: "a panel that does not come out of its place",
  why: "Sooner or later every panel comes out. It is tried straight along its normal and, with either end lifted first, tilted up to 45 degrees, each part by convex pieces that hold it. Such pieces fill its hollows, so that a way that leads through a hollow counts as barred. Where only neighbours that come out themselves are in the way it is a query: they come out first.",
  example: "obstacles:\n  - { name: shelf, box: [120, 200, 5], at: [48, 0, 625] }",
};

export const cannotLiftOut: ConsoleRule = {
  entry,
  judge: (facts) =>
    facts.fit.lifts.flatMap((lift) => {
      if (lift.way !== null || overlaps(lift.panel, facts) || isFollower(lift, facts)) return [];
      const fixed = lift.blockers.filter(({ panel }) => !comesOut(panel, facts));
      return [asSeverity(stuck(lift, facts), fixed.length > 0 ? "fault" : "query")];
    }),
};

/** A panel that lies in another's place is told of by `fit/panels-overlap`; what holds it once it is moved is not known. */
const overlaps = (panel: string, { layout }: ConsoleFacts): boolean => {
  const place = layout.panels.find(({ name }) => name === panel)?.place;
  return layout.panels.some((other) => other.name !== panel && wantSameStretch(place, other.place));
};

/** What it already clashes with is in its way as well: `fit/clash` says so, and where the panel goes is not known yet. */
const isFollower = ({ panel, blockers }: LiftFact, { fit }: ConsoleFacts): boolean => {
  const clashing = fit.pairs.flatMap(({ a, b, relation }) => {
    if (relation.kind !== "clash") return [];
    return [a, b].filter((body, index) => [b, a][index]?.panel === panel && body.panel !== panel);
  });
  return (
    blockers.length > 0 &&
    blockers.every((blocker) =>
      clashing.some(({ id, panel: other }) =>
        other === null ? id === blocker.id : other === blocker.panel,
      ),
    )
  );
};

const comesOut = (panel: string | null, { fit }: ConsoleFacts): boolean =>
  panel !== null && fit.lifts.some((lift) => lift.panel === panel && lift.way !== null);

const stuck = ({ panel, blockers }: LiftFact, facts: ConsoleFacts): Finding => {
  const [first] = blockers;
  const span =
    facts.layout.panels.find(({ name }) => name === panel)?.use.written.span ??
    facts.layout.design.written.span;
  const neighbours = [...new Set(blockers.map((body) => body.panel))];
  const isOnlyPanels = neighbours.every((name) => comesOut(name, facts));
  const advice = isOnlyPanels
    ? ` ${neighbours.join(", ")} must come out first.`
    : " Move it off the panel, or the panel from under it.";
  return finding(entry, {
    message: `${panel} comes out neither straight nor tilted: the ${first === undefined ? "console" : bodyName(first)}${andMore(Math.max(0, blockers.length - 1))} ${blockers.length > 1 ? "are" : "is"} in the way.${advice}`,
    span,
    related: blockers.map((body) => ({ what: bodyName(body), span: body.span })),
    subjects: [panel, ...blockers.map(({ id }) => id)],
    source: liftSource(facts, MOST_TILT),
  });
};
