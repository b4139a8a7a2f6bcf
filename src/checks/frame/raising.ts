// Bays that stand higher: what is said of it, the edit of their places, and the console with them there. All bays of one unit go
// up together, so that what lies between them stays as it is.

import { replaceValue } from "../../design/edit.ts";
import { source } from "../../design/source.ts";
import { spanOf } from "../../design/written.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { plus, vector } from "../../geometry/space/vector.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";

export interface Raising {
  /** What was asked, up to the next tenth of a millimetre. */
  readonly by: number;
  /** `at: [0, -400, 620] (aft)`, one after another. */
  readonly words: string;
  readonly remedy: (texts: ReadonlyMap<string, string>) => Remedy;
}

export const raising = (bays: readonly Pick<BayLayout, "id" | "design">[], by: number): Raising => {
  const up = Math.ceil(by * TENTHS - samePlace) / TENTHS;
  const words = bays.map((bay) => `at: ${placeAbove(bay, up)} (${bay.id})`).join(", ");
  return {
    by: up,
    words,
    remedy: (texts) => ({
      title: words,
      edits: bays.flatMap((bay) => {
        const span = spanOf(bay.design.written, "at");
        const text = texts.get(span.file);
        const from = text === undefined ? null : source(span.file, text);
        return from === null ? [] : [replaceValue(from, span, placeAbove(bay, up))];
      }),
    }),
  };
};

const TENTHS = 10;

const placeAbove = ({ design }: Pick<BayLayout, "design">, up: number): string => {
  const [x, y, z] = design.at;
  return `[${[x, y, z + up].map((value) => decimal(value, 3)).join(", ")}]`;
};

/** The bays alone: what stands on them is not looked at. */
export const raisedBays = (
  layout: ConsoleLayout,
  ids: readonly string[],
  by: number,
): ConsoleLayout => ({
  ...layout,
  bays: layout.bays.map((bay) =>
    ids.includes(bay.id)
      ? { ...bay, frame: { ...bay.frame, origin: plus(bay.frame.origin, vector(0, 0, by)) } }
      : bay,
  ),
});
