// A knee space that does not go into its desk: too high for the bays over it, or too deep for the boards behind it.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { downToTenth } from "../../geometry/tenths.ts";
import type { FramePlan } from "../../parts/frame/frame-plan.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { isUnder } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { raising } from "./raising.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-knees",
  severity: "fault",
  title: "a knee space that does not go into its desk",
  why: "The room behind the panels and the ribs below it hang over the knees: raise the bay, give it less depth, or make the knee space lower if those who sit there are small. And behind the knees stands the desk's foot: make the knee space less deep, or the bays longer.",
  example: "frame: { type: front-desk, sheet: birch-ply-12, knees: [440, 700] }",
};

export const kneesFilled: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) => [
    ...worstOf(allSections(plan).flatMap((section) => tooHigh(section, texts))),
    ...worstOf(allSections(plan).flatMap((section) => tooDeep(section, texts))),
  ],
};

const tooHigh = (
  { design, kneeRoom, bays }: FramePlan,
  texts: PlanFacts["texts"],
): readonly Finding[] => {
  if (kneeRoom === null) return [];
  const { high, planned } = kneeRoom;
  const { height } = planned;
  if (!isUnder(high, height)) return [];
  // All of a row together: what lies between them, and beside them, stays as it is.
  const raise = raising(
    bays.map(({ layout }) => layout),
    height - high,
    texts,
  );
  return [
    finding(entry, {
      message: `The knee space is to be ${millimetres(height, high)} high, and below the bays over it stay ${millimetres(high, height)}, ${millimetres(height - high, 0)} less. ${raise.words} does, or less depth.`,
      span: spanOf(design.written, "knees"),
      measured: measureMm(high),
      limit: measureMm(height),
      source: { kind: "geometry", name: "the knee space that is written" },
      remedies: [raise.remedy],
    }),
  ];
};

const tooDeep = (
  { design, kneeRoom }: FramePlan,
  texts: PlanFacts["texts"],
): readonly Finding[] => {
  if (kneeRoom === null) return [];
  const { depth: deep, height } = kneeRoom.planned;
  if (!isUnder(kneeRoom.deep, deep)) return [];
  const most = Math.max(0, kneeRoom.deep);
  const written = downToTenth(most);
  const value = `[${decimal(written, 1)}, ${decimal(height, 2)}]`;
  const advice =
    written > 0 ? `knees: ${value} goes in; longer bays leave more.` : "Longer bays leave more.";
  return [
    finding(entry, {
      message: `The knee space is to be ${millimetres(deep, most)} deep, and before the boards behind it the desk leaves ${millimetres(most, deep)}, ${millimetres(deep - most, 0)} less. ${advice}`,
      span: spanOf(design.written, "knees"),
      measured: measureMm(most),
      limit: measureMm(deep),
      source: { kind: "geometry", name: "the knee space that is written" },
      remedies:
        written > 0 ? [frameRemedy({ texts }, design, { group: null, key: "knees", value })] : [],
    }),
  ];
};
