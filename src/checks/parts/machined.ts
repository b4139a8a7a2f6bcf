// Each sheet part with its layer and the machine that makes it; and its inner cuts, one owner at a time. Parts without a
// machine of the workshop go to a cutting service, which judges for itself.

import type { MachineDesign } from "../../design/workshop-design.ts";
import type { Finding, Span } from "../../diagnostics/finding.ts";
import type { CutOut, LayerLayout } from "../../layout/panel-layout.ts";
import type { Operation, SheetPart } from "../../parts/sheet-part.ts";
import { onePerOwner } from "../one-finding.ts";
import type { PanelFacts } from "../rule.ts";

export interface Machined {
  readonly part: SheetPart;
  readonly layer: LayerLayout;
  readonly machine: MachineDesign;
}

export const machinedParts = (facts: PanelFacts): readonly Machined[] =>
  facts.sheetParts.flatMap((part) => {
    const layer = facts.layout.layers.find(({ id }) => id === part.layer);
    return layer === undefined || layer.machine === null
      ? []
      : [{ part, layer, machine: layer.machine }];
  });

export type Cut = Operation & { readonly kind: "cut" };

export interface InnerCut {
  readonly cut: Cut;
  readonly cutOut: Pick<CutOut, "id" | "owner" | "purpose" | "span" | "gauge" | "asCut">;
}

/** The first cut of each owner that is found wanting; members of a row count as one. */
export const onePerCut = (
  one: Machined,
  judgeOne: (inner: InnerCut) => Finding | null,
): readonly Finding[] => onePerOwner(innerCuts(one), judgeOne);

const innerCuts = ({ part, layer }: Machined): readonly InnerCut[] => {
  const byId = new Map(layer.cutOuts.map((cutOut) => [cutOut.id, cutOut]));
  return part.setUps
    .flatMap(({ operations }) => operations)
    .flatMap((operation) => {
      if (operation.kind !== "cut" || operation.process === "cut-outer") return [];
      const cutOut = byId.get(operation.feature);
      return cutOut === undefined ? [] : [{ cut: operation, cutOut }];
    });
};

/** Where the layer's machine is chosen: nothing of the panel's own text says it, so that the sheet's line stands for it. */
export const sheetSpan = ({ layer }: Machined): Span =>
  layer.design.written.keys["sheet"] ?? layer.design.written.span;

/** The radius that the finest tool leaves in a corner; null where the machine leaves none. */
export const toolRadius = (machine: MachineDesign): number | null =>
  machine.kind === "router" ? Math.min(...machine.tools.map(({ diameter }) => diameter)) / 2 : null;
