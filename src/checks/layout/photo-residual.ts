// A photograph whose marks do not agree: whatever is read from it is off by as much.

import { type PhotoCheck, photoPlane } from "../../design/photo-plane.ts";
import { markName } from "../../design/photo-words.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { PlanePoint } from "../../geometry/homography-pair.ts";
import type { PairWithout } from "../../geometry/homography-without.ts";
import { decimal } from "../../geometry/number.ts";
import { type HouseRule, houseLimit } from "../house-rule.ts";
import { isOver } from "../limits.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { capitalised } from "./marking-shapes.ts";
import { farMarks } from "./photo-mark-far.ts";

const entry: CodeEntry = {
  code: "checks/photo-residual",
  severity: "query",
  title: "a photograph whose marks do not agree",
  why: "Four marks always fit, and nothing checks them. With five or more each is held against a map of the others alone: what lies between is a mark set beside its spot, a measure misread, a face that is not flat, or a lens that bends straight lines. Five tell that something is wrong, six or more which mark.",
  example:
    "photo:\n  file: old.png\n  points:\n    - { in-picture: [100, 900], on-panel: [0, 0] }\n    - { in-picture: [1300, 900], on-panel: [120, 0] }\n    - { in-picture: [1300, 100], on-panel: [120, 80] }\n    - { in-picture: [100, 100], on-panel: [0, 80] }\n    - { in-picture: [740, 500], on-panel: [60, 40] }",
};

/**
 * A mark under the magnifier is within two pixels of its spot, 0.2 mm on a picture of 1500 pixels across a panel of 150 mm, and
 * its place on the panel is read from a steel rule to 0.25 mm; more than both together is a slip (common practice).
 */
const RULE: HouseRule = {
  key: "photo-residual",
  usual: 0.5,
  name: "marks of a photograph within 0.5 mm (common practice)",
};

export const photoResidual: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { photo } = facts.layout.design;
    if (photo?.marks.kind !== "points") return [];
    const { points } = photo.marks;
    // A figure with a digit too many is told as that; what it would pull the others to is no news of them.
    const far = farMarks(facts.layout).map(({ index }) => index);
    const held = [...points.keys()].filter((index) => !far.includes(index));
    const plane = photoPlane({ kind: "points", points: held.map((index) => points[index]!) });
    if (plane.kind !== "plane") return [];
    const { check } = plane;
    const { limit, source } = houseLimit(facts, RULE);
    if (check.kind === "unchecked" || !isOver(check.disagreement, limit)) return [];
    const wrong = wrongOnes(check.marks, { limit, pixel: plane.pixel });
    const { words, off, mark } = verdict(check, wrong, (index) => nameOf(held[index]!));
    return [
      finding(entry, {
        message: `${photo.file}: ${words(`more than ${millimetres(limit, off)}`)}${withoutFar(far)}`,
        span: spanOf(
          mark === null ? photo.written : (points[held[mark]!]?.written ?? photo.written),
          mark === null ? "points" : "in-picture",
        ),
        measured: measureMm(off),
        limit: measureMm(limit),
        source,
      }),
    ];
  },
};

const nameOf = (index: number): string => markName(index, "points");

const withoutFar = (far: readonly number[]): string => {
  if (far.length === 0) return "";
  const names = capitalised(far.map(nameOf).join(", "));
  return ` ${names}, far outside the panel, ${far.length === 1 ? "is" : "are"} not among them.`;
};

type Checked = Extract<PhotoCheck, { readonly kind: "checked" }>;

/**
 * Marks without which the others agree: one alone is the wrong one. Without another the wrong one stays, and what is left of it
 * among the others is larger by a factor; a pixel is left of any. With five marks four are left, which always fit.
 */
const wrongOnes = (
  marks: readonly PairWithout[],
  { limit, pixel }: { readonly limit: number; readonly pixel: number },
): readonly number[] => {
  const rests = marks.map((mark) => (mark.kind === "put" ? mark.rest : null));
  const least = Math.min(...rests.filter((rest) => rest !== null));
  if (isOver(least, limit)) return [];
  const agreed = CLEARLY_MORE * Math.max(least, pixel);
  return [...rests.entries()].flatMap(([index, rest]) =>
    rest !== null && rest < agreed ? [index] : [],
  );
};

/** Marking errors of one size make sums this unlike in one case of twenty or fewer (F of 4 and 4 degrees of freedom, 6.4). */
const CLEARLY_MORE = 2.5;

interface Verdict {
  readonly words: (limit: string) => string;
  readonly off: number;
  /** The one that is wrong; null where nothing tells. */
  readonly mark: number | null;
}

const verdict = (
  { marks, disagreement }: Checked,
  wrong: readonly number[],
  name: (index: number) => string,
): Verdict => {
  const [index, ...others] = wrong;
  const one = index === undefined || others.length > 0 ? undefined : marks[index];
  if (index !== undefined && one?.kind === "put") {
    const spot = one.spot === null ? "" : ` They put it at ${pixels(one.spot)} in the picture.`;
    return {
      words: (limit) =>
        `${name(index)} is ${millimetres(one.apart)} off where the others put it, ${limit}; without it they agree.${spot} Set it there, or measure its place on the panel again.`,
      off: one.apart,
      mark: index,
    };
  }
  return {
    words: (limit) =>
      `its ${marks.length} marks disagree by ${millimetres(disagreement)}, ${limit}. ${whichWords(marks.length, wrong.map(name))}`,
    off: disagreement,
    mark: null,
  };
};

const whichWords = (count: number, wrong: readonly string[]): string => {
  if (count === 5)
    return "Five do not tell which is wrong: add a sixth, off the lines between the others, or set each again.";
  if (wrong.length > 1)
    return `One of ${wrong.join(", ")} is wrong: without any of these the others agree. Set them again, or add a mark.`;
  return "No single one of them is to blame: set each again, or photograph from farther away, where lenses bend less.";
};

/** As they are written under `in-picture`. */
const pixels = ({ x, y }: PlanePoint): string => `[${decimal(x, 1)}, ${decimal(y, 1)}]`;
