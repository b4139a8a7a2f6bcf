// What a hand does with a tool besides the machine: drilling and filing on a drill bench, deburring metal, paint and fill.

import type { MachineDesign } from "../design/workshop-design.ts";
import { decimal } from "../geometry/number.ts";
import type { LayerLayout } from "../layout/panel-layout.ts";
import type { HandOperation, Operation } from "./sheet-part.ts";

export const handOperations = (
  layer: LayerLayout,
  cuts: readonly Operation[],
  machine: MachineDesign,
): readonly HandOperation[] => [
  ...(machine.kind === "drill-bench" ? benchWork(cuts) : []),
  ...(layer.material === "aluminium" ? [whole("deburr", "hand deburring tool, both faces")] : []),
  ...finishing(layer),
];

/** A drill makes round holes; whatever else there is gets sawn and filed to the template. */
const benchWork = (cuts: readonly Operation[]): readonly HandOperation[] =>
  cuts.flatMap((operation): readonly HandOperation[] => {
    if (operation.kind !== "cut") return [];
    const { contour, feature, centre } = operation;
    const round = contour.kind === "circle";
    const tool = round
      ? `drill ${decimal(2 * contour.radius, 2)} mm`
      : "saw and file to the template";
    return [{ feature, what: "drill", tool, side: "front", depth: null, at: centre }];
  });

const finishing = (layer: LayerLayout): readonly HandOperation[] => {
  switch (layer.finish?.order) {
    case "cut-paint-engrave":
    case "paint-then-cut":
      return [whole("paint", layer.finish.coats.join(", then "))];
    case "engrave-fill":
      return [whole("fill", layer.finish.coats.join(", then "))];
    case undefined:
      return [];
  }
};

const whole = (what: HandOperation["what"], tool: string): HandOperation => ({
  feature: "whole sheet",
  what,
  tool,
  side: "front",
  depth: null,
  at: null,
});
