// Pairs of bodies by what would mend them: all pairs of the same two panels, or of one panel and one thing of the console,
// are one cause. Clashes come before touches, touches before gaps.

import type { ConsoleBody } from "../../fit/console-body.ts";
import type { PairFact, PairRelation } from "../../fit/fit-facts.ts";
import { arithmeticNoise } from "../../geometry/tolerance.ts";
import type { PanelPlace } from "../../layout/console/console-layout.ts";
import type { ConsoleFacts } from "./console-rule.ts";

export type PairOf<Kind extends PairRelation["kind"]> = PairFact & {
  readonly relation: PairRelation & { readonly kind: Kind };
};

const ORDER: Readonly<Record<PairRelation["kind"], number>> = { clash: 0, touching: 1, apart: 2 };

/** What a pair's finding hangs on. */
export const causeOf = ({ a, b }: PairFact): string => [ownerOf(a), ownerOf(b)].sort().join(" | ");

const ownerOf = ({ panel, id }: ConsoleBody): string => panel ?? id;

/** Without pairs of panels that want the same stretch of their bay: `fit/panels-overlap` speaks of those. */
export const judgedPairs = ({ fit, layout }: ConsoleFacts): readonly PairFact[] => {
  const places = new Map(layout.panels.map(({ name, place }) => [name, place]));
  return fit.pairs.filter(
    ({ a, b }) => !wantSameStretch(places.get(a.panel ?? ""), places.get(b.panel ?? "")),
  );
};

export const wantSameStretch = (
  one: PanelPlace | undefined,
  other: PanelPlace | undefined,
): boolean =>
  one?.kind === "bay" &&
  other?.kind === "bay" &&
  one.bay === other.bay &&
  one.to > other.from + arithmeticNoise &&
  other.to > one.from + arithmeticNoise;

/** Pairs of one kind, without those whose two owners have a worse pair. */
export const pairsOfKind = <Kind extends PairRelation["kind"]>(
  pairs: readonly PairFact[],
  kind: Kind,
): readonly PairOf<Kind>[] => {
  const worse = new Set(
    pairs.filter(({ relation }) => ORDER[relation.kind] < ORDER[kind]).map(causeOf),
  );
  return pairs.filter(
    (pair): pair is PairOf<Kind> => pair.relation.kind === kind && !worse.has(causeOf(pair)),
  );
};

/** Clashes of bodies, with every clash of the same cause; and clashes whose cause is a plug or a cable alone. */
export const clashesByCause = (
  pairs: readonly PairFact[],
): {
  readonly ofBodies: readonly PairOf<"clash">[];
  readonly ofPlugs: readonly PairOf<"clash">[];
} => {
  const clashes = pairsOfKind(pairs, "clash");
  const causes = new Set(clashes.filter((pair) => !hasPlug(pair)).map(causeOf));
  return {
    ofBodies: clashes.filter((pair) => causes.has(causeOf(pair))),
    ofPlugs: clashes.filter((pair) => !causes.has(causeOf(pair))),
  };
};

export const hasPlug = ({ a, b }: Pick<PairFact, "a" | "b">): boolean => isPlug(a) || isPlug(b);

export const isPlug = ({ role }: ConsoleBody): boolean => role === "plug" || role === "cable";
