// Marks of a photograph that are said to lie far outside the panel: most often a digit too many, and everything that is read
// from the picture is off by it. Marks beside the panel, as on the bench or on a sheet that overhangs it, are sound.

import type { PhotoMarks } from "../../design/photo-design.ts";
import { markPairs } from "../../design/photo-plane.ts";
import { markName } from "../../design/photo-words.ts";
import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding, type Span } from "../../diagnostics/finding.ts";
import {
  type Extent,
  extent,
  extentGap,
  extentHeight,
  extentWidth,
  joinedExtent,
} from "../../geometry/extent.ts";
import { isOver } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/photo-mark-far",
  severity: "query",
  title: "a photograph's mark that is said to lie far outside the panel",
  why: "A photograph is believed between its marks. A mark may lie beside the panel, but one that is farther from it than the panel is long is most often a slip in its figure, and four marks fit whatever their figures are. Places count from the panel's lower left corner.",
  example:
    "photo:\n  file: old.png\n  points:\n    - { in-picture: [100, 900], on-panel: [0, 0] }\n    - { in-picture: [1300, 900], on-panel: [1200 mm, 0] }\n    - { in-picture: [1300, 100], on-panel: [120 mm, 80 mm] }\n    - { in-picture: [100, 100], on-panel: [0, 80 mm] }",
};

export const photoMarkFar: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { photo } = facts.layout.design;
    const far = farMarks(facts.layout);
    const [first, ...others] = far;
    if (photo === null || first === undefined) return [];
    const limit = mostApart(facts.layout.nominal);
    const span = spanOfMark(photo.marks, first.index);
    const words = lengthWords(facts, span);
    const too =
      others.length === 0
        ? ""
        : ` So do ${others.map((one) => nameOf(one, photo.marks)).join(", ")}.`;
    const { apart } = first;
    return [
      finding(entry, {
        message: `${photo.file}: ${nameOf(first, photo.marks)} lies ${words(apart, limit)} outside the panel by its figures; a mark up to ${words(limit, apart)} from it is taken for one beside it.${too} Measure its place again from the panel's lower left corner.`,
        span,
        measured: measureMm(apart),
        limit: measureMm(limit),
        source: {
          kind: "practice",
          name: "the panel's longer side: a mark is no farther from it",
        },
        suppressed: others.length,
      }),
    ];
  },
};

interface FarMark {
  readonly index: number;
  readonly apart: number;
}

/** In the order of the text. */
export const farMarks = ({
  design,
  nominal,
}: Pick<PanelFacts["layout"], "design" | "nominal">): readonly FarMark[] =>
  design.photo === null
    ? []
    : placesOf(design.photo.marks).flatMap((place, index) => {
        const apart = extentGap(nominal, place);
        return isOver(apart, mostApart(nominal)) ? [{ index, apart }] : [];
      });

/** A sheet may be larger than the panel that it lies on: it is far where all of it is. */
const placesOf = (marks: PhotoMarks): readonly Extent[] => {
  const points = markPairs(marks).map(({ to: { x, y } }) => extent(x, y, x, y));
  return marks.kind === "points" ? points : [points.reduce(joinedExtent)];
};

const mostApart = (nominal: Extent): number =>
  Math.max(extentWidth(nominal), extentHeight(nominal));

const nameOf = ({ index }: FarMark, { kind }: PhotoMarks): string =>
  kind === "sheet" ? "the sheet" : markName(index, kind);

const spanOfMark = (marks: PhotoMarks, index: number): Span => {
  if (marks.kind === "sheet") return spanOf(marks.sheet.written, "at");
  const { written } = marks.points[index]!;
  return spanOf(written, "on-panel");
};
