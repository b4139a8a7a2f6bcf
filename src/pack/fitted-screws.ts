// Screws of what is fitted to components in print: lids of lamp boxes with the inserts they end in, trims.

import type { Catalogue } from "../catalogue/record.ts";
import { isLampBoxPart, type LampBoxPart } from "../parts/printed/lamp-box-facts.ts";
import { isTrimPart, type TrimPart } from "../parts/printed/trim-facts.ts";
import { lidScrewNeed, trimScrewNeed } from "../parts/screw-need.ts";
import type { PanelForPack } from "./panel-pack.ts";
import { screwWords } from "./screw-words.ts";
import type { FixingRow } from "./stack-screws.ts";

export const fittedScrews = (panel: PanelForPack): readonly FixingRow[] =>
  panel.printedParts.flatMap((part) => {
    if (isLampBoxPart(part)) return lidRows(part, panel.catalogue);
    return isTrimPart(part) ? trimRows(part, panel) : [];
  });

const lidRows = (part: LampBoxPart, catalogue: Catalogue): readonly FixingRow[] => {
  const need = lidScrewNeed(part);
  const count = part.lampBox.lid.screws.length;
  if (need === null || count === 0) return [];
  const boss = part.facts.bosses.find(({ kind }) => kind === "insert");
  const insert = [...catalogue.inserts.values()].find(
    ({ thread, length }) => thread === need.thread && length === boss?.insert,
  );
  const use = `lid of ${part.owner}`;
  return [
    { count, ...screwWords(need, catalogue), use },
    ...(insert === undefined ? [] : [{ count, part: insert.id, title: insert.title, use }]),
  ];
};

const trimRows = (part: TrimPart, { layout, catalogue }: PanelForPack): readonly FixingRow[] => {
  const need = trimScrewNeed(part, layout);
  const count = part.trim.fit.screws.length;
  if (need === null || count === 0) return [];
  return [{ count, ...screwWords(need, catalogue), use: `trim of ${part.owner}` }];
};
