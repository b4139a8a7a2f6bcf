// The stack front to back: each layer's thickness and paint with their ranges, and where its faces lie.

import type { MaterialRecord, ThicknessTolerance } from "../catalogue/record.ts";
import type { LayerDesign } from "../design/panel-design.ts";
import type { FinishDesign, StockDesign } from "../design/workshop-design.ts";
import { spanOf } from "../design/written.ts";
import type { Finding } from "../diagnostics/finding.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { mm } from "../geometry/quantity.ts";
import { UNKNOWN_FINISH, UNKNOWN_MACHINE, UNKNOWN_STOCK } from "./codes.ts";
import {
  finishNames,
  finishOf,
  type LayoutContext,
  machineFor,
  machineNameFor,
  machineNames,
  machineOf,
  stockNames,
  stockOf,
  unknownName,
} from "./context.ts";
import type { LayerLayout, Range } from "./panel-layout.ts";
import { between, known, NONE } from "./range.ts";

/** Paint that nobody has measured: 0.05 to 0.15 mm a side, common practice for spray paint in two or three coats. */
const UNMEASURED_PAINT = between(0.05, 0.1, 0.15);

/** A layer before its cut-outs are known. */
export type BareLayer = Omit<LayerLayout, "cutOuts" | "outline">;

export interface ResolvedStack {
  /** In order, without the sheets whose stock is unknown. */
  readonly layers: readonly BareLayer[];
  /** False where a sheet's thickness can't be known: then no depth can. */
  readonly isWhole: boolean;
  readonly findings: readonly Finding[];
}

/** The layers in order, each miss with a finding. */
export const resolveStack = madeOnceWith(
  (stack: readonly LayerDesign[], context: LayoutContext): ResolvedStack => {
    const findings: Finding[] = [];
    const layers: BareLayer[] = [];
    let front = mm(0);
    for (const design of stack) {
      const parts = layerParts(design, context, findings);
      if (parts === null) continue;
      const rear = mm(
        front - parts.thickness.nominal - paintedFaces(parts.stock) * parts.paint.nominal,
      );
      layers.push({ ...parts, id: design.id, design, index: layers.length, front, rear });
      front = rear;
    }
    return {
      layers,
      isWhole: layers.length === stack.length,
      findings: [...findings, ...unknownMachines(layers, context)],
    };
  },
);

/** The workshop's `use` names a machine for each layer; each wrong name is told once. */
const unknownMachines = (
  layers: readonly BareLayer[],
  context: LayoutContext,
): readonly Finding[] => {
  const { workshop } = context;
  if (workshop === null) return [];
  const used = layers
    .filter(({ kind }) => kind === "sheet")
    .flatMap(({ id }) => machineNameFor(context, id) ?? []);
  const span = spanOf(workshop.written, "use");
  return [...new Set(used)]
    .filter((name) => machineOf(context, name) === null)
    .map((name) => unknownName(UNKNOWN_MACHINE, name, { span, known: machineNames(context) }));
};

/** Faces that paint adds to: light must leave a translucent sheet's rear, so that only its front is painted. */
export const paintedFaces = (stock: StockDesign | null): number =>
  stock === null ? 0 : stock.light === "opaque" ? 2 : 1;

type LayerParts = Omit<BareLayer, "id" | "design" | "index" | "front" | "rear">;

const layerParts = (
  design: LayerDesign,
  context: LayoutContext,
  findings: Finding[],
): LayerParts | null => {
  switch (design.kind) {
    case "sheet":
      return sheetParts(design, context, findings);
    case "spacer":
      return {
        ...bare("spacer", known(design.depth)),
        stock: printStock(design, context, findings),
      };
    case "air":
      return bare("air", known(design.depth));
    case "tray":
      return bare("tray", known(design.behind));
  }
};

/** What a spacer is printed of; its depth is known without it. */
const printStock = (
  design: LayerDesign & { readonly kind: "spacer" },
  context: LayoutContext,
  findings: Finding[],
): StockDesign | null => {
  const stock = stockOf(context, design.print);
  if (stock === null)
    findings.push(unknownStock(design.print, spanOf(design.written, "print"), context));
  return stock;
};

const unknownStock = (name: string, span: Finding["span"], context: LayoutContext): Finding =>
  unknownName(UNKNOWN_STOCK, name, { span, known: stockNames(context) });

const bare = (kind: LayerParts["kind"], thickness: Range): LayerParts => ({
  kind,
  thickness,
  stock: null,
  material: null,
  finish: null,
  machine: null,
  paint: NONE,
  holePaint: NONE,
});

const sheetParts = (
  design: LayerDesign & { readonly kind: "sheet" },
  context: LayoutContext,
  findings: Finding[],
): LayerParts | null => {
  const stock = stockOf(context, design.sheet);
  if (stock === null) {
    findings.push(unknownStock(design.sheet, spanOf(design.written, "sheet"), context));
    return null;
  }
  const finish = design.finish === null ? null : finishOf(context, design.finish);
  if (design.finish !== null && finish === null) {
    const span = spanOf(design.written, "finish");
    findings.push(
      unknownName(UNKNOWN_FINISH, design.finish, { span, known: finishNames(context) }),
    );
  }
  const paint = paintOf(finish);
  return {
    kind: "sheet",
    thickness: thicknessOf(stock, context.catalogue.materials.get(stock.material) ?? null),
    stock,
    material: stock.material,
    finish,
    machine: machineFor(context, design.id),
    paint,
    holePaint: finish?.order === "cut-paint-engrave" ? paint : NONE,
  };
};

/** Measured: itself. Not measured: nominal with its material's range. */
export const thicknessOf = (stock: StockDesign, material: MaterialRecord | null): Range => {
  if (stock.measured !== null) return known(stock.measured);
  const tolerance = toleranceFor(stock.nominal, material?.tolerance ?? []);
  if (tolerance === null) return between(stock.nominal, stock.nominal, stock.nominal);
  const minus = tolerance.minus.fixed + tolerance.minus.share * stock.nominal;
  const plus = tolerance.plus.fixed + tolerance.plus.share * stock.nominal;
  return between(stock.nominal - minus, stock.nominal, stock.nominal + plus);
};

const toleranceFor = (
  nominal: number,
  tolerances: readonly ThicknessTolerance[],
): ThicknessTolerance | null =>
  tolerances.filter((row) => row.from <= nominal).sort((a, b) => b.from - a.from)[0] ?? null;

const paintOf = (finish: FinishDesign | null): Range => {
  if (finish === null || finish.order === "engrave-fill") return NONE;
  return finish.thickness === null ? UNMEASURED_PAINT : known(finish.thickness);
};

/** Thickness of a layer with its paint: what a nut has to hold. */
export const finishedThickness = (
  layer: Pick<LayerLayout, "thickness" | "paint" | "stock">,
): Range => {
  const faces = paintedFaces(layer.stock);
  return {
    low: mm(layer.thickness.low + faces * layer.paint.low),
    nominal: mm(layer.thickness.nominal + faces * layer.paint.nominal),
    high: mm(layer.thickness.high + faces * layer.paint.high),
    known: layer.thickness.known && layer.paint.known,
  };
};

/** The last rigid sheet: what a component clamps to unless the design says otherwise. -1 where there is none. */
export const lastRigidSheet = (layers: readonly Pick<LayerLayout, "kind" | "material">[]): number =>
  layers.findLastIndex((layer) => layer.kind === "sheet" && layer.material !== "film");
