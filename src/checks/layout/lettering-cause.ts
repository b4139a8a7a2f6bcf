// Which number made a marking's letters as high as they are: the legend's own height, or the panel's lettering. Markings
// that share that number share their trouble.

import type { Remedy, Span } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import { samePlace } from "../../geometry/tolerance.ts";
import { legendOf } from "../../layout/legend-of.ts";
import type { PlacedMarking } from "../../layout/panel-layout.ts";
import { keyRemedy } from "../key-remedy.ts";
import type { PanelFacts } from "../rule.ts";

export type Lettered = PlacedMarking & {
  readonly capHeight: NonNullable<PlacedMarking["capHeight"]>;
};

export const letteredMarkings = (facts: PanelFacts): readonly Lettered[] =>
  facts.layout.markings.filter(
    (marking): marking is Lettered =>
      marking.capHeight !== null && marking.fills.length + marking.strokes.length > 0,
  );

export interface LetteringCause {
  /** Equal for markings whose height comes from the same number. */
  readonly key: string;
  readonly span: Span;
  /** The written height that letters of this marking come from. */
  readonly height: number;
  readonly isOwn: boolean;
}

/** What is asked of a panel for it; a console's rules have that much of each of theirs. */
export type LetteringFacts = Pick<PanelFacts, "layout" | "edit" | "texts">;

export const letteringCause = (marking: Lettered, facts: LetteringFacts): LetteringCause => {
  const { design } = facts.layout;
  const legend = legendOf(marking, facts.layout);
  const own = legend?.height ?? null;
  if (legend !== null && own !== null) {
    const span = legend.written.keys["height"] ?? marking.span;
    return { key: `${span.file} ${span.start}`, span, height: own, isOwn: true };
  }
  const span = design.written.keys["lettering"] ?? marking.span;
  return { key: "lettering", span, height: design.lettering.height, isOwn: false };
};

/** `height: 3.9 mm`, taken up to the next tenth, where that number stands. */
export const heightRemedy = (
  cause: LetteringCause,
  height: number,
  facts: LetteringFacts,
): { readonly text: string; readonly remedies: readonly Remedy[] } => {
  const text = `${decimal(upToTenth(height), 1)} mm`;
  const { design } = facts.layout;
  if (cause.isOwn)
    return {
      text,
      remedies: [{ title: `height: ${text}`, edits: [facts.edit(cause.span, text)] }],
    };
  const isThere = design.written.keys["lettering"] !== undefined;
  const remedy = isThere
    ? keyRemedy(facts, { file: design.file, path: ["lettering"], key: "height", value: text })
    : keyRemedy(facts, {
        file: design.file,
        path: [],
        key: "lettering",
        value: `{ height: ${text} }`,
      });
  return { text, remedies: [remedy] };
};

export interface CauseGroup {
  readonly cause: LetteringCause;
  /** The worst first. */
  readonly markings: readonly [Lettered, ...Lettered[]];
}

/** Markings by cause, each group with its worst first. */
export const byCause = (
  markings: readonly Lettered[],
  facts: LetteringFacts,
  badness: (marking: Lettered) => number,
): readonly CauseGroup[] => {
  const groups = new Map<string, CauseGroup>();
  for (const marking of markings) {
    const cause = letteringCause(marking, facts);
    const before = groups.get(cause.key);
    if (before === undefined) {
      groups.set(cause.key, { cause, markings: [marking] });
      continue;
    }
    const [worst, ...rest] = before.markings;
    const isWorse = badness(marking) > badness(worst) + samePlace;
    groups.set(cause.key, {
      cause,
      markings: isWorse ? [marking, worst, ...rest] : [worst, ...rest, marking],
    });
  }
  return [...groups.values()];
};

export const andOthers = (count: number): string =>
  count === 0 ? "" : count === 1 ? " and one other marking" : ` and ${count} other markings`;
