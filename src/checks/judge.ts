// The one place of judgement: every rule over one panel's facts. What follows from another finding's cause is held back
// and counted there; then the moves that would mend what is left are looked for.

import type { CodeEntry, Finding } from "../diagnostics/finding.ts";
import { LAYOUT_RULES } from "./layout/rules.ts";
import { moveRemedies } from "./moves.ts";
import { oneCauseOneFinding } from "./one-cause.ts";
import { PARTS_RULES } from "./parts/rules.ts";
import { PRINTED_RULES } from "./printed/rules.ts";
import type { Move, PanelFacts, Rule } from "./rule.ts";

/** Every rule there is. Its entries are the table of codes of this floor. */
const RULES: readonly Rule[] = [...LAYOUT_RULES, ...PARTS_RULES, ...PRINTED_RULES];

export const CHECK_CODES: readonly CodeEntry[] = RULES.map(({ entry }) => entry);

export const judge = (facts: PanelFacts): readonly Finding[] => {
  const found = oneCauseOneFinding(RULES.flatMap((rule) => rule.judge(facts)));
  return withMoves(found, facts).map((one) => ({ ...one, panel: facts.layout.name }));
};

const MOVES: ReadonlyMap<string, Move> = new Map(
  RULES.flatMap(({ entry, move }) => (move === null ? [] : [[entry.code, move]])),
);

/** More findings than this are not mended one by one by anybody; each search may try hundreds of places. */
const MOST_SEARCHES = 12;

const withMoves = (found: readonly Finding[], facts: PanelFacts): readonly Finding[] => {
  let searches = 0;
  return found.map((one) => {
    const move = MOVES.get(one.code);
    if (move === undefined || searches === MOST_SEARCHES) return one;
    searches += 1;
    return { ...one, remedies: [...one.remedies, ...moveRemedies(one, move, facts)] };
  });
};
