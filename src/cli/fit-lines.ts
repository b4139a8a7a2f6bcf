// One line a bay: how full it is, what is deepest behind it, what comes nearest to one another on it.

import { countWords } from "../diagnostics/count-words.ts";
import type { FitFacts, PairFact } from "../fit/fit-facts.ts";
import { decimal } from "../geometry/number.ts";
import type { BayLayout, ConsoleLayout } from "../layout/console/console-layout.ts";

export const bayLines = (layout: ConsoleLayout, facts: FitFacts): string =>
  [...layout.bays.map((bay) => bayLine(bay, layout, facts)), ...standLines(layout)]
    .map((line) => `${line}\n`)
    .join("");

const bayLine = (bay: BayLayout, layout: ConsoleLayout, facts: FitFacts): string => {
  const panels = panelsIn(bay, layout);
  const parts = [
    `${countWords(panels.length, "panel")} on ${fullness(bay)}`,
    ...deepest(bay, facts),
    ...nearest(panels, facts),
  ];
  return `bay ${bay.id}: ${parts.join("; ")}`;
};

const panelsIn = (bay: BayLayout, { panels }: ConsoleLayout): readonly string[] =>
  panels.flatMap(({ name, place }) => (place.kind === "bay" && place.bay === bay.id ? [name] : []));

const fullness = ({ free, modules, mount }: BayLayout): string => {
  const open = free.reduce((sum, run) => sum + run.modules, 0);
  return `${decimal(modules - open, 2)} of ${decimal(modules, 2)} ${mount.height.unit}`;
};

const deepest = (bay: BayLayout, { depths }: FitFacts): readonly string[] => {
  const [most] = depths.filter((fact) => fact.bay === bay.id).toSorted((a, b) => b.takes - a.takes);
  return most === undefined
    ? []
    : [`deepest ${most.panel} ${decimal(most.takes, 1)} of ${decimal(most.has, 1)} mm`];
};

const nearest = (panels: readonly string[], { pairs }: FitFacts): readonly string[] => {
  const here = pairs.filter(({ a, b }) => [a, b].some(({ panel }) => panels.includes(panel ?? "")));
  const clashes = here.filter(({ relation }) => relation.kind === "clash").length;
  if (clashes > 0) return [countWords(clashes, "clash", "clashes")];
  const [least] = here
    .map((pair) => ({ pair, gap: gapOf(pair) }))
    .toSorted((a, b) => a.gap - b.gap);
  return least === undefined
    ? []
    : [`nearest ${decimal(least.gap, 2)} mm, ${least.pair.a.id} to ${least.pair.b.id}`];
};

const gapOf = ({ relation }: PairFact): number => {
  switch (relation.kind) {
    case "apart":
      return relation.gap;
    case "touching":
    case "clash":
      return 0;
  }
};

const standLines = ({ panels }: ConsoleLayout): readonly string[] => {
  const names = panels.flatMap(({ name, place }) => (place.kind === "stand" ? [name] : []));
  return names.length === 0 ? [] : [`on stands: ${names.join(", ")}`];
};
