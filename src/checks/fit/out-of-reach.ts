// Controls that the operator does not reach from the seat.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding, type Remedy } from "../../diagnostics/finding.ts";
import type { ReachFact } from "../../fit/fit-facts.ts";
import { workingShoulder } from "../../fit/operator/working-shoulder.ts";
import { decimal } from "../../geometry/number.ts";
import { SEATED_PERSON } from "../../standards/reach.ts";
import { isOver } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { andMore, asSeverity, byCause, inPanel } from "./panel-words.ts";

const entry: CodeEntry = {
  code: "fit/out-of-reach",
  severity: "query",
  title: "a control out of the operator's reach",
  why: "What is important must be reached without leaning: 677 mm from the shoulder, in the plane of the seat back, is what a 5th-percentile woman reaches; leaning forward she reaches 735 mm. A control beyond that is a query, an important one a fault. Reach is counted from the shoulder of the working hand.",
  example:
    "operator: { seat-height: 430 mm, at: [-400, 0] }\nbays:\n  aft: { mount: console-rail, at: [300, -420, 620], along: [1, 0, 0], length: 20 modules, depth: 180 mm }",
};

export const outOfReach: ConsoleRule = {
  entry,
  judge: (facts) => {
    const beyond = facts.fit.reaches.filter((reach) => isOver(reach.distance, limitOf(reach)));
    const cause = (reach: ReachFact): string =>
      `${reach.panel} ${limitOf(reach)} ${isFault(reach)}`;
    return byCause(beyond, cause, ({ distance }) => distance).map((group) =>
      asSeverity(unreached(group, facts), isFault(group[0]) ? "fault" : "query"),
    );
  },
};

/** What is important is reached with the back against the seat, the rest by leaning forward. */
const limitOf = ({ isImportant, functional, extended }: ReachFact): number =>
  isImportant ? functional : extended;

const isFault = ({ isImportant, distance, extended }: ReachFact): boolean =>
  isImportant && isOver(distance, extended);

const unreached = (group: readonly [ReachFact, ...ReachFact[]], facts: ConsoleFacts): Finding => {
  const [worst] = group;
  const limit = limitOf(worst);
  const words = lengthWords(facts, worst.span);
  const remedies = seatForward(group, facts);
  const kind = worst.isImportant
    ? "important, and reached without leaning are"
    : "reached by leaning forward are";
  const works = remedies
    .map(
      ({ title }) => ` ${title} brings ${group.length === 1 ? "it" : "all of them"} within reach.`,
    )
    .join("");
  return finding(entry, {
    message: `${inPanel(worst)}${andMore(group.length - 1)}: ${words(worst.distance, limit)} from the shoulder; ${kind} ${words(limit, worst.distance)}, ${words(worst.distance - limit, 0)} less.${works === "" ? ` Bring it ${words(worst.distance - limit, 0)} nearer.` : works}`,
    span: worst.span,
    related: operatorPlace(facts),
    subjects: group.map(inPanel),
    measured: measureMm(worst.distance),
    limit: measureMm(limit),
    source: {
      kind: "standard",
      name: `${SEATED_PERSON.source}: ${worst.isImportant ? "functional" : "extended"} reach, 5th-percentile woman`,
    },
    remedies,
    suppressed: group.length - 1,
  });
};

const operatorPlace = ({ layout }: ConsoleFacts): Finding["related"] =>
  layout.operator === null
    ? []
    : [{ what: "the operator's seat", span: spanOf(layout.operator.design.written, "at") }];

/** Steps of a remedy: a seat is set by hand. */
const SEAT_STEP = 5;

/** The seat moved along the way it faces, where that brings all of them into reach and loses nothing that is in reach. */
const seatForward = (
  group: readonly [ReachFact, ...ReachFact[]],
  { layout, fit, edit }: ConsoleFacts,
): readonly Remedy[] => {
  const { operator } = layout;
  if (operator === null) return [];
  const shoulder = workingShoulder(operator);
  const inReach = fit.reaches.filter((reach) => !isOver(reach.distance, limitOf(reach)));
  const ranges = [...group, ...inReach].map((reach) => {
    const [across, up] = [reach.at.y - shoulder.y, reach.at.z - shoulder.z];
    const left = limitOf(reach) * limitOf(reach) - across * across - up * up;
    const half = left < 0 ? Number.NaN : Math.sqrt(left);
    return { least: reach.at.x - shoulder.x - half, most: reach.at.x - shoulder.x + half };
  });
  const least = Math.max(...ranges.map((range) => range.least));
  const most = Math.min(...ranges.map((range) => range.most));
  const [x, y] = operator.design.at;
  const toward =
    least > 0 ? Math.ceil((x + least) / SEAT_STEP) : Math.floor((x + most) / SEAT_STEP);
  const seat = toward * SEAT_STEP;
  // Not a number where something is too far aside for any seat along this line.
  const works = seat - x >= least && seat - x <= most;
  if (!works) return [];
  const text = `[${decimal(seat, 3)}, ${decimal(y, 3)}]`;
  return [{ title: `at: ${text}`, edits: [edit(spanOf(operator.design.written, "at"), text)] }];
};
