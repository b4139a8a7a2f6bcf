// What a workshop's process colours can't be: said when the design is judged, before anything is made with them.

import type { WorkshopDesign } from "../design/workshop-design.ts";
import { spanOf } from "../design/written.ts";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { processColours } from "../export/process-colours.ts";
import { REFUSED_COLOUR } from "./codes.ts";

export const refusedColours = ({
  processColours: wanted,
  written,
}: WorkshopDesign): readonly Finding[] =>
  processColours(wanted).refused.map(({ process, colour, why }) =>
    finding(REFUSED_COLOUR, {
      subjects: [process],
      message: `process-colours, ${process}: ${colour} ${why}.`,
      span: spanOf(written, "process-colours"),
    }),
  );
