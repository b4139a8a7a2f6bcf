// Fits that hang on kerf or paint that nobody has measured: sound as meant, out at one end of what may come.

import { entryName } from "../../design/entry-name.ts";
import { type CodeEntry, type Finding, finding } from "../../diagnostics/finding.ts";
import type { Gauge, LayerLayout } from "../../layout/panel-layout.ts";
import { KERF_UNCERTAINTY, kerfReading, kerfSetting } from "../../parts/kerf.ts";
import { isOver, isUnder } from "../limits.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";
import { gaugedHoles } from "./gauged-holes.ts";

const entry: CodeEntry = {
  code: "checks/fit-unmeasured",
  severity: "query",
  title: "a fit that hangs on a number nobody has measured",
  why: "Kerf and paint decide whether a part enters. As long as they are typical values, the finished hole may come out smaller or larger; the components named here fail at one end of that range. Cut the laser test piece, measure a painted chip, and enter the readings in the workshop.",
  example:
    "stack:\n  - { layer: face, sheet: aluminium-2, finish: paint-and-engrave }\ncomponents:\n  a: { part: toggle-6, at: { left: 40 mm, top: 30 mm } }",
};

/** One finding a layer, naming every component whose fit fails at an end of the range. */
export const fitUnmeasured: Rule = {
  entry,
  move: null,
  judge: (facts) => facts.layout.layers.flatMap((layer) => layerFits(layer, facts)),
};

interface Spread {
  /** How much smaller and how much larger than meant a finished hole may come out. */
  readonly smaller: number;
  readonly larger: number;
  readonly why: readonly string[];
}

const sizeSpread = (layer: LayerLayout): Spread => {
  const kerf = isKerfTypical(layer) ? KERF_UNCERTAINTY : 0;
  const { holePaint } = layer;
  return {
    smaller: kerf + 2 * (holePaint.high - holePaint.nominal),
    larger: kerf + 2 * (holePaint.nominal - holePaint.low),
    why: [...(kerf > 0 ? ["kerf"] : []), ...(holePaint.known ? [] : ["paint"])],
  };
};

const isKerfTypical = ({ machine, stock }: LayerLayout): boolean =>
  machine !== null &&
  stock !== null &&
  kerfSetting(machine, stock).kind === "in-file" &&
  kerfReading(machine, stock) === null;

interface Slack {
  readonly owner: string;
  /** What the fit has to spare, and what the spread may take of it. */
  readonly spare: number;
  readonly taken: number;
}

const layerFits = (layer: LayerLayout, facts: PanelFacts): readonly Finding[] => {
  const spread = sizeSpread(layer);
  const slacks = gaugedHoles(facts)
    .filter((hole) => hole.layer.id === layer.id)
    .flatMap(({ cutOut, gauge }) => slackOf(cutOut.owner, gauge, spread));
  const worst = slacks.reduce<Slack | null>(
    (least, one) =>
      least === null || one.spare - one.taken < least.spare - least.taken ? one : least,
    null,
  );
  if (worst === null) return [];
  const owners = [...new Set(slacks.map(({ owner }) => owner))];
  const entries = [...new Set(owners.map(entryName))];
  return [
    finding(entry, {
      message: `${layer.id}: ${spread.why.join(" and ")} not measured, so that finished holes may be ${millimetres(spread.smaller)} smaller or ${millimetres(spread.larger)} larger than meant. These fits then fail: ${entries.join(", ")}; ${worst.owner} has ${millimetres(worst.spare, worst.taken)} to spare, ${millimetres(worst.taken - worst.spare, 0)} too little. Measure and enter it in the workshop.`,
      span: layer.design.written.span,
      subjects: [layer.id, ...owners],
      measured: measureMm(worst.spare),
      limit: measureMm(worst.taken),
      source: { kind: "workshop", name: `what is not measured: ${spread.why.join(" and ")}` },
    }),
  ];
};

/** Empty where the fit holds at both ends, or fails as meant: that is said by another rule. */
const slackOf = (owner: string, gauge: Gauge, spread: Spread): readonly Slack[] => {
  const { finishedSize, goSize, noGo } = gauge;
  const isSound = !isUnder(finishedSize, goSize) && !(noGo !== null && isOver(finishedSize, noGo));
  if (!isSound) return [];
  if (isUnder(finishedSize - spread.smaller, goSize))
    return [{ owner, spare: finishedSize - goSize, taken: spread.smaller }];
  if (noGo !== null && isOver(finishedSize + spread.larger, noGo))
    return [{ owner, spare: noGo - finishedSize, taken: spread.larger }];
  return [];
};
