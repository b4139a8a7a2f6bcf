// What layout looks things up in: the workshop first, then the catalogue. Misses become findings with the nearest names.

import type { Catalogue } from "../catalogue/record.ts";
import type {
  FinishDesign,
  MachineDesign,
  StockDesign,
  WorkshopDesign,
} from "../design/workshop-design.ts";
import { type CodeEntry, type Finding, finding, type Span } from "../diagnostics/finding.ts";
import { nearestNames } from "../diagnostics/nearest.ts";
import type { Lettering } from "../lettering/lettering.ts";

export interface LayoutContext {
  readonly workshop: WorkshopDesign | null;
  readonly catalogue: Catalogue;
  readonly lettering: Lettering;
}

/** A finding for a name that is not there, with the three nearest that are. */
export const unknownName = (
  entry: CodeEntry,
  name: string,
  options: {
    readonly span: Span;
    readonly known: Iterable<string>;
    readonly subjects?: readonly string[];
  },
): Finding => {
  const nearest = nearestNames(name, [...options.known], 3);
  const hint = nearest.length === 0 ? "" : ` Nearest: ${nearest.join(", ")}.`;
  const what = entry.code.slice(entry.code.indexOf("unknown-") + "unknown-".length);
  return finding(entry, {
    message: `There is no ${what} called "${name}".${hint}`,
    span: options.span,
    subjects: options.subjects ?? [],
  });
};

export const stockOf = (context: LayoutContext, id: string): StockDesign | null =>
  ownValue(context.workshop?.stock, id) ?? context.catalogue.stock.get(id) ?? null;

export const stockNames = (context: LayoutContext): readonly string[] => [
  ...Object.keys(context.workshop?.stock ?? {}),
  ...context.catalogue.stock.keys(),
];

export const finishOf = (context: KnownFinishes, id: string): FinishDesign | null =>
  ownValue(context.workshop?.finishes, id) ?? context.catalogue.finishes.get(id) ?? null;

export const finishNames = (context: KnownFinishes): readonly string[] => [
  ...Object.keys(context.workshop?.finishes ?? {}),
  ...context.catalogue.finishes.keys(),
];

type KnownFinishes = Pick<LayoutContext, "workshop" | "catalogue">;

/** The machine that makes a layer: by the layer's id, else the workshop's default. */
export const machineFor = (context: LayoutContext, layer: string): MachineDesign | null => {
  const id = machineNameFor(context, layer);
  return id === null ? null : machineOf(context, id);
};

/** Own keys only: a layer may be called like something that every object has. */
export const machineNameFor = ({ workshop }: LayoutContext, layer: string): string | null =>
  ownValue(workshop?.use, layer) ?? ownValue(workshop?.use, "default");

export const machineOf = (context: LayoutContext, id: string): MachineDesign | null =>
  ownValue(context.workshop?.machines, id) ?? context.catalogue.machines.get(id) ?? null;

export const machineNames = (context: LayoutContext): readonly string[] => [
  ...Object.keys(context.workshop?.machines ?? {}),
  ...context.catalogue.machines.keys(),
];

const ownValue = <Value>(
  values: Readonly<Record<string, Value>> | undefined,
  key: string,
): Value | null =>
  values !== undefined && Object.hasOwn(values, key) ? (values[key] ?? null) : null;
