// Will the part enter its hole, and will its nut still cover it: at the finished size, at both ends of what isn't measured.

import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { mm } from "../../geometry/quantity.ts";
import type { CutOut, Gauge, LayerLayout } from "../../layout/panel-layout.ts";
import { KERF_UNCERTAINTY, kerfReading, kerfSetting } from "../../parts/kerf.ts";
import { isOver, isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const tooSmall: CodeEntry = {
  code: "checks/hole-too-small",
  severity: "fault",
  title: "a hole that its part won't enter",
  why: "Paint lies on the wall of a hole too: 0.08 mm a side turns a hole cut at 6.4 into one of 6.24, and a bush of 6.35 stays out. Leave the size to the program, which adds paint and fit, or give a larger one.",
  example: "components:\n  a: { part: toggle-12, hole: 6.4 mm, at: { left: 40 mm, top: 30 mm } }",
};

const uncovered: CodeEntry = {
  code: "checks/hole-uncovered",
  severity: "fault",
  title: "a hole wider than its nut or flange covers",
  why: "What the nut, washer or flange does not cover shows as a gap, lets light out, and gives the part nothing to sit on.",
  example: "components:\n  a: { part: toggle-12, hole: 9 mm, at: { left: 40 mm, top: 30 mm } }",
};

const unmeasured: CodeEntry = {
  code: "checks/fit-unmeasured",
  severity: "query",
  title: "a fit that hangs on a number nobody has measured",
  why: "Kerf and paint decide whether a part enters. As long as they are typical values, the finished hole may come out smaller or larger; the components named here fail at one end of that range. Cut the laser test piece, measure a painted chip, and enter the readings in the workshop.",
  example: "finish: spray-paint",
};

interface Gauged {
  readonly cutOut: CutOut;
  readonly gauge: Gauge;
  readonly layer: LayerLayout;
}

const gauged = (facts: PanelFacts): readonly Gauged[] =>
  facts.layout.layers.flatMap((layer) =>
    layer.cutOuts.flatMap((cutOut) =>
      cutOut.gauge === null ? [] : [{ cutOut, gauge: cutOut.gauge, layer }],
    ),
  );

export const holeTooSmall: Rule = {
  entry: tooSmall,
  judge: (facts) =>
    onePerOwner(gauged(facts), ({ cutOut, gauge, layer }) => {
      if (!isUnder(gauge.finishedSize, gauge.goSize)) return null;
      const paint = cutOut.asCut && layer.holePaint.nominal > 0;
      const cut = gauge.finishedSize + 2 * layer.holePaint.nominal;
      const why = paint
        ? ` It is cut at ${millimetres(cut)} and painted ${millimetres(layer.holePaint.nominal)} a side.`
        : "";
      const works = gauge.goSize + 2 * (paint ? layer.holePaint.high : 0) + 0.1;
      return finding(tooSmall, {
        message: `${cutOut.owner}: the finished hole in ${layer.id} is ${millimetres(gauge.finishedSize)} and ${millimetres(gauge.goSize)} must pass, ${millimetres(gauge.goSize - gauge.finishedSize)} more.${why} hole: ${decimal(works, 2)} mm works.`,
        span: cutOut.span,
        subjects: [cutOut.owner],
        measured: measureMm(gauge.finishedSize),
        limit: measureMm(gauge.goSize),
        source: { kind: "datasheet", name: gauge.what },
        remedies: holeRemedy(cutOut, works, facts),
      });
    }),
};

const holeRemedy = (cutOut: CutOut, size: number, facts: PanelFacts): Finding["remedies"] => {
  const component = facts.layout.components.find(({ id }) => id === cutOut.owner);
  const span = component?.written.keys["hole"];
  if (span === undefined) return [];
  const text = `${decimal(size, 2)} mm`;
  return [{ title: `hole: ${text}`, edits: [facts.edit(span, text)] }];
};

export const holeUncovered: Rule = {
  entry: uncovered,
  judge: (facts) =>
    onePerOwner(gauged(facts), ({ cutOut, gauge, layer }) => {
      if (gauge.noGo === null || !isOver(gauge.finishedSize, gauge.noGo)) return null;
      return finding(uncovered, {
        message: `${cutOut.owner}: the finished hole in ${layer.id} is ${millimetres(gauge.finishedSize)}; nut or flange covers up to ${millimetres(gauge.noGo)}.`,
        span: cutOut.span,
        subjects: [cutOut.owner],
        measured: measureMm(gauge.finishedSize),
        limit: measureMm(gauge.noGo),
        source: { kind: "datasheet", name: gauge.what },
      });
    }),
};

/** One finding a layer, naming every component whose fit fails at an end of the range. */
export const fitUnmeasured: Rule = {
  entry: unmeasured,
  judge: (facts) => facts.layout.layers.flatMap((layer) => layerFits(layer, facts)),
};

const layerFits = (layer: LayerLayout, facts: PanelFacts): readonly Finding[] => {
  const spread = sizeSpread(layer);
  if (spread.low === 0 && spread.high === 0) return [];
  const failing = gauged(facts).filter(
    ({ gauge, layer: of }) => of.id === layer.id && failsWithin(gauge, spread),
  );
  const first = failing[0];
  if (first === undefined) return [];
  const owners = [...new Set(failing.map(({ cutOut }) => cutOut.owner))];
  const slack = Math.min(...failing.map(({ gauge }) => gauge.finishedSize - gauge.goSize));
  return [
    finding(unmeasured, {
      message: `${layer.id}: ${spread.why.join(" and ")} not measured, so that finished holes may be ${millimetres(-spread.low)} smaller or ${millimetres(spread.high)} larger than meant. Then these fits fail: ${owners.join(", ")}.`,
      span: layer.design.written.span,
      subjects: [layer.id, ...owners],
      measured: measureMm(slack),
      limit: measureMm(-spread.low),
      source: { kind: "workshop", name: "kerf and paint not measured" },
    }),
  ];
};

interface Spread {
  readonly low: number;
  readonly high: number;
  readonly why: readonly string[];
}

/** By how much a finished hole may miss its size, for kerf and paint that are only typical. */
export const sizeSpread = (layer: LayerLayout): Spread => {
  const kerf = isKerfTypical(layer) ? KERF_UNCERTAINTY : 0;
  const { holePaint } = layer;
  const why = [...(kerf > 0 ? ["kerf is"] : []), ...(holePaint.known ? [] : ["paint is"])];
  return {
    low: mm(-kerf - 2 * (holePaint.high - holePaint.nominal)),
    high: mm(kerf + 2 * (holePaint.nominal - holePaint.low)),
    why,
  };
};

const isKerfTypical = (layer: LayerLayout): boolean =>
  layer.machine !== null &&
  layer.stock !== null &&
  kerfSetting(layer.machine, layer.stock).kind === "in-file" &&
  kerfReading(layer.machine, layer.stock) === null;

const failsWithin = (gauge: Gauge, spread: Spread): boolean =>
  isUnder(gauge.finishedSize + spread.low, gauge.goSize) ||
  (gauge.noGo !== null && isOver(gauge.finishedSize + spread.high, gauge.noGo));

const onePerOwner = (
  all: readonly Gauged[],
  judgeOne: (one: Gauged) => Finding | null,
): readonly Finding[] => {
  const found = new Map<string, Finding>();
  for (const one of all) {
    if (found.has(one.cutOut.owner)) continue;
    const judged = judgeOne(one);
    if (judged !== null) found.set(one.cutOut.owner, judged);
  }
  return [...found.values()];
};
