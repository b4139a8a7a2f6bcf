// A part of one body that is printed in one piece: what a component or a panel asks for beside the layers. Larger than the
// bed it is a finding: a trim or a lamp box has no place for a joint.

import type { PrinterDesign, StockDesign } from "../../design/workshop-design.ts";
import { type Finding, finding, type Span } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import { recipeExtent } from "../../geometry/solid/recipe-extent.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { BED_MARGIN } from "./bed-split.ts";
import { NO_SPLIT } from "./codes.ts";
import type { PrintedFacts } from "./printed-facts.ts";
import type { PrintedPart, PrintedRole } from "./printed-part.ts";

export interface SinglePart {
  readonly id: string;
  readonly panel: string;
  readonly title: string;
  readonly revision: string;
  readonly role: PrintedRole;
  readonly owner: string;
  readonly stock: StockDesign;
  readonly printer: PrinterDesign | null;
  readonly solid: Solid;
  readonly bedSide: "front" | "rear";
  readonly facts: PrintedFacts;
  readonly span: Span;
}

export const singlePart = ({ solid, ...part }: SinglePart): PrintedPart => {
  const bodies = [{ name: part.role, colour: part.stock.colour, solid }];
  return { kind: "printed-part", ...part, bodies, pieces: [{ number: 1, bodies }] };
};

export const bedFindings = (part: PrintedPart): readonly Finding[] => {
  const { printer, bodies } = part;
  const [body] = bodies;
  if (printer === null || body === undefined) return [];
  const box = recipeExtent(body.solid);
  const size = [box.maxX - box.minX, box.maxY - box.minY].sort((a, b) => b - a);
  const height = box.maxZ - box.minZ;
  const bed = [printer.bed[0], printer.bed[1]]
    .map((side) => side - 2 * BED_MARGIN)
    .sort((a, b) => b - a);
  if (size[0]! <= bed[0]! && size[1]! <= bed[1]! && height <= printer.bed[2]) return [];
  const said = [...size, height].map((length) => decimal(length, 1)).join(" x ");
  return [
    finding(NO_SPLIT, {
      message: `${part.id} measures ${said} mm and ${printer.id} has ${printer.bed.map((length) => decimal(length, 1)).join(" x ")} mm with ${BED_MARGIN} mm kept free at each edge. It has no place for a joint.`,
      span: part.span,
      subjects: [part.owner],
      measured: { value: size[0]!, unit: "mm" },
      limit: { value: bed[0]!, unit: "mm" },
      source: { kind: "machine", name: printer.id },
    }),
  ];
};
