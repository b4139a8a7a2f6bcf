// Ribs with a step between their shoulders and the room of the panels that no tool's relief fits into.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { downToTenth, tenths } from "../../geometry/tenths.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { FrameBay } from "../../parts/frame/frame-bay.ts";
import { allSections } from "../../parts/frame/planned-frame.ts";
import { reliefReach } from "../../parts/frame/relief.ts";
import { measureMm, millimetres } from "../words.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";
import { worstOf } from "./worst-of.ts";

const entry: CodeEntry = {
  code: "checks/frame-rib-step",
  severity: "fault",
  title: "a step in a rib that is smaller than the tool's relief",
  why: "A rib carries the rails a sheet's thickness below their faces, and is cut out as deep as its bay. Where the bay is about as deep as the sheet is thick, a low step is left, and the relief in its corner finds no room. A bay that is a little deeper leaves it.",
  example:
    "bays:\n  aft: { mount: console-rail, at: [0, -420, 620], along: [1, 0, 0], length: 24 modules, depth: 12 mm }\nframe: { type: side-console, sheet: birch-ply-12 }",
};

export const ribStep: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan }) => {
    const { thickness } = plan.sheet;
    const least = reliefReach(plan.relief);
    return worstOf(
      allSections(plan)
        .flatMap(({ bays }) => bays)
        .filter(({ depth }) => isLow(Math.abs(depth - thickness), least))
        .map((bay) => tooLow(bay, thickness, least)),
    );
  },
};

/** No step at all wants no relief. */
const isLow = (step: number, least: number): boolean =>
  step > samePlace && step < least + samePlace;

const tooLow = ({ id, depth, layout }: FrameBay, thickness: number, least: number): Finding => {
  const step = Math.abs(depth - thickness);
  // The next tenth that is deeper than the relief reaches.
  const works = downToTenth(thickness + least + tenths(1));
  return finding(entry, {
    message: `The ribs of ${id} have a step of ${millimetres(step, least)}, from the sheet's ${millimetres(thickness)} to the bay's depth of ${millimetres(depth)}; a relief of the tool takes ${millimetres(least, step)} there, ${millimetres(least - step, 0)} more. depth: ${decimal(works, 1)} mm does.`,
    span: spanOf(layout.design.written, "depth"),
    subjects: [id],
    measured: measureMm(step),
    limit: measureMm(least),
    source: { kind: "geometry", name: "the relief in a corner" },
  });
};
