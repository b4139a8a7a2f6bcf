// What stands out of the inside of a console, behind the seat of its panel.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { OutsideFact } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import { measureMm, millimetres } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { bodyName, byCause } from "./panel-words.ts";
import { placeWords } from "./place-words.ts";

const entry: CodeEntry = {
  code: "fit/outside-envelope",
  severity: "fault",
  title: "a body that stands out of the console",
  why: "The envelope is the space that the walls of the console leave. What stands out of it stands in a wall. Touching the wall is inside; only what lies behind the panel's seat is asked.",
  example:
    "envelope:\n  profile: [[0, 580], [600, 580], [600, 640], [0, 640]]\n  across: [-100, 100]",
};

export const outsideEnvelope: ConsoleRule = {
  entry,
  judge: (facts) =>
    byCause(
      facts.fit.outside,
      ({ body }) => body.panel ?? body.id,
      ({ volume }) => volume,
    ).map(([worst, ...others]) => outside(worst, others.length, facts)),
};

const outside = (fact: OutsideFact, others: number, facts: ConsoleFacts): Finding => {
  const { body, volume, depth, at } = fact;
  const { envelope } = facts.layout.design;
  const where = placeWords(at, [body.panel], facts.layout);
  return finding(entry, {
    message: `The ${bodyName(body)} stands out of the envelope: ${decimal(volume, 2)} mm³ of it, ${millimetres(depth)} deep, ${where}. Move the panel, or what it is made of, inward by that.`,
    span: body.span,
    related:
      envelope === null
        ? []
        : [{ what: "the envelope", span: spanOf(envelope.written, "profile") }],
    subjects: [body.id],
    measured: measureMm(depth),
    limit: measureMm(0),
    source: { kind: "geometry", name: "the envelope of the console" },
    suppressed: others,
  });
};
