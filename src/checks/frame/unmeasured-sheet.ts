// A frame's sheet whose thickness nobody has measured.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { thicknessOf } from "../../layout/stack.ts";
import { millimetres } from "../words.ts";
import type { FrameRule, SheetFacts } from "./frame-rule.ts";

const entry: CodeEntry = {
  code: "checks/frame-unmeasured-sheet",
  severity: "query",
  title: "slots for a sheet whose thickness nobody has measured",
  why: "Slots follow the thickness, and plywood may be a millimetre under its name: then every joint rattles, or none goes in. Measure the sheet that will be cut and write it into the workshop with its date.",
  example: "frame: { type: side-console, sheet: birch-ply-12 }",
};

export const unmeasuredSheet: FrameRule<SheetFacts> = {
  entry,
  judge: ({ sheet: { design, stock }, catalogue }) => {
    if (stock.measured !== null) return [];
    const material = catalogue.materials.get(stock.material) ?? null;
    const { low, high } = thicknessOf(stock, material);
    return [
      finding(entry, {
        message: `Slots of the frame follow ${millimetres(stock.nominal)}, the name of ${stock.id}; it may be ${millimetres(low)} to ${millimetres(high)}. Measure the sheet and write measured: and dated: under stock, ${stock.id}.`,
        span: spanOf(design.written, "sheet"),
        subjects: [stock.id],
      }),
    ];
  },
};
