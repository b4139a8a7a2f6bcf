// A part's own opening whose corners the tool leaves so round that the part does not go in.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { containsContour } from "../../geometry/containment.ts";
import type { Contour } from "../../geometry/contour.ts";
import { tightestInsideRadius } from "../../geometry/corners.ts";
import { insetRegions } from "../../geometry/inset.ts";
import { offsetContour } from "../../geometry/offset.ts";
import { isUnder } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { atMost, measureMm, millimetres } from "../words.ts";
import { type InnerCut, type Machined, machinedParts, onePerCut, toolRadius } from "./machined.ts";

const entry: CodeEntry = {
  code: "checks/corner-by-hand",
  severity: "query",
  title: "a part's corner that the tool leaves round",
  why: "The part has square corners, and a round tool leaves its radius in those of the opening, so that the part stops short. Square them with a file, let the cutter run a relief into them (a dogbone), or take a smaller tool.",
  example:
    "# all sheets are cut by a router whose finest tool is 3.175 mm\ncomponents:\n  gauge: { part: meter-48, at: { x: 60 mm, y: 40 mm } }",
};

/** One finding a layer: it is the tool that is to blame, and the file goes round all the corners at once. */
export const cornerByHand: Rule = {
  entry,
  move: null,
  judge: (facts) =>
    machinedParts(facts).flatMap((one) => {
      const radius = toolRadius(one.machine);
      if (radius === null) return [];
      const found = onePerCut(one, (inner) =>
        isBlocked(inner, one, radius) ? stopped(inner, one, radius) : null,
      );
      const [first, ...others] = found;
      if (first === undefined) return [];
      return [
        {
          ...first,
          subjects: found.flatMap(({ subjects }) => subjects),
          suppressed: found.reduce((sum, { suppressed }) => sum + suppressed, others.length),
        },
      ];
    }),
};

/** The gauge of what must enter, against what the tool can clear. */
const isBlocked = ({ cut, cutOut }: InnerCut, { layer }: Machined, radius: number): boolean => {
  if (cutOut.gauge === null || cut.contour.kind === "circle") return false;
  const tightest = tightestInsideRadius(cut.contour);
  if (tightest === null || !isUnder(tightest, radius)) return false;
  const cleared = clearedBy(cut.contour, radius, cutOut.asCut ? 0 : layer.holePaint.nominal);
  return cleared !== null && !containsContour(cleared, cutOut.gauge.go);
};

/** What a round tool leaves open once the wall is painted; null where the tool does not enter at all. */
const clearedBy = (contour: Contour, radius: number, paint: number): Contour | null => {
  const path = insetRegions([{ outline: contour, holes: [] }], radius)[0];
  if (path === undefined) return null;
  const opened = offsetContour(path.outline, radius - paint);
  return opened.kind === "refused" ? null : opened.contour;
};

/** (√2 - 1) r: what a round tool leaves in a square corner, measured from the corner. */
const LEFT_STANDING = Math.SQRT2 - 1;

const stopped = (
  { cut, cutOut }: InnerCut,
  { layer, machine }: Machined,
  radius: number,
): Finding => {
  const tightest = tightestInsideRadius(cut.contour) ?? 0;
  return finding(entry, {
    message: `${cutOut.owner}: the finest tool of ${machine.id} leaves a radius of ${millimetres(radius, tightest)} in the corners of its opening in ${layer.id}, where ${millimetres(tightest, radius)} is drawn; ${millimetres(LEFT_STANDING * (radius - tightest))} stays in the part's way. File the corners, let the cutter run a dogbone into them, or take a tool of ${atMost(2 * tightest > 0 ? 2 * tightest : SMALL_TOOL)}.`,
    span: cutOut.span,
    related: [{ what: machine.id, span: machine.written.span }],
    subjects: [cutOut.owner],
    measured: measureMm(tightest),
    limit: measureMm(radius),
    source: { kind: "machine", name: machine.id },
  });
};

/** The finest tool that is commonly sold for sheet: common practice. */
const SMALL_TOOL = 0.8;
