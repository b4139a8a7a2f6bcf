// A sheet that lies in a printed part: a trim's filter, the diffusers of a lamp box. Cut in one set-up, from the front, at
// finished size, since nothing of it is painted.

import type { MachineDesign, StockDesign } from "../../design/workshop-design.ts";
import type { Contour } from "../../geometry/contour.ts";
import { extentCentre, grownExtent, joinedExtent } from "../../geometry/extent.ts";
import { contourExtent } from "../../geometry/measure.ts";
import type { PanelLayout } from "../../layout/panel-layout.ts";
import { kerfSetting } from "../kerf.ts";
import type { SheetPart } from "../sheet-part.ts";
import { CUTTING_SERVICE } from "../sheet-parts.ts";
import type { PrintedContext } from "./printed-context.ts";

export interface FittedSheet {
  readonly id: string;
  readonly title: string;
  readonly stock: StockDesign;
  /** Each is a piece by itself, where it will lie. */
  readonly pieces: readonly { readonly feature: string; readonly contour: Contour }[];
}

/** Waste round the pieces. */
const MARGIN = 10;

export const fittedSheet = (
  { id, title, stock, pieces }: FittedSheet,
  layout: PanelLayout,
  context: PrintedContext,
): SheetPart => {
  const machine = machineFor(stock, context);
  const boxes = pieces.map(({ contour }) => contourExtent(contour));
  return {
    kind: "sheet-part",
    id,
    panel: layout.name,
    layer: id,
    title,
    revision: layout.design.revision,
    stock,
    thickness: stock.measured ?? stock.nominal,
    setUps: [
      {
        id: "1-cut",
        machine,
        faceUp: "front",
        instructions: [
          "Lies inside a printed part: keep it clean, take the masking off last, try it before you glue.",
        ],
        operations: pieces.map(({ feature, contour }) => ({
          kind: "cut",
          process: "cut-outer",
          feature,
          centre: extentCentre(contourExtent(contour)),
          contour,
        })),
        sheet: grownExtent(boxes.reduce(joinedExtent), MARGIN),
        kerf: kerfSetting(machine, stock),
      },
    ],
    handOperations: [],
  };
};

/** The machine that the workshop uses for filters and diffusers, else one that can cut the sheet. */
const machineFor = (stock: StockDesign, { workshop, catalogue }: PrintedContext): MachineDesign => {
  const machines = Object.values(workshop?.machines ?? {});
  const named = workshop?.use["filter"] ?? workshop?.use["default"];
  const verdicts = catalogue.materials.get(stock.material)?.byMachine ?? {};
  return (
    machines.find(({ id }) => id === named) ??
    machines.find(({ kind }) => verdicts[kind]?.verdict === "can") ??
    CUTTING_SERVICE
  );
};
