// Cheeks that are to stand closer than their bays allow.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import { isUnder } from "../limits.ts";
import { measureMm, millimetres } from "../words.ts";
import { frameRemedy } from "./frame-remedy.ts";
import type { FrameRule, PlanFacts } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-width",
  severity: "fault",
  title: "cheeks that are to stand closer than their bays allow",
  why: "Between the cheeks go the panels, the rails beside them, and the ribs that carry both; a canted bay takes more. A frame may be wider than that, not narrower.",
  example: "frame: { type: side-console, sheet: birch-ply-12, width: 150 mm }",
};

export const tooNarrow: FrameRule<PlanFacts> = {
  entry,
  judge: ({ plan, texts }) => {
    const { sheet, units } = plan;
    const least = Math.max(...units.map(({ leastWidth }) => leastWidth));
    const { width, written } = sheet.design;
    if (width === null || !isUnder(width, least)) return [];
    // Up to the next tenth, where the cheeks stand.
    const works = millimetres(upToTenth(least));
    return [
      finding(entry, {
        message: `The frame is to be ${millimetres(width, least)} wide between its cheeks, and its bays with rails and ribs take ${millimetres(least, width)}, ${millimetres(least - width, 0)} more. width: ${works} does.`,
        span: spanOf(written, "width"),
        measured: measureMm(width),
        limit: measureMm(least),
        source: { kind: "geometry", name: "the bays, their rails and ribs" },
        remedies: [
          frameRemedy({ texts }, sheet.design, { group: null, key: "width", value: works }),
        ],
      }),
    ];
  },
};
