// A rail panel's height is whole modules, or it leaves a gap that nothing fills.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { Rule } from "../rule.ts";

const entry: CodeEntry = {
  code: "checks/whole-modules",
  severity: "query",
  title: "a size that is not whole modules",
  why: "Studs sit on the rail's pitch. A panel of ten and a half modules can be drilled for it, and leaves half a module open to its neighbour.",
  example: "mount: console-rail\nheight: 100 mm",
};

export const wholeModules: Rule = {
  entry,
  judge: (facts) => {
    const { design, mount, nominal } = facts.layout;
    const { unit, pitch, less } = mount.height;
    if (unit === "mm" || pitch <= 0) return [];
    const isCounted = mount.counts === "height";
    const size = isCounted ? nominal.maxY : nominal.maxX;
    const count = (size + less) / pitch;
    const whole = Math.max(1, Math.round(count));
    if (Math.abs(count - whole) * pitch < samePlace) return [];
    const key = isCounted ? "height" : "width";
    const span = spanOf(design.written, key);
    return [
      finding(entry, {
        message: `The ${key} of ${decimal(size, 3)} mm is ${decimal(count, 3)} ${unit}; ${whole} ${unit} are ${decimal(whole * pitch - less, 3)} mm.`,
        span,
        subjects: [design.name],
        measured: { value: count, unit: "modules" },
        limit: { value: whole, unit: "modules" },
        source: { kind: "standard", name: mount.title },
        remedies: [
          { title: `${key}: ${whole} ${unit}`, edits: [facts.edit(span, `${whole} ${unit}`)] },
        ],
      }),
    ];
  },
};
