// Bays that stand higher, all of them by as much: what is said of it, the edit of their places, and the console with them there.
// What rests on bays of a row asks to raise the whole row, so that what lies between them stays; one bay that lies too low rises
// alone. Takes what is wanted; gives it up to the next step of the unit in which the first of them is written.

import { nodeAt, replaceValue } from "../../design/edit.ts";
import { lengthLike } from "../../design/length-text.ts";
import { source } from "../../design/source.ts";
import { spanOf } from "../../design/written.ts";
import type { Remedy, Span } from "../../diagnostics/finding.ts";
import type { TextEdit } from "../../diagnostics/text-edit.ts";
import { decimal } from "../../geometry/number.ts";
import { plus, vector } from "../../geometry/space/vector.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import type { BayLayout, ConsoleLayout } from "../../layout/console/console-layout.ts";
import { MM_PER_INCH } from "../../standards/inch.ts";
import { isInInches } from "../words.ts";

export interface Raising {
  readonly by: number;
  /** `at: [0, -400, 620] (aft)`, one after another. */
  readonly words: string;
  readonly remedy: Remedy;
}

type Raised = Pick<BayLayout, "id" | "design">;
type Texts = ReadonlyMap<string, string>;

export const raising = (bays: readonly Raised[], by: number, texts: Texts): Raising => {
  const places = bays.map((bay) => ({ bay, written: writtenPlace(bay, texts) }));
  const up = upTo(by, isInInches({ texts }, places[0]?.written?.up) ? MM_PER_INCH / 200 : 0.1);
  const raised = places.map(({ bay, written }) => ({
    bay,
    ...placeAbove(bay, up, { written, texts }),
  }));
  const words = raised.map(({ bay, words: place }) => `at: ${place} (${bay.id})`).join(", ");
  return {
    by: up,
    words,
    remedy: { title: words, edits: raised.flatMap(({ edits }) => edits) },
  };
};

/** In whole steps: tenths of a millimetre, or two hundredths of an inch to a builder's rule. */
const upTo = (by: number, step: number): number => Math.ceil(by / step - samePlace) * step;

interface WrittenPlace {
  readonly forward: string;
  readonly left: string;
  /** Of the height. */
  readonly up: Span;
}

/** null where its text is not at hand. */
const writtenPlace = ({ id, design }: Raised, texts: Texts): WrittenPlace | null => {
  const { file } = spanOf(design.written, "at");
  const text = texts.get(file);
  const list = text === undefined ? null : nodeAt(source(file, text), ["bays", id, "at"]);
  if (text === undefined || list?.kind !== "list") return null;
  const [forward, left, up] = list.items;
  if (forward === undefined || left === undefined || up === undefined) return null;
  const said = ({ span }: { readonly span: Span }): string => text.slice(span.start, span.end);
  return { forward: said(forward), left: said(left), up: up.span };
};

/** The height alone is written anew, in its own unit. */
const placeAbove = (
  { design }: Raised,
  up: number,
  { written, texts }: { readonly written: WrittenPlace | null; readonly texts: Texts },
): { readonly words: string; readonly edits: readonly TextEdit[] } => {
  const [x, y, z] = design.at;
  const text = written === null ? undefined : texts.get(written.up.file);
  if (written === null || text === undefined)
    return { words: `[${[x, y, z + up].map((value) => decimal(value, 3)).join(", ")}]`, edits: [] };
  const is = text.slice(written.up.start, written.up.end);
  const height = isInInches({ texts }, written.up)
    ? `${decimal(upTo((z + up) / MM_PER_INCH, 1e-4), 4)} in`
    : lengthLike(is, upTo(z + up, 1e-3));
  return {
    words: `[${written.forward}, ${written.left}, ${height}]`,
    edits: [replaceValue(source(written.up.file, text), written.up, height)],
  };
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
