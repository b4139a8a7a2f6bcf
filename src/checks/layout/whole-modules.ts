// A size that the mount counts is whole modules, units or pitches, or it leaves a gap that nothing fills.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimalBeside } from "../../geometry/number.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/whole-modules",
  severity: "query",
  title: "a size that is not whole modules",
  why: "Studs and rack screws sit on the mount's pitch. A panel of ten and a half modules can be drilled for it, and leaves half a module open to its neighbour.",
  example: "mount: console-rail\nheight: 100 mm",
};

export const wholeModules: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { design, mount, nominal } = facts.layout;
    const { unit, pitch, less } = mount.height;
    if (unit === "mm" || pitch <= 0) return [];
    const key = mount.counts;
    const size = key === "height" ? nominal.maxY : nominal.maxX;
    const count = (size + less) / pitch;
    const whole = Math.max(1, Math.round(count));
    const wanted = whole * pitch - less;
    if (Math.abs(size - wanted) < samePlace) return [];
    const span = spanOf(design.written, key);
    const words = lengthWords(facts, span);
    const other = whole > count ? whole - 1 : whole + 1;
    const counts = other < 1 ? [whole] : [whole, other];
    return [
      finding(entry, {
        message: `${key}: ${words(size, wanted)} is ${decimalBeside(count, whole, 3)} ${unit}; ${whole} ${unit} are ${words(wanted, size)}, ${words(Math.abs(wanted - size), 0)} ${wanted > size ? "more" : "less"}.`,
        span,
        subjects: [design.name],
        measured: measureMm(size),
        limit: measureMm(wanted),
        source: { kind: "standard", name: mount.title },
        remedies: counts.map((modules) => ({
          title: `${key}: ${modules} ${unit}`,
          edits: [facts.edit(span, `${modules} ${unit}`)],
        })),
      }),
    ];
  },
};
