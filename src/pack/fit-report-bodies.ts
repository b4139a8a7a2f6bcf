// What the fit report says of bodies: clashes, what stands out of the envelope, and the nearest that neighbours come.

import type { ReportSection } from "../export/report.ts";
import type { ConsoleBody } from "../fit/console-body.ts";
import type { FitFacts, OutsideFact, PairFact, PairRelation } from "../fit/fit-facts.ts";
import { bodyWords, placeWords } from "./body-words.ts";
import { factSection, numberColumn, wordColumn } from "./report-section.ts";

export const bodySections = ({ pairs, outside }: FitFacts): readonly ReportSection[] => [
  clashTable(pairs),
  outsideTable(outside),
  nearTable(pairs),
];

const AT = "at, forward / left / up, mm";

interface ClashRow {
  readonly pair: PairFact;
  readonly relation: Extract<PairRelation, { readonly kind: "clash" }>;
}

const clashTable = (pairs: readonly PairFact[]): ReportSection =>
  factSection<ClashRow>({
    id: "clashes",
    heading: "Clashes",
    words: ["Bodies that want the same space: how deep they stand in each other."],
    empty: "No two bodies want the same space.",
    columns: [
      wordColumn("a", "one", ({ pair }) => bodyWords(pair.a)),
      wordColumn("b", "other", ({ pair }) => bodyWords(pair.b)),
      numberColumn("depth", "deep, mm", ({ relation }) => relation.depth),
      numberColumn("volume", "shared, mm³", ({ relation }) => relation.volume),
      wordColumn("within", "one wholly in the other", ({ relation }) => relation.isWithin),
      wordColumn("at", AT, ({ relation }) => placeWords(relation.at)),
    ],
    rows: pairs.flatMap((pair) =>
      pair.relation.kind === "clash" ? [{ pair, relation: pair.relation }] : [],
    ),
  });

const outsideTable = (outside: readonly OutsideFact[]): ReportSection =>
  factSection<OutsideFact>({
    id: "outside",
    heading: "Out of the console",
    words: [
      "What stands out of the console's inside, behind its panel: of the envelope that is written, else of what the frame's cheeks enclose.",
    ],
    empty: "Nothing stands out of the console's inside, or no inside is known.",
    columns: [
      wordColumn("body", "body", ({ body }) => bodyWords(body)),
      wordColumn("of", "out of", ({ of }) => `the ${of}`),
      numberColumn("depth", "deep, mm", ({ depth }) => depth),
      numberColumn("volume", "outside, mm³", ({ volume }) => volume),
      wordColumn("at", AT, ({ at }) => placeWords(at)),
    ],
    rows: outside,
  });

interface NearRow {
  readonly pair: PairFact;
  readonly gap: number;
  readonly at: string;
}

const nearTable = (pairs: readonly PairFact[]): ReportSection =>
  factSection<NearRow>({
    id: "clearances",
    heading: "Nearest clearances",
    words: [
      "For each two neighbours the bodies that come nearest without a clash; 0 is a touch. Further apart than the search length nothing is listed.",
    ],
    empty: "No two neighbours come near each other.",
    columns: [
      wordColumn("a", "one", ({ pair }) => bodyWords(pair.a)),
      wordColumn("b", "other", ({ pair }) => bodyWords(pair.b)),
      numberColumn("gap", "gap, mm", ({ gap }) => gap),
      wordColumn("at", AT, ({ at }) => at),
    ],
    rows: nearestPairs(pairs),
  });

/** The nearest of each two owners, the nearest first; ties by id. */
const nearestPairs = (pairs: readonly PairFact[]): readonly NearRow[] => {
  const nearest = new Map<string, NearRow>();
  for (const pair of pairs) {
    const { relation } = pair;
    if (relation.kind === "clash") continue;
    const gap = relation.kind === "apart" ? relation.gap : 0;
    const name = [ownerOf(pair.a), ownerOf(pair.b)].sort().join("\n");
    const known = nearest.get(name);
    if (known === undefined || gap < known.gap)
      nearest.set(name, { pair, gap, at: placeWords(relation.at) });
  }
  return [...nearest.values()].sort(
    (one, other) => one.gap - other.gap || (idsOf(one.pair) < idsOf(other.pair) ? -1 : 1),
  );
};

const ownerOf = ({ panel, id }: ConsoleBody): string => (panel === null ? `:${id}` : panel);

const idsOf = ({ a, b }: PairFact): string => `${a.id}\n${b.id}`;
