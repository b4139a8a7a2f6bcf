// Which drawn line is which expected feature: first what lies in place, then what carries the name, then whatever is nearest.
// A line under a wrong process is still found, so that the table can say which one. Takes both lists; gives lines by feature,
// and the rest.

import { type Extent, grownExtent } from "../geometry/extent.ts";
import { boxMisfit, likestBox } from "./box-index.ts";
import type { DrawnLine } from "./drawn-line.ts";
import type { ExpectedFeature, ExpectedLoop } from "./expectation.ts";

export interface Matching {
  /** By place in the list of features: each line with the expected line that it is measured against. */
  readonly byFeature: readonly (readonly MatchedLine[])[];
  readonly extra: readonly DrawnLine[];
}

export interface MatchedLine {
  readonly line: DrawnLine;
  readonly expected: ExpectedLoop;
}

/** `offsetOf`: how far the machine's line lies beside an expected line. */
export const matchLines = (
  features: readonly ExpectedFeature[],
  lines: readonly DrawnLine[],
  offsetOf: (loop: ExpectedLoop) => number,
): Matching => {
  const byFeature: MatchedLine[][] = features.map(() => []);
  const take = (matched: MatchedLine): void => {
    byFeature[matched.expected.index]?.push(matched);
  };
  const cuts = features.filter(({ kind }) => kind === "cut").flatMap(({ loops }) => loops);
  const taken = new Set<DrawnLine>();
  const rest = (): CutSearch => ({
    features,
    offsetOf,
    cuts: cuts.filter((loop) => byFeature[loop.index]?.length === 0),
    lines: without(lines, taken),
  });
  for (const search of [cutsInPlace, cutsByName, cutsByPlace]) {
    for (const matched of search(rest())) {
      take(matched);
      taken.add(matched.line);
    }
  }
  const marks = matchMarks(features, without(lines, taken), offsetOf);
  for (const matched of marks.matched) take(matched);
  return { byFeature, extra: marks.extra };
};

/** The cuts and lines that are still to be brought together. */
interface CutSearch {
  readonly features: readonly ExpectedFeature[];
  readonly cuts: readonly ExpectedLoop[];
  readonly lines: readonly DrawnLine[];
  readonly offsetOf: (loop: ExpectedLoop) => number;
}

const without = (
  lines: readonly DrawnLine[],
  taken: ReadonlySet<DrawnLine>,
): readonly DrawnLine[] => lines.filter((line) => !taken.has(line));

/** An id may hold letters, digits and . _ / @ - only; whatever else a name had was replaced by one of them. */
const plainName = (name: string): string => name.replace(/[^A-Za-z0-9._/@-]/gu, "_");

const cutsByName = ({ features, cuts, lines }: CutSearch): readonly MatchedLine[] => {
  const byName = new Map<string, DrawnLine>();
  for (const line of lines) {
    if (line.name !== null && !byName.has(line.name)) byName.set(line.name, line);
  }
  const names = features.map(({ feature }) => plainName(feature));
  const shared = new Set(names.filter((name, index) => names.indexOf(name) !== index));
  return cuts.flatMap((expected) => {
    const name = names[expected.index] ?? "";
    const line = shared.has(name) ? undefined : byName.get(name);
    return line === undefined ? [] : [{ line, expected }];
  });
};

const CUTS: readonly string[] = ["cut-inner", "cut-outer", "drill"];

/** A line that is not under a cutting process is taken for a cut only where it lies this near to one. */
const SWAPPED_MISFIT = 1;

/** What a line under another cutting process must lie nearer by. */
const OTHER_PROCESS = 0.25;

/** What lies as good as right is what it lies on, whatever its name: `a.2` may be the second `a`. */
const cutsInPlace = (search: CutSearch): readonly MatchedLine[] =>
  cutsByPlace(search, SWAPPED_MISFIT);

/** Nearest pairs first, each line and each cut once. */
const cutsByPlace = (
  { cuts, lines, offsetOf }: CutSearch,
  most = Number.POSITIVE_INFINITY,
): readonly MatchedLine[] => {
  const pairs = cuts.flatMap((expected) => {
    const target = targetBox(expected, offsetOf);
    return lines.flatMap((line) => {
      const misfit = boxMisfit(target, line.box);
      if (misfit > most) return [];
      if (CUTS.includes(line.process)) return [{ line, expected, misfit: misfit + OTHER_PROCESS }];
      return misfit < SWAPPED_MISFIT ? [{ line, expected, misfit: misfit + SWAPPED_MISFIT }] : [];
    });
  });
  const usedCuts = new Set<ExpectedLoop>();
  const usedLines = new Set<DrawnLine>();
  return pairs
    .toSorted((a, b) => a.misfit - b.misfit)
    .filter(({ line, expected }) => {
      if (usedCuts.has(expected) || usedLines.has(line)) return false;
      usedCuts.add(expected);
      usedLines.add(line);
      return true;
    });
};

/** A mark that lies this near to an expected one is that one, whatever its name: `legend.2` may be two things. */
const IN_PLACE = 0.5;

/** A mark that lies further than this (four sides together) from every expected mark is none of them. */
const MARK_MISFIT = 4;

const matchMarks = (
  features: readonly ExpectedFeature[],
  lines: readonly DrawnLine[],
  offsetOf: (loop: ExpectedLoop) => number,
): { readonly matched: readonly MatchedLine[]; readonly extra: readonly DrawnLine[] } => {
  const marks = features.filter(({ kind }) => kind !== "cut").flatMap(({ loops }) => loops);
  const anywhere = finderOf(marks, offsetOf);
  const byName = marksByName(features, offsetOf);
  const matched: MatchedLine[] = [];
  const extra: DrawnLine[] = [];
  for (const line of lines) {
    const near = anywhere(line.box);
    const own = line.name === null ? undefined : ownFinder(byName, line.name);
    const named = near !== null && near.misfit <= IN_PLACE ? null : (own?.(line.box) ?? null);
    const found = named ?? (near !== null && near.misfit <= MARK_MISFIT ? near : null);
    if (found === null) extra.push(line);
    else matched.push({ line, expected: found.thing.loop });
  }
  return { matched, extra };
};

type MarkFinder = ReturnType<typeof finderOf>;

const finderOf = (
  loops: readonly ExpectedLoop[],
  offsetOf: (loop: ExpectedLoop) => number,
): ((
  box: Extent,
) => { readonly thing: { readonly loop: ExpectedLoop }; readonly misfit: number } | null) =>
  likestBox(loops.map((loop) => ({ loop, box: targetBox(loop, offsetOf) })));

const marksByName = (
  features: readonly ExpectedFeature[],
  offsetOf: (loop: ExpectedLoop) => number,
): ReadonlyMap<string, MarkFinder> => {
  const loops = new Map<string, ExpectedLoop[]>();
  for (const feature of features) {
    if (feature.kind === "cut") continue;
    const name = plainName(feature.feature);
    loops.set(name, [...(loops.get(name) ?? []), ...feature.loops]);
  }
  return new Map(Array.from(loops, ([name, own]) => [name, finderOf(own, offsetOf)]));
};

/** The second path of one feature carries its name and `.2`. */
const ownFinder = (byName: ReadonlyMap<string, MarkFinder>, name: string): MarkFinder | undefined =>
  byName.get(name) ?? byName.get(name.replace(/\.\d+$/, ""));

const targetBox = (loop: ExpectedLoop, offsetOf: (loop: ExpectedLoop) => number): Extent =>
  grownExtent(loop.box, loop.side * offsetOf(loop));
